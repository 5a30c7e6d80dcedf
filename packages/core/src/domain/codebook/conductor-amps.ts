import type { ConductorSize } from '../conductor.ts'
import { AREAS, GAUGES, sizeFrom } from '../conductor.ts'
import { BREAKER_RATINGS } from './bs-7671/ratings-60898.ts'
import { ampsB522 } from './hd-60364/b-52-2.ts'
import { greatestBreaker } from './nec/section-240-4-b.ts'
import { smallConductorBreaker } from './nec/section-240-4-d.ts'
import { necAmps } from './nec/table-310-16.ts'

/** What a copper conductor may carry, and the greatest breaker that may stand before it [A]. */
export interface ConductorAmps {
  readonly carries: number
  readonly breaker: number
}

/**
 * Flexible cord and leads below what the tables of fixed wiring begin with.
 *
 * @source [NEC-400.5] flexible cord, 16 and 18 AWG (from memory); 20 and 22 AWG, and areas below
 *   1.5 mm²: common practice, no source
 */
const THIN: Readonly<Record<string, ConductorAmps>> = {
  '22 AWG': { carries: 3, breaker: 3 },
  '20 AWG': { carries: 5, breaker: 5 },
  '18 AWG': { carries: 10, breaker: 7 },
  '16 AWG': { carries: 13, breaker: 10 },
  '0.5 mm²': { carries: 3, breaker: 3 },
  '0.75 mm²': { carries: 6, breaker: 6 },
  '1 mm²': { carries: 10, breaker: 10 },
}

/** Ratings beyond those of breakers for houses. @source [IEC-60898] and fuses of the same steps */
const RATINGS = [...BREAKER_RATINGS, 80, 100, 125]

/** Sizes that can be written, as they are written. */
export const CONDUCTOR_SIZES: readonly string[] = [...GAUGES, ...AREAS].flatMap(
  each => sizeFrom(each)?.text ?? [],
)

function gaugeAmps(text: string): ConductorAmps | undefined {
  const carries = necAmps('copper', text, '75 °C')
  const next = carries === undefined ? undefined : greatestBreaker(carries)
  if (carries === undefined || next === undefined) return undefined
  return { carries, breaker: Math.min(next, smallConductorBreaker('copper', text) ?? next) }
}

function areaAmps(mm2: number): ConductorAmps | undefined {
  const carries = ampsB522(mm2, 'C')
  const breaker = carries && RATINGS.findLast(each => each <= carries)
  return carries && breaker ? { carries, breaker } : undefined
}

/**
 * What a size carries at the best of conditions: what length, heat, bunching and terminals take off is
 * not in it; undefined for a size that is not in the tables.
 *
 * @source [NEC-310.16] copper at 75 °C, from 14 AWG; breaker by 240.4(D), else 240.4(B) and 240.6(A)
 * @source [IEC-60364-5-52] table B.52.2, method C, from 1.5 mm², with the next lower standard breaker
 */
export function conductorAmps({ text, mm2 }: ConductorSize): ConductorAmps | undefined {
  if (Object.hasOwn(THIN, text)) return THIN[text]
  return text.endsWith('AWG') ? gaugeAmps(text) : areaAmps(mm2)
}
