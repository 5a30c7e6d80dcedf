import type { Network } from './build-network.ts'
import type { Findings } from './findings.ts'
import { note } from './findings.ts'
import { copperOf, earthedMains, mixedVolts, unearthedMetal } from './join-copper.ts'
import {
  judgeCircuitEarths,
  judgeConductors,
  judgeLoadEarths,
  judgeMainEarth,
} from './judge-conductors.ts'
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
  judgeDevices(job, network, findings)
  judgeConductors(job, findings)
  judgeMainEarth(job, landing, findings)
  judgeLoadEarths(job, landing, findings)
  judgeCircuitEarths(job, landing, findings)
  judgeSensors(job, network, findings)
}

/** The latest trip that still protects people [A]: UL 943 Class A, and IEC 61008 at 30 mA. */
const forPeople = (region: string): number => (region === 'US' || region === 'CA' ? 6e-3 : 30e-3)

/** Kind 5, the supply: each circuit has a ground-fault device, one of them soon enough for people. */
function judgeDevices(job: OracleJob, network: Network, findings: Findings): void {
  const most = forPeople(job.survey.region)
  job.circuits.forEach((_, circuit) => {
    const trips = network.groundFaults
      .filter(each => each.board === 'box' || job.circuitByDevice.get(each.board) === circuit)
      .map(each => each.trip.to)
    if (trips.some(to => to <= most)) return
    const subject = circuit === 0 ? 'supply' : `circuit ${circuit}`
    note(findings, { kind: '5 supply', subject, level: 2 }, () =>
      trips.length === 0
        ? 'no ground-fault device'
        : `trips at ${Math.min(...trips)} A, people need ${most} A`,
    )
  })
}
