import type { Network } from './build-network.ts'
import type { Findings } from './findings.ts'
import { note } from './findings.ts'
import { copperOf, earthedMains, mixedVolts, unearthedMetal } from './join-copper.ts'
import { judgeConductors, judgeMainEarth } from './judge-conductors.ts'
import { judgeSensors } from './judge-sensors.ts'
import type { RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'

/** Kinds 1b, 3 mixed, 4a, 4d, 9, and a supply without a ground-fault device: they need no state. */
export function judgeOnce(
  job: OracleJob,
  landing: RawLanding,
  network: Network,
  findings: Findings,
): void {
  const tell = (kind: string, subject: string, text: string): void =>
    note(findings, { kind, subject, level: 2 }, () => text)
  const copper = copperOf(job, landing)
  for (const each of unearthedMetal(job, landing, copper))
    tell('4a metal', each, 'not joined to earth by copper')
  for (const each of earthedMains(job, copper)) tell('4a metal', each, 'joined to earth by copper')
  for (const each of mixedVolts(job, copper)) tell('3 mixed', each, 'joined to mains by copper')
  if (network.groundFaults.every(each => each.board === 'box'))
    tell('5 supply', 'supply', 'no ground-fault device')
  judgeConductors(job, findings)
  judgeMainEarth(job, landing, findings)
  judgeSensors(job, network, findings)
}
