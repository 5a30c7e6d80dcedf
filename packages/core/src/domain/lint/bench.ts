import type { FeedFunction, LeadFunction } from '../board/board.ts'
import type { ControlBox, Feed, Place } from '../box/control-box.ts'
import type { Job, Tub } from '../job.ts'
import { BOX, jobOf } from '../job.ts'
import type { Landing } from '../landing/landing.ts'
import type { Load } from '../load/load.ts'
import { BARE_SIZE, bareSource, entered } from '../wiring/bare-source.ts'
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

const OUTPUTS = ['hot', 'high', 'low'] as const
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
      leads: functions.map(each => ({
        id: each,
        function: each,
        size: BARE_SIZE,
        colour: 'black',
      })),
      circuits: outputs.map(each => ({
        id: each,
        across: [each, 'common'],
        power: { kind: 'known', value: entered<'W'>(100, '100 W') },
        powerFactor: 1,
      })),
    },
  ]
}

/** The box alone on one of its feeds; its rules may be those of another box on the same board. */
export function benchJob(box: ControlBox, feed: Feed): Job {
  const { supply, devices } = bareSource(box, feed)
  const loads = box.places.flatMap(lampLoad)
  const tub: Tub = { id: 'bench', region: box.regions[0] ?? 'US', supply, loads }
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
