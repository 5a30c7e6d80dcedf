import type { ControlBox, Feed } from '../box/control-box.ts'
import { BOX } from '../job.ts'
import { LIMITS } from '../wiring/limits.ts'
import type { Circumstance, Solved } from '../wiring/plant.ts'
import { solveState } from '../wiring/plant.ts'
import type { State } from '../wiring/states.ts'
import { boardNode, partElement, primaryVolts } from '../wiring/wire.ts'
import type { Bench, Lamp } from './bench.ts'
import { benchOf } from './bench.ts'
import type { Positions } from './board-graph.ts'
import { choicesOf } from './choices.ts'
import { allModes } from './modes.ts'

const LIT = 3 // [V] across a test lamp: no output gives less, no stray voltage holds so much
const CARRIES = 1e-3 // [A]
const SOLVES_MAX = 6000

/** What was seen of a box on one of its feeds, in every mode of every profile. */
export interface Trial {
  readonly feed: Feed
  /** Elements of the lamps that were lit with their own command on, or without having one. */
  readonly lit: ReadonlySet<string>
  /** Lamps lit with their own command off, and what was on. */
  readonly litWrongly: ReadonlyMap<string, State>
  /** Modes in which the feed is shorted, though not with nothing on. */
  readonly shortedBy: State | undefined
  /** Choices of jumpers with which the feed is shorted with nothing on. */
  readonly shortedChoices: readonly Positions[]
  readonly choices: readonly Positions[]
  /** Volts over each transformer's primary, by the choice that comes nearest to its plate. */
  readonly primaries: ReadonlyMap<string, { readonly volts: number; readonly plate: number }>
  /** Greatest volts over each electronics. */
  readonly electronics: ReadonlyMap<string, number>
  /** Lamps of the heater that stay lit with every limit contact open. */
  readonly pastLimit: ReadonlySet<string>
  /** Contacts that carried something while the heater was on. */
  readonly carriesHeat: ReadonlySet<string>
  readonly heated: boolean
  readonly solves: { readonly done: number; readonly of: number }
}

interface Seen {
  readonly lit: Set<string>
  readonly litWrongly: Map<string, State>
  shortedBy: State | undefined
  readonly shortedChoices: Positions[]
  readonly primaries: Map<string, { readonly volts: number; readonly plate: number }>
  readonly electronics: Map<string, number>
  readonly pastLimit: Set<string>
  readonly carriesHeat: Set<string>
  heated: boolean
  done: number
}

const OFF: State = { kind: 'mode', commands: new Set() }

const isLit = (solved: Solved, { between: [a, b] }: Lamp): boolean => solved.across(a, b) >= LIT

/** Whether the feed carries what only a short draws: lamps and electronics draw little. */
const isShorted = ({ largestBreaker }: ControlBox, { feeders }: Bench, solved: Solved): boolean =>
  feeders.some(each => solved.amps(each) >= LIMITS.certainTrip * largestBreaker.si)

/** Lamps of the place for the heater, or of whatever the heat command lights. */
export const heaterLamps = ({ places, heat }: ControlBox, lamps: readonly Lamp[]) =>
  lamps.filter(
    ({ place, command }) => command === heat || places[place]?.takes.includes('heater') === true,
  )

function seePower(box: ControlBox, { plant }: Bench, solved: Solved, seen: Seen): void {
  for (const part of box.board.parts) {
    if (part.kind === 'electronics') {
      const volts = solved.across(boardNode(BOX, part.across[0]), boardNode(BOX, part.across[1]))
      seen.electronics.set(part.id, Math.max(seen.electronics.get(part.id) ?? 0, volts))
    }
    if (part.kind !== 'transformer') continue
    const plate = primaryVolts(part, plant.landing.jumpers, box.board)
    const volts = solved.across(boardNode(BOX, part.primary[0]), boardNode(BOX, part.primary[1]))
    const before = seen.primaries.get(part.id)
    const isNearer =
      !before || Math.abs(volts / plate - 1) < Math.abs(before.volts / before.plate - 1)
    if (isNearer) seen.primaries.set(part.id, { volts, plate })
  }
}

function seeHeat(box: ControlBox, bench: Bench, mode: State, solved: Solved, seen: Seen): void {
  const heater = heaterLamps(box, bench.lamps)
  if (!heater.some(each => isLit(solved, each))) return
  seen.heated = true
  for (const part of box.board.parts)
    if (part.kind === 'contact' && solved.amps(partElement(BOX, part.id)) >= CARRIES)
      seen.carriesHeat.add(part.id)
  const circumstance: Circumstance = { limitOpen: true }
  const limited = solveState(bench.plant, mode, circumstance)
  seen.done++
  for (const each of heater) if (isLit(limited, each)) seen.pastLimit.add(each.element)
}

function seeMode(box: ControlBox, bench: Bench, mode: State, seen: Seen): void {
  const solved = solveState(bench.plant, mode)
  seen.done++
  if (isShorted(box, bench, solved)) {
    seen.shortedBy ??= mode
    return
  }
  for (const lamp of bench.lamps) {
    if (!isLit(solved, lamp)) continue
    const { command, element } = lamp
    if (command === undefined || mode.commands.has(command)) seen.lit.add(element)
    else if (!seen.litWrongly.has(element)) seen.litWrongly.set(element, mode)
  }
  if (mode.commands.has(box.heat)) seeHeat(box, bench, mode, solved, seen)
}

/** Solves the box with every choice of jumpers that the feed leaves open, in every mode. */
export function tryFeed(box: ControlBox, feed: Feed): Trial {
  const seen: Seen = {
    lit: new Set(),
    litWrongly: new Map(),
    shortedBy: undefined,
    shortedChoices: [],
    primaries: new Map(),
    electronics: new Map(),
    pastLimit: new Set(),
    carriesHeat: new Set(),
    heated: false,
    done: 0,
  }
  const { tried, isAll } = choicesOf(box, feed)
  const benches = tried.flatMap(positions => {
    const bench = benchOf(box, feed, positions)
    if (!bench) return []
    const solved = solveState(bench.plant, OFF)
    if (isShorted(box, bench, solved)) {
      seen.shortedChoices.push(positions)
      return []
    }
    seePower(box, bench, solved, seen)
    return [bench]
  })
  const { modes, isAll: isEveryMode } = allModes(box, feed)
  let gone = 0
  for (const mode of modes)
    for (const bench of benches) {
      if (seen.done >= SOLVES_MAX) break
      gone++
      seeMode(box, bench, mode, seen)
    }
  const of = modes.length * benches.length
  return {
    ...seen,
    feed,
    choices: tried,
    solves: { done: gone, of: isAll && isEveryMode ? of : of + 1 },
  }
}
