import { magnitude } from '../../base/complex.ts'
import type { Outcome } from '../../base/outcome.ts'
import { fail, ok } from '../../base/outcome.ts'
import type { Job } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { BANDS, LEG_VOLTS } from '../../domain/wiring/figures.ts'
import type { Observation } from '../../domain/wiring/observe.ts'
import { observe } from '../../domain/wiring/observe.ts'
import type { Plant, Solved } from '../../domain/wiring/plant.ts'
import { plantOf, solveState } from '../../domain/wiring/plant.ts'
import type { State } from '../../domain/wiring/states.ts'
import { feedOf, profileOf, statesOf } from '../../domain/wiring/states.ts'
import type { Shares } from '../../domain/wiring/wire.ts'
import { partElement } from '../../domain/wiring/wire.ts'
import type { VerifyFailure } from './artifact.ts'
import type { DevicesOpen, Evidence } from './rule.ts'

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
    return { device, observation: { state, solved, atPlate: solved, trip: undefined, blown: [] } }
  })

const devicesOpenOf = (plant: Plant, states: readonly State[]): readonly DevicesOpen[] =>
  plant.parts.flatMap(({ part, board, name }) =>
    part.kind === 'ground-fault'
      ? fullestWith(plant, states, name, new Set(part.sums.map(id => partElement(board, id))))
      : [],
  )

/** What opens when a device is switched off. */
const opensOf = (plant: Plant, board: string): ReadonlySet<string> =>
  new Set(
    plant.parts
      .filter(
        each => each.board === board && (each.part.kind === 'pole' || each.part.kind === 'switch'),
      )
      .map(each => each.element),
  )

const disconnectsOpenOf = (plant: Plant, states: readonly State[]): readonly DevicesOpen[] =>
  [...plant.job.devices.keys()].flatMap(device => {
    const open = opensOf(plant, device)
    return open.size > 0 ? fullestWith(plant, states, device, open) : []
  })

function touchedOf(
  job: Job,
  landing: Landing,
  shares: Shares,
  running: readonly Observation[],
): Evidence['touched'] {
  const touched = new Map<string, { amps: number; state: State }>()
  for (const end of job.ends) {
    if (landing.ends[end.id] !== 'loose') continue
    const plant = plantOf(job, landing, { shares, touch: [end.id] })
    if (!plant.ok) continue
    for (const { state, trip, blown } of running) {
      if (trip) continue
      const open = new Set(blown.map(each => `part:${each.part}`))
      const { solution } = solveState(plant.value, state, { open })
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
function afterTrip(plant: Plant, { state, trip, blown }: Observation): Solved | undefined {
  if (!trip) return undefined
  const board = trip.part.slice(0, trip.part.indexOf('.'))
  const open = new Set([...blown.map(each => `part:${each.part}`), ...opensOf(plant, board)])
  return solveState(plant, state, { open })
}

/**
 * Wires a landing and solves it in every state.
 *
 * @param shares - where uncertain draws lie between their least and greatest
 */
export function gather(
  job: Job,
  landing: Landing,
  shares: Shares,
): Outcome<Evidence, VerifyFailure> {
  const states = statesOf(job, landing)
  if (!states.ok) return fail(states.failure)
  const plant = plantOf(job, landing, { shares })
  if (!plant.ok)
    return fail({ reason: 'no-network', details: plant.failure.faults.map(each => each.reason) })
  const running = states.value.map(state => observe(plant.value, state))
  const allOff = running[0] ?? observe(plant.value, { kind: 'mode', commands: new Set() })
  return ok({
    job,
    landing,
    plant: plant.value,
    feed: feedOf(job),
    profile: profileOf(job.box, landing),
    band: BANDS[job.tub.region],
    legVolts: LEG_VOLTS[job.tub.supply.system],
    running,
    allOff,
    tripped: afterTrip(plant.value, allOff),
    limitOpen: states.value
      .map(state => observe(plant.value, state, { limitOpen: true }))
      .filter(each => !each.trip),
    devicesOpen: devicesOpenOf(plant.value, states.value),
    disconnectsOpen: disconnectsOpenOf(plant.value, states.value),
    touched: touchedOf(job, landing, shares, running),
  })
}
