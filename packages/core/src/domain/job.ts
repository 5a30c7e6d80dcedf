import { invariant } from '../base/invariant.ts'
import type { Board, FeedFunction, LeadFunction, Terminal } from './board/board.ts'
import type { ControlBox, Place } from './box/control-box.ts'
import type { ConductorSize } from './conductor.ts'
import type { Colour, Region } from './described.ts'
import type { Landing } from './landing/landing.ts'
import type { Load } from './load/load.ts'
import type { Supply, SupplyDevice } from './supply/supply.ts'

/** What stays at the tub: its supply and its loads. A survey is one. */
export interface Tub {
  readonly id: string
  readonly region: Region
  readonly supply: Supply
  readonly loads: readonly Load[]
  /** The hole that the old keypad leaves. */
  readonly keypadHole?: Hole | undefined
}

/** Width and height of an opening [m]. */
export type Hole = NonNullable<ControlBox['keypadHole']>

/** One tub with one control box: everything that a landing can join. */
export interface Job {
  readonly tub: Tub
  readonly box: ControlBox
  /** Of each supply device in the tub, by its id there. */
  readonly devices: ReadonlyMap<string, SupplyDevice>
  /** Loads of the tub, then what the box supplies. */
  readonly loads: readonly Load[]
  readonly ends: readonly End[]
}

export type Catalogue = ReadonlyMap<string, SupplyDevice>

/** A conductor end that somebody lands, on one board. */
export interface End {
  readonly id: string
  readonly of: 'lead' | 'cable' | 'tail'
  /** The board it can land on: `box`, or a device of the tub. */
  readonly board: string
  readonly function: LeadFunction | FeedFunction
  readonly size: ConductorSize
  readonly colour: Colour
  /** The load of a lead, the cable of a conductor, the device of a tail. */
  readonly owner: string
  /** The lead, conductor or tail within its owner. */
  readonly part: string
  /** Where it is found; absent where the plan decides. */
  readonly found?: string
  readonly moulded: boolean
}

export const BOX = 'box'

/**
 * Loads of the job: the tub's, and what comes with the box unless the tub keeps its own.
 *
 * An old keypad never stays where the box brings one: it does not understand another maker's.
 */
export function loadsOf(tub: Tub, box: ControlBox): readonly Load[] {
  const bringsKeypad = box.supplied.some(each => each.kind === 'keypad')
  const own = tub.loads.filter(each => !(bringsKeypad && each.kind === 'keypad'))
  const kept = box.supplied.filter(
    supplied => !own.some(each => each.id === supplied.id || isSameThing(each, supplied)),
  )
  return [...own, ...kept]
}

const isSameThing = (own: Load, supplied: Load): boolean =>
  own.kind === supplied.kind &&
  (own.kind !== 'probe' || supplied.kind !== 'probe' || own.place === supplied.place)

const leadEnds = (load: Load): readonly End[] =>
  load.leads.map(lead => ({
    id: `${load.id}.${lead.id}`,
    of: 'lead',
    board: BOX,
    function: lead.function,
    size: lead.size,
    colour: lead.colour,
    owner: load.id,
    part: lead.id,
    moulded: false,
  }))

function cableEnds(tub: Tub): readonly End[] {
  return tub.supply.cables.flatMap(cable =>
    cable.conductors.flatMap(conductor => {
      const end = (board: string, found: string | undefined): End => ({
        id: `${cable.id}.${conductor.id}@${board}`,
        of: 'cable',
        board,
        function: conductor.function,
        size: conductor.size,
        colour: conductor.colour,
        owner: cable.id,
        part: conductor.id,
        moulded: cable.moulded && board !== BOX,
        ...(found === undefined ? {} : { found: `${board}.${found}` }),
      })
      return [end(cable.from, conductor.from), end(cable.to, conductor.to)]
    }),
  )
}

const TAIL_SIZE: ConductorSize = { mm2: 8.37, text: '8 AWG' }

const tailEnds = (devices: Job['devices']): readonly End[] =>
  [...devices].flatMap(([id, device]) =>
    device.tails.map(tail => ({
      id: `${id}.${tail.id}`,
      of: 'tail' as const,
      board: id,
      function: 'neutral' as const,
      size: TAIL_SIZE,
      colour: tail.colour,
      owner: id,
      part: tail.id,
      moulded: false,
      found: `${id}.${tail.lands}`,
    })),
  )

/** Joins a tub, a box and the descriptions of the supply devices that the survey names. */
export function jobOf(tub: Tub, box: ControlBox, catalogue: Catalogue): Job {
  const devices = new Map(
    tub.supply.devices.map(each => {
      const device = catalogue.get(each.device)
      invariant(device !== undefined, `no supply device ${each.device}: check the survey first`)
      return [each.id, device] as const
    }),
  )
  const loads = loadsOf(tub, box)
  const ends = [...cableEnds(tub), ...tailEnds(devices), ...loads.flatMap(leadEnds)]
  return { tub, box, devices, loads, ends }
}

/** The boards of a job by name, the box among them. */
export const boardOf = (job: Job, name: string): Board | undefined =>
  name === BOX ? job.box.board : job.devices.get(name)?.board

/** What a person calls a board: the box, or a device as the survey has it. */
export function boardLabel(job: Job, name: string): string {
  if (name === BOX) return job.box.label
  const own = job.tub.supply.devices.find(each => each.id === name)?.label
  return own ?? job.devices.get(name)?.label ?? name
}

/** A cord-connected tub is off when its plug is out. */
export const isCord = ({ tub }: Job): boolean => tub.supply.cables.some(each => each.moulded)

/** The terminal a landing names, or undefined for an end that is off or a name unknown. */
export function findTerminal(job: Job, name: string): Terminal | undefined {
  const dot = name.indexOf('.')
  if (dot < 0) return undefined
  return boardOf(job, name.slice(0, dot))?.terminals.find(each => each.id === name.slice(dot + 1))
}

const HOT_COUNTS = 10 // a terminal that is switched says more than one where a load returns to

/**
 * The place that a load is on: the one on whose switched terminals its leads land, whichever of its
 * leads; undefined when none of them is on any.
 */
export function placeOf(job: Job, landing: Landing, load: Load): Place | undefined {
  const on = new Set(load.leads.map(lead => landing.ends[`${load.id}.${lead.id}`] ?? ''))
  let best: Place | undefined
  let most = 0
  for (const place of job.box.places) {
    const count = Object.entries(place.lands).reduce((sum, [does, id]) => {
      if (!on.has(`${BOX}.${id}`)) return sum
      return sum + (does === 'common' || does === 'earth' ? 1 : HOT_COUNTS)
    }, 0)
    if (count > most) [best, most] = [place, count]
  }
  return best
}
