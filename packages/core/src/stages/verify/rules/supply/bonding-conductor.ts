import { atMost } from '../../../../base/compare.ts'
import type { Possible } from '../../../../base/possible.ts'
import { choiceOf, given } from '../../../../base/possible.ts'
import { settlePoints } from '../../../../base/settle.ts'
import type { Cited } from '../../../../domain/codebook/book.ts'
import type { ConductorSize } from '../../../../domain/conductor.ts'
import { sizeFrom } from '../../../../domain/conductor.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { Either } from '../../supply/either.ts'
import { askingFor, eitherOf } from '../../supply/either.ts'
import type { SupplyEvidence } from '../../supply/evidence.ts'
import { exemptionInputs, exemptionOf } from '../../supply/exemption.ts'
import { concludeAt, lengthOf, listed, turnsOf, yardAt } from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { fact, notCovered, reaches } from '../../supply/rule.ts'

const AT = 'yard.bond'
const METAL = 'yard.metal'
const NEAR = 'near'
const STRANDS = ['solid', 'stranded'] as const

const aboutIt = () => ({
  rule: bondingConductor.id,
  subjects: [AT],
  severity: 'warning' as const,
})

/** Where nobody knows the size, it may be too thin or not: more sizes decide nothing else. */
const SIZES = ['10 AWG', '8 AWG', '6 AWG'] as const

const sizeOf = ({ survey: { yard } }: SupplyEvidence): Possible<ConductorSize> =>
  yard?.bond?.size
    ? given(yard.bond.size)
    : {
        values: SIZES.flatMap(text => sizeFrom(text) ?? []),
        kind: 'unknown',
        at: `${AT}.size`,
      }

const conductorInputs = (evidence: SupplyEvidence) => ({
  size: sizeOf(evidence),
  strands: choiceOf(evidence.survey.yard?.bond?.strands, STRANDS, `${AT}.strands`),
})

function judgeConductor(
  { size, strands }: { readonly size: ConductorSize; readonly strands: (typeof STRANDS)[number] },
  bond: Cited<ConductorSize>,
): PointFinding {
  const params = { size: size.text, least: bond.value.text }
  return strands === 'stranded'
    ? fact(false, { message: 'bond-stranded', clause: bond.by, params })
    : reaches(size.mm2, bond.value.mm2, { message: 'bond-size', clause: bond.by, params })
}

/** Whether any listed metal is near enough to be joined. */
function nearMetal(evidence: SupplyEvidence): Either {
  if (!evidence.survey.yard?.metal) {
    const values = [new Set<string>(), new Set([NEAR])]
    return { possible: { values, kind: 'unknown', at: METAL }, asks: [METAL] }
  }
  const turns = turnsOf(evidence, yard => [yard.metal?.value])
  const farthest = Math.max(0, ...turns())
  const members = listed(evidence, 'metal').map(({ thing, at }) => {
    const distance = lengthOf(thing.distance, 'distance', `${at}.distance`, turns)
    const serves = distance.values.map(each => new Set(atMost(each, farthest) ? [NEAR] : []))
    const isOpen = new Set(serves.map(each => each.size)).size > 1
    return { serves, inputs: [{ ...distance, decides: () => isOpen }] }
  })
  return eitherOf(members, [NEAR], METAL)
}

/** A conductor that is there is judged as it is. */
const judgeFound = (evidence: SupplyEvidence): CodeFinding =>
  concludeAt(aboutIt(), { ...evidence.place, ...conductorInputs(evidence) }, point => {
    const bond = yardAt(evidence, point)?.bond
    return bond ? judgeConductor(point, bond) : notCovered('bond')
  })

/** Where none was named, one is needed unless ground and floor are exempt and no metal is near. */
function judgeNeeded(evidence: SupplyEvidence): CodeFinding {
  const { possible, asks } = nearMetal(evidence)
  const inputs = {
    ...evidence.place,
    ...exemptionInputs(evidence),
    ...conductorInputs(evidence),
    metal: possible,
  }
  const found = concludeAt(aboutIt(), inputs, ({ metal, ...point }) => {
    const yard = yardAt(evidence, point)
    if (!yard?.bond || !yard.ground) return notCovered('bond')
    const exemption = exemptionOf(yard.ground, point)
    if (exemption && !metal.has(NEAR))
      return fact(true, { message: 'bond-not-needed', clause: exemption.clause })
    return judgeConductor(point, yard.bond)
  })
  return askingFor(found, METAL, asks)
}

/** What joins the metal is a solid copper conductor, large enough to last. */
export const bondingConductor: SupplyRule = {
  id: 'SUPPLY-48',
  title: 'The conductor that joins the metal',
  about: 'yard',
  source: 'NEC 680.26(B), 680.43(E)(3)',
  check: evidence => {
    const { yard } = evidence.survey
    if (!yard) return []
    const isCovered = settlePoints(evidence.place, place => yardAt(evidence, place)?.bond)
    return [
      yard.bond || isCovered.every(each => !each) ? judgeFound(evidence) : judgeNeeded(evidence),
    ]
  },
}
