import type { FeedFunction, LeadFunction } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, findTerminal, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { SupplyDevice } from '../supply/supply.ts'
import { plantOf, solveState } from './plant.ts'
import { boardNode } from './wire.ts'

/** What the empty box offers, solved: volts at every place, for one set of jumper positions. */
export interface Offer {
  readonly jumpers: Readonly<Record<string, string>>
  /** By place, then by lead function: volts to the common terminal with every command on [V]. */
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

/** A source without a protection, joined straight to the terminals of a feed. */
function origin(functions: readonly FeedFunction[]): SupplyDevice {
  return {
    schema: 'supply-device/1',
    id: 'origin',
    label: 'origin',
    board: {
      size: { width: entered<'m'>(0.1, '100 mm'), height: entered<'m'>(0.1, '100 mm') },
      earth: 'earth',
      terminals: functions.map(each => ({
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
    fedAt: Object.fromEntries(functions.map(each => [each, each])),
    lands: {},
    tails: [],
  }
}

function emptyJob(box: ControlBox, feed: Feed): Job {
  const functions = Object.keys(feed.lands) as FeedFunction[]
  const tub: Tub = {
    id: 'empty',
    region: box.regions[0] ?? 'US',
    supply: {
      system: feed.system,
      frequency: box.frequencies[0] ?? entered<'Hz'>(60, '60 Hz'),
      breaker: { kind: 'unknown', reason: 'does not exist' },
      devices: [{ id: 'origin', device: 'origin' }],
      cables: [
        {
          id: 'run',
          label: 'run',
          from: 'origin',
          to: BOX,
          length: entered<'m'>(1, '1 m'),
          moulded: false,
          conductors: functions.map(each => ({
            id: each,
            function: each,
            size: { mm2: 13.3, text: '6 AWG' },
            colour: 'black',
            from: each,
          })),
        },
      ],
    },
    loads: [],
  }
  return jobOf(tub, { ...box, supplied: [] }, new Map([['origin', origin(functions)]]))
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

function voltsAt(job: Job, place: Place, across: (a: string, b: string) => number) {
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
        ? [[each, across(hot, common)] as const]
        : []
    }),
  )
}

/**
 * What a box offers on a feed, for every choice of its volt jumpers: the empty box is wired to a
 * bare source and solved with every command on.
 */
export function offersOf(box: ControlBox, feed: Feed): readonly Offer[] {
  const job = emptyJob(box, feed)
  const commands = new Set(box.commands.map(each => each.id))
  return jumperChoices(box, feed).flatMap(jumpers => {
    const plant = plantOf(job, landingOf(job, feed, jumpers))
    if (!plant.ok) return []
    const { across } = solveState(plant.value, { kind: 'mode', commands })
    const volts = new Map(box.places.map(place => [place.id, voltsAt(job, place, across)]))
    return [{ jumpers, volts }]
  })
}
