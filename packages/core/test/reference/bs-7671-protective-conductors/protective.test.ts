import { expect, test } from 'vitest'
import {
  adiabaticSize,
  K_COPPER,
  leastProtective,
} from '../../../src/domain/codebook/bs-7671/table-54-7.ts'
import {
  K_COPPER as K_HARMONISED,
  leastProtective as leastHarmonised,
} from '../../../src/domain/codebook/hd-60364/part-5-54.ts'
import { EXAMPLES, K, K_FIRST, SIZES } from './cases.ts'

test.each(SIZES)('a line of $line mm² has a protective conductor of $least mm²', each => {
  expect(leastProtective(each.line)).toBe(each.least)
  expect(leastHarmonised(each.line)).toBe(each.least)
})

test.each(K)('$lies, $insulation: k = $k', ({ lies, insulation, k }) =>
  expect(K_COPPER[lies][insulation]).toBe(k),
)

test.each(K_FIRST)('$insulation: k = $k', ({ insulation, k }) =>
  expect(K_HARMONISED[insulation].k).toBe(k),
)

test.each(EXAMPLES)('[$found] $amps A for $seconds s at k = $k: $mm2 mm²', each =>
  expect(Math.abs(adiabaticSize(each.amps, each.seconds, each.k) - each.mm2)).toBeLessThan(
    each.within,
  ),
)
