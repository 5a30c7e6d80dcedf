import { invariant } from '@tubwright/core'

export type Params = Readonly<Record<string, string | number>>

const HOLE = /\{(\w+)(?::(\w+))?\}/gu

/** Figures with the digits that a meter shows: three that count, never a long tail. */
export function figure(value: number): string {
  if (!Number.isFinite(value)) return '–'
  const size = Math.abs(value)
  if (size >= 100) return value.toFixed(0)
  if (size >= 10) return trimmed(value.toFixed(1))
  return trimmed(value.toFixed(2))
}

const trimmed = (text: string): string => text.replace(/\.?0+$/u, '').replace(/^-0$/u, '0')

/** Current with the prefix that keeps it readable. */
export const amps = (value: number): string =>
  Math.abs(value) > 0 && Math.abs(value) < 0.1 ? `${figure(value * 1000)} mA` : `${figure(value)} A`

/** Resistance with the prefix that keeps it readable. */
export function ohms(value: number): string {
  if (value >= 1e6) return `${figure(value / 1e6)} MΩ`
  return value >= 1000 ? `${figure(value / 1000)} kΩ` : `${figure(value)} Ω`
}

const INCH = 0.0254 // [m] exact by definition

/** Whether rounding would make a round figure, such as a limit, of one that is off it. */
const isAlmost = (exact: number, rounded: number, round: number, slack: number): boolean =>
  rounded % round === 0 && Math.abs(exact - rounded) > slack

/**
 * Feet and inches, to the inch; in tenths where 4 ft 11.8 in would pass for 5 ft, or for half a foot
 * below 10 ft, where rules have such heights.
 */
export function feet(metres: number): string {
  const exact = metres / INCH
  const whole = Math.round(exact)
  const round = exact < 120 ? 6 : 12
  const inches = isAlmost(exact, whole, round, 0.05) ? Math.round(exact * 10) / 10 : whole
  const [ft, rest] = [Math.floor(inches / 12), trimmed((inches % 12).toFixed(1))]
  if (ft === 0) return `${rest} in`
  return rest === '0' ? `${ft} ft` : `${ft} ft ${rest} in`
}

/** Metres to the centimetre; to the millimetre where 1.998 m would pass for 2 m. */
export function metres(value: number): string {
  const exact = value * 100
  const whole = Math.round(exact)
  return `${trimmed(value.toFixed(isAlmost(exact, whole, 5, 0.05) ? 3 : 2))} m`
}

/** A length as its sentence’s `unit` wants it: feet, feet and the metres of the code, or metres. */
function lengthIn(value: number, { unit }: Params): string {
  if (unit === 'ft') return feet(value)
  return unit === 'ft-m' ? `${feet(value)} (${metres(value)})` : metres(value)
}

const FORMATS: Readonly<Record<string, (value: number, params: Params) => string>> = {
  A: amps,
  V: value => `${figure(value)} V`,
  W: value => (value >= 1000 ? `${figure(value / 1000)} kW` : `${figure(value)} W`),
  C: value => `${figure(value)} °C (${figure(value * 1.8 + 32)} °F)`,
  Hz: value => `${figure(value)} Hz`,
  percent: value => `${figure(value * 100)} %`,
  ohm: ohms,
  mm: value => `${figure(value * 1000)} mm`,
  mm2: value => `${figure(value * 1e6)} mm²`,
  m: metres,
  ft: feet,
  in: value => `${figure(value / INCH)} in`,
  length: lengthIn,
  kVA: value => `${trimmed((value / 1000).toFixed(2))} kVA`,
  number: figure,
}

/**
 * Puts parameters into a sentence: `{name}`, or `{name:A}` for a number with its unit.
 *
 * A sentence that asks for what is not given is a programmer's error.
 */
export function say(template: string, params: Params): string {
  return template.replace(HOLE, (_, name: string, format: string | undefined) => {
    const value = Object.hasOwn(params, name) ? params[name] : undefined
    invariant(value !== undefined, `the sentence "${template}" needs ${name}`)
    if (typeof value === 'string') return value
    const write = format === undefined ? figure : FORMATS[format]
    invariant(write !== undefined, `no such format: ${format}`)
    return write(value, params)
  })
}

/** The parameters that a sentence uses. */
export const holesOf = (template: string): readonly string[] => [
  ...new Set([...template.matchAll(HOLE)].map(each => each[1] ?? '')),
]
