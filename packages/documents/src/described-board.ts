import type {
  Board,
  ControlBox,
  JobSheet,
  PanelPartner,
  SheetMessage,
  SheetPanel,
  SheetWire,
  SupplyDevice,
  WireRole,
} from '@tubwright/core'
import { drawBoard } from './board/draw-board.ts'
import type { SheetWords } from './sheet-words.ts'

/** A remark that is to be marked on the drawing: its number, and where in the file it is. */
export interface Mark {
  readonly number: number
  readonly path: readonly (string | number)[]
}

const ROLES: Readonly<Record<string, WireRole>> = {
  leg1: 'leg1',
  leg2: 'leg2',
  leg3: 'leg3',
  neutral: 'neutral',
  earth: 'earth',
  low: 'low',
  common: 'return',
  signal: 'signal',
  data: 'signal',
}

/** Something that conductors lead to: a place of the box, or what feeds it. */
interface Target {
  readonly id: string
  readonly label: string
  readonly symbol: PanelPartner['symbol']
  /** Terminals by what they carry. */
  readonly lands: readonly (readonly [does: string, terminal: string])[]
}

const millimetres = (metres: number): number => Math.round(metres * 100_000) / 100

const own = (does: string): string => does.replace(/^second-/u, '')

const landsOf = (lands: Readonly<Record<string, string | undefined>>): Target['lands'] =>
  Object.entries(lands).flatMap(([does, terminal]) =>
    terminal === undefined ? [] : [[does, terminal] as const],
  )

const targetsOfBox = ({ places, feeds }: ControlBox): readonly Target[] => {
  const fed = new Map(feeds.flatMap(each => landsOf(each.lands)))
  const supply: Target = {
    id: 'feed',
    label: feeds.map(each => each.label).join(' / '),
    symbol: 'cable',
    lands: [...fed],
  }
  const loads = places.map(
    ({ id, label, takes, lands }): Target => ({
      id,
      label,
      symbol: takes[0] ?? 'cable',
      lands: landsOf(lands),
    }),
  )
  return [supply, ...loads]
}

const targetsOfDevice = ({ lands, label }: SupplyDevice): readonly Target[] => [
  { id: 'tub', label, symbol: 'box', lands: landsOf(lands) },
]

const functionText = (does: string) => ({
  message: `function.${does}` as SheetMessage,
  params: {},
})

function wireOf([does, terminal]: Target['lands'][number], number: number): SheetWire {
  return {
    number,
    id: `${terminal}.${does}`,
    kind: 'lead',
    owner: terminal,
    function: does as SheetWire['function'],
    functionText: functionText(does),
    role: ROLES[own(does)] ?? 'hot',
    colour: 'black',
    letters: '',
    size: '',
    ends: [],
    reidentify: false,
    notes: [],
  }
}

const marksAt = (marks: readonly Mark[], list: string, index: number): readonly number[] =>
  marks
    .filter(({ path: [board, kind, at] }) => board === 'board' && kind === list && at === index)
    .map(each => each.number)

function panelOf(
  board: Board,
  label: string,
  marks: readonly Mark[],
  partners: readonly PanelPartner[],
): SheetPanel {
  const numbersAt = (terminal: string) =>
    partners.flatMap(each =>
      each.pins.filter(pin => pin.terminal === terminal).map(pin => pin.wire),
    )
  return {
    id: 'box',
    label,
    width: millimetres(board.size.width.si),
    height: millimetres(board.size.height.si),
    terminals: board.terminals.map(({ id, label: name, kind, class: kept, at }, index) => ({
      id,
      label: name ?? '',
      kind,
      class: kept,
      x: millimetres(at[0].si),
      y: millimetres(at[1].si),
      wires: numbersAt(id),
      points: marksAt(marks, 'terminals', index),
    })),
    jumpers: board.jumpers.map((jumper, index) => ({
      id: jumper.id,
      label: jumper.label,
      ...(jumper.at
        ? { at: { x: millimetres(jumper.at[0].si), y: millimetres(jumper.at[1].si) } }
        : {}),
      positions: jumper.positions.map(each => ({ id: each.id, label: each.label ?? each.id })),
      from: jumper.factory,
      to: jumper.factory,
      moves: false,
      points: marksAt(marks, 'jumpers', index),
    })),
    fuses: [],
    partners,
  }
}

/**
 * Draws the board of a description that no job uses yet: each place with the terminals that its load
 * would land on, and the remarks about terminals and jumpers by number.
 *
 * @returns an SVG element, one unit to the millimetre
 */
export function drawDescribed(
  described: ControlBox | SupplyDevice,
  marks: readonly Mark[],
  words: SheetWords,
): string {
  const isBox = described.schema === 'control-box/1'
  const targets = isBox ? targetsOfBox(described) : targetsOfDevice(described)
  let number = 0
  const groups = targets.map(target => ({
    target,
    wires: target.lands.map(each => wireOf(each, ++number)),
  }))
  const partners = groups.map(
    ({ target, wires }, index): PanelPartner => ({
      id: target.id,
      label: target.label,
      symbol: target.symbol,
      pins: wires.map(each => ({
        wire: each.number,
        terminal: each.owner,
        text: each.functionText,
      })),
      points: isBox
        ? marks
            .filter(({ path }) => path[0] === 'places' && path[1] === index - 1)
            .map(each => each.number)
        : [],
    }),
  )
  const sheet: Pick<JobSheet, 'panels' | 'wires'> = {
    panels: [panelOf(described.board, described.label, marks, partners)],
    wires: groups.map(({ target, wires }) => ({
      owner: target.id,
      title: functionText('hot'),
      plug: undefined,
      wires,
    })),
  }
  return drawBoard(sheet as JobSheet, words)
}
