import type { Possible } from '../../../base/possible.ts'
import { given } from '../../../base/possible.ts'
import type { YES_NO } from '../../../domain/described.ts'
import type { Yard } from '../../../domain/supply/yard.ts'
import type { SupplyEvidence } from './evidence.ts'
import { yesOrNo } from './place.ts'

export type Receptacle = NonNullable<Yard['receptacles']>[number]

const CORDED_MOST = 30 // [A] breaker of a tub on a cord; common practice, no source

/** Whether the last piece of the run is known to be no cord, or the breaker to be too large for one. */
const isHardWired = ({ circuits }: SupplyEvidence): boolean =>
  circuits.some(
    ({ segments, breaker }) =>
      breaker.values.every(each => each > CORDED_MOST) ||
      segments.some(({ isLast, method }) => isLast && !method.values.includes('cord')),
  )

/**
 * Whether the cord of the tub goes into an outlet.
 *
 * Where nothing is said of this one: no, if it goes into another, or if the tub has no cord.
 */
export function feedsTubOf(
  evidence: SupplyEvidence,
  { id, feedsTub }: Receptacle,
  at: string,
): Possible<(typeof YES_NO)[number]> {
  const others = evidence.survey.yard?.receptacles?.filter(each => each.id !== id) ?? []
  const isTaken = others.some(
    each => each.feedsTub?.kind === 'known' && each.feedsTub.value === 'yes',
  )
  if (!feedsTub && (isTaken || isHardWired(evidence))) return given('no')
  return yesOrNo(feedsTub, `${at}.feedsTub`)
}
