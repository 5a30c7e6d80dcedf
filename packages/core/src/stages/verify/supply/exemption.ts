import { atLeast } from '../../../base/compare.ts'
import type { YardBook, YardPlace } from '../../../domain/codebook/yard-book.ts'
import type { SupplyEvidence } from './evidence.ts'
import { lengthOf, turnsOf, yesOrNo } from './place.ts'
import type { PointFinding } from './rule.ts'
import { fact, reaches } from './rule.ts'

/** What decides whether ground and floor need no bonding. */
export const exemptionInputs = (evidence: SupplyEvidence) => ({
  selfContained: yesOrNo(evidence.survey.yard?.selfContained, 'yard.selfContained'),
  rim: lengthOf(
    evidence.survey.yard?.rimHeight,
    'rim',
    'yard.rimHeight',
    turnsOf(evidence, yard => [yard.ground?.rim.value]),
  ),
})

interface Standing extends YardPlace {
  readonly selfContained: 'yes' | 'no'
  readonly rim: number
}

/** Why ground and floor need no bonding; undefined where they do. */
export function exemptionOf(
  { rim, surfacesWithin, indoors }: NonNullable<YardBook['ground']>,
  standing: Standing,
): PointFinding | undefined {
  if (standing.selfContained === 'no') return undefined
  if (standing.setting === 'indoors')
    return fact(true, { message: 'ground-on-a-floor', clause: indoors })
  if (!atLeast(standing.rim, rim.value)) return undefined
  return reaches(standing.rim, rim.value, {
    message: 'ground-exempt',
    clause: rim.by,
    params: { near: surfacesWithin },
    // An older text asked for more than the figure.
    saysTight: true,
  })
}
