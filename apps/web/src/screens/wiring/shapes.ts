import type { Box, Point, Size } from './view.ts'

/** A wire as it is drawn, from its terminal on [mm]. */
export interface WireShape {
  readonly number: number
  /** The end that lands on this board. */
  readonly end: string
  readonly d: string
  readonly points: readonly Point[]
  readonly element: Element
}

export interface TerminalShape extends Point {
  /** As a landing names it, such as `box.X1-1`. */
  readonly name: string
  readonly radius: number
  readonly element: Element
}

export interface JumperShape extends Box {
  readonly id: string
  readonly element: Element
}

/** What a drawing has that can be tapped, traced and written on. */
export interface Shapes extends Size {
  readonly wires: readonly WireShape[]
  readonly terminals: readonly TerminalShape[]
  readonly jumpers: readonly JumperShape[]
  /** Where the drawing's own words stand. */
  readonly texts: readonly Box[]
  /** Loads and far ends beside the board. */
  readonly partners: readonly Box[]
}

/** The places of a path of straight runs, such as `M1 2L3 4`. */
export const pointsOf = (d: string): readonly Point[] =>
  [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/gu)].map(([, x, y]) => ({ x: Number(x), y: Number(y) }))

const numberAt = (element: Element | null, name: string): number =>
  Number(element?.getAttribute(name) ?? 0)

const boxOf = (element: Element | null): Box => ({
  x: numberAt(element, 'x'),
  y: numberAt(element, 'y'),
  width: numberAt(element, 'width'),
  height: numberAt(element, 'height'),
})

function wireShape(element: Element): readonly WireShape[] {
  const d = element.querySelector('path')?.getAttribute('d') ?? ''
  const points = pointsOf(d)
  if (points.length < 2) return []
  const end = element.getAttribute('data-end') ?? ''
  return [{ number: numberAt(element, 'data-wire'), end, d, points, element }]
}

function terminalShape(element: Element): TerminalShape {
  const name = element.getAttribute('data-terminal') ?? ''
  const circle = element.querySelector('circle')
  if (circle)
    return {
      name,
      x: numberAt(circle, 'cx'),
      y: numberAt(circle, 'cy'),
      radius: numberAt(circle, 'r'),
      element,
    }
  const { x, y, width, height } = boxOf(element.querySelector('rect'))
  return { name, x: x + width / 2, y: y + height / 2, radius: width / 2, element }
}

/** The pads of a jumper, as one box. */
function jumperShape(element: Element): JumperShape {
  const pads = [...element.querySelectorAll('rect')].map(boxOf)
  const left = Math.min(...pads.map(each => each.x))
  const top = Math.min(...pads.map(each => each.y))
  return {
    id: element.getAttribute('data-jumper') ?? '',
    x: left,
    y: top,
    width: Math.max(...pads.map(each => each.x + each.width)) - left,
    height: Math.max(...pads.map(each => each.y + each.height)) - top,
    element,
  }
}

const PER_LETTER = 0.6 // [em] on the wide side: the reader's font is not known

/** The room of a line of text about its middle, read along or upwards. */
export function textBox(at: Point, text: string, size: number, isTurned: boolean): Box {
  const [along, across] = [text.length * size * PER_LETTER, size * 1.1]
  const [width, height] = isTurned ? [across, along] : [along, across]
  return { x: at.x - width / 2, y: at.y - height / 2, width, height }
}

const MOVED = /translate\((-?[\d.]+) (-?[\d.]+)\)/u

function textShape(element: Element): Box {
  const size = numberAt(element, 'font-size')
  const text = element.textContent ?? ''
  const moved = MOVED.exec(element.getAttribute('transform') ?? '')
  if (moved) return textBox({ x: Number(moved[1]), y: Number(moved[2]) }, text, size, true)
  const at = { x: numberAt(element, 'x'), y: numberAt(element, 'y') - size * 0.35 }
  return textBox(at, text, size, false)
}

/** Reads a drawing once, so that nothing is measured while a finger moves. */
export function shapesOf(svg: Element): Shapes {
  const all = (selector: string): readonly Element[] => [...svg.querySelectorAll(selector)]
  const [, , width = 1, height = 1] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number)
  return {
    width,
    height,
    wires: all('g.wire').flatMap(wireShape),
    terminals: all('g.terminal').map(terminalShape),
    jumpers: all('g.jumper').map(jumperShape),
    texts: all('text').map(textShape),
    partners: all('g.partner > rect').map(boxOf),
  }
}
