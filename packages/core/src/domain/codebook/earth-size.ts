import type { ConductorSize } from '../conductor.ts'
import { sizeFrom } from '../conductor.ts'
import { earthConductor } from './nec/table-250-122.ts'

const MOST = 200 // [A] past it no tub is fed: the sizes that can be written end there

/** The least earth conductor behind a breaker, or undefined past the table. @param breaker - [A] @source [NEC-250.122] copper column */
export function leastEarth(breaker: number): ConductorSize | undefined {
  const text = breaker <= MOST ? earthConductor(breaker, 'copper') : undefined
  return text === undefined ? undefined : sizeFrom(text)
}

/** Whether a size is a gauge, which the table is for; areas are judged by another rule, not here. */
export const isGauge = ({ text }: ConductorSize): boolean => text.endsWith('AWG')
