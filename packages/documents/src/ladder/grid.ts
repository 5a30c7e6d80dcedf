import type {
  LadderEnd,
  LadderGap,
  LadderRail,
  LadderRung,
  LadderSection,
  LadderStep,
  LadderZone,
} from '@tubwright/core'
import { say } from '@tubwright/words'
import { PAGE_WIDTH, TEXT } from '../board/frame.ts'
import { textWidth } from '../board/measure-text.ts'
import type { SheetWords } from '../sheet-words.ts'
import { textOf } from '../sheet-words.ts'

/** Half of a sign, from its middle to either pin [mm]. */
export const HALF = 4
/** From one rung to the next: a name above, a rating below. */
export const PITCH = 13.4
/** Room of the rails' names; flags need none above them. */
export const headOf = ({ hasRails }: LadderSection): number => (hasRails ? 7.5 : 1.5)
/** Widest text at a sign; the table has what is cut. */
const MOST_NAME = 20
const MOST_TERMINAL = 12
const MOST_FLAG = 30
const RUNG_ROOM = 8
const LEAST_SAYS = 36
const MOST_SAYS = 58
const JOINT_PITCH = 2.6
const ELSEWHERE_ROOM = 15
const RING = 1.5
/** From a flag to what begins there. */
const EDGE = 1.8
/** From the middle of a pole to the ring round its wire. */
export const RING_AT = HALF + 2.6

const widthOf = (text: string, most: number): number => Math.min(most, textWidth(text, TEXT))

export const nameRoom = (): number => MOST_NAME
export const terminalRoom = (): number => MOST_TERMINAL

/** What stands below a sign: its rating, its position, its speed. */
export function noteText(step: LadderStep, words: SheetWords): string {
  if (step.kind !== 'part' || step.note === undefined) return ''
  const note = typeof step.note === 'string' ? step.note : textOf(step.note, words)
  return step.symbol === 'limit' ? `t° ${note}` : note
}

export const isPole = (step: LadderStep): boolean =>
  step.kind === 'part' && (step.symbol === 'pole' || step.symbol === 'switch')

/** Names of what watches an element's current. */
export const watchersOf = ({ apparatus }: LadderSection, step: LadderStep): readonly string[] =>
  step.kind === 'part'
    ? apparatus.flatMap(({ watches }) =>
        watches.filter(each => each.parts.includes(step.id)).map(each => each.name),
      )
    : []

function stepWidth(section: LadderSection, step: LadderStep, words: SheetWords): number {
  if (step.kind !== 'part') {
    const [left, right] = step.terminals.map(each =>
      each === undefined ? 0 : widthOf(each, MOST_TERMINAL) + 1.5,
    )
    const number = step.kind === 'wire' ? widthOf(String(step.number), MOST_NAME) + 2 : 0
    return Math.max((left ?? 0) + (right ?? 0), number, 8) + 1.5
  }
  const text = Math.max(widthOf(step.name, MOST_NAME), widthOf(noteText(step, words), MOST_NAME))
  if (!isPole(step)) return Math.max(text, 2 * HALF) + 2
  // Names stand left of the line that links the poles, the ring right of it.
  const watch = Math.max(0, ...watchersOf(section, step).map(each => widthOf(each, MOST_NAME)))
  return 2 * Math.max(text + 1.5, HALF + 1, watch > 0 ? RING_AT + Math.max(RING, watch / 2) + 1 : 0)
}

/** Extent of a column. */
export interface Column {
  readonly left: number
  readonly right: number
}

export const columnKey = (zone: LadderZone, column: number): string => `${zone} ${column}`
const gapKey = ({ side, depth }: LadderGap): string => `${side} ${depth}`

/** Rungs from the first to the last that touch a joint. */
export interface Reach {
  readonly node: string
  readonly gap: LadderGap
  readonly first: number
  readonly last: number
}

const touches = (rung: LadderRung, node: string): boolean =>
  rung.steps.some(each => each.nodes.includes(node)) ||
  [rung.from, rung.to].some(each => each.kind === 'joint' && each.node === node)

export function reachesOf({ rungs, joints }: LadderSection): readonly Reach[] {
  return joints.flatMap(({ node, gap }) => {
    const on = rungs.flatMap((rung, index) => (touches(rung, node) ? [index] : []))
    const [first, last] = [on[0], on.at(-1)]
    return first === undefined || last === undefined ? [] : [{ node, gap, first, last }]
  })
}

/** Joints of one gap side by side, so that two pieces of copper never look like one. */
function lanesOf(reaches: readonly Reach[]): ReadonlyMap<string, number> {
  const lanes = new Map<string, number>()
  const ends = new Map<string, number[]>()
  for (const { node, gap, first, last } of reaches.toSorted((a, b) => a.first - b.first)) {
    const taken = ends.get(gapKey(gap)) ?? []
    const free = taken.findIndex(end => end < first)
    const lane = free < 0 ? taken.length : free
    taken[lane] = last
    ends.set(gapKey(gap), taken)
    lanes.set(node, lane)
  }
  return lanes
}

/** Where everything of a section stands across the paper. */
export interface Grid {
  readonly width: number
  /** From left to right. */
  readonly columns: ReadonlyMap<string, Column>
  /** Of joints, by node. */
  readonly joints: ReadonlyMap<string, number>
  /** Of rails, by side and node. */
  readonly rails: ReadonlyMap<string, number>
  readonly railWidths: ReadonlyMap<string, number>
  /** Where lines begin and end that hang on no rail. */
  readonly leftEdge: number
  readonly rightEdge: number
  /** Widest flags; none where rails are drawn. */
  readonly flagRoom: { readonly left: number; readonly right: number }
  readonly says: Column
}

export const railKey = (side: 'left' | 'right', node: string): string => `${side} ${node}`

const MOST_RAIL = 13

const railWidth = ({ name }: LadderRail, words: SheetWords): number =>
  Math.max(4.5, widthOf(textOf(name, words), MOST_RAIL) + 1.8)

const ends = ({ rungs }: LadderSection, side: 'left' | 'right'): readonly LadderEnd[] =>
  rungs.map(each => (side === 'left' ? each.from : each.to))

/** What is said at an end that hangs on no drawn rail. */
export function flagText(section: LadderSection, end: LadderEnd, words: SheetWords): string {
  if (end.kind === 'elsewhere')
    return say(words.page.ladderElsewhere, { rung: String(end.rung ?? '') })
  if (section.hasRails) return ''
  if (end.kind === 'open')
    return end.terminal === undefined ? '' : `${end.terminal} (${words.page.openEnd})`
  if (end.kind !== 'rail') return ''
  const rail = section.rails.find(each => each.node === end.node)
  return rail ? textOf(rail.name, words) : ''
}

/** Widths of the columns, gaps and rails of a section, and their places. */
export function gridOf(section: LadderSection, words: SheetWords): Grid {
  const { rungs, rails, hasRails } = section
  const widths = new Map<string, number>()
  let most = { left: 0, right: 0 }
  for (const { steps } of rungs)
    for (const step of steps) {
      const key = columnKey(step.zone, step.column)
      widths.set(key, Math.max(widths.get(key) ?? 0, stepWidth(section, step, words)))
      if (step.zone === 'left' || step.zone === 'right')
        most = { ...most, [step.zone]: Math.max(most[step.zone], step.column) }
    }
  const reaches = reachesOf(section)
  const lanes = lanesOf(reaches)
  const gapLanes = (gap: LadderGap): number =>
    Math.max(
      0,
      ...reaches
        .filter(each => gapKey(each.gap) === gapKey(gap))
        .map(each => (lanes.get(each.node) ?? 0) + 1),
    )
  const gapWidth = (gap: LadderGap): number => {
    const count = gapLanes(gap)
    return count === 0 ? 0 : (count + 1) * JOINT_PITCH - 1
  }
  const across: readonly ({ readonly column: string } | { readonly gap: LadderGap })[] = [
    { gap: { side: 'left' as const, depth: 0 } },
    ...Array.from({ length: most.left }, (_, index) => [
      { column: columnKey('left', index + 1) },
      { gap: { side: 'left' as const, depth: index + 1 } },
    ]).flat(),
    { column: columnKey('left-lead', 0) },
    { gap: { side: 'left' as const, depth: 'lead' as const } },
    { column: columnKey('main', 0) },
    { gap: { side: 'right' as const, depth: 'lead' as const } },
    { column: columnKey('right-lead', 0) },
    ...Array.from({ length: most.right }, (_, index) => [
      { gap: { side: 'right' as const, depth: most.right - index } },
      { column: columnKey('right', most.right - index) },
    ]).flat(),
    { gap: { side: 'right' as const, depth: 0 } },
  ]
  const railsAt = (side: 'left' | 'right') =>
    hasRails ? rails.filter(each => each.sides.includes(side)) : []
  const railsWidth = (side: 'left' | 'right') =>
    railsAt(side).reduce((sum, each) => sum + railWidth(each, words), 0)
  const flagRoom = (side: 'left' | 'right'): number => {
    const flags = ends(section, side).map(each => flagText(section, each, words))
    const widest = Math.max(
      0,
      ...flags.map(each => widthOf(each, hasRails ? ELSEWHERE_ROOM : MOST_FLAG)),
    )
    return widest === 0 ? 0 : widest + 3.5
  }
  const flags = { left: flagRoom('left'), right: flagRoom('right') }
  const used =
    RUNG_ROOM +
    railsWidth('left') +
    railsWidth('right') +
    flags.left +
    flags.right +
    2 * EDGE +
    across.reduce(
      (sum, each) => sum + ('gap' in each ? gapWidth(each.gap) : (widths.get(each.column) ?? 0)),
      0,
    )
  // What is left of the page widens the columns a little, and gives the words beside them room.
  const spare = Math.max(0, PAGE_WIDTH - used - LEAST_SAYS)
  const forSays = Math.min(spare * 0.5, MOST_SAYS - LEAST_SAYS)
  const stretched = Math.min(5, (spare - forSays) / Math.max(1, widths.size))
  const columns = new Map<string, Column>()
  const joints = new Map<string, number>()
  const railX = new Map<string, number>()
  const railWidths = new Map<string, number>()
  let x = RUNG_ROOM
  const putRails = (side: 'left' | 'right') => {
    for (const rail of railsAt(side)) {
      const width = railWidth(rail, words)
      railX.set(railKey(side, rail.node), x + width / 2)
      railWidths.set(railKey(side, rail.node), width)
      x += width
    }
  }
  putRails('left')
  x += flags.left
  const leftEdge = x
  x += EDGE
  for (const each of across) {
    if ('column' in each) {
      const own = widths.get(each.column)
      const width = own === undefined ? 0 : own + stretched
      columns.set(each.column, { left: x, right: x + width })
      x += width
      continue
    }
    for (const { node, gap } of reaches)
      if (gapKey(gap) === gapKey(each.gap))
        joints.set(node, x + ((lanes.get(node) ?? 0) + 1) * JOINT_PITCH - 0.5)
    x += gapWidth(each.gap)
  }
  x += EDGE
  const rightEdge = x
  x += flags.right
  putRails('right')
  const says = { left: x + 2, right: Math.max(PAGE_WIDTH - 0.5, x + LEAST_SAYS) }
  return {
    width: Math.max(PAGE_WIDTH, says.right + 0.5),
    columns,
    joints,
    rails: railX,
    railWidths,
    leftEdge,
    rightEdge,
    flagRoom: flags,
    says,
  }
}
