import { magnitude } from '../../base/complex.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import { LINES } from '../../domain/board/board.ts'
import type { Job } from '../../domain/job.ts'
import { BOX } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { circuitAt, circuitsOf } from '../../domain/supply/circuits.ts'
import { BANDS, EMFS, LEG_VOLTS } from '../../domain/wiring/figures.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Observation } from '../../domain/wiring/observe.ts'
import { boardOfPart, observe, openIn, opensWith } from '../../domain/wiring/observe.ts'
import type { Plant, Solved } from '../../domain/wiring/plant.ts'
import { plantOf, solveState } from '../../domain/wiring/plant.ts'
import type { State } from '../../domain/wiring/states.ts'
import { feedOf, profileOf, statesOf } from '../../domain/wiring/states.ts'
import type { Shares } from '../../domain/wiring/wire.ts'
import { boardNode, partElement } from '../../domain/wiring/wire.ts'
import type { NodeId } from '../../engines/circuit/network.ts'
import type { VerifyFailure } from './artifact.ts'
import { lineDrawOf } from './line-draw.ts'
import type { DevicesOpen, Evidence, SupplyLine } from './rule.ts'

const isSubset = (a: State, b: State): boolean =>
  a !== b && a.commands.size < b.commands.size && [...a.commands].every(id => b.commands.has(id))

/** Modes that no other mode contains: between them they close every contact that can be closed. */
const fullest = (states: readonly State[]): readonly State[] => {
  const modes = states.filter(each => each.kind === 'mode')
  return modes.filter(each => !modes.some(other => isSubset(each, other)))
}

/** The fullest modes with some elements open, whatever would trip. */
const fullestWith = (
  plant: Plant,
  states: readonly State[],
  device: string,
  open: ReadonlySet<string>,
): readonly DevicesOpen[] =>
  fullest(states).map(state => {
    const solved = solveState(plant, state, { open })
    const nothing = { trip: undefined, blown: [], opened: [], plateExtra: 0 }
    return { device, observation: { state, solved, atPlate: solved, ...nothing } }
  })

/** What every ground-fault device of the job opens, all of them at once. */
function devicesOpenOf(plant: Plant, states: readonly State[]): readonly DevicesOpen[] {
  const devices = plant.parts.filter(each => each.part.kind === 'ground-fault')
  const open = new Set(
    devices.flatMap(({ part, board }) =>
      part.kind === 'ground-fault' ? part.sums.map(id => partElement(board, id)) : [],
    ),
  )
  const first = devices[0]
  return first ? fullestWith(plant, states, first.name, open) : []
}

/** A device switched off, and with it all of the other circuits: what stays is fed round it. */
function disconnectsOpenOf(plant: Plant, states: readonly State[]): readonly DevicesOpen[] {
  const { supply } = plant.job.tub
  const devices = [...plant.job.devices.keys()]
  return devices.flatMap(device => {
    const own = opensWith(plant, device)
    if (own.size === 0) return []
    const circuit = circuitAt(supply, device)?.device
    const others = devices.filter(each => circuitAt(supply, each)?.device !== circuit)
    const open = new Set([...own, ...others.flatMap(each => [...opensWith(plant, each)])])
    return fullestWith(plant, states, device, open)
  })
}

function touchedOf(
  job: Job,
  landing: Landing,
  shares: Shares,
  turned: boolean,
  running: readonly Observation[],
): Evidence['touched'] {
  const touched = new Map<string, { amps: number; state: State }>()
  for (const end of job.ends) {
    if (landing.ends[end.id] !== 'loose') continue
    const plant = plantOf(job, landing, { shares, turned, touch: [end.id] })
    if (!plant.ok) continue
    for (const at of running) {
      const { state } = at
      if (at.trip) continue
      const { solution } = solveState(plant.value, state, { open: openIn(plant.value, at) })
      const amps = plant.value.elements.has(`touch:${end.id}`)
        ? magnitude(solution.current(`touch:${end.id}`))
        : 0
      const known = touched.get(end.id)
      if (!known || amps > known.amps) touched.set(end.id, { amps, state })
    }
    if (!touched.has(end.id)) {
      const first = running[0]
      if (first) touched.set(end.id, { amps: 0, state: first.state })
    }
  }
  return touched
}

/** The state once more with every pole and switch of the board that tripped open. */
function afterTrip(plant: Plant, at: Observation): Solved | undefined {
  if (!at.trip) return undefined
  const open = new Set([...openIn(plant, at), ...opensWith(plant, boardOfPart(at.trip.part))])
  return solveState(plant, at.state, { open })
}

const ALL_OFF: State = { kind: 'mode', commands: new Set() }

/** Whether the box's own electronics lack the volts to close any contact. */
function isDead(plant: Plant, allOff: Observation): boolean {
  if (allOff.trip) return false
  const volts = plant.parts.flatMap(({ part, board }) =>
    board === BOX && part.kind === 'electronics'
      ? [allOff.solved.across(...nodesOn(board, part.across)) / part.volts.si]
      : [],
  )
  return volts.length > 0 && volts.every(each => each < LIMITS.controlAwake)
}

const nodesOn = (board: string, [a, b]: readonly [string, string]): [NodeId, NodeId] => [
  boardNode(board, a),
  boardNode(board, b),
]

const linesOf = (job: Job, turned: boolean): readonly SupplyLine[] =>
  circuitsOf(job.tub.supply).flatMap(({ device, lines }, circuit) =>
    LINES.flatMap(line => {
      const fedAt = job.devices.get(device)?.fedAt
      const node = fedAt?.[turned && line === 'leg1' ? 'neutral' : line]
      const source = lines[line]
      return node === undefined || !source || !EMFS[job.tub.supply.system][source]
        ? []
        : [{ circuit, line, node: boardNode(device, node) }]
    }),
  )

/**
 * Wires a landing and solves it in every state.
 *
 * @param shares - where uncertain draws lie between their least and greatest
 * @param turned - the plug of the supply turned round
 */
export function gather(
  job: Job,
  landing: Landing,
  shares: Shares,
  turned = false,
): Outcome<Evidence, VerifyFailure> {
  const states = statesOf(job, landing)
  if (!states.ok) return fail(states.failure)
  const plant = plantOf(job, landing, { shares, turned })
  if (!plant.ok)
    return fail({ reason: 'no-network', details: plant.failure.faults.map(each => each.reason) })
  const allOff = observe(plant.value, states.value[0] ?? ALL_OFF)
  const reachable = isDead(plant.value, allOff) ? [allOff.state] : states.value
  const lines = linesOf(job, turned)
  const running = [allOff, ...reachable.slice(1).map(state => observe(plant.value, state))]
  return ok({
    job,
    landing,
    plant: plant.value,
    feed: feedOf(job),
    profile: profileOf(job.box, landing),
    lines,
    lineDraw: lineDrawOf(plant.value, lines),
    turned,
    band: BANDS[job.tub.region],
    legVolts: LEG_VOLTS[job.tub.supply.system],
    running,
    allOff,
    tripped: afterTrip(plant.value, allOff),
    limitOpen: reachable
      .map(state => observe(plant.value, state, { limitOpen: true }))
      .filter(each => !each.trip),
    devicesOpen: devicesOpenOf(plant.value, reachable),
    disconnectsOpen: disconnectsOpenOf(plant.value, reachable),
    touched: touchedOf(job, landing, shares, turned, running),
  })
}
