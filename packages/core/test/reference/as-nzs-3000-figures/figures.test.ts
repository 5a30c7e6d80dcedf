import { expect, test } from 'vitest'
import { BASE_CELSIUS, BREAKER_RATINGS as HERE } from '../../../src/domain/codebook/as-nzs/base.ts'
import { DISCONNECT_SECONDS } from '../../../src/domain/codebook/as-nzs/disconnection.ts'
import { DROP_PERCENT } from '../../../src/domain/codebook/as-nzs/drop-limit.ts'
import {
  LEAST_SEPARATE_EARTH,
  leastEarth3000,
} from '../../../src/domain/codebook/as-nzs/earth-size.ts'
import { heaterDemand } from '../../../src/domain/codebook/as-nzs/maximum-demand.ts'
import {
  IN_WATER_VOLTS,
  isBonded,
  POOL_ZONE_IP,
  POOL_ZONE_METRES,
} from '../../../src/domain/codebook/as-nzs/pools.ts'
import { FINAL_CIRCUIT_MILLIAMPS } from '../../../src/domain/codebook/as-nzs/residual.ts'
import { BREAKER_RATINGS } from '../../../src/domain/codebook/bs-7671/ratings-60898.ts'
import { ZONE_METRES, ZONE_RULES } from '../../../src/domain/codebook/bs-7671/section-702.ts'
import { ambientFactor4B1 } from '../../../src/domain/codebook/bs-7671/table-4b1.ts'
import { groundFactor4B2 } from '../../../src/domain/codebook/bs-7671/table-4b2.ts'
import { DEMAND, EARTHS, FIGURES, METAL, WATER } from './cases.ts'

test.each(EARTHS)('3000 table 5.1: an active of $active mm² has an earth of $earth mm²', each => {
  expect(leastEarth3000(each.active, 'core of the cable')).toBe(each.earth)
  const alone = leastEarth3000(each.active, 'separate') ?? 0
  expect(alone).toBe(Math.max(each.earth, LEAST_SEPARATE_EARTH))
})

test.each(METAL)('$what: bonded $bonded', ({ bonded, longest, level, up }) =>
  expect(isBonded({ longest, level, up })).toBe(bonded),
)

test.each(DEMAND)('spas $spas A and pools $pools A count $counts A', ({ counts, ...heaters }) =>
  expect(heaterDemand(heaters)).toBeCloseTo(counts, 9),
)

test('single figures, against the other books where they agree', () => {
  expect(DROP_PERCENT.network).toBe(FIGURES.dropPercent)
  expect(DROP_PERCENT['own substation']).toBe(FIGURES.ownSubstation)
  expect(FINAL_CIRCUIT_MILLIAMPS).toBe(FIGURES.residualMilliamps)
  expect(POOL_ZONE_METRES).toEqual({ first: FIGURES.firstZone, second: FIGURES.secondZone })
  expect(ZONE_METRES).toMatchObject(POOL_ZONE_METRES)
  expect(IN_WATER_VOLTS).toEqual(ZONE_RULES[0].selv)
  expect(IN_WATER_VOLTS.alternating).toBe(FIGURES.volts)
  expect(DISCONNECT_SECONDS.fast).toBe(FIGURES.fast)
})

test('the base is hotter than that of the other books', () => {
  expect(BASE_CELSIUS).toEqual({ air: FIGURES.air, soil: FIGURES.soil })
  expect(ambientFactor4B1(BASE_CELSIUS.air, 'thermoplastic')).toBeLessThan(0.9)
  expect(groundFactor4B2(BASE_CELSIUS.soil, 'thermoplastic')).toBeLessThan(1)
})

test('every breaker that is usual here is a preferred rating', () =>
  expect(HERE.filter(each => !BREAKER_RATINGS.includes(each))).toEqual([]))

// Digits after IPX rise with the water that is kept out; zone 2 of the other books asks for no more
// outdoors.
test.each(WATER)(
  'zone $zone: $ip, and never less than the British book outdoors',
  ({ zone, ip }) => {
    expect(POOL_ZONE_IP[zone]).toBe(ip)
    expect(ip >= ZONE_RULES[zone].ip.outdoors).toBe(true)
  },
)
