import { atMost } from '../../../../base/compare.ts'
import type { Possible } from '../../../../base/possible.ts'
import { given } from '../../../../base/possible.ts'
import type { PoweredLoad } from '../../../../domain/load/load.ts'
import {
  isOnSupply,
  loadSpan,
  NONE,
  ONE_LEG_MOST,
  plus,
} from '../../../../domain/wiring/supply-loads.ts'
import type { Survey } from '../../../survey/artifact.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from '../../supply/evidence.ts'
import { fixed } from '../../supply/evidence.ts'
import { laidInputs, laidOf } from '../../supply/laid.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered, reaches } from '../../supply/rule.ts'

const MOST_UNKNOWN = 20 // [A] of a load between a line and neutral; common practice, no source

/** All that hangs between a line and neutral, as if one leg fed it [A]. @source [NEC-220.61] from memory */
function unbalancedOf({ loads }: Survey): Possible<number> {
  const own = loads.filter(isOnSupply).filter(isOnOneLeg)
  const open = own.find(each => !loadSpan(each))
  const sum = own.reduce((all, each) => plus(all, loadSpan(each) ?? NONE), NONE)
  if (open) {
    const silent = own.filter(each => !loadSpan(each)).length
    const values = [sum.from, sum.to + silent * MOST_UNKNOWN]
    return { values, kind: 'unknown', at: `loads.${open.id}.circuits` }
  }
  if (sum.from === sum.to) return given(sum.to)
  const wide = own.find(each => loadSpan(each)?.from !== loadSpan(each)?.to)
  return { values: [sum.from, sum.to], kind: 'range', at: `loads.${wide?.id ?? ''}.circuits` }
}

function isOnOneLeg(load: PoweredLoad): boolean {
  const volts = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si
  return volts !== undefined && volts <= ONE_LEG_MOST
}

function judge(
  evidence: SupplyEvidence,
  { breaker }: CircuitEvidence,
  segment: Segment,
): readonly CodeFinding[] {
  const { book } = evidence
  const { cable, lines, neutral } = segment
  const [line] = lines.toSorted((a, b) => b.size.mm2 - a.size.mm2)
  // With one line the neutral carries what the line does, and is judged with it.
  if (!line || !neutral || lines.length < 2) return []
  const about = {
    rule: neutralSize.id,
    subjects: [cable.id],
    severity: 'danger' as const,
    params: { cable: cable.label, size: neutral.size.text },
  }
  const asked = { ...laidInputs(segment), breaker, unbalanced: unbalancedOf(evidence.survey) }
  return [
    conclude(about, asked, point => {
      const least = book?.neutral({ ...point, line: line.size })
      if (!book || !least) return notCovered('neutral')
      const byFault = reaches(neutral.size.mm2, least.value.mm2, {
        message: 'neutral-size',
        clause: least.by,
        params: { least: least.value.text, breaker: point.breaker },
      })
      if (byFault.verdict === 'breaks') return byFault
      const carries = book.ampacity(laidOf(segment, neutral.size, point))?.amps
      // Which leg each of them goes to the box decides.
      return carries === undefined || atMost(point.unbalanced, carries)
        ? byFault
        : {
            ...notCovered('neutral-load'),
            params: { is: point.unbalanced, may: carries, least: line.size.text, unit: 'A' },
          }
    }),
  ]
}

/**
 * A neutral between two lines carries their difference, and a fault: it is never smaller than the earth
 * has to be. Which of the loads to neutral share a leg is seen to where they are landed.
 */
export const neutralSize: SupplyRule = {
  id: 'SUPPLY-18',
  title: 'The neutral is large enough',
  about: 'segment',
  source: 'NEC 215.2(A)(2), 220.61, 250.122; BS 7671 524.2; HD 60364-5-52 524.2 (from memory)',
  check: evidence =>
    evidence.circuits.flatMap(circuit =>
      fixed(circuit).flatMap(segment => judge(evidence, circuit, segment)),
    ),
}
