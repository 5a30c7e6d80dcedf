import { expect, test } from 'vitest'
import {
  circularMils,
  directOhms,
  TABLE_8_AREA,
  TABLE_8_NOTE_2,
  TABLE_8_OHMS,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-8.ts'
import type { AlternatingColumn } from '../../../../../src/domain/codebook/nec/chapter-9-table-9.ts'
import {
  effectiveOhms,
  lineOhms,
  TABLE_9,
  TABLE_9_METRIC,
} from '../../../../../src/domain/codebook/nec/chapter-9-table-9.ts'
import type { Metal } from '../../../../../src/domain/codebook/nec/table-310-16.ts'
import { cellOf } from '../../../../../src/domain/codebook/printed.ts'

const METALS: readonly Metal[] = ['copper', 'aluminium']
const GAUGES = Object.keys(TABLE_8_AREA.rows).filter(size => size.endsWith('AWG'))
const ALL = Object.keys(TABLE_8_AREA.rows)

/** The number of a gauge: 1/0 is 0, 4/0 is −3. */
const gaugeOf = (size: string): number => {
  const text = size.replace(' AWG', '')
  return text.includes('/') ? 1 - Number.parseInt(text, 10) : Number(text)
}

test.each(GAUGES)('%s: the area is the square of the gauge’s diameter in mils, rounded', size => {
  const gauge = gaugeOf(size)
  const diameter = Math.round(5 * 92 ** ((36 - gauge) / 39) * 10) / 10
  const step = gauge <= 0 ? 100 : 10
  expect(circularMils(size)).toBe(Math.round(diameter ** 2 / step) * step)
})

test.each(GAUGES.slice(1).map((size, index) => ({ size, smaller: GAUGES[index] ?? '' })))(
  '$size against $smaller: 26 %% a gauge, from the formula',
  ({ size, smaller }) => {
    const steps = gaugeOf(smaller) - gaugeOf(size)
    const ratio = (circularMils(size) ?? Number.NaN) / (circularMils(smaller) ?? Number.NaN)
    expect(Math.abs(ratio / 92 ** ((2 * steps) / 39) - 1)).toBeLessThan(0.004)
  },
)

test('kcmil sizes have the area that they are named for', () => {
  for (const size of ALL.filter(each => each.endsWith('kcmil')))
    expect(circularMils(size)).toBe(1000 * Number.parseInt(size, 10))
})

// Ohms of one mil-foot at 75 °C: the K of the trade, 12.9 for copper and 21.2 for aluminium when stranded.
test.each([
  { metal: 'copper', stranding: 'solid', k: 12.6, within: 0.004 },
  { metal: 'copper', stranding: 'stranded', k: 12.88, within: 0.004 },
  { metal: 'aluminium', stranding: 'solid', k: 20.77, within: 0.002 },
  { metal: 'aluminium', stranding: 'stranded', k: 21.19, within: 0.003 },
] as const)('$stranding $metal: resistance times area is $k for every size', each => {
  const products = ALL.flatMap(size => {
    const ohms = directOhms({ ...each, size })
    return ohms === undefined ? [] : (ohms / 1000) * (circularMils(size) ?? Number.NaN)
  })
  expect(products.length).toBeGreaterThan(5)
  for (const product of products) expect(Math.abs(product / each.k - 1)).toBeLessThan(each.within)
})

test('a solid conductor has less than a stranded one, copper less than aluminium, a larger less', () => {
  const { columns, rows } = TABLE_8_OHMS
  for (const [solid, stranded, solidAluminium, strandedAluminium] of Object.values(rows)) {
    if (solid !== undefined) expect(solid).toBeLessThan(stranded ?? 0)
    if (solidAluminium !== undefined) expect(solidAluminium).toBeLessThan(strandedAluminium ?? 0)
    expect(stranded).toBeLessThan(strandedAluminium ?? 0)
  }
  columns.forEach((_, at) => {
    const ohms = Object.values(rows).flatMap(row => row[at] ?? [])
    ohms.slice(1).forEach((each, index) => {
      expect(each).toBeLessThan(ohms[index] ?? Number.NaN)
    })
  })
})

// The strands of one lay are 2 % longer than the cable.
test.each(METALS)('stranded %s has 1 to 3.5 % more than solid', metal => {
  for (const size of ALL) {
    const solid = directOhms({ metal, stranding: 'solid', size })
    if (solid === undefined) continue
    const ratio = (directOhms({ metal, stranding: 'stranded', size }) ?? Number.NaN) / solid
    expect(ratio).toBeGreaterThan(1.01)
    expect(ratio).toBeLessThan(1.035)
  }
})

// Zero of the line of resistance: −234.5 °C for copper, −228.1 °C for aluminium.
test.each([
  { metal: 'copper', zero: -234.5 },
  { metal: 'aluminium', zero: -228.1 },
] as const)('note 2: the coefficient of $metal at 75 °C is 1 over 75 less $zero', each =>
  expect(Math.abs(TABLE_8_NOTE_2[each.metal] - 1 / (75 - each.zero))).toBeLessThan(0.00001),
)

/** Half a step of the last figure of a number with two significant figures. */
const halfStep = (value: number): number => 0.5 * 10 ** (Math.floor(Math.log10(value) + 1e-9) - 1)

const LINES = Object.keys(TABLE_9.rows).flatMap(size =>
  METALS.flatMap(metal =>
    (['PVC', 'steel'] as const).flatMap(raceway => {
      const line = lineOhms({ metal, raceway, size })
      const z = cellOf(TABLE_9, size, `Z ${metal} ${raceway}`)
      return line === undefined || z === undefined ? [] : { size, metal, raceway, line, z }
    }),
  ),
)

test('table 9 has R, X and Z for the same sizes', () => expect(LINES).toHaveLength(2 * (13 + 12)))

test.each(LINES)('$size $metal in $raceway: Z is R cos + X sin at 0.85', each => {
  const { resistance, reactance } = each.line
  const z = effectiveOhms(each.line, 0.85)
  const isException = each.size === '1 AWG' && each.metal === 'copper' && each.raceway === 'PVC'
  expect(Math.abs(z / each.z - 1)).toBeLessThan(isException ? 0.053 : 0.05)
  const rounding =
    halfStep(each.z) + 0.85 * halfStep(resistance) + Math.sin(Math.acos(0.85)) * halfStep(reactance)
  expect(Math.abs(z - each.z)).toBeLessThanOrEqual(rounding + 1e-9)
})

test.each(LINES)('$size $metal in $raceway: R is at least that of direct current', each => {
  const direct =
    directOhms({ metal: each.metal, stranding: 'stranded', size: each.size }) ?? Number.NaN
  const { resistance } = each.line
  expect(resistance).toBeGreaterThan(direct - halfStep(resistance) - 1e-9)
  expect(resistance).toBeLessThan(direct * 1.05 + halfStep(resistance) + 1e-9)
})

test('steel raises the reactance by a quarter', () => {
  for (const size of Object.keys(TABLE_9.rows)) {
    const ratio = (cellOf(TABLE_9, size, 'X steel') ?? 0) / (cellOf(TABLE_9, size, 'X PVC') ?? 1)
    expect(Math.abs(ratio - 1.25)).toBeLessThan(0.025)
  }
})

test('a larger conductor has less resistance and never more impedance', () => {
  for (const [column, at] of TABLE_9.columns.map((column, at) => [column, at] as const)) {
    if (column.startsWith('X')) continue
    const ohms = Object.values(TABLE_9.rows).flatMap(row => row[at] ?? [])
    ohms.slice(1).forEach((each, index) => {
      expect(each).toBeLessThan(ohms[index] ?? Number.NaN)
    })
  }
})

/** Half a step of the last figure: reactance to 0.001, the rest to two figures or as it is written. */
const stepOf = (column: AlternatingColumn, value: number, unit: 'kft' | 'km'): number => {
  if (column.startsWith('X')) return 0.0005
  if (unit === 'kft') return halfStep(value)
  return Number.isInteger(value * 10) ? 0.05 : 0.005
}

test.each(Object.keys(TABLE_9_METRIC.rows))(
  '%s: the metric row is the other row by 3.2808',
  size => {
    for (const column of TABLE_9.columns as readonly AlternatingColumn[]) {
      const perKilofoot = cellOf(TABLE_9, size, column)
      const perKilometre = cellOf(TABLE_9_METRIC, size, column)
      expect(perKilometre === undefined).toBe(perKilofoot === undefined)
      if (perKilofoot === undefined || perKilometre === undefined) continue
      const rounding =
        3.28084 * stepOf(column, perKilofoot, 'kft') + stepOf(column, perKilometre, 'km')
      expect(Math.abs(perKilometre - 3.28084 * perKilofoot)).toBeLessThanOrEqual(rounding + 1e-9)
    }
  },
)

test('at a power factor of one only the resistance counts, at zero only the reactance', () => {
  const line = { resistance: 3, reactance: 4 }
  expect(effectiveOhms(line, 1)).toBe(3)
  expect(effectiveOhms(line, 0)).toBe(4)
  expect(effectiveOhms(line, 0.6)).toBeCloseTo(5, 12)
})
