import type { Entered } from '../../base/entered.ts'
import type { Known } from '../../base/known.ts'
import { boundsOf } from '../../base/known.ts'
import type { Element, Pair } from '../../engines/circuit/network.ts'
import type { Part } from '../board/board.ts'
import { copperAt } from '../conductor.ts'
import type { Job } from '../job.ts'
import { BOX, boardLabel, boardOf, isCord } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { Circuit, Load, PoweredLoad } from '../load/load.ts'
import { isMotor, isPowered } from '../load/load.ts'
import { COLD } from './cold-figures.ts'
import { drawOf, strapOf } from './draw.ts'
import { FIGURES } from './figures.ts'
import { probeOhms } from './sensing.ts'
import { circuitElement, isClosedAtRest, partElement } from './wire.ts'

/** OhmBand by tolerance: least ≤ expected ≤ greatest [Ω]; infinite where it may be open. */
export interface OhmBand {
  readonly least: number
  readonly expected: number
  readonly greatest: number
}

/** A part by what it is to a meter, and by what would settle it where nobody knows it. */
export interface ColdPart {
  readonly kind:
    | 'element'
    | 'winding'
    | 'probe'
    | 'load-electronics'
    | 'primary'
    | 'secondary'
    | 'electronics'
    | 'ground-fault'
    | 'semiconductor'
    | 'input'
  /** `load.circuit` or `board.part`. */
  readonly subject: string
  /** What a person calls its load or its board, and the part of it. */
  readonly of: string
  readonly name: string
  /** The load that is unplugged to be rid of it. */
  readonly load?: string
  /** A capacitor hangs on it: the meter first shows its charge. */
  readonly charges?: boolean
}

/**
 * One resistance of the cold network.
 *
 * - `joint`: copper, closed contacts, fuses.
 * - `gap`: an open contact.
 * - `insulation`: between conductors and metal.
 * - `part`: whatever else a direct current passes through; without ohms it is unknown.
 */
export interface ColdElement {
  readonly id: string
  readonly between: Pair
  readonly role: 'joint' | 'gap' | 'insulation' | 'part'
  readonly ohms?: OhmBand | undefined
  readonly part?: ColdPart
  /** The load that takes it along when it is unplugged. */
  readonly load?: string | undefined
}

/** How the network stands while it is measured. */
export interface ColdCircumstance {
  /** The poles and switches of the disconnect are open; a cord's plug is out. */
  readonly isDisconnected: boolean
  /** Of the probes [°C]. */
  readonly celsius: number
}

const within = (ohms: number, share: number): OhmBand => ({
  least: ohms * (1 - share),
  expected: ohms,
  greatest: ohms * (1 + share),
})

const upTo = (expected: number, greatest: number): OhmBand => ({
  least: COLD.nothing,
  expected,
  greatest: Math.max(expected, greatest),
})

const gap = (least: number): OhmBand => ({
  least,
  expected: FIGURES.openOhms,
  greatest: Number.POSITIVE_INFINITY,
})

const insulation = (ohms: number): OhmBand => ({
  least: ohms * COLD.insulationLeast,
  expected: ohms,
  greatest: Number.POSITIVE_INFINITY,
})

/** What was surveyed, with the tolerance of reading it again; nothing where it is not known. */
function surveyed(value: Known<Entered<'Ω'>> | undefined): OhmBand | undefined {
  const bounds = value && boundsOf(value)
  if (!bounds) return undefined
  return {
    least: bounds.from * (1 - COLD.windingTolerance),
    expected: (bounds.from + bounds.to) / 2,
    greatest: bounds.to * (1 + COLD.windingTolerance),
  }
}

/** An element by its plate, V²/P = V/I; nothing where its draw is not known. */
function plateOhms(
  job: Job,
  landing: Landing,
  load: PoweredLoad,
  circuit: Circuit,
): OhmBand | undefined {
  const draw = drawOf(job, landing, load, circuit)
  if (draw.assumed || draw.from <= 0) return undefined
  const [least, greatest] = [draw.volts / draw.to, draw.volts / draw.from]
  return {
    least: least * (1 - COLD.elementTolerance),
    expected: (least + greatest) / 2,
    greatest: greatest * (1 + COLD.elementTolerance),
  }
}

/** A motor behind electronics: it has a data lead, or the survey says that it has no ohms to measure. */
const isDriven = (load: PoweredLoad, { ohms }: Circuit): boolean =>
  load.leads.some(each => each.function === 'data') ||
  (ohms?.kind === 'unknown' && ohms.reason === 'does not exist')

function kindOf(load: PoweredLoad, circuit: Circuit): ColdPart['kind'] {
  if (load.kind === 'heater') return 'element'
  return isMotor(load) && !isDriven(load, circuit) ? 'winding' : 'load-electronics'
}

/**
 * A circuit of a load at direct current. Impedance in running says nothing of winding ohms, and a
 * strap that moved since the survey makes its reading another one.
 */
function circuitOhms(
  job: Job,
  landing: Landing,
  load: PoweredLoad,
  circuit: Circuit,
): OhmBand | undefined {
  const isAsFound = load.straps === undefined || strapOf(load, landing) === load.straps.found
  const found = isAsFound ? surveyed(circuit.ohms) : undefined
  return found ?? (load.kind === 'heater' ? plateOhms(job, landing, load, circuit) : undefined)
}

interface KnownPart {
  readonly part: ColdPart
  readonly ohms: OhmBand | undefined
}

function loadParts(
  job: Job,
  landing: Landing,
  load: Load,
  celsius: number,
): readonly (readonly [string, KnownPart])[] {
  if (!isPowered(load)) {
    const subject = `${load.id}.probe`
    const part: ColdPart = { kind: 'probe', subject, of: load.label, name: 'probe', load: load.id }
    const ohms = within(probeOhms(load.curve, celsius), COLD.probeTolerance)
    return [[circuitElement(load.id, 'probe'), { part, ohms }]]
  }
  return load.circuits.map(circuit => [
    circuitElement(load.id, circuit.id),
    {
      part: {
        kind: kindOf(load, circuit),
        subject: `${load.id}.${circuit.id}`,
        of: load.label,
        name: circuit.id,
        load: load.id,
        ...('capacitors' in load && load.capacitors.length > 0 ? { charges: true } : {}),
      },
      ohms: circuitOhms(job, landing, load, circuit),
    },
  ])
}

/** A part of a board, and the board it is on. */
interface Placed {
  readonly board: string
  readonly part: Part
}

const boardParts = (job: Job): ReadonlyMap<string, Placed> =>
  new Map(
    [...job.devices.keys(), BOX].flatMap(board =>
      (boardOf(job, board)?.parts ?? []).map(
        part => [partElement(board, part.id), { board, part }] as const,
      ),
    ),
  )

/** Everything that an element of the live network is looked up by. */
interface Lookup {
  readonly job: Job
  readonly landing: Landing
  readonly circumstance: ColdCircumstance
  readonly parts: ReadonlyMap<string, Placed>
  readonly circuits: ReadonlyMap<string, KnownPart>
  /** The load that takes an element along, by the element's id. */
  readonly loads: ReadonlyMap<string, string>
}

const describe = ({ job }: Lookup, { board, part }: Placed, kind: ColdPart['kind']): ColdPart => ({
  kind,
  subject: `${board}.${part.id}`,
  of: boardLabel(job, board),
  name: part.id,
})

/** The primary at its factory tap is what its maker's ohms are of. */
function primaryOhms({ job, landing }: Lookup, { board, part }: Placed): OhmBand | undefined {
  if (part.kind !== 'transformer') return undefined
  const jumper = boardOf(job, board)?.jumpers.find(each => each.id === part.taps?.jumper)
  const isFactory = !jumper || (landing.jumpers[jumper.id] ?? jumper.factory) === jumper.factory
  return isFactory ? surveyed(part.primaryOhms) : undefined
}

/** What is locked off: the devices that the box is fed from. Those upstream stay as they are. */
const isDisconnect = ({ tub }: Job, board: string): boolean =>
  tub.supply.cables.some(each => each.to === BOX && each.from === board)

function isOpen({ job, circumstance }: Lookup, { board, part }: Placed): boolean {
  if (part.kind === 'contact') return !isClosedAtRest(part)
  return part.kind !== 'fuse' && circumstance.isDisconnected && isDisconnect(job, board)
}

function contactElement(lookup: Lookup, placed: Placed, id: string, between: Pair): ColdElement {
  const { part } = placed
  if (part.kind === 'contact' && part.type === 'triac') {
    const semiconductor = describe(lookup, placed, 'semiconductor')
    return { id, between, role: 'gap', ohms: gap(COLD.semiconductorLeast), part: semiconductor }
  }
  if (isOpen(lookup, placed)) return { id, between, role: 'gap', ohms: gap(COLD.openLeast) }
  const greatest = part.kind === 'fuse' ? COLD.fuseVolts / part.rated.si : COLD.closedGreatest
  return { id, between, role: 'joint', ohms: upTo(FIGURES.closedOhms, greatest) }
}

/** Copper where nothing runs, with a joint for each of its ends that is landed. */
function copperElement({ id, between }: Resistive, at75: number, load?: string): ColdElement {
  // A lead's and a tail's first node is inside: soldered, and no joint.
  const ends = id.startsWith('cable:') ? between : between.slice(1)
  const joints = ends.filter(each => !each.startsWith('off/')).length
  const cold = copperAt(at75, COLD.copperCelsius)
  return {
    id,
    between,
    role: 'joint',
    load,
    ohms: {
      least: cold * (1 - COLD.copperTolerance) + COLD.nothing,
      expected: cold + joints * COLD.joint.expected + COLD.nothing,
      greatest: cold * (1 + COLD.copperTolerance) + joints * COLD.joint.greatest + COLD.nothing,
    },
  }
}

type Resistive = Extract<Element, { kind: 'impedance' }>

function partElementOf(lookup: Lookup, placed: Placed, { id, between }: Resistive): ColdElement {
  const kind = placed.part.kind === 'ground-fault' ? 'ground-fault' : 'electronics'
  return { id, between, role: 'part', part: describe(lookup, placed, kind) }
}

function resistiveElement(lookup: Lookup, element: Resistive): readonly ColdElement[] {
  const { id, between, ohms } = element
  const load = lookup.loads.get(id)
  const circuit = lookup.circuits.get(id)
  if (circuit) return [{ id, between, role: 'part', load, ...circuit }]
  const placed = lookup.parts.get(id)
  if (placed) return [partElementOf(lookup, placed, element)]
  const kind = id.slice(0, id.indexOf(':'))
  switch (kind) {
    case 'insulation':
      return [{ id, between, role: 'insulation', load, ohms: insulation(ohms.re) }]
    case 'jumper':
      return [{ id, between, role: 'joint', ohms: upTo(ohms.re, COLD.jumperGreatest) }]
    case 'source':
      // Neutral and earth stay tied to the star point; a plug that is out ties nothing.
      return isCord(lookup.job) && lookup.circumstance.isDisconnected
        ? []
        : [{ id, between, role: 'joint', ohms: upTo(ohms.re, COLD.tieGreatest) }]
    default:
      return [copperElement(element, ohms.re, load)]
  }
}

function coldElement(lookup: Lookup, element: Element): readonly ColdElement[] {
  const placed = lookup.parts.get(element.id)
  switch (element.kind) {
    case 'impedance':
      return resistiveElement(lookup, element)
    case 'contact':
      return placed ? [contactElement(lookup, placed, element.id, element.between)] : []
    case 'transformer': {
      if (!placed) return []
      const { id, primary, secondary } = element
      return [
        {
          id: `${id}:primary`,
          between: primary,
          role: 'part',
          ohms: primaryOhms(lookup, placed),
          part: describe(lookup, placed, 'primary'),
        },
        {
          id: `${id}:secondary`,
          between: secondary,
          role: 'part',
          part: describe(lookup, placed, 'secondary'),
        },
      ]
    }
    default:
      // A source is removed; a capacitor is open once it is charged.
      return []
  }
}

/** What belongs to a load: its leads, circuits and insulation. */
const loadElements = (job: Job): ReadonlyMap<string, string> =>
  new Map(
    job.loads.flatMap(load =>
      [
        ...load.leads.flatMap(({ id }) => [`lead:${load.id}.${id}`, `insulation:${load.id}.${id}`]),
        ...(isPowered(load) ? load.circuits : [{ id: 'probe' }]).map(({ id }) =>
          circuitElement(load.id, id),
        ),
      ].map(element => [element, load.id] as const),
    ),
  )

/** The elements of a live network as an ohmmeter finds them. */
export function coldElements(
  job: Job,
  landing: Landing,
  live: readonly Element[],
  circumstance: ColdCircumstance,
): readonly ColdElement[] {
  const { celsius } = circumstance
  const lookup: Lookup = {
    job,
    landing,
    circumstance,
    parts: boardParts(job),
    circuits: new Map(job.loads.flatMap(each => loadParts(job, landing, each, celsius))),
    loads: loadElements(job),
  }
  return live.flatMap(each => coldElement(lookup, each))
}
