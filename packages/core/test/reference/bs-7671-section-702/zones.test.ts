import { expect, test } from 'vitest'
import { isAdditionalProtection } from '../../../src/domain/codebook/bs-7671/section-415.ts'
import {
  BONDED_ZONES,
  EARTH_QUESTION,
  SECTION_OF_PLACE,
  ZONE_METRES,
  ZONE_RULES,
  zoneAt,
} from '../../../src/domain/codebook/bs-7671/section-702.ts'
import * as harmonised from '../../../src/domain/codebook/hd-60364/part-7-702.ts'
import { FIGURES, OLDER, POINTS, STANDING, VOLTS, WATER } from './cases.ts'

test.each(POINTS)('$fromRim m from the rim, $above m up: zone $zone', ({ zone, ...point }) =>
  expect(zoneAt({ ...point, rim: 0 })).toBe(zone),
)

test.each(STANDING)('a tub that stands: $fromRim m, $above m up: zone $zone', each =>
  expect(zoneAt({ fromRim: each.fromRim, above: each.above, rim: 0.9 })).toBe(each.zone),
)

test.each(VOLTS)('zone $zone: $alternating V alternating, $direct V direct', each => {
  const { alternating, direct } = each
  expect(ZONE_RULES[each.zone].selv).toEqual({ alternating, direct })
  expect(harmonised.SELV_VOLTS[each.zone]).toEqual({ alternating, direct })
  expect(alternating).toBeGreaterThanOrEqual(OLDER.alternating)
  expect(direct).toBeGreaterThanOrEqual(OLDER.direct)
})

test.each(WATER)('zone $zone: $indoors indoors, $outdoors outdoors, $jets under jets', each => {
  const { zone, ...ip } = each
  expect(ZONE_RULES[zone].ip).toEqual(ip)
  expect(harmonised.ZONE_IP[zone]).toEqual(ip)
})

test('only zone 2 has sockets, behind a device for additional protection', () => {
  expect(([0, 1, 2] as const).filter(zone => ZONE_RULES[zone].sockets)).toEqual([2])
  expect(ZONE_RULES[2].residualMilliamps).toBe(FIGURES.milliamps)
  expect(harmonised.ZONE_2_MILLIAMPS).toBe(FIGURES.milliamps)
  expect(isAdditionalProtection(FIGURES.milliamps)).toBe(true)
  expect(isAdditionalProtection(FIGURES.milliamps + 1)).toBe(false)
})

test('the metal of all three zones is joined, and a combined earth is the designer’s question', () => {
  expect(BONDED_ZONES).toEqual([0, 1, 2])
  expect(EARTH_QUESTION['TN-C-S']?.electrodeOhms).toBe(FIGURES.ohms)
  expect(EARTH_QUESTION['TN-S'] ?? EARTH_QUESTION.TT).toBeUndefined()
  expect(SECTION_OF_PLACE.outdoors - SECTION_OF_PLACE['in a room']).toBe(1)
})

test('the harmonised document has the same distances', () =>
  expect(harmonised.ZONE_METRES).toEqual(ZONE_METRES))
