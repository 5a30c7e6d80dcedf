import { atMost } from '../../../base/compare.ts'
import { magnitude } from '../../../base/complex.ts'
import type { Finding } from '../../../base/verdict.ts'
import type { Region } from '../../../domain/described.ts'
import { BOX } from '../../../domain/job.ts'
import { circuitAt, circuitsOf } from '../../../domain/supply/circuits.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { groundFaultSum, isAwake } from '../../../domain/wiring/observe.ts'
import type { PlantPart, PlantTerminal } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { boxMains, commandsOf, standing, worst } from '../rule.ts'

const devicesOf = ({ plant }: Evidence): readonly PlantPart[] =>
  plant.parts.filter(each => each.part.kind === 'ground-fault')

const finding = (
  message: string,
  device: string,
  params: Finding['params'],
  on?: readonly string[],
): Finding => ({
  rule: groundFaultDevice.id,
  message,
  verdict: 'breaks',
  severity: 'danger',
  subjects: [device],
  params,
  ...(on ? { on } : {}),
})

/** The terminals of the box that must be dead then; a device in the box leaves its feed terminals live. */
function guarded(evidence: Evidence): readonly PlantTerminal[] {
  const mains = boxMains(evidence)
  if (!devicesOf(evidence).every(each => each.board === BOX)) return mains
  const fed = new Set(Object.values(evidence.feed?.lands ?? {}).map(id => `${BOX}.${id}`))
  const nodes = new Set(mains.filter(each => fed.has(each.name)).map(each => each.node))
  // A load's lead there is fed past the device all the same.
  return mains.filter(({ node, ends }) => !nodes.has(node) || ends.some(end => end.of === 'lead'))
}

function bypassed(evidence: Evidence): readonly Finding[] {
  const mains = guarded(evidence)
  for (const { device, observation } of evidence.devicesOpen)
    for (const { node, terminal } of mains) {
      const volts = observation.solved.potential(node)
      if (!atMost(volts, LIMITS.extraLowVolts))
        return [
          finding(
            'ground-fault-bypassed',
            device,
            { terminal: terminal.label ?? terminal.id, volts },
            commandsOf(observation.state),
          ),
        ]
    }
  return []
}

function blind(evidence: Evidence): readonly Finding[] {
  const { allOff, tripped } = evidence
  return devicesOf(evidence).flatMap(({ part, board, name }) =>
    part.kind === 'ground-fault' &&
    !isAwake(allOff.solved, board, part) &&
    !(tripped && isAwake(tripped, board, part))
      ? [finding('ground-fault-blind', name, { device: board })]
      : [],
  )
}

function nearTrip(evidence: Evidence): readonly Finding[] {
  const { high } = evidence.band
  const sum = ({ part, board }: PlantPart, at: (typeof evidence.running)[number]) =>
    part.kind === 'ground-fault'
      ? magnitude(groundFaultSum(at.solved, board, part)) * high
      : undefined
  return worst(standing(evidence), devicesOf(evidence), sum).flatMap(({ thing, value, at }) => {
    const { part } = thing
    if (part.kind !== 'ground-fault' || atMost(value, part.trip.from.si)) return []
    const params = { device: thing.board, amps: value, limit: part.trip.from.si }
    return [finding('ground-fault-near-trip', thing.name, params, commandsOf(at.state))]
  })
}

/** The latest trip that people bear: 6 mA in North America, 30 mA elsewhere [A]. */
const latestTrip = (region: Region): number => (region === 'US' || region === 'CA' ? 0.006 : 0.03)

/** Each circuit has a device of its own, or the box has one; one of them in time for people. */
function unprotected(evidence: Evidence): readonly Finding[] {
  const { supply, region } = evidence.job.tub
  const latest = latestTrip(region)
  return circuitsOf(supply).flatMap(({ device: first }) => {
    const trips = devicesOf(evidence).flatMap(({ part, board }) =>
      part.kind === 'ground-fault' && (board === BOX || circuitAt(supply, board)?.device === first)
        ? [part.trip.to.si]
        : [],
    )
    if (trips.length === 0) return [finding('no-ground-fault-device', first, { device: first })]
    const amps = Math.min(...trips)
    return atMost(amps, latest)
      ? []
      : [finding('ground-fault-too-coarse', first, { device: first, amps, limit: latest })]
  })
}

/** A ground-fault device watches everything that feeds the box, is awake, and is balanced. */
export const groundFaultDevice: Rule = {
  id: 'VERIFY-6',
  title: 'Ground-fault protection whole and balanced',
  source:
    'NEC 2023 680.44, a ground-fault device for the supply of a tub; UL 943 Class A, 4 to 6 mA; HD 60364-7-702, 30 mA (from memory)',
  check: evidence => [
    ...unprotected(evidence),
    ...bypassed(evidence),
    ...blind(evidence),
    ...nearTrip(evidence),
  ],
}
