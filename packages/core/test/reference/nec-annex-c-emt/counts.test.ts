import { expect, test } from 'vitest'
import { wholeConductors } from '../../../src/domain/codebook/nec/chapter-9-table-1.ts'
import { conductorArea } from '../../../src/domain/codebook/nec/chapter-9-table-5.ts'
import { fillLimit, mostConductors } from '../../../src/domain/codebook/nec/conduit-fill.ts'
import { EXCEPTION, THW, THWN, TRADE } from './cases.ts'

const isException = (size: string, tradeSize: string) =>
  size === EXCEPTION.size && tradeSize === EXCEPTION.tradeSize

test.each(THWN)('NEC annex C: $size of type THWN-2 in EMT', ({ size, counts }) => {
  const most = TRADE.map(
    tradeSize =>
      (mostConductors({ conduit: 'EMT', tradeSize }, size) ?? Number.NaN) +
      (isException(size, tradeSize) ? 1 : 0),
  )
  expect(most).toEqual(counts)
})

test('NEC annex C: the one cell above the rule is 0.005 away from it', () => {
  const piece = { conduit: 'EMT', tradeSize: EXCEPTION.tradeSize } as const
  const quotient = (fillLimit(piece, 3) ?? 0) / (conductorArea(EXCEPTION.size) ?? 1)
  expect(quotient).toBeCloseTo(EXCEPTION.quotient, 3)
  expect(Math.ceil(quotient)).toBe(EXCEPTION.printed)
  expect(mostConductors(piece, EXCEPTION.size)).toBe(EXCEPTION.printed - 1)
})

test.each(THW)('NEC annex C: $size of type THW in EMT', ({ area, counts }) => {
  const most = TRADE.map(tradeSize =>
    wholeConductors((fillLimit({ conduit: 'EMT', tradeSize }, 3) ?? 0) / area),
  )
  expect(most).toEqual(counts)
})

test('a conduit or a size that is not printed has no count', () => {
  expect(mostConductors({ conduit: 'EMT', tradeSize: '3' }, '6 AWG')).toBeUndefined()
  expect(mostConductors({ conduit: 'EMT', tradeSize: '1' }, '6 mm²')).toBeUndefined()
})
