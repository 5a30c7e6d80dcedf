import type { Entered } from '../../base/entered.ts'
import type { Known } from '../../base/known.ts'
import { boundsOf } from '../../base/known.ts'
import type { FeedFunction } from '../../domain/board/board.ts'
import { LINES } from '../../domain/board/board.ts'
import type { Job } from '../../domain/job.ts'
import { BOX, findTerminal, isCord } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { SupplyCircuit } from '../../domain/supply/circuits.ts'
import { circuitAt, circuitsOf, isSecond, ownFunction } from '../../domain/supply/circuits.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import { allowedAmps } from '../../domain/wiring/states.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { RunningMode, Verification } from '../verify/artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { panelLabel } from './wires.ts'

/** One circuit from the panel, as the steps speak of it. */
export interface SiteCircuit {
  readonly name: SheetText
  /** What switches it off, nearest to the tub; of a cord its plug. */
  readonly off: string
  readonly offLabel: string
  /** Ids of its devices. */
  readonly devices: readonly string[]
  /** Ids of its cables that reach the tub. */
  readonly cables: readonly string[]
  readonly breaker: Known<Entered<'A'>>
  /** The most that one of its lines may carry; undefined where its breaker is not known [A]. */
  readonly limit: number | undefined
  /** Its lines, by their places in the verifier's list. */
  readonly lines: readonly number[]
  /** Whether the box takes anything from it. */
  readonly serves: boolean
}

const isLine = (name: FeedFunction): boolean =>
  (LINES as readonly string[]).includes(ownFunction(name))

/** Whether one of a cable's lines lands on the box. */
const servesBy = (job: Job, landing: Landing, cable: string): boolean =>
  job.ends.some(
    end =>
      end.owner === cable &&
      end.board === BOX &&
      isLine(end.function as FeedFunction) &&
      findTerminal(job, landing.ends[end.id] ?? '') !== undefined,
  )

/** 80 % of its own breaker; the box keeps the first circuit within its current limit besides [A]. */
function limitOf({ box }: Job, landing: Landing, { breaker }: SupplyCircuit, index: number) {
  const bounds = boundsOf(breaker)
  const share = bounds && LIMITS.continuous * bounds.from
  if (index > 0) return share
  const allowed = allowedAmps(box, landing.settings.currentLimit.si)
  return share === undefined ? allowed : Math.min(allowed, share)
}

/** The circuits that reach the tub, the first one first. */
export function siteCircuits(
  job: Job,
  { landing }: WiringPlan,
  { lines }: Verification,
): readonly SiteCircuit[] {
  const { supply } = job.tub
  return circuitsOf(supply).map((circuit, index) => {
    const isOwn = (device: string) => circuitAt(supply, device)?.device === circuit.device
    const devices = supply.devices.map(each => each.id).filter(isOwn)
    const off = (isCord(job) ? devices[0] : devices.at(-1)) ?? circuit.device
    const offLabel = panelLabel(job, off)
    const cables = supply.cables
      .filter(each => each.to === BOX && isOwn(each.from))
      .map(each => each.id)
    return {
      name: text(index === 0 ? 'circuit.first' : 'circuit.second', { device: offLabel }),
      off,
      offLabel,
      devices,
      cables,
      breaker: circuit.breaker,
      limit: limitOf(job, landing, circuit, index),
      lines: lines.flatMap((line, place) => (line.circuit === index ? [place] : [])),
      serves: cables.some(each => servesBy(job, landing, each)),
    }
  })
}

export const idleCircuits = (circuits: readonly SiteCircuit[]): readonly SiteCircuit[] =>
  circuits.filter(each => !each.serves)

export const servingCircuits = (circuits: readonly SiteCircuit[]): readonly SiteCircuit[] =>
  circuits.filter(each => each.serves)

/** Whether the tub needs two circuits off before it is off. */
export const isSplit = (circuits: readonly SiteCircuit[]): boolean =>
  servingCircuits(circuits).length > 1

/** Whether what a conductor brings is taken by the box. */
export const isServed = (circuits: readonly SiteCircuit[], name: FeedFunction): boolean =>
  circuits[isSecond(name) ? 1 : 0]?.serves === true

/** The most that a mode takes from one line of a circuit [A]. */
export const mostFrom = ({ lines }: SiteCircuit, { lineAmps }: RunningMode): number =>
  Math.max(0, ...lines.map(place => lineAmps[place] ?? 0))

export function breakerText(breaker: Known<Entered<'A'>>): SheetText {
  const bounds = boundsOf(breaker)
  if (!bounds) return text('breaker.unknown')
  const { from, to } = bounds
  return from === to ? text('breaker.known', { amps: to }) : text('breaker.range', { from, to })
}

/** What may be drawn from one of its lines, as a figure or as not known. */
export const limitText = ({ limit }: SiteCircuit): SheetText =>
  limit === undefined ? text('breaker.unknown') : text('breaker.known', { amps: limit })
