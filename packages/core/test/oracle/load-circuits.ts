import type { RawKnown } from './quantities.ts'
import { readGreatest, readQuantity } from './quantities.ts'
import type { RawCircuit, RawLanding, RawLoad } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { innerNode, isMotor, placeOfEnd } from './read-job.ts'

/** Plate volts above these are mains. */
export const SAFE_VOLTS = 50 // IEC 61140, extra-low voltage

/** One circuit of a load as a landing straps it. */
export interface LoadCircuit {
  /** `load.circuit` */
  readonly name: string
  readonly load: RawLoad
  readonly circuit: string
  readonly a: string
  readonly b: string
  readonly plate: number
  readonly r: number
  readonly x: number
  readonly isMotor: boolean
  readonly isMains: boolean
  readonly isHeater: boolean
  readonly movesWater: boolean
}

/** Every circuit of every load, at the plate values of its strap position. */
export function loadCircuits(job: OracleJob, landing: RawLanding): LoadCircuit[] {
  return job.loads.flatMap(load => {
    const isTold = hasItsData(job, landing, load)
    return (load.circuits ?? []).flatMap(circuit => {
      const read = plateOf(job, landing, load, circuit)
      return read.amps > 0 ? [circuitOf(load, circuit, read, isTold)] : []
    })
  })
}

/** Whether each data lead is where a place of the box lands data; without a command such a motor stands. */
function hasItsData(job: OracleJob, landing: RawLanding, load: RawLoad): boolean {
  const sockets = job.box.places.flatMap(({ lands }) =>
    lands['data'] === undefined ? [] : [`box.${lands['data']}`],
  )
  return load.leads
    .filter(each => each.function === 'data')
    .every(each => sockets.includes(placeOfEnd(job, landing, `${load.id}.${each.id}`)))
}

/** The strap position of a load: as landed, else as found. */
export const strapOf = (landing: RawLanding, load: RawLoad): string | undefined =>
  load.straps ? (landing.straps[load.id] ?? load.straps.found) : undefined

/** Volts on the plate of a load as a landing straps it; undefined where it has none. */
export function plateVolts(landing: RawLanding, load: RawLoad): number | undefined {
  const written = load.straps?.positions[strapOf(landing, load) ?? '']?.volts ?? load.volts
  return written === undefined ? undefined : readQuantity(written)
}

interface Plate {
  readonly volts: number
  readonly amps: number
  readonly pf: number
}

function circuitOf(load: RawLoad, circuit: RawCircuit, plate: Plate, isTold: boolean): LoadCircuit {
  const size = plate.volts / plate.amps
  return {
    name: `${load.id}.${circuit.id}`,
    load,
    circuit: circuit.id,
    a: innerNode(load.id, circuit.across[0]),
    b: innerNode(load.id, circuit.across[1]),
    plate: plate.volts,
    r: size * plate.pf,
    x: size * Math.sqrt(1 - plate.pf * plate.pf),
    isMotor: isMotor(load),
    isMains: plate.volts > SAFE_VOLTS,
    isHeater: load.kind === 'heater',
    movesWater: isTold && (load.movesWaterThroughHeater ?? []).includes(circuit.id),
  }
}

function plateOf(job: OracleJob, landing: RawLanding, load: RawLoad, circuit: RawCircuit): Plate {
  const position = load.straps?.positions[strapOf(landing, load) ?? '']
  const volts = plateVolts(landing, load)
  if (volts === undefined) throw new Error(`${load.id} has no plate volts`)
  const pf = circuit.powerFactor ?? 1
  const amps = ampsOf({ amps: position?.amps[circuit.id] ?? circuit.amps, circuit, volts, pf })
  return { volts, pf, amps: amps ?? leastContactRating(job, load) }
}

function ampsOf(at: {
  readonly amps: RawKnown | undefined
  readonly circuit: RawCircuit
  readonly volts: number
  readonly pf: number
}): number | undefined {
  const power = readGreatest(at.circuit.power)
  return readGreatest(at.amps) ?? (power === undefined ? undefined : power / (at.volts * at.pf))
}

/** What stands for unknown amps: the least rating among the contacts of the planned place. */
function leastContactRating(job: OracleJob, load: RawLoad): number {
  const place = plannedPlace(job, load)
  const commands = new Set(Object.values(place?.commands ?? {}))
  const closed = new Set(
    job.box.commands.filter(each => commands.has(each.id)).flatMap(each => each.closes ?? []),
  )
  const contacts = job.box.board.parts?.filter(each => closed.has(each.id)) ?? []
  const ratings = contacts.flatMap(({ rated }) =>
    typeof rated === 'object' ? [readQuantity(rated.motor ?? rated.resistive)] : [],
  )
  // a place that is always on has no contact: its terminals stand in
  const terminals = Object.values(place?.lands ?? {}).flatMap(id => {
    const rated = job.terminals.get(`box.${id}`)?.rated
    return rated === undefined ? [] : [rated]
  })
  const all = ratings.length > 0 ? ratings : terminals
  if (all.length === 0) throw new Error(`${load.id}: amps unknown, and no planned place`)
  return Math.min(...all)
}

/** The place on whose terminals most of the load's ends land in the plan. */
function plannedPlace(job: OracleJob, load: RawLoad) {
  const landed = new Set(load.leads.map(lead => placeOfEnd(job, job.plan, `${load.id}.${lead.id}`)))
  const matches = (lands: Readonly<Record<string, string>>): number =>
    Object.values(lands).filter(id => landed.has(`box.${id}`)).length
  const best = job.box.places.toSorted((a, b) => matches(b.lands) - matches(a.lands))[0]
  return best && matches(best.lands) > 0 ? best : undefined
}
