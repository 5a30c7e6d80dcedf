import { bySeverity } from '../../base/verdict.ts'
import type { Catalogue } from '../../domain/job.ts'
import type { Survey } from '../survey/artifact.ts'
import type { CircuitReport, CodeFinding, SegmentReport, SupplyReport } from './supply/artifact.ts'
import { carriesOf } from './supply/carries.ts'
import type { CircuitEvidence, SupplyEvidence } from './supply/evidence.ts'
import { gatherSupply } from './supply/gather.ts'
import type { SupplyRule } from './supply/rule.ts'
import { toInstall } from './supply/to-install.ts'
import { waysWith } from './supply/ways.ts'
import { FEED_GATES, SUPPLY_RULES } from './supply-rules.ts'

type Found = ReadonlyMap<SupplyRule['about'], readonly CodeFinding[]>

function judgeAll(evidence: SupplyEvidence): Found {
  const found = new Map<SupplyRule['about'], CodeFinding[]>()
  for (const rule of SUPPLY_RULES) {
    const own = found.get(rule.about) ?? []
    own.push(...rule.check(evidence))
    found.set(rule.about, own)
  }
  return found
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

function circuitReport(
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  found: Found,
): CircuitReport {
  const { breaker, index, demand } = circuit
  const ways = waysWith(FEED_GATES, evidence, circuit)
  const devices = new Set([
    circuit.circuit.device,
    ...circuit.segments.map(({ cable }) => cable.to),
  ])
  return {
    index,
    breaker:
      breaker.kind === 'unknown'
        ? undefined
        : { from: Math.min(...breaker.values), to: Math.max(...breaker.values) },
    demand,
    segments: segmentReports(evidence, circuit, found.get('segment') ?? []),
    findings: (found.get('circuit') ?? []).filter(each => devices.has(each.subjects[0] ?? '')),
    ways,
    install: toInstall(evidence, circuit, ways),
  }
}

/** Labels of everything that a finding can be about. */
function namesOf({ survey, devices }: SupplyEvidence): Readonly<Record<string, string>> {
  const { supply, loads, yard, service } = survey
  const labelled = [
    ...supply.cables,
    ...loads,
    ...(yard?.receptacles ?? []),
    ...(yard?.lights ?? []),
    ...(yard?.switches ?? []),
    ...(yard?.metal ?? []),
    ...(service?.loads ?? []),
  ]
  return {
    ...Object.fromEntries(
      supply.devices.map(({ id, label }) => [id, label ?? devices.get(id)?.label ?? id]),
    ),
    ...Object.fromEntries(labelled.map(({ id, label }) => [id, label])),
  }
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
 */
export function checkSupply(survey: Survey, catalogue: Catalogue): SupplyReport {
  const evidence = gatherSupply(survey, catalogue)
  const found = judgeAll(evidence)
  const findings = [...found.values()].flat().sort(bySeverity)
  const { book } = evidence
  return {
    survey: survey.id,
    region: survey.region,
    book: book && { id: book.id, name: book.name },
    circuits: evidence.circuits.map(circuit => circuitReport(evidence, circuit, found)),
    yard: found.get('yard') ?? [],
    service: found.get('service') ?? [],
    findings,
    names: namesOf(evidence),
    asks: asksOf(findings),
  }
}
