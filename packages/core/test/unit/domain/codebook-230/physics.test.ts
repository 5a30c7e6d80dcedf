import { describe, expect, test } from 'vitest'
import { TABLE_4 } from '../../../../src/domain/codebook/as-nzs/table-4.ts'
import { TABLE_5 } from '../../../../src/domain/codebook/as-nzs/table-5.ts'
import { TABLE_10 } from '../../../../src/domain/codebook/as-nzs/table-10.ts'
import { TABLE_11 } from '../../../../src/domain/codebook/as-nzs/table-11.ts'
import {
  MILLIVOLTS_THERMOPLASTIC,
  MILLIVOLTS_THERMOSETTING,
  PARTS_THERMOPLASTIC,
  PARTS_THERMOSETTING,
} from '../../../../src/domain/codebook/bs-7671/millivolts.ts'
import type { Curve, FaultSeconds } from '../../../../src/domain/codebook/bs-7671/table-41-3.ts'
import {
  greatestLoop,
  SURE_MULTIPLE,
  TABLE_41_3,
  VOLTAGE_FACTOR,
} from '../../../../src/domain/codebook/bs-7671/table-41-3.ts'
import { K_COPPER as K_BRITISH } from '../../../../src/domain/codebook/bs-7671/table-54-7.ts'
import { TABLE_B_52_2 } from '../../../../src/domain/codebook/hd-60364/b-52-2.ts'
import { TABLE_B_52_3 } from '../../../../src/domain/codebook/hd-60364/b-52-3.ts'
import { K_COPPER } from '../../../../src/domain/codebook/hd-60364/part-5-54.ts'
import {
  AREAS_MM2,
  ohmsAt20C,
  RESISTANCE_20C,
  warmed,
} from '../../../../src/domain/codebook/iec-60228.ts'
import type { PrintedTable } from '../../../../src/domain/codebook/printed.ts'
import { cellOf } from '../../../../src/domain/codebook/printed.ts'
import { sizesOf } from './current-tables.ts'

const PRINTS = [
  { name: '70 °C', celsius: 70, table: MILLIVOLTS_THERMOPLASTIC, parts: PARTS_THERMOPLASTIC },
  { name: '90 °C', celsius: 90, table: MILLIVOLTS_THERMOSETTING, parts: PARTS_THERMOSETTING },
] as const

const drops = PRINTS.flatMap(print => AREAS_MM2.map(mm2 => ({ ...print, mm2 })))

test.each(drops)('$name, $mm2 mm²: the drop is that of both conductors, warm', each => {
  // Ω/m times one ampere, twice; rounded to two digits, with a little reactance at the end.
  const copper = 2000 * (ohmsAt20C(each.mm2, 1, 'rigid') ?? Number.NaN) * warmed(each.celsius)
  const printed = cellOf(each.table, String(each.mm2), 'single-phase') ?? Number.NaN
  expect(Math.abs(copper / printed - 1)).toBeLessThan(0.03)
})

test.each(drops)('$name, $mm2 mm²: three phases drop √3/2 of it', each => {
  const single = cellOf(each.table, String(each.mm2), 'single-phase') ?? Number.NaN
  const three = cellOf(each.table, String(each.mm2), 'three-phase') ?? Number.NaN
  expect(Math.abs(three / single / (Math.sqrt(3) / 2) - 1)).toBeLessThan(0.05)
})

test.each(PRINTS.flatMap(print => ['25', '35'].map(size => ({ ...print, size }))))(
  '$name, $size mm²: the whole is made of its two parts',
  ({ table, parts, size }) => {
    const [r, x] = [cellOf(parts, size, 'r') ?? 0, cellOf(parts, size, 'x') ?? 0]
    const printed = cellOf(table, size, 'single-phase') ?? Number.NaN
    expect(Math.abs(Math.hypot(r, x) / printed - 1)).toBeLessThan(0.025)
    // The reactance of two cores side by side hardly depends on anything: 0.08 Ω/km a core.
    expect(x / 2).toBeGreaterThan(0.07)
    expect(x / 2).toBeLessThan(0.1)
  },
)

const loops = sizesOf(TABLE_41_3).flatMap(rating =>
  (['B', 'C', 'D'] as const satisfies readonly Curve[]).flatMap(curve =>
    ([0.4, 5] as const satisfies readonly FaultSeconds[]).flatMap(seconds => {
      const ohms = greatestLoop(Number(rating), curve, seconds)
      return ohms === undefined ? [] : [{ rating: Number(rating), curve, seconds, ohms }]
    }),
  ),
)

test.each(loops)('$curve $rating A, $seconds s: $ohms Ω lets just enough through', each => {
  const ohms = (230 * VOLTAGE_FACTOR) / (SURE_MULTIPLE[each.curve][each.seconds] * each.rating)
  // Half of the last printed digit, and a hair for 218.5/100 = 2.185 and its like.
  expect(Math.abs(ohms - each.ohms)).toBeLessThan(0.00501)
})

test('every printed loop was looked at', () => expect(loops).toHaveLength(9 * 6 - 2))

const HEATS = Object.entries(K_COPPER).map(([name, heat]) => ({ name, ...heat }))

test.each(HEATS)('$name: from $from to $to °C, k = $k', ({ from, to, k }) => {
  const exact = 226 * Math.sqrt(Math.log((234.5 + to) / (234.5 + from)))
  expect(Math.abs(exact - k)).toBeLessThan(0.5)
})

test('both books have the same k', () =>
  expect(K_BRITISH).toEqual({
    separate: {
      thermoplastic: K_COPPER['separate pvc'].k,
      thermosetting: K_COPPER['separate xlpe'].k,
    },
    core: { thermoplastic: K_COPPER['pvc 70'].k, thermosetting: K_COPPER['xlpe 90'].k },
  }))

describe('another base: air of 40 °C, not 30 °C', () => {
  interface Pair {
    readonly name: string
    readonly table: PrintedTable<string>
    readonly other: PrintedTable<string>
    readonly method: string
    readonly conductor: number
    readonly otherConductor: number
  }
  const PAIRS: readonly Pair[] = [
    {
      name: 'table 4',
      table: TABLE_4,
      other: TABLE_B_52_2,
      method: 'B1',
      conductor: 75,
      otherConductor: 70,
    },
    {
      name: 'table 5',
      table: TABLE_5,
      other: TABLE_B_52_3,
      method: 'B1',
      conductor: 90,
      otherConductor: 90,
    },
    {
      name: 'table 10',
      table: TABLE_10,
      other: TABLE_B_52_2,
      method: 'B2',
      conductor: 75,
      otherConductor: 70,
    },
    {
      name: 'table 11',
      table: TABLE_11,
      other: TABLE_B_52_3,
      method: 'B2',
      conductor: 90,
      otherConductor: 90,
    },
  ]
  const pairs = PAIRS.flatMap(pair =>
    sizesOf(pair.other)
      .filter(size => Object.hasOwn(pair.table.rows, size))
      .map(size => ({ ...pair, size })),
  )

  test.each(pairs)(
    '$name, $size mm² in conduit, within 12 % of the harmonised table moved',
    each => {
      const moved = Math.sqrt((each.conductor - 40) / (each.otherConductor - 30))
      const there = (cellOf(each.other, each.size, each.method) ?? Number.NaN) * moved
      const here = cellOf(each.table, each.size, 'enclosed') ?? Number.NaN
      expect(Math.abs(here / there - 1)).toBeLessThan(0.12)
    },
  )
})

test.each(sizesOf(RESISTANCE_20C))('%s mm²: flexible above rigid, tinned above plain', size => {
  const ohms = (conductor: 'rigid' | 'flexible' | 'rigid tinned' | 'flexible tinned') =>
    cellOf(RESISTANCE_20C, size, conductor)
  const [rigid, flexible] = [ohms('rigid') ?? Number.NaN, ohms('flexible')]
  if (flexible !== undefined) expect(flexible).toBeGreaterThan(rigid)
  for (const [plain, tinned] of [
    [rigid, ohms('rigid tinned')],
    [flexible, ohms('flexible tinned')],
  ] as const)
    if (plain !== undefined && tinned !== undefined) {
      expect(tinned).toBeGreaterThan(plain)
      expect(tinned / plain).toBeLessThan(1.04)
    }
})
