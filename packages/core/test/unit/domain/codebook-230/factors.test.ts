import { expect, test } from 'vitest'
import {
  ambientFactor4B1,
  AMBIENT as BS,
} from '../../../../src/domain/codebook/bs-7671/table-4b1.ts'
import {
  GROUND as BS_GROUND,
  groundFactor4B2,
} from '../../../../src/domain/codebook/bs-7671/table-4b2.ts'
import {
  GROUPED as BS_GROUPED,
  groupFactor4C1,
} from '../../../../src/domain/codebook/bs-7671/table-4c1.ts'
import {
  ambientFactorB5214,
  AMBIENT as HD,
} from '../../../../src/domain/codebook/hd-60364/b-52-14.ts'
import { GROUND as HD_GROUND } from '../../../../src/domain/codebook/hd-60364/b-52-15.ts'
import type { Lying } from '../../../../src/domain/codebook/hd-60364/b-52-17.ts'
import {
  groupFactorB5217,
  GROUPED as HD_GROUPED,
} from '../../../../src/domain/codebook/hd-60364/b-52-17.ts'

const CONDUCTOR = { thermoplastic: 70, thermosetting: 90 } as const
type Insulation = keyof typeof CONDUCTOR
const INSULATIONS: readonly Insulation[] = ['thermoplastic', 'thermosetting']

/** Heat goes as the square of current: what is left of the rise above the base, as a factor. */
const left = (insulation: Insulation, celsius: number, base: number): number =>
  Math.sqrt((CONDUCTOR[insulation] - celsius) / (CONDUCTOR[insulation] - base))

const cells = (
  bands: readonly { readonly upTo: number; readonly [key: string]: number | undefined }[],
) =>
  bands.flatMap(band =>
    INSULATIONS.flatMap(insulation => {
      const factor = band[insulation]
      return factor === undefined ? [] : [{ celsius: band.upTo, insulation, factor }]
    }),
  )

test.each(cells(BS.map(each => ({ ...each }))).filter(({ celsius }) => celsius >= 30))(
  'BS 7671, $insulation in air of $celsius °C: $factor by heat',
  each =>
    expect(Math.abs(left(each.insulation, each.celsius, 30) - each.factor)).toBeLessThan(0.006),
)

test.each(cells(HD.map(each => ({ ...each }))))(
  'HD 60364, $insulation in air of $celsius °C: $factor by heat',
  each =>
    expect(Math.abs(left(each.insulation, each.celsius, 30) - each.factor)).toBeLessThan(0.006),
)

test.each(cells(HD_GROUND.map(each => ({ ...each }))))(
  'HD 60364, $insulation in ground of $celsius °C: $factor by heat',
  each =>
    expect(Math.abs(left(each.insulation, each.celsius, 20) - each.factor)).toBeLessThan(0.006),
)

test.each([
  { insulation: 'thermoplastic', short: 0.031 },
  { insulation: 'thermosetting', short: 0.021 },
] as const)(
  'BS 7671 at 25 °C, $insulation, is $short below heat alone',
  ({ insulation, short }) => {
    const printed = ambientFactor4B1(25, insulation) ?? Number.NaN
    expect(left(insulation, 25, 30) - printed).toBeCloseTo(short, 3)
    expect(printed).toBeLessThan(ambientFactorB5214(25, insulation) ?? 0)
  },
)

test('both books have the same factors from 30 °C on, and in the ground', () => {
  const from30 = (bands: typeof BS) => bands.filter(({ upTo }) => upTo >= 30)
  expect(from30(BS)).toEqual(from30(HD))
  expect(BS_GROUND).toEqual(HD_GROUND)
})

const LYING: readonly Lying[] = ['bunched', 'wall', 'ceiling', 'tray', 'ladder']

test.each(LYING)('%s: one circuit more never carries more each, but all together do', lying => {
  for (const [at, band] of HD_GROUPED.entries()) {
    const before = HD_GROUPED[at - 1]
    if (!before) continue
    expect(band[lying]).toBeLessThanOrEqual(before[lying])
    expect(band[lying] * band.upTo).toBeGreaterThan(before[lying] * before.upTo)
  }
})

test('a bundle is the worst of all from two circuits on', () => {
  for (const { upTo, bunched, ...others } of HD_GROUPED.slice(1))
    expect([upTo, Math.min(...Object.values(others))].at(1)).toBeGreaterThan(bunched)
})

test('both books have the same factors for groups at the counts that both print', () => {
  const common = HD_GROUPED.filter(({ upTo }) => BS_GROUPED.some(each => each.upTo === upTo))
  expect(common).toHaveLength(12)
  for (const { upTo, bunched, wall } of common) {
    expect(groupFactor4C1(upTo, 'bunched')).toBe(bunched)
    expect(groupFactor4C1(upTo, 'layer')).toBe(wall)
  }
})

test.each([
  { celsius: -20, factor: 1.03 },
  { celsius: 25.1, factor: 1 },
  { celsius: 31, factor: 0.94 },
  { celsius: 35.5, factor: 0.87 },
  { celsius: 60, factor: 0.5 },
  { celsius: 60.5, factor: undefined },
  { celsius: Number.NaN, factor: undefined },
])('air of $celsius °C takes the next warmer line: $factor', ({ celsius, factor }) =>
  expect(ambientFactor4B1(celsius, 'thermoplastic')).toBe(factor),
)

test.each([
  { celsius: 12, factor: 1.05 },
  { celsius: 21, factor: 0.95 },
  { celsius: 61, factor: undefined },
])('ground of $celsius °C takes the next warmer line: $factor', ({ celsius, factor }) =>
  expect(groundFactor4B2(celsius, 'thermoplastic')).toBe(factor),
)

test.each([
  { circuits: 11, british: 0.45, harmonised: 0.45 },
  { circuits: 10, british: 0.48, harmonised: 0.45 },
  { circuits: 13, british: 0.43, harmonised: 0.41 },
  { circuits: 21, british: undefined, harmonised: undefined },
])('$circuits circuits take the next greater count', ({ circuits, british, harmonised }) => {
  expect(groupFactor4C1(circuits, 'bunched')).toBe(british)
  expect(groupFactorB5217(circuits, 'bunched')).toBe(harmonised)
})
