import type { SupplyReport, Survey, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import { FONT, INK, n } from '../board/ink.ts'
import type { Point } from '../board/scene.ts'
import { escapeText } from '../escape.ts'
import type { YardLabel, YardMarker, YardScene } from './lay-out-yard.ts'
import { layOutYard, MARKER, SIGN_ROOM, SIZE } from './lay-out-yard.ts'
import { signPath } from './sign.ts'

const BASE = 9.8 // from the top of a line of text to its base line
const SIGN_AT = { x: 6, y: 6.2 } // middle of a sign beside its word
const PAPER = '#fff'

/** Beside the sign, never instead of it. */
const COLOURS: Readonly<Record<Verdict, string>> = {
  holds: '#1b6e35',
  breaks: '#b00020',
  'not-shown': '#8a5300',
  provided: '#8a5300',
  'experts-differ': '#5b3a9e',
}

/** What is open is a broken line: without colour too. */
const DASHES: Readonly<Partial<Record<Verdict, string>>> = {
  'not-shown': '4 2',
  provided: '7 2',
  'experts-differ': '5 2 1 2',
}

const dashed = (verdict: Verdict): string =>
  DASHES[verdict] === undefined ? '' : ` stroke-dasharray="${DASHES[verdict]}"`

const line = (from: Point, to: Point, stroke: string, width: number, rest = ''): string =>
  `<path d="M${n(from.x)} ${n(from.y)}L${n(to.x)} ${n(to.y)}" stroke="${stroke}" stroke-width="${width}"${rest}/>`

const circle = ({ x, y }: Point, radius: number, rest: string): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="${n(radius)}" ${rest}/>`

const ring = (middle: Point, radius: number): string =>
  circle(middle, radius, `fill="none" stroke="#777" stroke-width="1"`)

const signAt = ({ x, y }: Point, verdict: Verdict, scale: number): string =>
  `<g data-verdict="${verdict}" color="${COLOURS[verdict]}" transform="translate(${n(x)} ${n(y)}) scale(${scale})">${signPath(verdict)}</g>`

function marker(each: YardMarker): string {
  const colour = COLOURS[each.verdict]
  const range = each.to ? line(each, each.to, colour, 4, ' stroke-linecap="round"') : ''
  const disc = `fill="${PAPER}" stroke="${colour}" stroke-width="${each.verdict === 'breaks' ? 2.6 : 1.6}"${dashed(each.verdict)}`
  return `<g data-thing="${escapeText(each.at)}"><title>${escapeText(each.says)}</title>${range}${circle(each, MARKER, disc)}${signAt(each, each.verdict, 0.85)}</g>`
}

const leader = ({ leader: [from, to] }: YardMarker): string =>
  from && to ? line(from, to, '#999', 0.8) : ''

/** Names of rings lie on their lines: paper shows around the letters. */
const HALO = ` stroke="${PAPER}" stroke-width="4" paint-order="stroke" stroke-linejoin="round"`

function label({ kind, text, isBold, verdict, isFlushRight, ...box }: YardLabel): string {
  const { x, y, width } = box
  const weight = isBold ? ' font-weight="bold"' : ''
  const indent = verdict ? SIGN_ROOM : 0
  const signX = isFlushRight ? x + width - SIGN_AT.x : x + SIGN_AT.x
  const sign = verdict ? signAt({ x: signX, y: y + SIGN_AT.y }, verdict, 0.9) : ''
  const halo = kind === 'ring' ? HALO : ''
  const [at, anchor] = isFlushRight ? [x + width - indent, ' text-anchor="end"'] : [x + indent, '']
  return `${sign}<text x="${n(at)}" y="${n(y + BASE)}"${anchor}${weight}${halo}>${escapeText(text)}</text>`
}

const breakLine = ({ middle, breakAt }: YardScene): string =>
  breakAt === undefined
    ? ''
    : circle(
        middle,
        breakAt,
        `fill="none" stroke="${INK}" stroke-width="0.9" stroke-dasharray="2 3"`,
      )

function ink(scene: YardScene): string {
  const { width, height, middle, tub, rings, markers, labels } = scene
  return [
    `<rect width="${n(width)}" height="${n(height)}" fill="${PAPER}"/>`,
    ...rings.map(each => ring(middle, each)),
    breakLine(scene),
    circle(middle, tub, `fill="#eef4f8" stroke="${INK}" stroke-width="2"`),
    ...markers.map(leader),
    ...markers.map(marker),
    ...labels.map(label),
  ].join('')
}

/**
 * The yard around the tub from above, as one SVG: the tub, the distances of the book as rings, each
 * thing at its distance with the worst that is said of it, as a sign, a word and a colour.
 *
 * It judges nothing: verdicts and figures are those of the report. Empty where no yard was surveyed.
 */
export function drawYard(survey: Survey, report: SupplyReport, words: Words): string {
  if (!survey.yard) return ''
  const scene = layOutYard(survey, report, words)
  const { width, height } = scene
  const id = `yard-${escapeText(report.survey)}`
  const title = say(words.supplyPage['yard-title'], { tub: survey.title })
  return `<svg xmlns="http://www.w3.org/2000/svg" class="yard" role="img" lang="${escapeText(words.language)}" aria-labelledby="${id}-title ${id}-says" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}" height="${n(height)}" font-family="${FONT}" font-size="${SIZE}" fill="${INK}"><title id="${id}-title">${escapeText(title)}</title><desc id="${id}-says">${escapeText(scene.says.join('; '))}</desc>${ink(scene)}</svg>`
}
