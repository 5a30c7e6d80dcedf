import type { JobSheet, SheetPanel, WireRole } from '@tubwright/core'
import { escapeText } from '../escape.ts'
import type { SheetWords } from '../sheet-words.ts'
import { FONT, INK, n } from './ink.ts'
import { layOutBoard } from './lay-out-board.ts'
import type { Label, Point, Scene, SceneJumper, SceneTerminal, SceneWire } from './scene.ts'
import { symbolMarkup } from './symbols.ts'

/** Dashes by what a wire does [mm]: told apart in black and white, and without colour sight. */
export const DASHES: Readonly<Record<WireRole, string>> = {
  leg1: '',
  leg2: '6 1.2',
  leg3: '6 1.2 1 1.2',
  neutral: '3 1.2',
  earth: '6 1 1 1',
  hot: '',
  low: '4 1.2',
  return: '1.8 1',
  signal: '1 1',
}
export const WIDTHS: Readonly<Record<WireRole, number>> = {
  leg1: 1.2,
  leg2: 1.2,
  leg3: 1.2,
  neutral: 1.2,
  earth: 0.95,
  hot: 0.95,
  low: 0.95,
  return: 0.95,
  signal: 0.95,
}

/** The heart of a wire's line, where it is not black. */
const CORES: Readonly<Record<string, string>> = {
  brown: '#8a5a2b',
  red: '#d33',
  orange: '#f28c28',
  yellow: '#ffe14d',
  green: '#3aa655',
  blue: '#4a8fe0',
  violet: '#9b6bd1',
  grey: '#bbb',
  white: '#fff',
  pink: '#ffb3c6',
  turquoise: '#5fd3d0',
  'green-yellow': '#b5e04a',
  bare: '#e2b58a',
}

const path = (points: readonly Point[]): string =>
  points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('')

/**
 * Draws a board as the eye finds it: terminals and jumpers in their places, the wires from them to
 * their loads around it, each with number, colour letters and a line of its own kind.
 *
 * @param panel - `box`, or a device of the supply
 * @returns an SVG element, one unit to the millimetre
 */
export function drawBoard(sheet: JobSheet, words: SheetWords, panel = 'box'): string {
  const drawn = sheet.panels.find(each => each.id === panel)
  if (!drawn) return ''
  const scene = layOutBoard(drawn, wiresOf(sheet), words)
  return svg(scene, drawn, words)
}

export const wiresOf = (sheet: JobSheet) => sheet.wires.flatMap(group => group.wires)

function svg(scene: Scene, panel: SheetPanel, words: SheetWords): string {
  const title = `${words.page.board}: ${panel.label}`
  const id = `board-${escapeText(panel.id)}`
  const says = scene.wires.map(each => each.says).join('; ')
  const { width, height } = scene
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="board" role="img" aria-labelledby="${id}-title ${id}-desc" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}mm" height="${n(height)}mm" font-family="${FONT}" fill="${INK}"><title id="${id}-title">${escapeText(title)}</title><desc id="${id}-desc">${escapeText(says)}</desc>`,
    boardMarkup(scene),
    ...scene.wires.map(wireMarkup),
    ...scene.partners.map(
      each =>
        `<g class="partner"><title>${escapeText(each.says)}</title><rect x="${n(each.x)}" y="${n(each.y)}" width="${n(each.width)}" height="${n(each.height)}" rx="1" fill="#fff" stroke="${INK}" stroke-width="0.3"/>${symbolMarkup(each.symbol, each.at)}</g>`,
    ),
    ...scene.terminals.map(each => terminalMarkup(panel.id, each)),
    ...scene.jumpers.map(jumperMarkup),
    ...scene.labels.map(labelMarkup),
    '</svg>',
  ].join('\n')
}

const boardMarkup = ({ board: { x, y, width, height } }: Scene): string =>
  `<rect class="edge" x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}" rx="1.5" fill="#fff" stroke="${INK}" stroke-width="0.7"/>`

/** An attribute by which a screen finds what was tapped; nothing where there is nothing to say. */
const mark = (name: string, value: string | number | undefined): string =>
  value === undefined ? '' : ` data-${name}="${escapeText(String(value))}"`

function wireMarkup({ number, end, role, colour, says, points }: SceneWire): string {
  const d = path(points)
  const dash = DASHES[role] === '' ? '' : ` stroke-dasharray="${DASHES[role]}"`
  const core = CORES[colour]
  const line = (stroke: string, width: number, dashes: string) =>
    `<path d="${d}" fill="none" stroke="${stroke}" stroke-width="${n(width)}"${dashes}/>`
  return [
    `<g class="wire"${mark('wire', number)}${mark('end', end)} data-role="${role}"><title>${escapeText(says)}</title>`,
    line('#fff', WIDTHS[role] + 1, ''),
    line(INK, WIDTHS[role], dash),
    core === undefined ? '' : line(core, WIDTHS[role] - 0.5, dash),
    '</g>',
  ].join('')
}

function terminalMarkup(
  panel: string,
  { id, x, y, radius, isSquare, isUsed, says }: SceneTerminal,
): string {
  const style = `fill="#fff" stroke="${INK}" stroke-width="${isUsed ? '0.5' : '0.25'}"`
  const shape = isSquare
    ? `<rect x="${n(x - radius)}" y="${n(y - radius)}" width="${n(2 * radius)}" height="${n(2 * radius)}" rx="0.4" ${style}/>`
    : `<circle cx="${n(x)}" cy="${n(y)}" r="${n(radius)}" ${style}/>`
  return `<g${mark('terminal', `${panel}.${id}`)} class="terminal"><title>${escapeText(says)}</title>${shape}</g>`
}

function jumperMarkup({
  id,
  x,
  y,
  width,
  height,
  pads,
  planned,
  moves,
  says,
}: SceneJumper): string {
  const pad = width / pads
  const squares = Array.from({ length: pads }, (_, index) => {
    const isPlanned = index === planned
    return `<rect x="${n(x + index * pad + 0.2)}" y="${n(y + 0.2)}" width="${n(pad - 0.4)}" height="${n(height - 0.4)}" fill="${isPlanned ? INK : '#fff'}" stroke="${INK}" stroke-width="0.3"/>`
  })
  const frame = moves
    ? `<rect x="${n(x - 0.5)}" y="${n(y - 0.5)}" width="${n(width + 1)}" height="${n(height + 1)}" rx="0.6" fill="none" stroke="${INK}" stroke-width="0.5"/>`
    : ''
  return `<g${mark('jumper', id)} class="jumper"><title>${escapeText(says)}</title>${squares.join('')}${frame}</g>`
}

const BOLD: readonly Label['kind'][] = ['number', 'tag', 'jumper', 'point', 'partner']

function labelMarkup({ kind, text, x, y, width, height, size, turned, wire }: Label): string {
  const weight = BOLD.includes(kind) ? ' font-weight="bold"' : ''
  const fill = kind === 'point' ? ' fill="#fff"' : ''
  const back =
    kind === 'point'
      ? `<rect x="${n(x - 0.4)}" y="${n(y)}" width="${n(width + 0.8)}" height="${n(height)}" rx="0.5" fill="${INK}"/>`
      : ''
  const [cx, cy] = [x + width / 2, y + height / 2]
  const at = turned
    ? `transform="translate(${n(cx)} ${n(cy)}) rotate(-90)" x="0" y="${n(size * 0.35)}"`
    : `x="${n(cx)}" y="${n(cy + size * 0.35)}"`
  return `${back}<text class="${kind}"${mark('of', wire)} ${at} font-size="${n(size)}" text-anchor="middle"${weight}${fill}>${escapeText(text)}</text>`
}
