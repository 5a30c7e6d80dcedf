import type { FeedFunction, LeadFunction } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, findTerminal, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { SupplyCircuit } from '../supply/circuits.ts'
import { isSecond, ownFunction } from '../supply/circuits.ts'
import type { SupplyDevice } from '../supply/supply.ts'
import type { Plant, Solved } from './plant.ts'
import { plantOf, solveState } from './plant.ts'
import { boardNode, jumperContact } from './wire.ts'

/** What the empty box offers, solved: volts at every place, for one set of jumper positions. */
export interface Offer {
  readonly jumpers: Readonly<Record<string, string>>
  /** By place, then by lead function: volts to the common terminal with its own command on [V]. */
  readonly volts: ReadonlyMap<string, ReadonlyMap<LeadFunction, number>>
}

const entered = <U extends string>(si: number, text: string) => ({
  si: si as number & { readonly unit: U },
  text,
})

const AT: SupplyDevice['board']['terminals'][number]['at'] = [
  entered<'m'>(0, '0 mm'),
  entered<'m'>(0, '0 mm'),
]

/** Where a bare source arrives: one circuit, and a second one where the feed has two. */
const ORIGINS = ['origin', 'second-origin'] as const

/** A source without a protection, joined straight to the terminals of one circuit of a feed. */
function origin(functions: readonly FeedFunction[]): SupplyDevice {
  return {
    schema: 'supply-device/1',
    id: 'origin',
    label: 'origin',
    board: {
      size: { width: entered<'m'>(0.1, '100 mm'), height: entered<'m'>(0.1, '100 mm') },
      earth: 'earth',
      terminals: functions.map(ownFunction).map(each => ({
        id: each,
        node: each,
        class: each === 'earth' ? 'earth' : 'mains',
        kind: 'screw',
        rated: entered<'A'>(1000, '1000 A'),
        conductors: 1,
        at: AT,
      })),
      connectors: [],
      parts: [],
      jumpers: [],
    },
    fedAt: Object.fromEntries(functions.map(ownFunction).map(each => [each, each])),
    lands: {},
    tails: [],
  }
}

/** Which lines of the source a second circuit brings; the same as the first where nobody says. */
export type SecondLines = SupplyCircuit['lines']

function emptyJob(box: ControlBox, feed: Feed, second: SecondLines): Job {
  const all = Object.keys(feed.lands) as FeedFunction[]
  const circuits = [all.filter(each => !isSecond(each)), all.filter(isSecond)].filter(
    each => each.length > 0,
  )
  const cables = circuits.map((functions, index) => ({
    id: `run-${index}`,
    label: 'run',
    from: ORIGINS[index] ?? '',
    to: BOX,
    length: entered<'m'>(1, '1 m'),
    moulded: false,
    conductors: functions.map(each => ({
      id: each,
      function: each,
      size: { mm2: 13.3, text: '6 AWG' },
      colour: 'black' as const,
      from: ownFunction(each),
    })),
  }))
  const tub: Tub = {
    id: 'empty',
    region: box.regions[0] ?? 'US',
    supply: {
      system: feed.system,
      frequency: box.frequencies[0] ?? entered<'Hz'>(60, '60 Hz'),
      breaker: { kind: 'unknown', reason: 'does not exist' },
      turnable: false,
      devices: circuits.map((_, index) => ({
        id: ORIGINS[index] ?? '',
        device: ORIGINS[index] ?? '',
        ...(index > 0 ? { fedBy: second } : {}),
      })),
      cables,
    },
    loads: [],
  }
  const devices = new Map(
    circuits.map((functions, index) => [ORIGINS[index] ?? '', origin(functions)] as const),
  )
  return jobOf(tub, { ...box, supplied: [] }, devices)
}

/** Every choice of jumper positions that a feed leaves open, factory positions first. */
export function jumperChoices(
  box: ControlBox,
  feed: Feed,
): readonly Readonly<Record<string, string>>[] {
  return box.board.jumpers.reduce<readonly Readonly<Record<string, string>>[]>(
    (choices, jumper) => {
      const set = feed.jumpers[jumper.id]
      const others = jumper.positions.map(each => each.id).filter(id => id !== jumper.factory)
      const open = set === undefined ? [jumper.factory, ...others] : [set]
      return choices.flatMap(choice => open.map(id => ({ ...choice, [jumper.id]: id })))
    },
    [{}],
  )
}

function landingOf(job: Job, feed: Feed, jumpers: Offer['jumpers']): Landing {
  const ends = job.ends.map(end => {
    const at = end.board === BOX ? `${BOX}.${feed.lands[end.function as FeedFunction]}` : end.found
    return [end.id, at ?? 'insulated'] as const
  })
  return {
    schema: 'landing/1',
    survey: 'empty',
    box: job.box.id,
    ends: Object.fromEntries(ends),
    jumpers,
    straps: {},
    settings: { profile: '', currentLimit: entered<'A'>(0, '0 A') },
    adapters: {},
  }
}

/** Volts between two nodes of the box with one command on, or none. */
type Across = (command: string | undefined, a: string, b: string) => number

function voltsAt(job: Job, place: Place, across: Across) {
  const node = (id: string | undefined) => {
    const terminal = id === undefined ? undefined : findTerminal(job, `${BOX}.${id}`)
    return terminal && boardNode(BOX, terminal.node)
  }
  const common = node(place.lands.common)
  const functions = Object.keys(place.lands) as LeadFunction[]
  return new Map(
    functions.flatMap(each => {
      const hot = node(place.lands[each])
      return hot !== undefined && common !== undefined && each !== 'earth' && each !== 'common'
        ? [[each, across(place.commands[each], hot, common)] as const]
        : []
    }),
  )
}

/** Contacts of the jumpers at these positions. */
const closedJumpers = ({ board }: ControlBox, at: Offer['jumpers']): readonly string[] =>
  board.jumpers.flatMap(({ id, positions }) => {
    const position = positions.find(each => each.id === at[id])
    return (position?.joins ?? []).map((_, index) =>
      jumperContact(BOX, id, position?.id ?? '', index),
    )
  })

/**
 * Volts with one command on. Where no command opens anything, all of them on give every output the
 * same, in one solve; else each is solved when it is first asked for.
 */
function acrossOf(box: ControlBox, plant: Plant, jumpers: Offer['jumpers']): Across {
  const closed = closedJumpers(box, jumpers)
  const isTogether = box.commands.every(each => each.opens.length === 0)
  const everything = box.commands.map(each => each.id)
  const solved = new Map<string | undefined, Solved>()
  return (command, a, b) => {
    const key = isTogether ? undefined : command
    const on = isTogether ? everything : command === undefined ? [] : [command]
    const known = solved.get(key)
    const at = known ?? solveState(plant, { kind: 'mode', commands: new Set(on) }, { closed })
    if (!known) solved.set(key, at)
    return at.across(a, b)
  }
}

/**
 * What a box offers on a feed, for every choice of its volt jumpers: the empty box is wired to a
 * bare source and solved, output by output with its own command on.
 *
 * @param second - which lines of the source arrive by a second circuit
 */
export function offersOf(
  box: ControlBox,
  feed: Feed,
  second: SecondLines = { leg1: 'leg1', leg2: 'leg2', leg3: 'leg3' },
): readonly Offer[] {
  const job = emptyJob(box, feed, second)
  const plantWith = (jumpers: Offer['jumpers']) =>
    plantOf(job, landingOf(job, feed, jumpers), { forOffers: true })
  const shared = plantWith({})
  return jumperChoices(box, feed).flatMap(jumpers => {
    // The jumper of a tap changes a ratio, not a join: such a box is compiled choice by choice.
    const plant = hasTaps(box) ? plantWith(jumpers) : shared
    if (!plant.ok) return []
    const across = acrossOf(box, plant.value, jumpers)
    const volts = new Map(box.places.map(place => [place.id, voltsAt(job, place, across)]))
    return [{ jumpers, volts }]
  })
}

const hasTaps = ({ board }: ControlBox): boolean =>
  board.parts.some(part => part.kind === 'transformer' && part.taps !== undefined)
