import type { ConductorSize } from '../conductor.ts'

/**
 * The smallest copper earth conductor by the breaker it stands behind: up to so many amps, so many
 * square millimetres.
 *
 * @source [NEC-250.122] copper column
 */
const EARTH_BY_BREAKER: readonly {
  readonly upTo: number
  readonly mm2: number
  readonly text: string
}[] = [
  { upTo: 15, mm2: 2.08, text: '14 AWG' },
  { upTo: 20, mm2: 3.31, text: '12 AWG' },
  { upTo: 60, mm2: 5.26, text: '10 AWG' },
  { upTo: 100, mm2: 8.37, text: '8 AWG' },
  { upTo: 200, mm2: 13.3, text: '6 AWG' },
]

/** The least earth conductor behind a breaker, or undefined past the table. @param breaker - [A] */
export const leastEarth = (breaker: number): ConductorSize | undefined =>
  EARTH_BY_BREAKER.find(each => breaker <= each.upTo)

/** Whether a size is a gauge, which the table is for; areas are judged by another rule, not here. */
export const isGauge = ({ text }: ConductorSize): boolean => text.endsWith('AWG')
