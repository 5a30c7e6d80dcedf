import type { FeedFunction, LeadFunction } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, findTerminal, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { SecondLines } from './bare-source.ts'
import { bareSource, entered, SAME_LINES } from './bare-source.ts'
import type { Plant, Solved } from './plant.ts'
import { plantOf, solveState } from './plant.ts'
import { boardNode, jumperContact } from './wire.ts'

/** What the empty box offers, solved: volts at every place, for one set of jumper positions. */
export interface Offer {
  readonly jumpers: Readonly<Record<string, string>>
  /** By place, then by lead function: volts to the common terminal with its own command on [V]. */
  readonly volts: ReadonlyMap<string, ReadonlyMap<LeadFunction, number>>
}

function emptyJob(box: ControlBox, feed: Feed, second: SecondLines): Job {
  const { supply, devices } = bareSource(box, feed, second)
  const tub: Tub = { id: 'empty', region: box.regions[0] ?? 'US', supply, loads: [] }
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
  second: SecondLines = SAME_LINES,
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
