import type { LiveState } from '@tubwright/core'
import type { Trace } from './live-board.ts'
import type { Hit } from './nearest.ts'
import type { WireRow } from './rows.ts'
import { isOff } from './rows.ts'

/** What a person has chosen: wires by their id, which stays when numbers do not. */
export type Chosen =
  | { readonly kind: 'wire'; readonly id: string }
  | { readonly kind: 'terminal'; readonly name: string }
  | { readonly kind: 'jumper'; readonly id: string }

/** What copper and closed contacts join: everything that has the volts of what was chosen. */
export interface Net {
  readonly rows: readonly WireRow[]
  readonly terminals: readonly string[]
}

const NOTHING: Net = { rows: [], terminals: [] }

function netNumber(chosen: Chosen, rows: readonly WireRow[], live: LiveState): number | undefined {
  if (chosen.kind === 'terminal') return live.terminals[chosen.name]?.net
  if (chosen.kind === 'jumper') return undefined
  const [first] = rows.find(each => each.wire.id === chosen.id)?.ends ?? []
  return first && live.ends[first.end]?.net
}

/** The whole net of what was chosen, on every board, in the mode that is looked at. */
export function netOf(
  chosen: Chosen | undefined,
  rows: readonly WireRow[],
  live: LiveState | undefined,
): Net {
  if (!chosen || !live) return NOTHING
  const number = netNumber(chosen, rows, live)
  if (number === undefined) return NOTHING
  return {
    rows: rows.filter(({ ends }) => ends.some(each => live.ends[each.end]?.net === number)),
    terminals: Object.keys(live.terminals).filter(each => live.terminals[each]?.net === number),
  }
}

/** The net as the drawing of a board shows it, with what was chosen in it. */
export function traceOf(chosen: Chosen | undefined, net: Net, rows: readonly WireRow[]): Trace {
  const hit = chosen && hitOf(chosen, rows)
  const own = hit?.kind === 'wire' ? [hit.number] : []
  return {
    numbers: new Set([...net.rows.map(each => each.wire.number), ...own]),
    terminals: new Set(net.terminals),
    ...(hit ? { chosen: hit } : {}),
  }
}

/** Where what was chosen is in a drawing. */
export function hitOf(chosen: Chosen, rows: readonly WireRow[]): Hit | undefined {
  if (chosen.kind !== 'wire') return chosen
  const found = rows.find(each => each.wire.id === chosen.id)
  return found && { kind: 'wire', number: found.wire.number }
}

/** What a tap chooses: of a terminal with wires its wires, one after the other at every tap. */
export function chosenBy(
  hit: Hit,
  rows: readonly WireRow[],
  before: Chosen | undefined,
): Chosen | undefined {
  if (hit.kind === 'jumper') return hit
  if (hit.kind === 'wire') {
    const found = rows.find(each => each.wire.number === hit.number)
    return found && { kind: 'wire', id: found.wire.id }
  }
  const here = rows.filter(({ ends }) => ends.some(each => each.at === hit.name))
  if (here.length === 0) return hit
  const last = here.findIndex(each => before?.kind === 'wire' && each.wire.id === before.id)
  const next = here[(last + 1) % here.length]
  return next && { kind: 'wire', id: next.wire.id }
}

/** Ends that sit on a terminal. */
export const landedOn = (rows: readonly WireRow[], terminal: string): readonly WireRow[] =>
  rows.filter(({ ends }) => ends.some(each => each.at === terminal))

/** Wires with an end that sits on no terminal: no drawing has them. */
export const offTerminals = (rows: readonly WireRow[]): readonly WireRow[] =>
  rows.filter(({ ends }) => ends.some(each => isOff(each.at)))
