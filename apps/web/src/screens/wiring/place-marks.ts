import type { Shapes, WireShape } from './shapes.ts'
import { textBox } from './shapes.ts'
import type { Box, Point } from './view.ts'

/** What a wire carries in a mode, as it is to be shown on the drawing. */
export interface Charge {
  readonly number: number
  /** Live: not to be touched. Stays: live with everything off, on a lead of a load. */
  readonly kind: 'live' | 'stays' | 'carries'
  /** What to write, the longest first: the first that finds room is taken. */
  readonly texts: readonly string[]
  readonly amps: number
}

export interface Sign extends Point {
  readonly number: number
  readonly kind: Charge['kind']
}

/** A line of figures on its wire. */
export interface Chip extends Point {
  readonly number: number
  readonly text: string
  readonly isTurned: boolean
  readonly box: Box
}

/** The place so far along a line from its terminal. */
export function placeAlong(points: readonly Point[], away: number): Point {
  let left = away
  for (let index = 1; index < points.length; index++) {
    const [from, to] = [points[index - 1], points[index]]
    if (!from || !to) break
    const length = Math.hypot(to.x - from.x, to.y - from.y)
    if (left <= length && length > 0) {
      const share = left / length
      return { x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }
    }
    left -= length
  }
  return points.at(-1) ?? { x: 0, y: 0 }
}

const SIGN_AWAY = 2.4 // [mm] from the rim of the terminal

/** A sign on each wire that carries something, where it leaves its terminal. */
export function placeSigns(shapes: Shapes, charges: readonly Charge[]): readonly Sign[] {
  const wires = new Map(shapes.wires.map(each => [each.number, each] as const))
  return charges.flatMap(({ number, kind }) => {
    const wire = wires.get(number)
    return wire ? [{ number, kind, ...placeAlong(wire.points, SIGN_AWAY) }] : []
  })
}

const CELL = 6 // [mm]
const ACROSS = 4096 // cells: more than any drawing has

const overlaps = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height

interface Owned {
  readonly box: Box
  /** The wire whose it is; 0 for what is no wire's. */
  readonly owner: number
}

/** What is taken on the paper, found by where it is. */
class Taken {
  readonly #cells = new Map<number, Owned[]>()

  add(box: Box, owner = 0): void {
    const [left, right, top, bottom] = cellsOf(box)
    for (let across = left; across <= right; across++)
      for (let down = top; down <= bottom; down++) {
        const key = across + down * ACROSS
        const cell = this.#cells.get(key)
        if (cell) cell.push({ box, owner })
        else this.#cells.set(key, [{ box, owner }])
      }
  }

  /** Whether a box lies on anything that is not of its own wire. */
  isOver(box: Box, own: number): boolean {
    const [left, right, top, bottom] = cellsOf(box)
    for (let across = left; across <= right; across++)
      for (let down = top; down <= bottom; down++)
        for (const each of this.#cells.get(across + down * ACROSS) ?? NO_BOXES)
          if (each.owner !== own && overlaps(each.box, box)) return true
    return false
  }
}

const NO_BOXES: readonly Owned[] = []

const cellsOf = ({ x, y, width, height }: Box): readonly [number, number, number, number] => [
  Math.floor(x / CELL),
  Math.floor((x + width) / CELL),
  Math.floor(y / CELL),
  Math.floor((y + height) / CELL),
]

/** The box about some places. */
export function around(points: readonly Point[]): Box {
  let [left, top, right, bottom] = [
    Number.POSITIVE_INFINITY,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ]
  for (const { x, y } of points) {
    left = Math.min(left, x)
    top = Math.min(top, y)
    right = Math.max(right, x)
    bottom = Math.max(bottom, y)
  }
  return { x: left, y: top, width: right - left, height: bottom - top }
}

const runsOf = (points: readonly Point[]): readonly (readonly [Point, Point])[] =>
  points.slice(1).flatMap((to, index) => {
    const from = points[index]
    return from ? [[from, to] as const] : []
  })

const HALF = 0.65 // [mm] half of a wire with its rim

function runBox([a, b]: readonly [Point, Point]): Box {
  return {
    x: Math.min(a.x, b.x) - HALF,
    y: Math.min(a.y, b.y) - HALF,
    width: Math.abs(a.x - b.x) + 2 * HALF,
    height: Math.abs(a.y - b.y) + 2 * HALF,
  }
}

/** What the drawing itself takes, worked out once a drawing: modes come and go on it. */
const drawn = new WeakMap<Shapes, Taken>()

function drawnOf(shapes: Shapes): Taken {
  const known = drawn.get(shapes)
  if (known) return known
  const taken = new Taken()
  for (const each of [...shapes.texts, ...shapes.partners, ...shapes.jumpers]) taken.add(each)
  for (const { x, y, radius } of shapes.terminals)
    taken.add({ x: x - radius, y: y - radius, width: 2 * radius, height: 2 * radius })
  for (const { number, points } of shapes.wires)
    for (const run of runsOf(points)) taken.add(runBox(run), number)
  drawn.set(shapes, taken)
  return taken
}

/** The drawing and what has been written on it so far. */
class Room {
  readonly #drawn: Taken
  readonly #written = new Taken()

  constructor(shapes: Shapes, signs: readonly Sign[], size: number) {
    this.#drawn = drawnOf(shapes)
    for (const { x, y } of signs)
      this.#written.add({ x: x - size / 2, y: y - size / 2, width: size, height: size })
  }

  isFree(box: Box, own: number): boolean {
    return !this.#drawn.isOver(box, own) && !this.#written.isOver(box, own)
  }

  take(box: Box): void {
    this.#written.add(box)
  }
}

const STEP = 2 // [mm] between the places that are tried along a run
const CLEAR = 2.6 // [mm] from the rim of a terminal inwards: about where its name begins
const INWARDS = 16 // [mm] further in nobody would see whose figures they are

type Place = readonly [at: Point, isTurned: boolean]

/** Places on the board behind the terminal, nearest first: there is most room, one below the other. */
function* placesInside({ points }: WireShape, length: number): Generator<Place> {
  const [rim, next] = points
  if (!rim || !next) return
  const [dx, dy] = [Math.sign(rim.x - next.x), Math.sign(rim.y - next.y)]
  for (let off = CLEAR; off <= INWARDS; off += 1) {
    const away = off + length / 2
    yield [{ x: rim.x + dx * away, y: rim.y + dy * away }, dx === 0]
  }
}

/** Places along a wire where a text lies within one straight run, the middle of each run first. */
function* placesAlong({ points }: WireShape, length: number): Generator<Place> {
  for (const [from, to] of runsOf(points)) {
    const [dx, dy] = [to.x - from.x, to.y - from.y]
    const isTurned = Math.abs(dy) > Math.abs(dx)
    const run = Math.hypot(dx, dy)
    const most = (run - length) / 2
    for (let off = 0; off <= most; off += STEP)
      for (const side of off === 0 ? [0] : [-off, off]) {
        const share = (run / 2 + side) / run
        yield [{ x: from.x + share * dx, y: from.y + share * dy }, isTurned]
      }
  }
}

function* placesFor(wire: WireShape, length: number): Generator<Place> {
  yield* placesAlong(wire, length)
  yield* placesInside(wire, length)
}

function chipFor(wire: WireShape, charge: Charge, size: number, room: Room): Chip | undefined {
  for (const text of charge.texts) {
    const length = textBox({ x: 0, y: 0 }, text, size, false).width
    for (const [at, isTurned] of placesFor(wire, length)) {
      const box = textBox(at, text, size, isTurned)
      if (room.isFree(box, wire.number)) return { number: wire.number, text, isTurned, box, ...at }
    }
  }
  return undefined
}

/** How figures are wanted. */
export interface Wanted {
  /** Of the letters [mm]. */
  readonly size: number
  /** Wires that choose their places before the others. */
  readonly first: ReadonlySet<number>
  /** What is seen of the drawing: wires that lie wholly outside need no figures now. */
  readonly within?: Box
}

/**
 * Figures on their wires, wherever they cover no other wire and no word of the drawing.
 *
 * Whoever finds no room stays out: the table says it, and a larger zoom may have the room.
 */
export function placeChips(
  shapes: Shapes,
  charges: readonly Charge[],
  signs: readonly Sign[],
  { size, first, within }: Wanted,
): readonly Chip[] {
  const wires = new Map(
    shapes.wires
      .filter(each => within === undefined || overlaps(around(each.points), within))
      .map(each => [each.number, each] as const),
  )
  const room = new Room(shapes, signs, size)
  const rank = (number: number): number => (first.has(number) ? 0 : 1)
  const order = [...charges].sort(
    (a, b) => rank(a.number) - rank(b.number) || b.amps - a.amps || a.number - b.number,
  )
  return order.flatMap(charge => {
    const wire = wires.get(charge.number)
    const chip = wire && chipFor(wire, charge, size, room)
    if (!chip) return []
    room.take(chip.box)
    return [chip]
  })
}
