import type { Charge, Chip, Sign } from './place-marks.ts'
import { placeChips, placeSigns } from './place-marks.ts'
import type { Shapes } from './shapes.ts'
import type { Box } from './view.ts'

const SVG = 'http://www.w3.org/2000/svg'
const LETTER = 12 // [px] wanted on the screen
const LETTER_LEAST = 2.2 // [mm]
const LETTER_MOST = 3 // [mm] larger ones find no room between the wires
const READABLE = 4 // [px] smaller letters are left out
const SIGN = 1.25 // of the letters

export interface Marked {
  readonly charges: readonly Charge[]
  /** Wires of the net that is traced: their figures come first. */
  readonly traced: ReadonlySet<number>
  /** Of the letters [mm]. */
  readonly size: number
  /** What is seen of the drawing; absent where letters would be too small to be read. */
  readonly within: Box | undefined
}

/** Letters as large as a thumb's reader needs, as far as the room between the wires lets them be. */
export const letterSize = (scale: number): number =>
  Math.min(LETTER_MOST, Math.max(LETTER_LEAST, LETTER / scale))

const element = (name: string, attributes: Readonly<Record<string, string>>): SVGElement => {
  const made = document.createElementNS(SVG, name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value)
  return made
}

const n = (value: number): string => String(Math.round(value * 100) / 100)

/** Whether letters can be read at a scale. */
export const isReadable = (scale: number): boolean => letterSize(scale) * scale >= READABLE

/** A bolt about the origin, one unit high. */
const BOLT = [
  [0.08, -0.5],
  [-0.3, 0.1],
  [-0.04, 0.1],
  [-0.1, 0.5],
  [0.3, -0.12],
  [0.04, -0.12],
] as const
const TRIANGLE = [
  [0, -0.62],
  [0.54, 0.42],
  [-0.54, 0.42],
] as const
/** The same bolt, small enough to stand in the triangle. */
const BOLT_WITHIN = BOLT.map(([x, y]) => [x * 0.62, y * 0.62 + 0.06] as const)
const DIAMOND = [
  [0, -0.45],
  [0.45, 0],
  [0, 0.45],
  [-0.45, 0],
] as const

type Outline = readonly (readonly [number, number])[]

/** One path of many signs: a drawing with five hundred wires has as many elements as one with five. */
const pathOf = (outline: Outline, signs: readonly Sign[], size: number): string =>
  signs
    .map(({ x, y }) => {
      const points = outline.map(([dx, dy]) => `${n(x + dx * size)} ${n(y + dy * size)}`)
      return `M${points.join('L')}Z`
    })
    .join('')

const SHAPES: Readonly<Record<Sign['kind'], readonly (readonly [string, Outline])[]>> = {
  live: [['bolt', BOLT]],
  stays: [
    ['triangle', TRIANGLE],
    ['bolt', BOLT_WITHIN],
  ],
  carries: [['diamond', DIAMOND]],
}

function signElements(signs: readonly Sign[], size: number): readonly SVGElement[] {
  return (['live', 'stays', 'carries'] as const).flatMap(kind => {
    const of = signs.filter(each => each.kind === kind)
    if (of.length === 0) return []
    return SHAPES[kind].map(([name, outline]) =>
      element('path', { class: name, d: pathOf(outline, of, size) }),
    )
  })
}

function chipElements(
  { text, x, y, isTurned, box, number }: Chip,
  size: number,
): readonly SVGElement[] {
  const back = element('rect', {
    class: 'chip-back',
    x: n(box.x),
    y: n(box.y),
    width: n(box.width),
    height: n(box.height),
  })
  const at = isTurned
    ? { transform: `translate(${n(x)} ${n(y)}) rotate(-90)`, x: '0', y: n(size * 0.35) }
    : { x: n(x), y: n(y + size * 0.35) }
  const words = element('text', {
    class: 'chip-text',
    'data-amps-of': String(number),
    'font-size': n(size),
    'text-anchor': 'middle',
    ...at,
  })
  words.textContent = text
  return [back, words]
}

/** The band under live wires: seen from afar, and never alone. */
function bandOf(shapes: Shapes, charges: readonly Charge[]): SVGElement {
  const live = new Set(charges.filter(each => each.kind !== 'carries').map(each => each.number))
  const d = shapes.wires.filter(each => live.has(each.number)).map(each => each.d)
  return element('path', { class: 'band', d: d.join('') })
}

/** The halo under the net that is traced. */
function haloOf(shapes: Shapes, traced: ReadonlySet<number>): SVGElement {
  const d = shapes.wires.filter(each => traced.has(each.number)).map(each => each.d)
  return element('path', { class: 'halo', d: d.join('') })
}

function replace(
  svg: Element,
  name: string,
  made: readonly SVGElement[],
  before: Node | null,
): void {
  const group = element('g', { class: name })
  group.append(...made)
  const old = svg.querySelector(`:scope > g.${name}`)
  if (old) old.replaceWith(group)
  else svg.insertBefore(group, before)
}

/** Writes on a drawing what its wires carry: signs and figures above, bands and halos below. */
export function drawMarks(
  svg: Element,
  shapes: Shapes,
  { charges, traced, size, within }: Marked,
): void {
  const signs = placeSigns(shapes, charges)
  const chips = within ? placeChips(shapes, charges, signs, { size, first: traced, within }) : []
  replace(
    svg,
    'under',
    [haloOf(shapes, traced), bandOf(shapes, charges)],
    svg.querySelector('g.wire, g.partner, g.terminal'),
  )
  replace(
    svg,
    'over',
    [...signElements(signs, size * SIGN), ...chips.flatMap(each => chipElements(each, size))],
    null,
  )
}
