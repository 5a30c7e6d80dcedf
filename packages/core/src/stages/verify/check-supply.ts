import type { Possible } from '../../base/possible.ts'
import { bySeverity } from '../../base/verdict.ts'
import type { Catalogue } from '../../domain/job.ts'
import { allowedAmps } from '../../domain/wiring/states.ts'
import type { Survey } from '../survey/artifact.ts'
import type {
  CircuitReport,
  CodeFinding,
  FittedBox,
  SegmentReport,
  SupplyReport,
} from './supply/artifact.ts'
import { carriesOf } from './supply/carries.ts'
import type { CircuitEvidence, SupplyEvidence } from './supply/evidence.ts'
import { gatherSupply } from './supply/gather.ts'
import type { SupplyRule } from './supply/rule.ts'
import { toInstall } from './supply/to-install.ts'
import { waysWith } from './supply/ways.ts'
import { FEED_GATES, SUPPLY_RULES } from './supply-rules.ts'

interface Found {
  readonly byRule: ReadonlyMap<SupplyRule, readonly CodeFinding[]>
  readonly about: Readonly<Record<SupplyRule['about'], readonly CodeFinding[]>>
}

function judgeAll(evidence: SupplyEvidence): Found {
  const byRule = new Map<SupplyRule, readonly CodeFinding[]>()
  const about: Record<SupplyRule['about'], CodeFinding[]> = {
    segment: [],
    circuit: [],
    yard: [],
    service: [],
  }
  for (const rule of SUPPLY_RULES) {
    const own = rule.check(evidence)
    byRule.set(rule, own)
    about[rule.about].push(...own)
  }
  return { byRule, about }
}

function segmentReports(
  evidence: SupplyEvidence,
  { segments }: CircuitEvidence,
  found: readonly CodeFinding[],
): readonly SegmentReport[] {
  return segments.map(segment => ({
    cable: segment.cable.id,
    label: segment.cable.label,
    from: segment.cable.from,
    to: segment.cable.to,
    metres: segment.cable.length.si,
    carries: carriesOf(evidence, segment),
    findings: found.filter(each => each.subjects[0] === segment.cable.id),
  }))
}

/** From the least to the greatest that it may be; undefined where nobody knows. */
const spanOf = ({ kind, values }: Possible<number>): CircuitReport['breaker'] =>
  kind === 'unknown' ? undefined : { from: Math.min(...values), to: Math.max(...values) }

function circuitReport(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  found: Found,
): CircuitReport {
  const { breaker, index, demand } = circuit
  // Of one circuit of several nobody can tell which finding was made by which.
  const isOnly = evidence.circuits.length === 1
  const asFound = isOnly ? FEED_GATES.flatMap(rule => found.byRule.get(rule) ?? []) : undefined
  const segments = segmentReports(evidence, circuit, found.about.segment)
  const devices = new Set([
    circuit.circuit.device,
    ...circuit.segments.map(({ cable }) => cable.to),
  ])
  const findings = found.about.circuit.filter(each => devices.has(each.subjects[0] ?? ''))
  const gates = new Set(FEED_GATES.map(each => each.id))
  const besides = [...findings, ...segments.flatMap(each => each.findings)].flatMap(each =>
    each.verdict === 'breaks' && !gates.has(each.rule) ? [each.rule] : [],
  )
  const ways = waysWith(FEED_GATES, evidence, circuit, asFound, [...new Set(besides)])
  return {
    index,
    breaker: spanOf(breaker),
    demand,
    draws: spanOf(circuit.draws),
    segments,
    findings,
    ways,
    install: toInstall(evidence, circuit, ways),
  }
}

/** Labels of everything that a finding can be about. */
function namesOf({ survey, devices }: SupplyEvidence): Readonly<Record<string, string>> {
  const { supply, loads, yard, service } = survey
  const names: Record<string, string> = {}
  for (const { id, label } of supply.devices) names[id] = label ?? devices.get(id)?.label ?? id
  for (const labelled of [
    supply.cables,
    loads,
    yard?.receptacles,
    yard?.lights,
    yard?.switches,
    yard?.metal,
    service?.loads,
  ])
    for (const { id, label } of labelled ?? []) names[id] = label
  return names
}

/** What is asked for by most findings first; each once. */
function asksOf(findings: readonly CodeFinding[]): readonly string[] {
  const counts = new Map<string, number>()
  for (const { asks } of findings)
    for (const each of asks) counts.set(each, (counts.get(each) ?? 0) + 1)
  return [...counts].sort(([, a], [, b]) => b - a).map(([at]) => at)
}

/**
 * Judges the supply of a tub by the code book of its region, piece by piece: no box is needed.
 *
 * Unknown stays unknown: a rule that something open decides is not shown, and asks for it.
 *
 * @param survey - checked against the catalogue
 * @param fitted - the box that is to be fed, where one is chosen: its heater counts, and what it is set to
 */
export function checkSupply(
  survey: Survey,
  catalogue: Catalogue,
  fitted?: FittedBox,
): SupplyReport {
  const evidence = gatherSupply(survey, catalogue, fitted)
  const found = judgeAll(evidence)
  const findings = Object.values(found.about).flat().sort(bySeverity)
  const { book } = evidence
  return {
    survey: survey.id,
    region: survey.region,
    book: book && { id: book.id, name: book.name },
    circuits: evidence.circuits.map(circuit => circuitReport(evidence, circuit, found)),
    yard: found.about.yard,
    service: found.about.service,
    findings,
    fitted: fitted && {
      box: fitted.box.label,
      limit: fitted.currentLimit && allowedAmps(fitted.box, fitted.currentLimit),
    },
    names: namesOf(evidence),
    asks: asksOf(findings),
  }
}
