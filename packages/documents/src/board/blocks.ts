import type { PanelPartner, PanelTerminal, SheetPanel, SheetWire } from '@tubwright/core'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { BySide, Frame, SideRoom } from './frame.ts'
import { LINE_HEIGHT, PITCH, sideSpan, TEXT } from './frame.ts'
import { textWidth, wrapText } from './measure-text.ts'
import type { Side } from './sides.ts'
import { isUpright, SIDES, sideOf } from './sides.ts'
import { spread } from './spread.ts'

/** One wire of a load, between its terminal and its pin. */
export interface Run {
  readonly wire: SheetWire
  readonly terminal: PanelTerminal
  readonly pinText: string
  readonly tag: string
}

/** A load, or the far end of a cable, beside the board. */
export interface Block {
  readonly partner: PanelPartner
  readonly label: string
  readonly runs: readonly Run[]
  readonly lines: readonly string[]
  /** Its extent along its side. */
  readonly extent: number
}

const GAP = 2.5
const LEAST = 44 // [mm] wanted width of a load above or below the board
const SIDE_DEPTH = 31 // [mm] of a load left or right of it
const TITLE_LINES = 4
export const SYMBOL_ROOM = 7
export const MARGIN = 1

const tagOf = ({ number, letters, reidentify }: SheetWire): string =>
  `${number} ${letters}${reidentify ? '*' : ''}`

function runsFor(
  panel: SheetPanel,
  partner: PanelPartner,
  wires: ReadonlyMap<number, SheetWire>,
  words: SheetWords,
): readonly Run[] {
  return partner.pins.flatMap(pin => {
    const wire = wires.get(pin.wire)
    const terminal = panel.terminals.find(each => each.id === pin.terminal)
    if (!wire || !terminal) return []
    const name = textOf(pin.text, words)
    const pinText = pin.far === undefined ? name : `${name} · ${pin.far}`
    return [{ wire, terminal, pinText, tag: tagOf(wire) }]
  })
}

const alongOf = (side: Side, { x, y }: PanelTerminal): number => (isUpright(side) ? x : y)

const mean = (runs: readonly Run[], side: Side): number =>
  runs.reduce((sum, each) => sum + alongOf(side, each.terminal), 0) / Math.max(1, runs.length)

/** The loads of a panel by the side they stand on, in the order of their terminals. */
export function blocksBySide(
  panel: SheetPanel,
  wires: ReadonlyMap<number, SheetWire>,
  words: SheetWords,
  paperWidth: number,
): BySide<readonly Block[]> {
  const raw = panel.partners.map(partner => ({ partner, side: sideOf(panel, partner) }))
  const of = (side: Side): readonly Block[] => {
    const loads = raw
      .filter(each => each.side === side)
      .map(({ partner }) => {
        const runs = [...runsFor(panel, partner, wires, words)].sort(
          (a, b) => alongOf(side, a.terminal) - alongOf(side, b.terminal),
        )
        const label =
          typeof partner.label === 'string' ? partner.label : textOf(partner.label, words)
        return { partner, runs, label: kept(capital(label)) }
      })
      .sort((a, b) => mean(a.runs, side) - mean(b.runs, side))
    return isUpright(side) ? uprightBlocks(loads, paperWidth) : sideBlocks(loads)
  }
  const [left, right, top, bottom] = SIDES.map(of)
  return { left: left ?? [], right: right ?? [], top: top ?? [], bottom: bottom ?? [] }
}

/** A number stays on one line with its unit. */
const kept = (label: string): string => label.replace(/(\d) (?=[A-Za-z]{1,2}\b)/gu, '$1\u00A0')

type Raw = Pick<Block, 'partner' | 'runs' | 'label'>

function uprightBlocks(loads: readonly Raw[], paperWidth: number): readonly Block[] {
  const least = loads.map(({ runs }) => runs.length * PITCH + 2 * MARGIN)
  const used = least.reduce((sum, each) => sum + each, 0) + GAP * (loads.length - 1)
  const spare = Math.max(0, paperWidth - 1 - used) / Math.max(1, loads.length)
  return loads.map((load, index) => {
    const base = least[index] ?? 0
    const extent = base + Math.min(spare, Math.max(0, LEAST - base))
    const lines = wrapText(load.label, {
      size: TEXT,
      room: extent - 2 * MARGIN,
      lines: TITLE_LINES,
    })
    return { ...load, extent, lines }
  })
}

const sideBlocks = (loads: readonly Raw[]): readonly Block[] =>
  loads.map(load => {
    const lines = wrapText(load.label, {
      size: TEXT,
      room: SIDE_DEPTH - 2 * MARGIN,
      lines: TITLE_LINES,
    })
    const rows = Math.max(load.runs.length * PITCH, SYMBOL_ROOM)
    return { ...load, lines, extent: lines.length * LINE_HEIGHT + rows + 2 * MARGIN }
  })

export const pinRoom = (blocks: readonly Block[]): number =>
  Math.max(0, ...blocks.flatMap(({ runs }) => runs.map(each => textWidth(each.pinText, TEXT)))) +
  1.5

/** What a side needs, with so many lanes. */
export function roomFor(side: Side, blocks: readonly Block[], lanes: number): SideRoom {
  if (blocks.length === 0) return { lanes: 0, stub: 0, depth: 0, along: 0 }
  const tags = blocks.flatMap(({ runs }) => runs.map(each => textWidth(each.tag, TEXT)))
  const lines = Math.max(...blocks.map(each => each.lines.length))
  return {
    lanes,
    stub: Math.max(...tags) + 1.5,
    depth: isUpright(side)
      ? pinRoom(blocks) + SYMBOL_ROOM + lines * LINE_HEIGHT + MARGIN
      : SIDE_DEPTH,
    along: blocks.reduce((sum, each) => sum + each.extent + GAP, -GAP),
  }
}

/** The middle of each block along its side, as near to its terminals as the others allow. */
export function blockCentres(
  frame: Frame,
  side: Side,
  blocks: readonly Block[],
  enters: (run: Run) => number,
): readonly number[] {
  const [from, to] = sideSpan(frame, side)
  const first = blocks[0]?.extent ?? 0
  const last = blocks.at(-1)?.extent ?? 0
  const gaps = blocks
    .slice(1)
    .map((each, index) => (each.extent + (blocks[index]?.extent ?? 0)) / 2 + GAP)
  const wanted = blocks.map(({ runs, extent, lines }) => {
    const middle = runs.reduce((sum, each) => sum + enters(each), 0) / Math.max(1, runs.length)
    return isUpright(side) ? middle : middle - (extent - pinSpan(extent, lines)) / 2
  })
  return spread(wanted, gaps, [from + first / 2, to - last / 2])
}

const pinSpan = (extent: number, lines: readonly string[]): number =>
  extent - lines.length * LINE_HEIGHT

/** Where the pins of a block may stand along its side. */
export function pinLimits(side: Side, block: Block, centre: number): readonly [number, number] {
  const from = centre - block.extent / 2
  const title = isUpright(side) ? 0 : block.lines.length * LINE_HEIGHT
  return [from + MARGIN + title + PITCH / 2, centre + block.extent / 2 - MARGIN - PITCH / 2]
}
