import type { SupplyReport, Survey, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { FONT, n } from '../board/ink.ts'
import type { Box, Point } from '../board/scene.ts'
import { escapeText } from '../escape.ts'
import type { RunLabel, RunScene } from './lay-out-run.ts'
import { layOutRun, SIGN_ROOM, SIZE } from './lay-out-run.ts'
import { signPath } from './sign.ts'

const BASE = 9.5 // from the top of a line of text to its base line
const SIGN_AT = { x: 6, y: 5.8 } // middle of a sign before its word

/** What is open is a broken line: without colour too. */
const DASHES: Readonly<Partial<Record<Verdict, string>>> = {
  'not-shown': '6 3',
  'experts-differ': '10 3 2 3',
}

const path = (points: readonly Point[]): string =>
  points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('')

function arrow(points: readonly Point[]): string {
  const end = points.at(-1)
  return end
    ? `<path d="M${n(end.x - 7)} ${n(end.y - 3.5)}L${n(end.x - 0.5)} ${n(end.y)}L${n(end.x - 7)} ${n(end.y + 3.5)}Z" fill="currentColor"/>`
    : ''
}

function wire({ points, verdict }: RunScene['wires'][number]): string {
  const dashes = verdict && DASHES[verdict]
  const dashed = dashes === undefined ? '' : ` stroke-dasharray="${dashes}"`
  return `<path d="${path(points)}" fill="none" stroke="currentColor" stroke-width="2"${dashed}/>${arrow(points)}`
}

const box = ({ x, y, width, height }: Box): string =>
  `<rect x="${n(x + 0.75)}" y="${n(y + 0.75)}" width="${n(width - 1.5)}" height="${n(height - 1.5)}" rx="2" fill="none" stroke="currentColor" stroke-width="1.5"/>`

function label({ x, y, text, isBold, verdict }: RunLabel): string {
  const sign = verdict
    ? `<g data-verdict="${verdict}" transform="translate(${n(x + SIGN_AT.x)} ${n(y + SIGN_AT.y)})">${signPath(verdict)}</g>`
    : ''
  const indent = verdict ? SIGN_ROOM : 0
  const weight = isBold ? ' font-weight="bold"' : ''
  return `${sign}<text x="${n(x + indent)}" y="${n(y + BASE)}"${weight}>${escapeText(text)}</text>`
}

/**
 * The run from the panel to the tub as one SVG: a box for each device, a line for each piece with what
 * it is, what it carries and its worst verdict, as a sign and as a word.
 *
 * It has no colour of its own but that of the text around it, and fits 700 pixels.
 */
export function drawRun(report: SupplyReport, survey: Survey, words: Words): string {
  const scene = layOutRun(report, survey, words)
  const { width, height } = scene
  const id = `run-${escapeText(report.survey)}`
  return `<svg xmlns="http://www.w3.org/2000/svg" class="run" role="img" aria-labelledby="${id}-title ${id}-says" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" font-family="${FONT}" font-size="${SIZE}" fill="currentColor"><title id="${id}-title">${escapeText(words.electrician['run-title'])}</title><desc id="${id}-says">${escapeText(scene.says.join(' '))}</desc>${[...scene.wires.map(wire), ...scene.boxes.map(box), ...scene.labels.map(label)].join('')}</svg>`
}
