import * as z from 'zod'
import type { Ohms } from '../base/quantity.ts'
import { ohms } from '../base/quantity.ts'
import { writtenAs } from './described.ts'

/**
 * Cross-section of each gauge number [mm²].
 *
 * A table, not the geometric formula: circuits use only + − × ÷ √.
 *
 * @source [ASTM-B258] gauge to diameter; areas rounded to three figures (from memory)
 */
const AREA_MM2_OF_AWG: Readonly<Record<string, number>> = {
  '22': 0.326,
  '20': 0.518,
  '18': 0.823,
  '16': 1.31,
  '14': 2.08,
  '12': 3.31,
  '10': 5.26,
  '8': 8.37,
  '6': 13.3,
  '4': 21.1,
  '3': 26.7,
  '2': 33.6,
  '1': 42.4,
}

const AREAS_MM2 = ['0.5', '0.75', '1', '1.5', '2.5', '4', '6', '10', '16', '25'] as const

export interface ConductorSize {
  readonly mm2: number
  readonly text: string
}

const MAY = `a gauge such as "6 AWG" (${Object.keys(AREA_MM2_OF_AWG).join(', ')}) or an area such as "4 mm2" (${AREAS_MM2.join(', ')})`

/** The size that a text names, such as `6 AWG`; undefined for one that is not sold. */
export function sizeFrom(text: string): ConductorSize | undefined {
  const match = /^([\d.]+)\s*(AWG|mm2|mm²)$/u.exec(text.trim())
  if (!match) return undefined
  const number = match[1] ?? ''
  if (match[2] === 'AWG') {
    const mm2 = Object.hasOwn(AREA_MM2_OF_AWG, number) ? AREA_MM2_OF_AWG[number] : undefined
    return mm2 === undefined ? undefined : { mm2, text: `${number} AWG` }
  }
  return (AREAS_MM2 as readonly string[]).includes(number)
    ? { mm2: Number(number), text: `${number} mm²` }
    : undefined
}

const SHAPE = {
  pattern: `^\\s*((${Object.keys(AREA_MM2_OF_AWG).join('|')})\\s*AWG|(${AREAS_MM2.join('|').replaceAll('.', '\\.')})\\s*mm[2²])\\s*$`,
  examples: ['6 AWG', '4 mm2'],
}

/** A conductor size as it is sold: a gauge or an area. */
export const conductorSize = z
  .string()
  .meta(SHAPE)
  .transform((text, context): ConductorSize => {
    const size = sizeFrom(text)
    if (size) return size
    context.addIssue({ code: 'custom', input: text, message: MAY, params: { is: `"${text}"` } })
    return z.NEVER
  })
  .register(writtenAs, { kind: 'size' })

/** Every size as it is written, the least first: gauges, then areas. */
export const GAUGES: readonly string[] = Object.keys(AREA_MM2_OF_AWG)
  .map(Number)
  .sort((a, b) => b - a)
  .map(each => `${each} AWG`)
export const AREAS: readonly string[] = AREAS_MM2.map(each => `${each} mm2`)

const RESISTIVITY_20C = 1 / 58e6 // [Ω·m] annealed copper @source [IEC-60028]
const WARMING = 0.00393 // [1/K] of copper, from 20 °C @source [IEC-60028]
const WARMING_AT_75C = 1 + WARMING * 55 // [1] @source [IEC-60028]

/**
 * Resistance of one copper conductor at 75 °C, one way.
 *
 * Stranding (about +2 %) and reactance (below 10 % up to 6 AWG) are left out.
 *
 * @param length - [m]
 * @source [IEC-60028] resistivity and coefficient at 20 °C
 */
export const conductorResistance = (size: ConductorSize, length: number): Ohms =>
  ohms((RESISTIVITY_20C * length * WARMING_AT_75C) / (size.mm2 * 1e-6))

/**
 * What a conductor of so many ohms at 75 °C has at another temperature.
 *
 * @param at75 - resistance at 75 °C [Ω]
 * @param celsius - of the copper [°C], −40 to 150
 * @source [IEC-60028] coefficient from 20 °C
 */
export const copperAt = (at75: number, celsius: number): Ohms =>
  ohms((at75 * (1 + WARMING * (celsius - 20))) / WARMING_AT_75C)
