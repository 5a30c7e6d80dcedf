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

const FORMATS: Readonly<Record<string, (value: number) => string>> = {
  A: amps,
  V: value => `${figure(value)} V`,
  W: value => (value >= 1000 ? `${figure(value / 1000)} kW` : `${figure(value)} W`),
  C: value => `${figure(value)} °C (${figure(value * 1.8 + 32)} °F)`,
  Hz: value => `${figure(value)} Hz`,
  percent: value => `${figure(value * 100)} %`,
  ohm: ohms,
  mm: value => `${figure(value * 1000)} mm`,
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
    return write(value)
  })
}

/** The parameters that a sentence uses. */
export const holesOf = (template: string): readonly string[] => [
  ...new Set([...template.matchAll(HOLE)].map(each => each[1] ?? '')),
]
