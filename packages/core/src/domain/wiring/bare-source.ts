import type { Entered } from '../../base/entered.ts'
import type { FeedFunction } from '../board/board.ts'
import type { ControlBox, Feed } from '../box/control-box.ts'
import type { Catalogue } from '../job.ts'
import { BOX } from '../job.ts'
import type { SupplyCircuit } from '../supply/circuits.ts'
import { isSecond, ownFunction } from '../supply/circuits.ts'
import type { Supply, SupplyDevice } from '../supply/supply.ts'

/** Which lines of the source a second circuit brings; the same as the first where nobody says. */
export type SecondLines = SupplyCircuit['lines']

export const SAME_LINES: SecondLines = { leg1: 'leg1', leg2: 'leg2', leg3: 'leg3' }

/** A quantity that nobody entered. */
export const entered = <U extends string>(si: number, text: string): Entered<U> => ({
  si: si as Entered<U>['si'],
  text,
})

/** Thick enough to decide nothing. */
export const BARE_SIZE = { mm2: 13.3, text: '6 AWG' }

/** Where a bare source arrives: one circuit, and a second one where the feed has two. */
const ORIGINS = ['origin', 'second-origin'] as const
const originOf = (index: number): string => ORIGINS[index] ?? ''

/** A source without a protection, joined straight to the terminals of one circuit of a feed. */
function origin(functions: readonly FeedFunction[]): SupplyDevice {
  const names = functions.map(ownFunction)
  const corner = [entered<'m'>(0, '0 mm'), entered<'m'>(0, '0 mm')] as const
  return {
    schema: 'supply-device/1',
    id: 'origin',
    label: 'origin',
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

const circuitsIn = (feed: Feed): readonly (readonly FeedFunction[])[] => {
  const all = Object.keys(feed.lands) as FeedFunction[]
  return [all.filter(each => !isSecond(each)), all.filter(isSecond)].filter(each => each.length > 0)
}

const cableOf = (functions: readonly FeedFunction[], index: number): Supply['cables'][number] => ({
  id: `run-${index}`,
  label: 'run',
  from: originOf(index),
  to: BOX,
  length: entered<'m'>(1, '1 m'),
  moulded: false,
  conductors: functions.map(each => ({
    id: each,
    function: each,
    size: BARE_SIZE,
    colour: 'black',
    from: ownFunction(each),
  })),
})

/** A supply that brings what a feed lands and nothing else, with its devices: a box alone on a source. */
export function bareSource(
  { frequencies }: ControlBox,
  feed: Feed,
  second: SecondLines = SAME_LINES,
): { readonly supply: Supply; readonly devices: Catalogue } {
  const circuits = circuitsIn(feed)
  return {
    supply: {
      system: feed.system,
      frequency: frequencies[0] ?? entered<'Hz'>(60, '60 Hz'),
      breaker: { kind: 'unknown', reason: 'does not exist' },
      turnable: false,
      devices: circuits.map((_, index) => ({
        id: originOf(index),
        device: originOf(index),
        ...(index > 0 ? { fedBy: second } : {}),
      })),
      cables: circuits.map(cableOf),
    },
    devices: new Map(circuits.map((functions, index) => [originOf(index), origin(functions)])),
  }
}
