import type { LivePoint, LiveState, SheetText, SheetWire } from '@tubwright/core'
import type { Wired } from '../../ask/protocol.ts'
import type { Charge } from './place-marks.ts'
import type { Taken } from './use-landing.ts'

/** One end of a wire as the screen shows it: where it is, where it should be, what is on it. */
export interface EndRow {
  readonly end: string
  readonly panel: string
  readonly panelLabel: string
  /** A terminal such as `box.X1-1`, `insulated` or `loose`. */
  readonly at: string
  readonly planned: string
  readonly isMoved: boolean
  readonly isTicked: boolean
  readonly fixing: SheetText | undefined
  /** In the mode that is looked at. */
  readonly now: LivePoint | undefined
  readonly isLiveWhenOff: boolean
}

/** A wire with its ends: a row of the table, a line of the drawing. */
export interface WireRow {
  readonly wire: SheetWire
  readonly title: SheetText
  readonly plug: SheetText | undefined
  readonly ends: readonly EndRow[]
  readonly isDone: boolean
}

/** What the rows are made of. */
export interface Known {
  readonly wired: Wired
  readonly taken: Taken
  readonly ticked: ReadonlySet<string>
  readonly off: LiveState | undefined
  readonly now: LiveState | undefined
}

export const isOff = (at: string): boolean => at === 'insulated' || at === 'loose'

/** The part of a terminal's name that stands on the board. */
export const shortName = (at: string): string => at.slice(at.indexOf('.') + 1)

function endRow(
  known: Known,
  { end, panel, panelLabel, terminal, fixing }: SheetWire['ends'][number],
): EndRow {
  const { taken, ticked, off, now } = known
  const at = taken.landing.ends[end] ?? 'loose'
  const planned = taken.planned.ends[end] ?? 'loose'
  return {
    end,
    panel,
    panelLabel,
    at,
    planned,
    isMoved: at !== planned,
    isTicked: ticked.has(end),
    // What the sheet says of a fixing is of the terminal that it has the end on.
    fixing: terminal !== undefined && at === `${panel}.${terminal}` ? fixing : undefined,
    now: now?.ends[end],
    isLiveWhenOff: off?.ends[end]?.isLive ?? false,
  }
}

/** Every wire of the job, in the order of its numbers. */
export function rowsOf(known: Known): readonly WireRow[] {
  return known.wired.sheet.wires
    .flatMap(({ title, plug, wires }) =>
      wires.map(wire => {
        const ends = wire.ends.map(each => endRow(known, each))
        return { wire, title, plug, ends, isDone: ends.every(each => each.isTicked) }
      }),
    )
    .sort((a, b) => a.wire.number - b.wire.number)
}

export interface Progress {
  readonly done: number
  readonly all: number
}

export const progressOf = (rows: readonly WireRow[]): Progress => ({
  done: rows.flatMap(each => each.ends).filter(each => each.isTicked).length,
  all: rows.flatMap(each => each.ends).length,
})

/** The first wire with an end that nobody has landed yet, after another if one is given. */
export function nextToLand(rows: readonly WireRow[], after?: string): WireRow | undefined {
  const open = rows.filter(each => !each.isDone)
  const from = rows.findIndex(each => each.wire.id === after)
  return open.find(each => rows.indexOf(each) > from) ?? open[0]
}

/** The neighbour of a wire among some, round and round. */
export function neighbour(
  rows: readonly WireRow[],
  of: string | undefined,
  step: 1 | -1,
): WireRow | undefined {
  const from = rows.findIndex(each => each.wire.id === of)
  if (from < 0) return step > 0 ? rows[0] : rows.at(-1)
  return rows[(from + step + rows.length) % rows.length]
}

const LEAST_AMPS = 0.01 // less is leakage, which no clamp meter shows

export const carries = ({ amps }: LivePoint): boolean => amps >= LEAST_AMPS

/** How figures are written: from words, so that no sentence is made here. */
export interface Tell {
  readonly amps: (value: number) => string
  readonly volts: (value: number) => string
  readonly liveWhenOff: string
}

/** What stands on the wire of an end, the longest first. */
function textsFor(point: LivePoint, stays: boolean, tell: Tell): readonly string[] {
  const figures = [
    ...(carries(point) ? [tell.amps(point.amps)] : []),
    ...(point.isLive ? [tell.volts(point.volts)] : []),
  ]
  return [
    ...(stays ? [`${figures.join(' · ')} · ${tell.liveWhenOff}`] : []),
    figures.join(' · '),
    ...(figures.length > 1 ? figures : []),
  ]
}

/** What the wires of one panel carry; a lead of a load that is live with everything off is told apart. */
export function chargesOf(rows: readonly WireRow[], panel: string, tell: Tell): readonly Charge[] {
  return rows.flatMap(({ wire, ends }) => {
    const here = ends.find(each => each.panel === panel)
    const point = here?.now
    if (!here || !point || !(point.isLive || carries(point))) return []
    const stays = point.isLive && here.isLiveWhenOff && wire.kind === 'lead'
    return [
      {
        number: wire.number,
        kind: stays ? 'stays' : point.isLive ? 'live' : 'carries',
        texts: textsFor(point, stays, tell),
        amps: point.amps,
      },
    ]
  })
}
