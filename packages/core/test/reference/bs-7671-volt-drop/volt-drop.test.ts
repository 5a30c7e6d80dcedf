import { expect, test } from 'vitest'
import {
  droppedVolts,
  MILLIVOLTS_THERMOPLASTIC,
  MILLIVOLTS_THERMOSETTING,
  PARTS_THERMOPLASTIC,
  PARTS_THERMOSETTING,
} from '../../../src/domain/codebook/bs-7671/millivolts.ts'
import { dropLimit4Ab } from '../../../src/domain/codebook/bs-7671/table-4ab.ts'
import { cellOf } from '../../../src/domain/codebook/printed.ts'
import { CONFLICT_35, DIRECT_70, SECOND_70, SECOND_90, VOLTS } from './cases.ts'

const cells = (columns: typeof SECOND_70) =>
  columns.flatMap(({ column, sizes, millivolts }) =>
    sizes.map((mm2, at) => ({ column, mm2, millivolts: millivolts[at] ?? Number.NaN })),
  )

test.each(cells(SECOND_70))('BS 7671: 70 °C, $column, $mm2 mm² drops $millivolts mV/A/m', each =>
  expect(cellOf(MILLIVOLTS_THERMOPLASTIC, String(each.mm2), each.column)).toBe(each.millivolts),
)

test.each(cells(SECOND_90))('BS 7671: 90 °C, $column, $mm2 mm² drops $millivolts mV/A/m', each =>
  expect(cellOf(MILLIVOLTS_THERMOSETTING, String(each.mm2), each.column)).toBe(each.millivolts),
)

test.each(DIRECT_70)('BS 7671: 70 °C, $mm2 mm² has r = $r mV/A/m', ({ mm2, r }) =>
  expect(cellOf(PARTS_THERMOPLASTIC, String(mm2), 'r')).toBe(r),
)

test('the two pages of one cell differ by 1.2 % at most', () => {
  const r = cellOf(PARTS_THERMOSETTING, '35', 'r') ?? Number.NaN
  expect(CONFLICT_35.r / r - 1).toBeGreaterThan(0)
  expect(CONFLICT_35.r / r - 1).toBeLessThan(CONFLICT_35.share)
})

test.each(VOLTS)('BS 7671 4Ab: $supply supply, $use: $volts V of $nominal V', each =>
  expect((dropLimit4Ab(each.supply, each.use, 20) * each.nominal) / 100).toBeCloseTo(each.volts, 9),
)

test('what 32 A lose in 25 m of 6 mm²: length one way, both ways are in the figure', () => {
  // 7.3 mV/A/m x 32 A x 25 m, by hand.
  const circuit = { amps: 32, metres: 25, mm2: 6 }
  expect(droppedVolts(MILLIVOLTS_THERMOPLASTIC, 'single-phase', circuit)).toBeCloseTo(5.84, 9)
})
