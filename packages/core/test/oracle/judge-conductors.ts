import { conductorLimits, earthAreaFor, isGauge } from './conductor-limits.ts'
import type { Findings } from './findings.ts'
import { note } from './findings.ts'
import { readArea } from './quantities.ts'
import type { RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { terminalUnder } from './read-job.ts'

const isLeg = (lead: { readonly function: string }): boolean =>
  lead.function === 'leg1' || lead.function === 'leg2'

/** Kind 1b: a cable's conductors against the breaker; ratings as written, so none is near. */
export function judgeConductors(job: OracleJob, findings: Findings): void {
  const breaker = job.knownBreaker
  if (breaker === undefined) return
  for (const cable of job.survey.supply.cables) {
    const legs = cable.conductors.filter(isLeg).map(each => readArea(each.size))
    const earthArea = Math.min(earthAreaFor(breaker), ...legs)
    for (const each of cable.conductors) {
      const isSmall =
        each.function === 'earth'
          ? isGauge(each.size) && readArea(each.size) < earthArea
          : (isLeg(each) || each.function === 'neutral') &&
            conductorLimits(each.size).breaker < breaker
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

/** Kind 4d: each terminal under a cable's earth conductor against the breaker, as written. */
export function judgeMainEarth(job: OracleJob, landing: RawLanding, findings: Findings): void {
  const breaker = job.knownBreaker
  if (breaker === undefined) return
  for (const wire of job.wires) {
    if (!wire.isEarth || wire.inner !== undefined) continue
    for (const end of wire.ends) {
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
