import type { Entered } from '../../base/entered.ts'
import type { FeedFunction, LeadFunction } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { Load } from '../load/load.ts'
import { isSecond, ownFunction } from '../supply/circuits.ts'
import type { Supply, SupplyDevice } from '../supply/supply.ts'
import type { Plant } from '../wiring/plant.ts'
import { plantOf } from '../wiring/plant.ts'
import { circuitElement, leadNode } from '../wiring/wire.ts'
import type { Positions } from './board-graph.ts'

/** A box on a bench: a bare source on its feed terminals, a test lamp on every output. */
export interface Bench {
  readonly plant: Plant
  readonly lamps: readonly Lamp[]
  /** Elements that bring the feed. */
  readonly feeders: readonly string[]
}

/** What shows whether one output is on. */
export interface Lamp {
  /** Index of its place. */
  readonly place: number
  readonly does: LeadFunction
  /** The command that is to light it; absent where it is always on. */
  readonly command: string | undefined
  readonly element: string
  readonly between: readonly [string, string]
}

const entered = <U extends string>(si: number, text: string): Entered<U> => ({
  si: si as Entered<U>['si'],
  text,
})

const SOURCES = ['bench', 'second-bench'] as const
const OUTPUTS = ['hot', 'high', 'low'] as const
const SIZE = { mm2: 13.3, text: '6 AWG' }

/** A source without a protection of its own. */
function sourceOf(functions: readonly FeedFunction[]): SupplyDevice {
  const names = functions.map(ownFunction)
  const corner = [entered<'m'>(0, '0 mm'), entered<'m'>(0, '0 mm')] as const
  return {
    schema: 'supply-device/1',
    id: 'bench',
    label: 'bench',
    board: {
      size: { width: entered<'m'>(0.1, '100 mm'), height: entered<'m'>(0.1, '100 mm') },
      earth: 'earth',
      terminals: names.map(each => ({
        id: each,
        node: each,
        class: each === 'earth' ? 'earth' : 'mains',
        kind: 'screw',
        rated: entered<'A'>(1000, '1000 A'),
        conductors: 1,
        at: corner,
      })),
      connectors: [],
      parts: [],
      jumpers: [],
    },
    fedAt: Object.fromEntries(names.map(each => [each, each])),
    lands: {},
    tails: [],
  }
}

const cableOf = (functions: readonly FeedFunction[], index: number): Supply['cables'][number] => ({
  id: `run-${index}`,
  label: 'run',
  from: SOURCES[index] ?? '',
  to: BOX,
  length: entered<'m'>(1, '1 m'),
  moulded: false,
  conductors: functions.map(each => ({
    id: each,
    function: each,
    size: SIZE,
    colour: 'black',
    from: ownFunction(each),
  })),
})

const outputsOf = ({ lands }: Place): readonly LeadFunction[] =>
  OUTPUTS.filter(each => lands[each] !== undefined)

/** 144 Ω: as much as draws a stray voltage down, and too little for any fuse. */
function lampLoad(place: Place): readonly Load[] {
  const outputs = outputsOf(place)
  if (outputs.length === 0 || place.lands.common === undefined) return []
  const functions: readonly LeadFunction[] = [...outputs, 'common']
  return [
    {
      kind: 'ozonator',
      id: place.id,
      label: place.label,
      volts: entered<'V'>(120, '120 V'),
      doubleInsulated: true,
      leads: functions.map(each => ({ id: each, function: each, size: SIZE, colour: 'black' })),
      circuits: outputs.map(each => ({
        id: each,
        across: [each, 'common'],
        power: { kind: 'known', value: entered<'W'>(100, '100 W') },
        powerFactor: 1,
      })),
    },
  ]
}

const circuitsIn = (feed: Feed): readonly (readonly FeedFunction[])[] => {
  const all = Object.keys(feed.lands) as FeedFunction[]
  return [all.filter(each => !isSecond(each)), all.filter(isSecond)].filter(each => each.length > 0)
}

/** The box alone on one of its feeds; its rules may be those of another box on the same board. */
export function benchJob(box: ControlBox, feed: Feed): Job {
  const circuits = circuitsIn(feed)
  const tub: Tub = {
    id: 'bench',
    region: box.regions[0] ?? 'US',
    supply: {
      system: feed.system,
      frequency: box.frequencies[0] ?? entered<'Hz'>(60, '60 Hz'),
      breaker: { kind: 'unknown', reason: 'does not exist' },
      turnable: false,
      devices: circuits.map((_, index) => ({
        id: SOURCES[index] ?? '',
        device: SOURCES[index] ?? '',
        ...(index > 0 ? { fedBy: { leg1: 'leg1', leg2: 'leg2', leg3: 'leg3' } as const } : {}),
      })),
      cables: circuits.map(cableOf),
    },
    loads: box.places.flatMap(lampLoad),
  }
  const devices = new Map(
    circuits.map((functions, index) => [SOURCES[index] ?? '', sourceOf(functions)] as const),
  )
  return jobOf(tub, { ...box, feeds: [feed], supplied: [] }, devices)
}

/** Where everything is landed on the bench, with a profile and a current limit. */
export function benchLanding(
  { box, ends }: Job,
  feed: Feed,
  positions: Positions,
  settings: Landing['settings'],
): Landing {
  const places = new Map(box.places.map(each => [each.id, each] as const))
  const at = (id: string | undefined) => (id === undefined ? 'insulated' : `${BOX}.${id}`)
  return {
    schema: 'landing/1',
    survey: 'bench',
    box: box.id,
    ends: Object.fromEntries(
      ends.map(end => {
        if (end.of === 'lead')
          return [end.id, at(places.get(end.owner)?.lands[end.function as LeadFunction])]
        return [
          end.id,
          end.board === BOX ? at(feed.lands[end.function as FeedFunction]) : (end.found ?? ''),
        ]
      }),
    ),
    jumpers: positions,
    straps: {},
    settings,
    adapters: {},
  }
}

const NO_SETTINGS: Landing['settings'] = { profile: '', currentLimit: entered<'A'>(0, '0 A') }

const lampsOf = ({ places }: ControlBox): readonly Lamp[] =>
  places.flatMap((place, index) =>
    place.lands.common === undefined
      ? []
      : outputsOf(place).map(does => ({
          place: index,
          does,
          command: place.commands[does],
          element: circuitElement(place.id, does),
          between: [leadNode(place.id, does), leadNode(place.id, 'common')] as const,
        })),
  )

/** Puts a box on the bench; undefined where its network has no meaning. */
export function benchOf(box: ControlBox, feed: Feed, positions: Positions): Bench | undefined {
  const job = benchJob(box, feed)
  const plant = plantOf(job, benchLanding(job, feed, positions, NO_SETTINGS))
  if (!plant.ok) return undefined
  const feeders = job.tub.supply.cables.flatMap(({ id, conductors }) =>
    conductors.map(each => `cable:${id}.${each.id}`),
  )
  return { plant: plant.value, lamps: lampsOf(box), feeders }
}
