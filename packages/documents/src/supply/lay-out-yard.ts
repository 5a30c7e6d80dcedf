import type { SupplyReport, Survey, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import { textWidth, wrapText } from '../board/measure-text.ts'
import type { Box, Point } from '../board/scene.ts'
import { isOver } from '../board/scene.ts'
import { spread } from '../board/spread.ts'
import type { YardScale } from './yard-scale.ts'
import { scaleOf } from './yard-scale.ts'
import type { YardThing } from './yard-things.ts'
import { restOf, ringsOf, thingsOf } from './yard-things.ts'

/** One line of text with the room that it takes; a verdict has its sign beside it. */
export interface YardLabel extends Box {
  readonly kind: 'ring' | 'thing' | 'tub' | 'rest' | 'note'
  readonly text: string
  readonly isBold: boolean
  readonly verdict?: Verdict
  /** Flush right, its sign after its word: on the left of the drawing. */
  readonly isFlushRight: boolean
}

export interface YardMarker extends Point {
  readonly at: string
  readonly verdict: Verdict
  /** How far out it may stand besides, where its distance is not one. */
  readonly to?: Point
  /** To its label. */
  readonly leader: readonly Point[]
  readonly says: string
}

/** The yard before it is ink, in pixels. */
export interface YardScene {
  readonly width: number
  readonly height: number
  readonly middle: Point
  readonly tub: number
  readonly rings: readonly number[]
  readonly breakAt: number | undefined
  readonly markers: readonly YardMarker[]
  readonly labels: readonly YardLabel[]
  /** The same for whoever does not see it. */
  readonly says: readonly string[]
}

const WIDTH = 700
const COLUMN = 172 // of labels, on each side
const GAP = 10 // between a column and the plot
const RADIUS = WIDTH / 2 - COLUMN - GAP - 6
/** Of text: 11 px are 2.9 mm on paper. */
export const SIZE = 11
const BOLD = 1.08 // bold letters are wider than the measure knows
const LEADING = 13.5
/** Room of a sign beside its word. */
export const SIGN_ROOM = 15
/** Half of a marker. */
export const MARKER = 8
const BLOCK_GAP = 7
const MARGIN = 3
const NAME_LINES = 5
const SIDE = 64 // degrees to each side of level that markers keep to: rings are named above and below
const STEP = 4 // degrees between places that a marker may take

const SIGN_WORDS: Readonly<Record<Verdict, string>> = {
  holds: '✓',
  breaks: '✗',
  'not-shown': '?',
  provided: '?',
  'experts-differ': '?',
}

interface Placed {
  readonly thing: YardThing
  readonly side: 'left' | 'right'
  readonly degrees: number
  readonly point: Point
}

const onCircle = ({ x, y }: Point, radius: number, degrees: number): Point => ({
  x: x + radius * Math.cos((degrees * Math.PI) / 180),
  y: y + radius * Math.sin((degrees * Math.PI) / 180),
})

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y)

const ANGLES = Array.from({ length: (2 * SIDE) / STEP + 1 }, (_, index) => -SIDE + index * STEP)

/** Every place on its circle, on the sides that still have room. */
function candidates(
  thing: YardThing,
  middle: Point,
  radius: number,
  open: readonly Placed['side'][],
): readonly Placed[] {
  return open.flatMap(side =>
    ANGLES.map(angle => {
      const degrees = side === 'right' ? angle : 180 - angle
      return { thing, side, degrees, point: onCircle(middle, radius, degrees) }
    }),
  )
}

const TURN = 1.3 // [px] that a degree between two things on one side is worth

/** How far a place is from another thing: by its marker, and by what its leader has to pass. */
const clearance = (a: Placed, b: Placed): number =>
  a.side === b.side
    ? Math.min(apart(a.point, b.point), TURN * Math.abs(a.degrees - b.degrees))
    : apart(a.point, b.point)

/** As far from all others as can be; nearest things first, whose circles are the smallest. */
function placeAll(
  things: readonly YardThing[],
  middle: Point,
  scale: YardScale,
): readonly Placed[] {
  const known = things.flatMap(each => (each.span ? [{ each, from: each.span.from }] : []))
  const sorted = known.toSorted((a, b) => a.from - b.from)
  const room = Math.ceil(things.length / 2)
  const placed: Placed[] = []
  for (const { each, from } of sorted) {
    const open = (['right', 'left'] as const).filter(
      side => placed.filter(one => one.side === side).length < room,
    )
    const free = (one: Placed): number =>
      Math.min(1e6, ...placed.map(other => clearance(other, one)))
    const all = candidates(each, middle, scale.at(from), open)
    placed.push(all.reduce((a, b) => (free(b) > free(a) + 1e-6 ? b : a)))
  }
  return placed
}

interface Line {
  readonly text: string
  readonly isBold: boolean
  readonly verdict?: Verdict
}

const sizeOf = ({ isBold }: Pick<Line, 'isBold'>): number => SIZE * (isBold ? BOLD : 1)

const wrapped = (line: Line, room: number, most: number): readonly Line[] =>
  wrapText(line.text.trim(), {
    size: sizeOf(line),
    room: room - (line.verdict ? SIGN_ROOM : 0),
    lines: most,
  }).map((text, index) => ({
    text,
    isBold: line.isBold,
    ...(line.verdict && index === 0 ? { verdict: line.verdict } : {}),
  }))

function linesOf({ what, label, distance, verdict }: YardThing, words: Words): readonly Line[] {
  return [
    ...wrapped({ text: `${what}: ${distance}`, isBold: true }, COLUMN, 2),
    ...(label === '' ? [] : wrapped({ text: label, isBold: false }, COLUMN, NAME_LINES)),
    ...wrapped({ text: words.verdicts[verdict], isBold: false, verdict }, COLUMN, 2),
  ]
}

function labelAt(
  kind: YardLabel['kind'],
  line: Line,
  { x, y }: Point,
  isFlushRight = false,
): YardLabel {
  const width = (line.verdict ? SIGN_ROOM : 0) + textWidth(line.text, sizeOf(line))
  return {
    ...line,
    kind,
    x: isFlushRight ? x - width : x,
    y,
    width,
    height: LEADING,
    isFlushRight,
  }
}

interface Block {
  readonly thing: YardThing
  readonly lines: readonly Line[]
  readonly placed: Placed | undefined
}

const heightOf = ({ lines }: Block): number => lines.length * LEADING + BLOCK_GAP

interface Column {
  readonly labels: readonly YardLabel[]
  /** Where the leader of each thing ends. */
  readonly anchors: ReadonlyMap<YardThing, Point>
}

const yOf = ({ placed }: Block, height: number): number => placed?.point.y ?? height

/** Where each label begins, in this order and as near to its marker as the others allow. */
function topsOf(order: readonly Block[], height: number): readonly number[] {
  const last = order.at(-1)
  return spread(
    order.map(each => yOf(each, height) - heightOf(each) / 2),
    order.map(heightOf),
    [MARGIN, height - MARGIN - (last ? heightOf(last) : 0)],
  )
}

const anchorAt = (side: Placed['side'], top: number): Point => ({
  x: side === 'left' ? COLUMN + 3 : WIDTH - COLUMN - 3,
  y: top + LEADING / 2,
})

/** How far a point lies off a line between two others. */
function offLine({ x, y }: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const along = ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)
  const at = Math.max(0, Math.min(1, along))
  return apart({ x, y }, { x: from.x + at * dx, y: from.y + at * dy })
}

/** How many leaders of one side run under a marker that is not theirs. */
function hidden(
  order: readonly Block[],
  side: Placed['side'],
  height: number,
  all: readonly Placed[],
): number {
  const tops = topsOf(order, height)
  return order.reduce((count, { placed }, index) => {
    if (!placed) return count
    const anchor = anchorAt(side, tops[index] ?? 0)
    const under = all.filter(
      each => each !== placed && offLine(each.point, placed.point, anchor) < MARKER + 1,
    )
    return count + under.length
  }, 0)
}

const swapped = (order: readonly Block[], at: number): readonly Block[] => [
  ...order.slice(0, at),
  ...order.slice(at, at + 2).toReversed(),
  ...order.slice(at + 2),
]

const PASSES = 4 // over a column, swapping neighbours

/** From top to bottom as the markers are, but where another order hides fewer leaders. */
function ordered(
  blocks: readonly Block[],
  side: Placed['side'],
  height: number,
  all: readonly Placed[],
): readonly Block[] {
  let best = blocks.toSorted((a, b) => yOf(a, 1e6) - yOf(b, 1e6))
  let least = hidden(best, side, height, all)
  for (let pass = 0; pass < PASSES && least > 0; pass++)
    for (let at = 0; at + 1 < best.length; at++) {
      const other = swapped(best, at)
      const count = hidden(other, side, height, all)
      if (count < least) [best, least] = [[...other], count]
    }
  return best
}

/** The labels of one side. */
function column(
  blocks: readonly Block[],
  side: Placed['side'],
  height: number,
  all: readonly Placed[],
): Column {
  const order = ordered(blocks, side, height, all)
  const tops = topsOf(order, height)
  const isLeft = side === 'left'
  const x = isLeft ? COLUMN : WIDTH - COLUMN
  return {
    anchors: new Map(
      order.map(({ thing }, index) => [thing, anchorAt(side, tops[index] ?? 0)] as const),
    ),
    labels: order.flatMap(({ lines }, index) =>
      lines.map((line, at) =>
        labelAt('thing', line, { x, y: (tops[index] ?? 0) + at * LEADING }, isLeft),
      ),
    ),
  }
}

const boxAbout = ({ x, y }: Point, half: number): Box => ({
  x: x - half,
  y: y - half,
  width: 2 * half,
  height: 2 * half,
})

const NAMED_AT = [-90, 90, -82, 82, -98, 98, -74, 74, -106, 106, -66, 66, -114, 114] as const

/** The name of each ring on it, above or below the tub, where nothing else is. */
function ringLabels(
  { rings, at }: YardScale,
  middle: Point,
  taken: readonly Box[],
): readonly YardLabel[] {
  const labels: YardLabel[] = []
  for (const { metres, text } of rings) {
    const line = { text, isBold: false }
    const width = textWidth(text, SIZE)
    const all = NAMED_AT.map(degrees => {
      const { x, y } = onCircle(middle, at(metres), degrees)
      return labelAt('ring', line, { x: x - width / 2, y: y - LEADING / 2 })
    })
    const free = all.find(each => ![...taken, ...labels].some(other => isOver(each, other)))
    if (free) labels.push(free)
  }
  return labels
}

/** What the circle in the middle is, where the word has room in it. */
function tubLabels({ supplyPage }: Words, middle: Point, radius: number): readonly YardLabel[] {
  const text = supplyPage['yard-tub']
  const width = textWidth(text, SIZE * BOLD)
  const at = { x: middle.x - width / 2, y: middle.y - LEADING / 2 }
  return width < 2 * radius - 4 ? [labelAt('tub', { text, isBold: true }, at)] : []
}

/** What is said below: what belongs to no drawn thing, and how it is drawn. */
function below(
  report: SupplyReport,
  things: readonly YardThing[],
  words: Words,
  hasBreak: boolean,
): readonly (Line & Pick<YardLabel, 'kind'>)[] {
  const { supplyPage, verdicts } = words
  const rest = restOf(report, things, words)
  const kind = 'rest' as const
  const note = `${supplyPage['yard-size']}${hasBreak ? ` ${supplyPage['yard-beyond']}` : ''}`
  return [
    ...(rest.length > 0 ? [{ kind, text: supplyPage['yard-rest'], isBold: true }] : []),
    ...rest.flatMap(({ title, verdict }) =>
      wrapped({ text: `${title}: ${verdicts[verdict]}`, isBold: false, verdict }, WIDTH, 2).map(
        each => ({ ...each, kind }),
      ),
    ),
    ...wrapped({ text: note, isBold: false }, WIDTH, 3).map(each => ({
      ...each,
      kind: 'note' as const,
    })),
  ]
}

const says = ({ what, label, distance, verdict }: YardThing, words: Words): string =>
  say(words.supplyPage['yard-says'], {
    sign: SIGN_WORDS[verdict],
    thing: label === '' ? what : `${what}, ${label}`,
    distance,
    verdict: words.verdicts[verdict],
  })

/** Things on the side of their marker; what has no place fills the emptier side. */
function sidesOf(
  things: readonly YardThing[],
  placed: readonly Placed[],
  words: Words,
): Readonly<Record<Placed['side'], readonly Block[]>> {
  const sides = { left: [] as Block[], right: [] as Block[] }
  for (const thing of things) {
    const own = placed.find(each => each.thing === thing)
    const emptier = sides.left.length < sides.right.length ? 'left' : 'right'
    sides[own?.side ?? emptier].push({ thing, lines: linesOf(thing, words), placed: own })
  }
  return sides
}

const sum = (all: readonly number[]): number => all.reduce((total, each) => total + each, 0)

/**
 * Lays out the yard around the tub as seen from above: each thing at its distance, angles as there is
 * room, its label at the side.
 */
export function layOutYard(survey: Survey, report: SupplyReport, words: Words): YardScene {
  const things = thingsOf(survey, report, words)
  const scale = scaleOf(things, ringsOf(report), RADIUS)
  // Twice: how high the columns are decides where the middle is, and needs no places but sides.
  const sided = sidesOf(things, placeAll(things, { x: 0, y: 0 }, scale), words)
  const height = Math.max(
    2 * (RADIUS + LEADING),
    ...Object.values(sided).map(side => sum(side.map(heightOf)) + 2 * MARGIN),
  )
  const middle = { x: WIDTH / 2, y: height / 2 }
  const placed = placeAll(things, middle, scale)
  const sides = sidesOf(things, placed, words)
  const [left, right] = [
    column(sides.left, 'left', height, placed),
    column(sides.right, 'right', height, placed),
  ]
  const markers = placed.map(({ thing, side, degrees, point }): YardMarker => {
    const anchor = (side === 'left' ? left : right).anchors.get(thing) ?? point
    const { span, at, verdict } = thing
    const isRange = span !== undefined && span.to > span.from
    return {
      ...point,
      at,
      verdict,
      leader: [point, anchor],
      says: says(thing, words),
      ...(isRange ? { to: onCircle(middle, scale.at(span.to), degrees) } : {}),
    }
  })
  const tub = tubLabels(words, middle, scale.tub)
  const taken = [...tub, ...markers.map(each => boxAbout(each, MARKER + 1))]
  const lines = below(report, things, words, scale.breakAt !== undefined)
  const under = lines.map((line, index) =>
    labelAt(line.kind, line, { x: 0, y: height + BLOCK_GAP + index * LEADING }),
  )
  return {
    width: WIDTH,
    height: height + BLOCK_GAP + lines.length * LEADING + 4,
    middle,
    tub: scale.tub,
    rings: scale.rings.map(each => scale.at(each.metres)),
    breakAt: scale.breakAt,
    markers,
    labels: [
      ...left.labels,
      ...right.labels,
      ...tub,
      ...ringLabels(scale, middle, taken),
      ...under,
    ],
    says: [
      ...things.map(each => says(each, words)),
      ...restOf(report, things, words).map(
        each => `${SIGN_WORDS[each.verdict]} ${each.title}: ${words.verdicts[each.verdict]}`,
      ),
    ],
  }
}
