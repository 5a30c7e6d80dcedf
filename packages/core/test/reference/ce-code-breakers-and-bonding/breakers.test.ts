import { expect, test } from 'vitest'
import { CE_CONTINUOUS, ceMostContinuous } from '../../../src/domain/codebook/ce-code/rule-8-104.ts'
import { CE_TABLE_13, ceGreatestBreaker } from '../../../src/domain/codebook/ce-code/table-13.ts'
import { CE_TABLE_16, ceBondingConductor } from '../../../src/domain/codebook/ce-code/table-16.ts'
import { isStandard, nextStandard } from '../../../src/domain/codebook/nec/section-240-6.ts'
import { BAND_ENDS, BONDING, BREAKERS, CONTINUOUS, HOURS, SMALL } from './cases.ts'

test.each(BREAKERS)('CE table 13: $breaker A before what carries $carries A', each =>
  expect(ceGreatestBreaker({ metal: 'copper', size: '1 AWG', amps: each.carries })).toBe(
    each.breaker,
  ),
)

test.each(CE_TABLE_13.bands)('CE table 13: up to $upTo A the next rating that is made', each => {
  expect(isStandard(each.breaker)).toBe(true)
  expect(nextStandard(each.upTo)).toBe(each.breaker)
})

test('CE table 13 ends at 600 A', () =>
  expect(ceGreatestBreaker({ metal: 'copper', size: '1 AWG', amps: 601 })).toBeUndefined())

test.each(SMALL)('CE rule 14-104 2): $breaker A before $metal $size of 90 °C', each =>
  expect(ceGreatestBreaker({ ...each, amps: each.carries })).toBe(each.breaker),
)

test.each(BONDING)('CE table 16: behind $amps A', each => {
  const ours = 'ours' in each ? each.ours : [each.copper, each.aluminium]
  expect(ceBondingConductor(each.amps, 'copper')).toBe(ours[0])
  expect(ceBondingConductor(each.amps, 'aluminium')).toBe(ours[1])
})

test.each(BAND_ENDS)('CE table 16: a band ends at $upTo A', ({ upTo, next }) => {
  expect(CE_TABLE_16.bands.map(band => band.upTo)).toContain(upTo)
  for (const metal of ['copper', 'aluminium'] as const)
    expect(ceBondingConductor(next, metal)).not.toBe(ceBondingConductor(upTo, metal))
})

test('CE table 16 ends at 600 A', () => expect(ceBondingConductor(601, 'copper')).toBeUndefined())

test.each(CONTINUOUS)('CE rule 8-104: marked $mark, $laid', ({ mark, laid, ...percent }) => {
  const most = (breaker: number, amps: number) => ceMostContinuous({ breaker, amps, mark, laid })
  expect(most(40, 1000)).toBe((40 * percent.breaker) / 100)
  expect(most(1000, 50)).toBe((50 * percent.conductors) / 100)
})

test('CE rule 8-104: one hour in two up to 225 A, three in six above', () => {
  const { split, upToSplit, aboveSplit } = CE_CONTINUOUS
  expect(split).toBe(HOURS.split)
  expect([upToSplit.hours, upToSplit.inHours]).toEqual(HOURS.below)
  expect([aboveSplit.hours, aboveSplit.inHours]).toEqual(HOURS.above)
})
