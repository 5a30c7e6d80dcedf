import { expect, test } from 'vitest'
import { FAST_UP_TO as BRITISH_BORDER } from '../../../src/domain/codebook/bs-7671/section-411-3-2.ts'
import { dropLimit4Ab } from '../../../src/domain/codebook/bs-7671/table-4ab.ts'
import { dropLimitG521 } from '../../../src/domain/codebook/hd-60364/g-52-1.ts'
import {
  DISCONNECT_SECONDS,
  FAST_UP_TO,
  greatestElectrode,
} from '../../../src/domain/codebook/hd-60364/part-4-41.ts'
import { LEAST_SEPARATE } from '../../../src/domain/codebook/hd-60364/part-5-54.ts'
import { insulationTest } from '../../../src/domain/codebook/hd-60364/part-6.ts'
import { DROP, ELECTRODES, FAST, INSULATION, OLDER_MEGOHMS, SEPARATE, TIMES } from './cases.ts'

test.each(DROP)('G.52.1: $supply, $use, $metres m: $percent %', each => {
  expect(dropLimitG521(each.supply, each.use, each.metres)).toBeCloseTo(each.percent, 9)
  expect(dropLimit4Ab(each.supply, each.use, each.metres)).toBeCloseTo(each.percent, 9)
})

test.each(INSULATION)('$volts V: tested with $test V, at least $megohms MΩ', each => {
  expect(insulationTest(each.volts)?.test).toBe(each.test)
  expect(insulationTest(each.volts)?.megohms).toBe(each.megohms)
})

test('older editions asked for half', () =>
  expect([insulationTest(24), insulationTest(230)].map(each => (each?.megohms ?? 0) / 2)).toEqual([
    ...OLDER_MEGOHMS,
  ]))

test.each(ELECTRODES)('$milliamps mA: an electrode of $ohms Ω at most', ({ milliamps, ohms }) =>
  expect(Math.round(greatestElectrode(milliamps))).toBe(ohms),
)

test.each(['TN', 'TT'] as const)('%s: the times of a fault', earthing =>
  expect(DISCONNECT_SECONDS[earthing]).toEqual(TIMES[earthing]),
)

test('a protective conductor outside the cable', () => expect(LEAST_SEPARATE).toEqual(SEPARATE))

test('the British book has the same border of what is off fast', () => {
  expect(FAST_UP_TO).toEqual(FAST)
  expect(BRITISH_BORDER).toEqual(FAST)
})
