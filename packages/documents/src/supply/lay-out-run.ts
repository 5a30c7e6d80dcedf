import type { CircuitReport, SupplyReport, Survey, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { textWidth, wrapText } from '../board/measure-text.ts'
import type { Box, Point } from '../board/scene.ts'
import type { Piece, RunContext, RunLine } from './run-lines.ts'
import {
  deviceLines,
  endLines,
  headLine,
  panelLines,
  pieceLines,
  piecesOf,
  runSays,
} from './run-lines.ts'
import { withUnits } from './run-text.ts'
import { worstOf } from './sign.ts'

/** One line of text with the room that it takes. */
export interface RunLabel extends Box {
  readonly text: string
  readonly isBold: boolean
  readonly verdict?: Verdict
}

/** The drawing of a run before it is ink, in pixels. */
export interface RunScene {
  readonly width: number
  readonly height: number
  readonly boxes: readonly Box[]
  /** From the panel towards the tub; the last point has an arrow. */
  readonly wires: readonly { readonly points: readonly Point[]; readonly verdict?: Verdict }[]
  readonly labels: readonly RunLabel[]
  /** The same for whoever does not see it. */
  readonly says: readonly string[]
}

const WIDTH = 700
const PANEL = 90 // width of the panel
const NEAR = 16 // from the panel to the first device
const BOX = 110 // width of a device
const WIDE_BOX = 128 // the same, where one segment leaves room
const PER_ROW = 2 // segments in a row, where there are more than one
const LINE_AT = 15 // the wire, below the top of its row
const PAD = 5
const ROUND = 28 // room of the wire that comes round from the row above
const ROW_GAP = 18
const CIRCUIT_GAP = 14
/** Of text: 11 px are 2.9 mm on paper. */
export const SIZE = 11
const BOLD = 1.08 // bold letters are wider than the measure knows
const LEADING = 13.5
/** Room of a sign before its word. */
export const SIGN_ROOM = 15
const LINES_MAX = 30 // of one text, where a word is as long as a label may be

interface Drawn {
  readonly boxes: Box[]
  readonly wires: { points: readonly Point[]; verdict?: Verdict }[]
  readonly labels: RunLabel[]
}

const sizeOf = ({ isBold }: Pick<RunLine, 'isBold'>): number => SIZE * (isBold ? BOLD : 1)

/** Every text, broken where the room ends. */
function broken(lines: readonly RunLine[], room: number): readonly RunLine[] {
  return lines.flatMap(({ verdict, ...line }) => {
    const own = room - (verdict ? SIGN_ROOM : 0)
    const pieces = wrapText(withUnits(line.text), {
      size: sizeOf(line),
      room: own,
      lines: LINES_MAX,
    })
    return pieces.map((text, index) => ({
      ...line,
      text,
      ...(verdict && index === 0 ? { verdict } : {}),
    }))
  })
}

const heightOf = (lines: readonly RunLine[]): number => lines.length * LEADING

function write({ labels }: Drawn, lines: readonly RunLine[], { x, y }: Point): void {
  for (const [index, line] of lines.entries())
    labels.push({
      ...line,
      x,
      y: y + index * LEADING,
      width: (line.verdict ? SIGN_ROOM : 0) + textWidth(line.text, sizeOf(line)),
      height: LEADING,
      isBold: line.isBold ?? false,
    })
}

/** A box as high as its text. */
function putBox(
  drawn: Drawn,
  lines: readonly RunLine[],
  { x, y, width }: Omit<Box, 'height'>,
): Box {
  const own = broken(lines, width - 2 * PAD)
  const box = { x, y, width, height: Math.max(2 * LINE_AT, heightOf(own) + 2 * PAD) }
  drawn.boxes.push(box)
  write(drawn, own, { x: x + PAD, y: y + PAD })
  return box
}

/** How the segments of a circuit share the width. */
interface Columns {
  readonly perRow: number
  readonly box: number
  readonly link: number
  /** Where the first segment of each row begins. */
  readonly from: number
}

/** In the first row panel and first device take room; in the others the wire that comes round. */
function columnsFor(segments: number, isFirst: boolean): Columns {
  const perRow = Math.min(PER_ROW, Math.max(1, segments))
  const box = perRow === 1 ? WIDE_BOX : BOX
  const from = isFirst ? PANEL + NEAR + box : ROUND
  return { perRow, box, from, link: (WIDTH - from) / perRow - box }
}

/** One row of segments, each with the thing at its end. @returns the last box, and where the row ends */
function putRow(
  drawn: Drawn,
  pieces: readonly Piece[],
  { top, box, link, from }: Columns & { readonly top: number },
  circuit: CircuitReport,
  context: RunContext,
): { readonly last: Box | undefined; readonly bottom: number } {
  let last: Box | undefined
  let bottom = top
  for (const [index, piece] of pieces.entries()) {
    const x = from + index * (link + box)
    const y = top + LINE_AT
    const lines = broken(pieceLines(piece, context), link - 2 * PAD)
    const verdict = worstOf(piece.segment.findings)
    const points = [
      { x, y },
      { x: x + link, y },
    ]
    drawn.wires.push({ points, ...(verdict ? { verdict } : {}) })
    write(drawn, lines, { x: x + PAD, y: y + PAD })
    last = putBox(drawn, endLines(circuit, piece, context), { x: x + link, y: top, width: box })
    bottom = Math.max(bottom, y + PAD + heightOf(lines), top + last.height)
  }
  return { last, bottom }
}

/** From below the last box of a row round to the beginning of the next. */
function turn(last: Box, below: number, next: Point): readonly Point[] {
  const middle = last.x + last.width / 2
  return [
    { x: middle, y: last.y + last.height },
    { x: middle, y: below },
    { x: PAD, y: below },
    { x: PAD, y: next.y },
    next,
  ]
}

/** The panel and the first device of a circuit. @returns where they end */
function putStart(
  drawn: Drawn,
  circuit: CircuitReport,
  { top, box }: Columns & { readonly top: number },
  context: RunContext,
): number {
  const [first] = circuit.install.devices
  const panel = putBox(drawn, panelLines(circuit, context), { x: 0, y: top, width: PANEL })
  if (!first) return top + panel.height
  const y = top + LINE_AT
  drawn.wires.push({
    points: [
      { x: PANEL, y },
      { x: PANEL + NEAR, y },
    ],
  })
  const device = putBox(drawn, deviceLines(circuit, first.device, context), {
    x: PANEL + NEAR,
    y: top,
    width: box,
  })
  return top + Math.max(panel.height, device.height)
}

/** One circuit from its head down. @returns where it ends */
function putCircuit(
  drawn: Drawn,
  circuit: CircuitReport,
  start: number,
  context: RunContext,
): number {
  const head = broken([headLine(circuit, context)], WIDTH)
  write(drawn, head, { x: 0, y: start })
  const pieces = piecesOf(circuit, context.survey)
  const first = columnsFor(pieces.length, true)
  const { perRow } = first
  let top = start + heightOf(head) + PAD
  let bottom = putStart(drawn, circuit, { ...first, top }, context)
  for (let at = 0; at < pieces.length; at += perRow) {
    const columns = columnsFor(pieces.length, at === 0)
    const row = putRow(drawn, pieces.slice(at, at + perRow), { ...columns, top }, circuit, context)
    bottom = Math.max(bottom, row.bottom)
    if (!row.last || at + perRow >= pieces.length) break
    top = bottom + ROW_GAP
    const next = { x: ROUND, y: top + LINE_AT }
    drawn.wires.push({ points: turn(row.last, bottom + ROW_GAP / 2, next) })
  }
  return bottom
}

/** The run of every circuit from the panel to the tub: circuits below each other, long runs in rows. */
export function layOutRun(report: SupplyReport, survey: Survey, words: Words): RunScene {
  const context = { report, survey, words }
  const drawn: Drawn = { boxes: [], wires: [], labels: [] }
  let at = 1
  for (const circuit of report.circuits) at = putCircuit(drawn, circuit, at, context) + CIRCUIT_GAP
  return {
    width: WIDTH,
    height: Math.max(1, at - CIRCUIT_GAP + PAD),
    ...drawn,
    says: runSays(context),
  }
}
