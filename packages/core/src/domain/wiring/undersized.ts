import { atMost } from '../../base/compare.ts'
import { boundsOf } from '../../base/known.ts'
import { isEarth } from '../board/board.ts'
import { conductorAmps } from '../codebook/conductor-amps.ts'
import { isGauge, leastEarth } from '../codebook/earth-size.ts'
import type { ConductorSize } from '../conductor.ts'
import type { Tub } from '../job.ts'
import { circuitAt, ownFunction } from '../supply/circuits.ts'
import type { Cable } from '../supply/supply.ts'
import { EMFS } from './figures.ts'

/** A conductor of the supply that is too small for its breaker, or cannot be shown large enough. */
export interface Undersized {
  readonly cable: Cable
  readonly conductor: Cable['conductors'][number]
  /** [A] */
  readonly breaker: number
  readonly why:
    | { readonly kind: 'behind-breaker'; readonly most: number }
    | { readonly kind: 'earth'; readonly least: string }
    | { readonly kind: 'earth-not-shown' }
}

/** Of the legs alone: an earth need not be larger than they are. */
const smallestLeg = ({ conductors }: Cable): ConductorSize | undefined =>
  conductors
    .filter(each => /leg\d$/u.test(each.function))
    .map(each => each.size)
    .reduce<ConductorSize | undefined>((a, b) => (a && a.mm2 <= b.mm2 ? a : b), undefined)

function whyEarth(
  cable: Cable,
  size: ConductorSize,
  breaker: number,
): Undersized['why'] | undefined {
  const leg = smallestLeg(cable)
  if (leg && size.mm2 >= leg.mm2) return undefined
  if (!isGauge(size)) return { kind: 'earth-not-shown' }
  const least = leastEarth(breaker)
  return least && size.mm2 < least.mm2 ? { kind: 'earth', least: least.text } : undefined
}

function whyLine(size: ConductorSize, breaker: number): Undersized['why'] | undefined {
  const most = conductorAmps(size)?.breaker
  return most === undefined || atMost(breaker, most) ? undefined : { kind: 'behind-breaker', most }
}

/**
 * A neutral between several lines carries their difference: by gauge it may be as small as an earth.
 *
 * What it does carry is judged where it is solved.
 */
function whyOf(
  cable: Cable,
  { function: does, size }: Undersized['conductor'],
  breaker: number,
  hasSeveralLines: boolean,
): Undersized['why'] | undefined {
  if (isEarth(does)) return whyEarth(cable, size, breaker)
  const isReduced = ownFunction(does) === 'neutral' && hasSeveralLines && isGauge(size)
  return isReduced ? whyEarth(cable, size, breaker) : whyLine(size, breaker)
}

/** Conductors too small for the breaker of their circuit, at the upper end of what it may be. */
export function undersized({ supply }: Tub): readonly Undersized[] {
  return supply.cables.flatMap(cable => {
    const circuit = circuitAt(supply, cable.from)
    const breaker = circuit && boundsOf(circuit.breaker)?.to
    if (breaker === undefined) return []
    const lines = Object.values(circuit?.lines ?? {}).filter(each => EMFS[supply.system][each])
    const hasSeveralLines = lines.length > 1
    return cable.conductors.flatMap(conductor => {
      const why = whyOf(cable, conductor, breaker, hasSeveralLines)
      return why ? [{ cable, conductor, breaker, why }] : []
    })
  })
}
