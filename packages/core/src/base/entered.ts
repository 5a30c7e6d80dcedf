import type { Outcome } from './outcome.ts'
import { fail, ok } from './outcome.ts'

/** A quantity as somebody wrote it, beside its value in SI. */
export interface Entered<Unit extends string> {
  readonly si: number & { readonly unit: Unit }
  readonly text: string
}

/** Why a text is no quantity; `may` lists what can be written. */
export interface QuantityFault {
  readonly reason: 'no-number' | 'no-unit' | 'wrong-unit' | 'out-of-range'
  readonly is: string
  readonly may: string
}

interface Spelling {
  readonly factor: number
  readonly offset?: number
}

interface Dimension {
  readonly spellings: Readonly<Record<string, Spelling>>
  readonly from: number
  readonly to: number
  readonly example: string
}

const times = (factor: number): Spelling => ({ factor })
const POUND_FORCE_INCH = 0.1129848290276167 // [N·m] @source [NIST-SP811] app. B.8

/** Every unit that people may write, by the SI unit it becomes. Ranges are what a tub can hold: nothing draws 0 A. */
export const DIMENSIONS = {
  V: {
    spellings: { V: times(1), mV: times(1e-3), kV: times(1e3) },
    from: 1e-3,
    to: 1000,
    example: '240 V',
  },
  A: { spellings: { A: times(1), mA: times(1e-3) }, from: 1e-6, to: 1000, example: '12 A' },
  Ω: {
    spellings: {
      ohm: times(1),
      ohms: times(1),
      Ω: times(1),
      mohm: times(1e-3),
      mΩ: times(1e-3),
      kohm: times(1e3),
      kΩ: times(1e3),
      Mohm: times(1e6),
      MΩ: times(1e6),
    },
    from: 1e-6,
    to: 1e12,
    example: '10.5 ohm',
  },
  Hz: { spellings: { Hz: times(1) }, from: 40, to: 70, example: '60 Hz' },
  W: { spellings: { W: times(1), kW: times(1e3) }, from: 1e-3, to: 50e3, example: '5.5 kW' },
  VA: { spellings: { VA: times(1), kVA: times(1e3) }, from: 1e-3, to: 50e3, example: '20 VA' },
  'm²': {
    spellings: {
      m2: times(1),
      'm²': times(1),
      ft2: times(0.09290304),
      'ft²': times(0.09290304),
      'sq ft': times(0.09290304),
    },
    from: 1,
    to: 5000,
    example: '140 m2',
  },
  m: {
    spellings: {
      m: times(1),
      mm: times(1e-3),
      cm: times(1e-2),
      ft: times(0.3048),
      in: times(0.0254),
    },
    from: 0,
    to: 1000,
    example: '35 ft',
  },
  K: {
    spellings: {
      '°C': { factor: 1, offset: 273.15 },
      C: { factor: 1, offset: 273.15 },
      '°F': { factor: 1 / 1.8, offset: 273.15 - 32 / 1.8 },
      F: { factor: 1 / 1.8, offset: 273.15 - 32 / 1.8 },
      K: times(1),
    },
    from: 220,
    to: 500,
    example: '104 °F',
  },
  F: {
    spellings: { µF: times(1e-6), μF: times(1e-6), uF: times(1e-6), nF: times(1e-9) },
    from: 1e-9,
    to: 1e-2,
    example: '35 uF',
  },
  N·m: {
    spellings: {
      N·m: times(1),
      'N m': times(1),
      Nm: times(1),
      lbf·in: times(POUND_FORCE_INCH),
      'lbf in': times(POUND_FORCE_INCH),
      'in-lb': times(POUND_FORCE_INCH),
    },
    from: 0,
    to: 100,
    example: '20 in-lb',
  },
} as const satisfies Readonly<Record<string, Dimension>>

export type Unit = keyof typeof DIMENSIONS

const SHAPE = /^([+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/u

const spellingsOf = (unit: Unit): Readonly<Record<string, Spelling>> => DIMENSIONS[unit].spellings

const mayBe = (unit: Unit): string =>
  `a number and a unit, such as "${DIMENSIONS[unit].example}" (units: ${Object.keys(spellingsOf(unit)).join(', ')})`

/**
 * Reads one quantity as people write it: a number, then its unit.
 *
 * A bare number is refused: a missing unit is the commonest dangerous slip.
 *
 * @param least - the least value [SI], where it is not that of what is described: a meter shows 0 V
 * @returns the value in SI and the text as entered; fails when the number or the unit is
 *   missing, the unit belongs to something else, or the value lies outside what a tub can hold
 */
export function parseQuantity<U extends Unit>(
  unit: U,
  text: string,
  least: number = DIMENSIONS[unit].from,
): Outcome<Entered<U>, QuantityFault> {
  const is = `"${text}"`
  const match = SHAPE.exec(text.trim())
  if (!match) return fail({ reason: 'no-number', is, may: mayBe(unit) })
  const spelled = (match[2] ?? '').trim()
  if (spelled === '') return fail({ reason: 'no-unit', is, may: mayBe(unit) })
  const spelling = Object.hasOwn(spellingsOf(unit), spelled)
    ? spellingsOf(unit)[spelled]
    : undefined
  if (!spelling) return fail({ reason: 'wrong-unit', is, may: mayBe(unit) })
  const si = Number(match[1]) * spelling.factor + (spelling.offset ?? 0)
  const { to } = DIMENSIONS[unit]
  const from = least
  if (!(si >= from && si <= to))
    return fail({
      reason: 'out-of-range',
      is,
      may: `${from > 0 && from < 0.01 ? 'above 0' : `from ${from}`} ${unit}, up to ${to} ${unit}`,
    })
  return ok({ si: si as Entered<U>['si'], text: text.trim() })
}

const quoted = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&')

/** The shape of a quantity's text for a JSON Schema, and one such text: its range is not in it. */
export const quantityShape = (unit: Unit): { pattern: string; examples: string[] } => ({
  pattern: `^\\s*[+-]?(\\d+(\\.\\d+)?|\\.\\d+)([eE][+-]?\\d+)?\\s*(${Object.keys(spellingsOf(unit)).map(quoted).join('|')})\\s*$`,
  examples: [DIMENSIONS[unit].example],
})
