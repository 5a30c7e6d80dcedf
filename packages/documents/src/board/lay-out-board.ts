import type { PanelTerminal, SheetPanel, SheetWire } from '@tubwright/core'
import { invariant } from '@tubwright/core'
import type { SheetWords } from '../sheet-words.ts'
import type { Block, Run } from './blocks.ts'
import {
  blockCentres,
  blocksBySide,
  MARGIN,
  pinLimits,
  pinRoom,
  roomFor,
  SYMBOL_ROOM,
} from './blocks.ts'
import type { Exit } from './exits.ts'
import { discBox, exitOf, terminalPoint } from './exits.ts'
import { faultsOf } from './faults.ts'
import type { BySide, Frame, Paper } from './frame.ts'
import {
  blockDepth,
  frameOf,
  LINE_HEIGHT,
  laneDepth,
  PAGE_WIDTH,
  PITCH,
  paperBox,
  paperPoint,
  TEXT,
} from './frame.ts'
import { assignLanes } from './lanes.ts'
import { clipText, textWidth } from './measure-text.ts'
import { around, freest, labelAbout, labelAt, labelHeight, turnedAbout } from './place-label.ts'
import type {
  Box,
  Label,
  Scene,
  SceneJumper,
  ScenePartner,
  SceneTerminal,
  SceneWire,
} from './scene.ts'
import { runsOf } from './scene.ts'
import type { Side } from './sides.ts'
import { depthOf, isUpright, nearestSide, SIDES } from './sides.ts'
import { spread } from './spread.ts'

/** Most height of a board on paper [mm], so that board and loads fit one page. */
const BOX_HEIGHT = 96
const DEVICE_HEIGHT = 46
const MOST_ROUNDS = 6

interface Routed {
  readonly run: Run
  readonly side: Side
  readonly exit: Exit
  readonly leaves: number
  readonly lane: number | undefined
}

interface PlacedBlock {
  readonly block: Block
  readonly side: Side
  readonly centre: number
  readonly routed: readonly Routed[]
}

/**
 * Places a board, its terminals and jumpers where the eye finds them, its loads around it, and
 * the wires between them: straight where they can be, else one bend in a lane of their own.
 */
export function layOutBoard(
  panel: SheetPanel,
  sheetWires: readonly SheetWire[],
  words: SheetWords,
): Scene {
  const wires = new Map(sheetWires.map(each => [each.number, each] as const))
  let best: Scene | undefined
  let fewest = Number.POSITIVE_INFINITY
  for (const size of SIZES) {
    const scene = layOutOn(panel, wires, words, size)
    const faults = faultsOf(scene)
    if (faults < fewest) [best, fewest] = [scene, faults]
    if (faults === 0) break
  }
  invariant(best !== undefined, 'some size was tried')
  return best
}

/** Shares of the page: a board too crowded for one is drawn larger, and scaled where it is shown. */
const SIZES = [1, 1.2, 1.4, 1.7, 2, 2.4, 2.9, 3.5] as const

function layOutOn(
  panel: SheetPanel,
  wires: ReadonlyMap<number, SheetWire>,
  words: SheetWords,
  size: number,
): Scene {
  const paper: Paper = {
    width: PAGE_WIDTH * size,
    boardHeight: size * (panel.id === 'box' ? BOX_HEIGHT : DEVICE_HEIGHT),
  }
  const blocks = blocksBySide(panel, wires, words, paper.width)
  let lanes: BySide<number> = { left: 0, right: 0, top: 0, bottom: 0 }
  let frame = frameFor(panel, blocks, lanes, paper)
  let placed = placeBlocks(panel, frame, blocks)
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const needed = lanesOf(placed)
    if (SIDES.every(side => needed[side] <= lanes[side])) break
    lanes = needed
    frame = frameFor(panel, blocks, lanes, paper)
    placed = placeBlocks(panel, frame, blocks)
  }
  return sceneOf(panel, frame, placed, words)
}

function frameFor(
  panel: SheetPanel,
  blocks: BySide<readonly Block[]>,
  lanes: BySide<number>,
  paper: Paper,
): Frame {
  const rooms = {
    left: roomFor('left', blocks.left, lanes.left),
    right: roomFor('right', blocks.right, lanes.right),
    top: roomFor('top', blocks.top, lanes.top),
    bottom: roomFor('bottom', blocks.bottom, lanes.bottom),
  }
  const sides = sidesOfTerminals(panel, blocks)
  return frameOf(panel, rooms, paper, each => sides.get(each.id) ?? 'left')
}

/** The side that each terminal belongs to: its load's, else the nearest. */
function sidesOfTerminals(
  panel: SheetPanel,
  blocks: BySide<readonly Block[]>,
): ReadonlyMap<string, Side> {
  const sides = new Map(panel.terminals.map(each => [each.id, nearestSide(panel, each)] as const))
  for (const side of SIDES)
    for (const { runs } of blocks[side])
      for (const { terminal } of runs) sides.set(terminal.id, side)
  return sides
}

function lanesOf(placed: readonly PlacedBlock[]): BySide<number> {
  const most = (side: Side): number =>
    Math.max(
      0,
      ...placed
        .filter(each => each.side === side)
        .flatMap(({ routed }) => routed.map(({ lane }) => (lane === undefined ? 0 : lane + 1))),
    )
  return { left: most('left'), right: most('right'), top: most('top'), bottom: most('bottom') }
}

/** A terminal is drawn as large as its neighbours allow, so that its wire's number fits into it. */
function radiusFor({ terminals }: Frame): number {
  const points = [...terminals.values()]
  let nearest = Number.POSITIVE_INFINITY
  points.forEach((a, index) => {
    for (const b of points.slice(index + 1))
      nearest = Math.min(nearest, Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)))
  })
  return Math.max(1.75, Math.min(2.2, nearest / 2 - 0.15))
}

const SEAT_PITCH = 1.9 // [mm] two wires on one terminal that can be told apart

/** How far off the middle of its terminal a wire leaves: beside the others on it, in their order. */
function shiftOf(
  run: Run,
  side: Side,
  runs: readonly { readonly run: Run; readonly side: Side }[],
  radius: number,
): number {
  const here = runs.filter(each => each.side === side && each.run.terminal.id === run.terminal.id)
  const pitch = Math.min(SEAT_PITCH, (2 * radius - 0.6) / Math.max(1, here.length - 1))
  return (here.findIndex(each => each.run === run) - (here.length - 1) / 2) * pitch
}

/** Leaves terminals near the edge first: those further in go round them. */
function exitsOf(
  panel: SheetPanel,
  frame: Frame,
  runs: readonly { readonly run: Run; readonly side: Side }[],
): ReadonlyMap<Run, Exit> {
  const radius = radiusFor(frame)
  const discs = panel.terminals.map(each => ({
    id: each.id,
    box: discBox(terminalPoint(frame, each), radius + 0.3),
  }))
  const exits = new Map<Run, Exit>()
  const taken: Box[] = []
  const ordered = [...runs].sort(
    (a, b) => depthOf(panel, a.run.terminal, a.side) - depthOf(panel, b.run.terminal, b.side),
  )
  for (const { run, side } of ordered) {
    const others = discs.filter(each => each.id !== run.terminal.id).map(each => each.box)
    const seat = { terminal: run.terminal, shift: shiftOf(run, side, runs, radius) }
    const exit = exitOf(frame, side, seat, radius, [...others, ...taken])
    exits.set(run, exit)
    taken.push(...runsOf(exit.points, 0.6))
  }
  return exits
}

function placeBlocks(
  panel: SheetPanel,
  frame: Frame,
  blocks: BySide<readonly Block[]>,
): readonly PlacedBlock[] {
  const exits = exitsOf(
    panel,
    frame,
    SIDES.flatMap(side => blocks[side].flatMap(({ runs }) => runs.map(run => ({ run, side })))),
  )
  const enters = (run: Run): number => exits.get(run)?.enters ?? 0
  return SIDES.flatMap(side => {
    const centres = blockCentres(frame, side, blocks[side], enters)
    const pinned = blocks[side].map((block, index) => {
      const centre = centres[index] ?? 0
      const runs = [...block.runs].sort((a, b) => enters(a) - enters(b))
      return { block, centre, runs, pins: pinsOf(side, block, centre, runs.map(enters)) }
    })
    const lanes = assignLanes(
      pinned.flatMap(({ runs, pins }) =>
        runs.map((run, at) => ({ enters: enters(run), leaves: pins[at] ?? 0 })),
      ),
    )
    let next = 0
    return pinned.map(({ block, centre, runs, pins }) => ({
      block,
      side,
      centre,
      routed: runs.flatMap((run, at) => {
        const exit = exits.get(run)
        const lane = lanes[next++]
        return exit ? [{ run, side, exit, leaves: pins[at] ?? 0, lane }] : []
      }),
    }))
  })
}

const STRAIGHT = 0.4 // [mm] a bend smaller than this is none

function pinsOf(
  side: Side,
  block: Block,
  centre: number,
  enters: readonly number[],
): readonly number[] {
  const gaps = enters.slice(1).map(() => PITCH)
  return spread(enters, gaps, pinLimits(side, block, centre)).map((pin, index) => {
    const own = enters[index] ?? pin
    return Math.abs(own - pin) < STRAIGHT ? own : pin
  })
}

function sceneOf(
  panel: SheetPanel,
  frame: Frame,
  placed: readonly PlacedBlock[],
  words: SheetWords,
): Scene {
  const radius = radiusFor(frame)
  const routed = placed.flatMap(each => each.routed)
  const wires = routed.map(each => sceneWire(panel, frame, each))
  const jumpers = panel.jumpers.flatMap(each => sceneJumper(frame, each))
  const labels = [
    ...routed.flatMap(each => tagLabel(frame, each)),
    ...placed.flatMap(each => blockLabels(frame, each)),
    ...panel.terminals.flatMap(each => numberLabel(frame, each)),
  ]
  return {
    width: frame.width,
    height: frame.height,
    board: frame.board,
    wires,
    terminals: panel.terminals.map(each => sceneTerminal(frame, each, radius)),
    partners: placed.map(each => scenePartner(frame, each)),
    jumpers,
    labels: [...labels, ...boardLabels({ panel, frame, placed, radius, wires, jumpers, words })],
    unplaced: panel.jumpers.filter(each => !each.at).map(each => each.id),
  }
}

function sceneWire(
  panel: SheetPanel,
  frame: Frame,
  { run, side, exit, leaves, lane }: Routed,
): SceneWire {
  const end = paperPoint(frame, side, leaves, blockDepth(frame, side))
  const bend =
    lane === undefined
      ? []
      : [exit.enters, leaves].map(along =>
          paperPoint(frame, side, along, laneDepth(frame, side, lane)),
        )
  const here = run.wire.ends.find(
    each => each.panel === panel.id && each.terminal === run.terminal.id,
  )
  return {
    number: run.wire.number,
    ...(here ? { end: here.end } : {}),
    role: run.wire.role,
    colour: run.wire.colour,
    says: `${run.tag} ${run.pinText} ${run.terminal.id}`,
    points: [...exit.points, ...bend, end],
  }
}

const sceneTerminal = (frame: Frame, terminal: PanelTerminal, radius: number): SceneTerminal => ({
  ...terminalPoint(frame, terminal),
  id: terminal.id,
  radius,
  isSquare: terminal.kind === 'tab' || terminal.kind === 'pin',
  isUsed: terminal.wires.length > 0,
  says: `${terminal.id} ${terminal.label}`.trim(),
})

function scenePartner(frame: Frame, { block, side, centre }: PlacedBlock): ScenePartner {
  const box = blockBox(frame, side, block, centre)
  return {
    ...box,
    symbol: block.partner.symbol,
    at: symbolPoint(frame, side, block, centre),
    says: block.label,
  }
}

function blockBox(frame: Frame, side: Side, { extent }: Block, centre: number): Box {
  const near = blockDepth(frame, side)
  return paperBox(
    frame,
    side,
    [centre - extent / 2, centre + extent / 2],
    [near, near + frame.rooms[side].depth],
  )
}

/** Depth from the near edge of the loads to the middle of their symbols, above and below a board. */
const symbolDepth = (frame: Frame, side: Side, lines: number): number =>
  frame.rooms[side].depth - MARGIN - lines * LINE_HEIGHT - SYMBOL_ROOM / 2

function symbolPoint(frame: Frame, side: Side, block: Block, centre: number) {
  const near = blockDepth(frame, side)
  if (isUpright(side))
    return paperPoint(frame, side, centre, near + symbolDepth(frame, side, block.lines.length))
  const [from, to] = pinLimits(side, block, centre)
  return paperPoint(frame, side, (from + to) / 2, near + frame.rooms[side].depth - 4)
}

const OFF_LINE = 0.65 // [mm] from the middle of a wire to its tag

function tagLabel(frame: Frame, { run, side, leaves }: Routed): readonly Label[] {
  const middle = blockDepth(frame, side) - frame.rooms[side].stub / 2
  const at = paperPoint(frame, side, leaves, middle)
  const aside = OFF_LINE + labelHeight(TEXT) / 2
  const label = isUpright(side)
    ? turnedAbout('tag', run.tag, { x: at.x - aside, y: at.y })
    : labelAbout('tag', run.tag, { x: at.x, y: at.y - aside })
  return [{ ...label, wire: run.wire.number }]
}

function blockLabels(frame: Frame, placed: PlacedBlock): readonly Label[] {
  return [
    ...pinLabels(frame, placed),
    ...titleLabels(frame, placed),
    ...partnerPoints(frame, placed),
  ]
}

function pinLabels(frame: Frame, { block, side, routed }: PlacedBlock): readonly Label[] {
  const near = blockDepth(frame, side)
  const room = isUpright(side) ? pinRoom([block]) : frame.rooms[side].depth - SYMBOL_ROOM - MARGIN
  return routed.map(({ run, leaves }) => {
    const text = clipText(run.pinText, TEXT, room)
    const half = textWidth(text, TEXT) / 2 + 0.8
    const middle = paperPoint(frame, side, leaves, near + half)
    const label = isUpright(side)
      ? turnedAbout('pin', text, middle)
      : labelAbout('pin', text, middle)
    return { ...label, wire: run.wire.number }
  })
}

function titleLabels(frame: Frame, { block, side, centre }: PlacedBlock): readonly Label[] {
  const box = blockBox(frame, side, block, centre)
  const isBelow = side === 'bottom'
  const top = isBelow
    ? box.y + box.height - MARGIN - block.lines.length * LINE_HEIGHT
    : box.y + MARGIN
  return block.lines.map((line, index) => {
    const y = top + index * LINE_HEIGHT
    return isUpright(side)
      ? labelAbout('partner', line, { x: centre, y: y + LINE_HEIGHT / 2 })
      : labelAt('partner', line, { x: box.x + MARGIN, y })
  })
}

const pointText = (points: readonly number[]): string => `!${points.join(',')}`

function partnerPoints(frame: Frame, { block, side, centre }: PlacedBlock): readonly Label[] {
  const { points } = block.partner
  if (points.length === 0) return []
  const symbol = symbolPoint(frame, side, block, centre)
  const text = clipText(pointText(points), TEXT, block.extent / 2 - 4)
  return isUpright(side)
    ? [labelAt('point', text, { x: symbol.x + 3.8, y: symbol.y - labelHeight(TEXT) / 2 })]
    : [
        labelAbout('point', text, {
          x: symbol.x + (side === 'left' ? 7.5 : -7.5),
          y: symbol.y,
        }),
      ]
}

function numberLabel(frame: Frame, terminal: PanelTerminal): readonly Label[] {
  const { wires } = terminal
  if (wires.length === 0) return []
  // Two wires have no room for both numbers: their tags have them.
  const text = wires.length > 1 ? `${wires.length}×` : String(wires[0])
  return [labelAbout('number', text, terminalPoint(frame, terminal))]
}

const PAD = 2.6 // [mm]

function sceneJumper(
  { board, scale }: Frame,
  jumper: SheetPanel['jumpers'][number],
): readonly SceneJumper[] {
  if (!jumper.at) return []
  const pads = jumper.positions.length
  const width = pads * PAD
  return [
    {
      id: jumper.id,
      x: board.x + jumper.at.x * scale.x - width / 2,
      y: board.y + jumper.at.y * scale.y - PAD / 2,
      width,
      height: PAD,
      pads,
      planned: jumper.positions.findIndex(each => each.id === jumper.to),
      moves: jumper.moves,
      says: `${jumper.id} ${jumper.label}`,
    },
  ]
}

interface Inside {
  readonly panel: SheetPanel
  readonly frame: Frame
  readonly placed: readonly PlacedBlock[]
  readonly radius: number
  readonly wires: readonly SceneWire[]
  readonly jumpers: readonly SceneJumper[]
  readonly words: SheetWords
}

/** Names of terminals, positions of jumpers and marks of findings, each where there is room. */
function boardLabels(inside: Inside): readonly Label[] {
  const { panel, frame, radius, wires, jumpers } = inside
  const taken: Box[] = [
    ...wires.flatMap(each => runsOf(each.points, 0.5)),
    ...panel.terminals.map(each => discBox(terminalPoint(frame, each), radius)),
    ...jumpers.map(each => grown(each, 0.7)),
  ]
  const labels: Label[] = []
  const put = (candidates: readonly Label[]) => {
    const label = freest(candidates, taken, frame.board)
    if (!label) return
    labels.push(label)
    taken.push(label)
  }
  for (const terminal of panel.terminals) put(terminalNames(inside, terminal))
  for (const [jumper, box] of placedJumpers(inside)) put(around('jumper', jumper, box))
  for (const [text, box] of marksOf(inside)) put(around('point', text, box))
  return labels
}

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
})

/** Inwards first: outwards runs the wire. */
function terminalNames(
  { panel, frame, placed, radius }: Inside,
  terminal: PanelTerminal,
): readonly Label[] {
  const box = discBox(terminalPoint(frame, terminal), radius)
  const side =
    placed.find(({ block }) => block.runs.some(run => run.terminal.id === terminal.id))?.side ??
    nearestSide(panel, terminal)
  const all = around('terminal', terminal.id, box)
  const first = { left: 0, right: 1, top: 3, bottom: 2 }[side]
  const inwards = all[first]
  return inwards ? [inwards, ...all] : all
}

const JUMPER_ROOM = 30 // [mm]

function placedJumpers({ panel, jumpers, words }: Inside): readonly (readonly [string, Box])[] {
  return panel.jumpers
    .filter(each => each.at)
    .flatMap((jumper, index) => {
      const box = jumpers[index]
      const position = jumper.positions.find(each => each.id === jumper.to)?.label ?? jumper.to
      const moves = jumper.moves ? `${words.page.move} ` : ''
      const text = clipText(`${moves}${jumper.id}: ${position}`, TEXT, JUMPER_ROOM)
      return box ? [[text, box] as const] : []
    })
}

function marksOf({ panel, frame, radius, jumpers }: Inside): readonly (readonly [string, Box])[] {
  const terminals = panel.terminals
    .filter(each => each.points.length > 0)
    .map(each => [pointText(each.points), discBox(terminalPoint(frame, each), radius)] as const)
  const marked = panel.jumpers
    .filter(each => each.at)
    .flatMap((jumper, index) => {
      const box = jumpers[index]
      return jumper.points.length > 0 && box ? [[pointText(jumper.points), box] as const] : []
    })
  return [...terminals, ...marked]
}
