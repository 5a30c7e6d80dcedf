import type { Entered } from '../../base/entered.ts'
import type { Known } from '../../base/known.ts'
import type { FeedFunction, Line } from '../board/board.ts'
import type { Supply } from './supply.ts'

/** One circuit from the panel: a tub has one, a split tub two. */
export interface SupplyCircuit {
  /** The device that it feeds first. */
  readonly device: string
  /** Which line of the source arrives at which of that device's nodes. */
  readonly lines: Readonly<Partial<Record<Line, Line>>>
  readonly breaker: Known<Entered<'A'>>
}

const ALL_LINES: SupplyCircuit['lines'] = { leg1: 'leg1', leg2: 'leg2', leg3: 'leg3' }

/** The circuits of a supply, the first one first. */
export const circuitsOf = ({ devices, breaker }: Supply): readonly SupplyCircuit[] =>
  devices.flatMap((each, index) =>
    index === 0 || each.fedBy
      ? [
          {
            device: each.id,
            lines: each.fedBy ?? ALL_LINES,
            breaker:
              each.breaker ?? (index === 0 ? breaker : { kind: 'unknown', reason: 'not measured' }),
          },
        ]
      : [],
  )

const deviceBefore = ({ cables }: Supply, device: string): string | undefined =>
  cables.find(each => each.to === device)?.from

/** The circuit that a device belongs to, by the cables that lead to it. */
export function circuitAt(supply: Supply, device: string): SupplyCircuit | undefined {
  const circuits = circuitsOf(supply)
  let at: string | undefined = device
  // One step a device at most: cables that run in a ring lead nowhere.
  for (let step = 0; step <= supply.devices.length && at !== undefined; step++) {
    const here: string = at
    const own = circuits.find(each => each.device === here)
    if (own) return own
    at = deviceBefore(supply, here)
  }
  return undefined
}

/** What a function is within its own circuit: `second-leg1` is that circuit's `leg1`. */
export const ownFunction = (name: FeedFunction): FeedFunction =>
  name.replace(/^second-/u, '') as FeedFunction

/** Whether a function belongs to the second circuit. */
export const isSecond = (name: FeedFunction): boolean => name.startsWith('second-')

/** Which lines of the source the second circuit brings; undefined where there is none. */
export const secondLines = (supply: Supply): SupplyCircuit['lines'] | undefined =>
  circuitsOf(supply)[1]?.lines
