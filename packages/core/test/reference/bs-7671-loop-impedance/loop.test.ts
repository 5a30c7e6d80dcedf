import { expect, test } from 'vitest'
import { disconnectSeconds } from '../../../src/domain/codebook/bs-7671/section-411-3-2.ts'
import {
  COLD_FACTOR,
  greatestLoop,
  greatestRun,
} from '../../../src/domain/codebook/bs-7671/table-41-3.ts'
import { r1PlusR2 } from '../../../src/domain/codebook/iec-60228.ts'
import { COLD_B, RATINGS, RUN, SECOND, TIMES, TOGETHER } from './cases.ts'

const cells = SECOND.flatMap(({ column, seconds, ohms }) =>
  ohms.map((each, at) => ({ column, seconds, ohms: each, rating: RATINGS[at] ?? Number.NaN })),
)

test.each(cells)('BS 7671 41.3: $column $rating A, $seconds s: $ohms Ω', each =>
  expect(greatestLoop(each.rating, each.column, each.seconds)).toBe(each.ohms),
)

test.each(RATINGS.map((rating, at) => ({ rating, cold: COLD_B[at] ?? Number.NaN })))(
  'B $rating A: $cold Ω may be measured cold',
  // Printed to two digits, from a figure that is rounded itself.
  ({ rating, cold }) =>
    expect(
      Math.abs(COLD_FACTOR * (greatestLoop(rating, 'B', 0.4) ?? Number.NaN) - cold),
    ).toBeLessThan(0.01),
)

test('the published run is right for the wrong cable, and shorter for the one it names', () => {
  expect(r1PlusR2(2.5, 2.5)).toBeCloseTo(RUN.wrong, 9)
  const published = greatestRun(RUN.loop, RUN.external, RUN.wrong)
  expect(Math.abs(published - RUN.printed)).toBeLessThan(0.3)
  const named = greatestRun(RUN.loop, RUN.external, r1PlusR2(2.5, 1.5) ?? Number.NaN)
  expect(Math.abs(named - RUN.metres)).toBeLessThan(0.05)
})

test.each(TOGETHER)('$line and $protective mm²: $milliohms mΩ/m together', each =>
  expect(r1PlusR2(each.line, each.protective)).toBeCloseTo(each.milliohms, 9),
)

test.each(TIMES)('$earthing, $serves, $rating A: off within $seconds s', each =>
  expect(disconnectSeconds(each.earthing, each.serves, each.rating)).toBe(each.seconds),
)
