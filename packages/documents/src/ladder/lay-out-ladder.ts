import type { LadderEnd, LadderRung, LadderSection, LadderStep } from '@tubwright/core'
import { LINE_HEIGHT, TEXT } from '../board/frame.ts'
import { clipText, textWidth, wrapText } from '../board/measure-text.ts'
import { labelHeight } from '../board/place-label.ts'
import type { Point } from '../board/scene.ts'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { Grid } from './grid.ts'
import {
  columnKey,
  flagText,
  gridOf,
  HALF,
  headOf,
  isPole,
  nameRoom,
  noteText,
  PITCH,
  RING_AT,
  railKey,
  reachesOf,
  terminalRoom,
  watchersOf,
} from './grid.ts'
import type { LadderLabel, LadderLine, LadderMark, LadderScene, LadderSign } from './scene.ts'

/** From a rung's line to the lower edge of a name above it, and to the upper edge of what is below. */
const ABOVE = 3.3
const BELOW = 3.4
/** The same where only a line runs. */
const NEAR = 0.9
const SAYS_LINES = 2

interface Put {
  readonly kind: LadderLabel['kind']
  readonly text: string
  readonly x: number
  readonly y: number
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly room?: number
  readonly isBold?: boolean
}

/** A line of text with its upper edge here, cut where its room ends. */
function labelOf({ kind, text, x, y, anchor = 'middle', room, isBold = false }: Put): LadderLabel {
  const kept = room === undefined ? text : clipText(text, TEXT, room)
  const width = textWidth(kept, TEXT)
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return { kind, text: kept, x: left, y, width, height: labelHeight(TEXT), size: TEXT, isBold }
}

interface Here {
  readonly section: LadderSection
  readonly grid: Grid
  readonly words: SheetWords
}

interface Drawn {
  readonly lines: readonly LadderLine[]
  readonly signs: readonly LadderSign[]
  readonly marks: readonly LadderMark[]
  readonly labels: readonly LadderLabel[]
}

const heightOf = ({ section }: Here, index: number): number =>
  headOf(section) + (index + 0.5) * PITCH

/** Pins of a step: a wire and an empty place take their whole column, a sign its middle. */
function pinsOf({ grid }: Here, step: LadderStep): readonly [number, number] {
  const column = grid.columns.get(columnKey(step.zone, step.column)) ?? { left: 0, right: 0 }
  if (step.kind !== 'part') return [column.left + 0.9, column.right - 0.9]
  const middle = (column.left + column.right) / 2
  return [middle - HALF, middle + HALF]
}

/** Names of terminals over the ends of a wire, each over its own half. */
function terminalLabels(
  [first, last]: readonly [string | undefined, string | undefined],
  [left, right]: readonly [number, number],
  y: number,
): readonly LadderLabel[] {
  const both = first !== undefined && last !== undefined
  const room = both ? (right - left) / 2 + 0.4 : Math.min(right - left + 1.2, terminalRoom())
  const at = { kind: 'terminal' as const, y: y - NEAR - labelHeight(TEXT), room }
  return [
    ...(first === undefined
      ? []
      : [labelOf({ ...at, text: first, x: left - 0.8, anchor: 'start' })]),
    ...(last === undefined ? [] : [labelOf({ ...at, text: last, x: right + 0.8, anchor: 'end' })]),
  ]
}

function wireDrawn(
  { number, terminals }: Extract<LadderStep, { kind: 'wire' }>,
  [left, right]: readonly [number, number],
  y: number,
): Omit<Drawn, 'lines' | 'signs'> {
  const [first, last] = terminals
  const middle = (left + right) / 2
  return {
    marks: [
      ...(first === undefined ? [] : [{ kind: 'terminal' as const, x: left, y }]),
      ...(last === undefined ? [] : [{ kind: 'terminal' as const, x: right, y }]),
    ],
    labels: [
      ...terminalLabels(terminals, [left, right], y),
      labelOf({ kind: 'number', text: String(number), x: middle, y: y + NEAR, isBold: true }),
    ],
  }
}

/** What watches is named once, where its rings begin. */
function firstWatched(section: LadderSection, step: LadderStep): readonly string[] {
  const ids = section.rungs.flatMap(({ steps }) =>
    steps.flatMap(each => (each.kind === 'part' ? [each.id] : [])),
  )
  return section.apparatus.flatMap(({ watches }) =>
    watches.flatMap(({ name, parts }) =>
      step.kind === 'part' && ids.find(each => parts.includes(each)) === step.id ? [name] : [],
    ),
  )
}

function signLabels(
  here: Here,
  step: LadderStep,
  middle: number,
  y: number,
): readonly LadderLabel[] {
  if (step.kind !== 'part') return []
  const top = y - ABOVE - labelHeight(TEXT)
  const note = noteText(step, here.words)
  const column = here.grid.columns.get(columnKey(step.zone, step.column))
  const width = column ? column.right - column.left - 0.6 : nameRoom()
  if (!isPole(step)) {
    const at = { x: middle, room: width }
    return [
      labelOf({ kind: 'name', text: step.name, y: top, isBold: true, ...at }),
      ...(note === '' ? [] : [labelOf({ kind: 'note', text: note, y: y + BELOW, ...at })]),
    ]
  }
  const at = { x: middle - 0.8, anchor: 'end' as const, room: width / 2 - 0.8 }
  const watch = firstWatched(here.section, step)
  return [
    labelOf({ kind: 'name', text: step.name, y: top, isBold: true, ...at }),
    ...(note === '' ? [] : [labelOf({ kind: 'note', text: note, y: y + BELOW, ...at })]),
    ...watch
      .slice(0, 1)
      .map(text => labelOf({ kind: 'name', text, x: middle + RING_AT, y: top, room: width / 2 })),
  ]
}

function stepDrawn(here: Here, step: LadderStep, y: number): Drawn {
  const [left, right] = pinsOf(here, step)
  const pins = [
    { x: left, y },
    { x: right, y },
  ] as const
  if (step.kind === 'wire')
    return {
      lines: [],
      signs: [{ step, pins, symbol: 'wire', box: undefined }],
      ...wireDrawn(step, [left, right], y),
    }
  const box = { x: left, y: y - 3, width: 2 * HALF, height: 6 }
  const middle = (left + right) / 2
  if (step.kind === 'spare') return { lines: [], ...spareDrawn(step, pins) }
  const isWatched = isPole(step) && watchersOf(here.section, step).length > 0
  return {
    lines: [],
    signs: [{ step, pins, symbol: step.symbol, box }],
    marks: isWatched ? [{ kind: 'ring', x: middle + RING_AT, y }] : [],
    labels: signLabels(here, step, middle, y),
  }
}

/** Two open terminals, and nothing between them. */
function spareDrawn(
  step: Extract<LadderStep, { kind: 'spare' }>,
  pins: LadderSign['pins'],
): Omit<Drawn, 'lines'> {
  const [left, right] = pins
  const isThere = (node: string) => node !== ''
  return {
    signs: [{ step, pins, symbol: 'spare', box: undefined }],
    marks: [
      ...(isThere(step.nodes[0]) ? [{ kind: 'open' as const, ...left }] : []),
      ...(isThere(step.nodes[1]) ? [{ kind: 'open' as const, ...right }] : []),
    ],
    labels: terminalLabels(step.terminals, [left.x, right.x], left.y - 0.4),
  }
}

interface EndDrawn {
  readonly x: number
  readonly marks: readonly LadderMark[]
  readonly labels: readonly LadderLabel[]
}

/** Where a rung begins or ends, and what is said there. */
function endDrawn(
  { section, grid, words }: Here,
  end: LadderEnd,
  side: 'left' | 'right',
  { step, pin }: { readonly step: LadderStep; readonly pin: number },
  y: number,
): EndDrawn {
  const out = side === 'left' ? -1 : 1
  const flag = flagText(section, end, words)
  if (flag !== '') {
    const x = side === 'left' ? grid.leftEdge : grid.rightEdge
    const room = grid.flagRoom[side] - 3
    const at = { x: x + out * 2.6, y: y - labelHeight(TEXT) / 2, room }
    const anchor = side === 'left' ? 'end' : 'start'
    const arrow = side === 'left' ? 'arrow-left' : 'arrow-right'
    return {
      x,
      marks: [{ kind: end.kind === 'open' ? 'open' : arrow, x, y }],
      labels: [labelOf({ kind: 'flag', text: flag, anchor, isBold: true, ...at })],
    }
  }
  const joint = grid.joints.get(end.node)
  // Copper that leads nowhere may still be shared by rungs.
  if (joint !== undefined) return { x: joint, marks: [], labels: [] }
  switch (end.kind) {
    case 'rail':
      return { x: grid.rails.get(railKey(side, end.node)) ?? pin, marks: [], labels: [] }
    default:
      return openDrawn(end, side, openPlace(grid, step, side), y)
  }
}

const LEAST_COLUMN = 5

/** An end that hangs on nothing reaches into the next column, clear of the copper between them. */
function openPlace(
  { columns, leftEdge, rightEdge }: Grid,
  step: LadderStep,
  side: 'left' | 'right',
): { readonly x: number; readonly room: number } {
  const keys = [...columns.keys()]
  const at = keys.indexOf(columnKey(step.zone, step.column))
  const beyond = side === 'left' ? keys.slice(0, at).reverse() : keys.slice(at + 1)
  for (const key of beyond) {
    const column = columns.get(key)
    if (!column || column.right - column.left < LEAST_COLUMN) continue
    const room = column.right - column.left - 0.2
    return { x: side === 'left' ? column.right - 1.1 : column.left + 1.1, room }
  }
  return { x: side === 'left' ? leftEdge : rightEdge, room: 0 }
}

function openDrawn(
  { terminal }: LadderEnd,
  side: 'left' | 'right',
  { x, room }: { readonly x: number; readonly room: number },
  y: number,
): EndDrawn {
  const out = side === 'left' ? -1 : 1
  const top = y - NEAR - labelHeight(TEXT) - 0.4
  const anchor = side === 'left' ? 'end' : 'start'
  return {
    x,
    marks: [{ kind: 'open', x, y }],
    labels:
      // Without room beside the rails it stands in the table alone.
      terminal === undefined || room === 0
        ? []
        : [labelOf({ kind: 'terminal', text: terminal, x: x - out, y: top, anchor, room })],
  }
}

/** What a rung is for, at its right: name, command, and the earth of the load. */
function saysDrawn(
  { grid, words }: Here,
  rung: LadderRung,
  y: number,
): Omit<Drawn, 'lines' | 'signs'> {
  const { left, right } = grid.says
  const room = right - left
  const [title, ...more] = rung.says.map(each => capital(textOf(each, words)))
  const lines = [
    ...(title === undefined ? [] : wrapText(title, { size: TEXT, room, lines: SAYS_LINES })),
    ...more.map(each => clipText(each, TEXT, room)),
  ]
  const extras = rung.extras.map(
    ({ number, terminal }) => `${number} · ${terminal ?? words.page.notLanded}`,
  )
  const count = lines.length + (extras.length > 0 ? 1 : 0)
  const top = y - (count * LINE_HEIGHT) / 2
  const earthAt = { x: left + 1.4, y: top + lines.length * LINE_HEIGHT + 0.4 }
  return {
    marks: rung.extras.some(each => each.isEarth) ? [{ kind: 'earth', ...earthAt }] : [],
    labels: [
      ...lines.map((text, index) =>
        labelOf({
          kind: 'says',
          text,
          x: left,
          y: top + index * LINE_HEIGHT,
          anchor: 'start',
        }),
      ),
      ...(extras.length > 0
        ? [
            labelOf({
              kind: 'says',
              text: extras.join(', '),
              x: left + 3.6,
              y: top + lines.length * LINE_HEIGHT,
              anchor: 'start',
              room: room - 3.6,
            }),
          ]
        : []),
    ],
  }
}

const joined = (all: readonly Partial<Drawn>[]): Drawn => ({
  lines: all.flatMap(each => each.lines ?? []),
  signs: all.flatMap(each => each.signs ?? []),
  marks: all.flatMap(each => each.marks ?? []),
  labels: all.flatMap(each => each.labels ?? []),
})

/** Whether the line before a step is still the wire of a load: between it and its load. */
function isLead({ steps }: LadderRung, index: number): boolean {
  const [before, after] = [steps[index - 1], steps[index]]
  return (
    (before?.zone === 'left-lead' && after?.zone === 'main') ||
    (before?.zone === 'main' && after?.zone === 'right-lead')
  )
}

function rungDrawn(here: Here, rung: LadderRung, index: number): Drawn {
  const y = heightOf(here, index)
  const steps = rung.steps.map(each => stepDrawn(here, each, y))
  const pins = steps.flatMap(each => each.signs.map(sign => sign.pins))
  const endAt = (end: LadderEnd, side: 'left' | 'right'): EndDrawn | undefined => {
    const at = side === 'left' ? 0 : -1
    const step = rung.steps.at(at)
    const pin = pins.at(at)?.[side === 'left' ? 0 : 1].x
    // An empty place shows its own terminals, unless others share its copper.
    const isOwn = end.kind === 'open' && step?.kind === 'spare' && !here.grid.joints.has(end.node)
    const isShown = end.node !== '' && !isOwn
    return step && pin !== undefined && isShown
      ? endDrawn(here, end, side, { step, pin }, y)
      : undefined
  }
  const [from, to] = [endAt(rung.from, 'left'), endAt(rung.to, 'right')]
  const stops = [from?.x, ...pins.flatMap(([a, b]) => [a.x, b.x]), to?.x]
  const lines = stops.flatMap((a, at): readonly LadderLine[] => {
    const b = stops[at + 1]
    // From an end to a pin, and from pin to pin of neighbours: never through a sign.
    if (at % 2 === 1 || a === undefined || b === undefined || a === b) return []
    return [{ a: { x: a, y }, b: { x: b, y }, kind: isLead(rung, at / 2) ? 'lead' : 'copper' }]
  })
  const number = labelOf({
    kind: 'rung',
    text: String(rung.number),
    x: 5.5,
    y: y - labelHeight(TEXT) / 2,
    anchor: 'end',
  })
  const ends = [from, to].flatMap(each =>
    each ? [{ marks: each.marks, labels: each.labels }] : [],
  )
  return joined([{ lines, labels: [number] }, ...steps, ...ends, saysDrawn(here, rung, y)])
}

/** Rails from their names down to the last rung on them, with a dot at each. */
function railsDrawn(here: Here): Drawn & { readonly dots: readonly Point[] } {
  const { section, grid, words } = here
  const head = headOf(section)
  const dots: Point[] = []
  const parts = (['left', 'right'] as const).flatMap(side =>
    section.rails.flatMap(({ node, name }): readonly Partial<Drawn>[] => {
      const x = grid.rails.get(railKey(side, node))
      if (x === undefined) return []
      const on = section.rungs.flatMap((each, index) => {
        const end = side === 'left' ? each.from : each.to
        return end.kind === 'rail' && end.node === node ? [heightOf(here, index)] : []
      })
      dots.push(...on.map(y => ({ x, y })))
      const lines = [head, ...on].slice(0, -1).map((y, index) => ({
        a: { x, y },
        b: { x, y: on[index] ?? y },
        kind: 'rail' as const,
      }))
      const room = grid.railWidths.get(railKey(side, node)) ?? 5
      const label = labelOf({
        kind: 'rail',
        text: textOf(name, words),
        x,
        y: head - 4,
        room,
        isBold: true,
      })
      return [{ lines, labels: [label] }]
    }),
  )
  return { ...joined(parts), dots }
}

/** Copper that rungs share, with a dot wherever three ways meet. */
function jointsDrawn(here: Here): {
  readonly lines: readonly LadderLine[]
  readonly dots: readonly Point[]
} {
  const { section, grid } = here
  const lines: LadderLine[] = []
  const dots: Point[] = []
  for (const { node } of reachesOf(section)) {
    const x = grid.joints.get(node)
    if (x === undefined) continue
    const on = section.rungs.flatMap((rung, index) => {
      const isPassed = rung.steps.some(each => each.nodes.includes(node))
      return isPassed ? [{ rung, y: heightOf(here, index) }] : []
    })
    on.forEach(({ y }, index) => {
      const next = on[index + 1]
      if (next) lines.push({ a: { x, y }, b: { x, y: next.y }, kind: 'joint' })
      dots.push({ x, y })
    })
  }
  return { lines, dots }
}

/** Dashed lines between the poles of one apparatus, and between the rings of what watches them. */
function linksDrawn({ section }: Here, signs: readonly LadderSign[]): LadderScene['links'] {
  const through = (ids: readonly string[], aside: number) => {
    const at = signs
      .filter(({ step }) => step.kind === 'part' && ids.includes(step.id))
      .map(({ pins: [a, b] }) => ({ x: (a.x + b.x) / 2 + aside, y: a.y }))
    return at.slice(1).flatMap((b, index) => {
      const a = at[index]
      return a ? [{ a, b }] : []
    })
  }
  return section.apparatus.flatMap(({ parts, watches }) => [
    ...through(parts, 0),
    ...watches.flatMap(each => through(each.parts, RING_AT)),
  ])
}

/** Lays out one part of the ladder: every rung on a line of its own between the rails. */
export function layOutLadder(section: LadderSection, words: SheetWords): LadderScene {
  const here: Here = { section, grid: gridOf(section, words), words }
  const rungs = section.rungs.map((each, index) => rungDrawn(here, each, index))
  const rails = railsDrawn(here)
  const joints = jointsDrawn(here)
  const drawn = joined([...rungs, rails])
  return {
    width: here.grid.width,
    height: headOf(section) + section.rungs.length * PITCH + 1,
    lines: [...drawn.lines, ...joints.lines],
    dots: [...rails.dots, ...joints.dots],
    signs: drawn.signs,
    marks: drawn.marks,
    links: linksDrawn(here, drawn.signs),
    labels: drawn.labels,
  }
}
