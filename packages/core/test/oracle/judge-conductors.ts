import { conductorLimits, earthAreaFor, isGauge } from './conductor-limits.ts'
import type { Findings } from './findings.ts'
import { note } from './findings.ts'
import { loadCircuits } from './load-circuits.ts'
import { readArea } from './quantities.ts'
import type { RawLanding, RawSurvey } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { isEarth, terminalUnder } from './read-job.ts'

type Conductor = RawSurvey['supply']['cables'][number]['conductors'][number]

const isNeutral = ({ function: name }: Conductor): boolean =>
  name === 'neutral' || name === 'second-neutral'
const isLeg = (each: Conductor): boolean => !isEarth(each.function) && !isNeutral(each)

/** Kind 1b: a cable's conductors against the breaker; ratings as written, so none is near. */
export function judgeConductors(job: OracleJob, findings: Findings): void {
  for (const cable of job.survey.supply.cables) {
    const circuit = job.circuits[job.circuitByDevice.get(cable.from) ?? 0]
    const breaker = circuit?.knownBreaker
    if (!circuit || breaker === undefined) continue
    const legs = cable.conductors.filter(isLeg).map(each => readArea(each.size))
    const earthArea = Math.min(earthAreaFor(breaker), ...legs)
    for (const each of cable.conductors) {
      const isSmall = isLikeEarth(each, circuit.lines.size)
        ? isGauge(each.size) && readArea(each.size) < earthArea
        : conductorLimits(each.size).breaker < breaker
      const subject = `${cable.id}.${each.id}`
      const level = isSmall ? 2 : 0
      note(
        findings,
        { kind: '1b conductor', subject, level },
        () => `${each.size} behind ${breaker} A`,
      )
    }
  }
}

/** Whether it is asked for no more than an earth: so is a gauged neutral that several lines share. */
const isLikeEarth = (each: Conductor, lines: number): boolean =>
  isEarth(each.function) || (isNeutral(each) && lines > 1 && isGauge(each.size))

/** Kind 4d: each terminal under a cable's earth conductor against the breaker, as written. */
export function judgeMainEarth(job: OracleJob, landing: RawLanding, findings: Findings): void {
  for (const { ends, isEarth: isIt, inner, breaker } of job.wires) {
    if (!isIt || inner !== undefined || breaker === undefined) continue
    for (const end of ends) {
      const terminal = terminalUnder(job, landing, end)
      const level = terminal && terminal.rated < breaker ? 2 : 0
      note(
        findings,
        { kind: '4d main earth', subject: end, level },
        () => `on ${terminal?.rated} A behind ${breaker} A`,
      )
    }
  }
}

/** Kind 4e: the earth lead of a load on a terminal that carries less than the load draws, as written. */
export function judgeLoadEarths(job: OracleJob, landing: RawLanding, findings: Findings): void {
  const circuits = loadCircuits(job, landing)
  for (const load of job.loads) {
    const amps = circuits
      .filter(each => each.load === load)
      .map(each => each.plate / Math.hypot(each.r, each.x))
    for (const lead of load.leads.filter(each => isEarth(each.function))) {
      const end = `${load.id}.${lead.id}`
      const terminal = terminalUnder(job, landing, end)
      const level = terminal && terminal.rated < Math.max(0, ...amps) * (1 - 1e-9) ? 2 : 0
      note(
        findings,
        { kind: '4e load earth', subject: end, level },
        () => `on ${terminal?.rated} A`,
      )
    }
  }
}

/** Kind 4f: between two boards that a line or neutral joins, an earth conductor joins them too. */
export function judgeCircuitEarths(job: OracleJob, landing: RawLanding, findings: Findings): void {
  const between = new Map<string, { line: boolean; earth: boolean }>()
  for (const wire of job.wires) {
    if (wire.inner !== undefined) continue
    const [from, to] = wire.ends.map(end => job.ends.get(end)?.board)
    const pair = `${from} to ${to}`
    const seen = between.get(pair) ?? { line: false, earth: false }
    const isLanded = wire.ends.every(end => terminalUnder(job, landing, end) !== undefined)
    between.set(pair, {
      line: seen.line || (isLanded && !wire.isEarth),
      earth: seen.earth || (isLanded && wire.isEarth),
    })
  }
  for (const [subject, { line, earth }] of between)
    note(
      findings,
      { kind: '4f circuit without earth', subject, level: line && !earth ? 2 : 0 },
      () => 'no earth conductor landed at both ends',
    )
}
