import type { JobSheet, LadderSection, LadderStyle } from '@tubwright/core'
import { FONT, INK, n } from '../board/ink.ts'
import { escapeText } from '../escape.ts'
import type { SheetWords } from '../sheet-words.ts'
import { textOf } from '../sheet-words.ts'
import { layOutLadder } from './lay-out-ladder.ts'
import { rungText } from './rung-text.ts'
import type { LadderLabel, LadderMark, LadderScene, LadderSign } from './scene.ts'
import { ladderSymbol } from './symbols.ts'

const WIDTHS = { copper: 0.4, lead: 0.9, rail: 0.8, joint: 0.4 } as const

const MARKS: Readonly<Record<LadderMark['kind'], string>> = {
  terminal: '<circle r="0.9" fill="#fff" stroke="#000" stroke-width="0.4"/>',
  open: '<circle r="0.9" fill="#fff" stroke="#000" stroke-width="0.4"/>',
  'arrow-left': '<path d="M-1.8 -1.1L0 0L-1.8 1.1Z" fill="#000"/>',
  'arrow-right': '<path d="M0 -1.1L1.8 0L0 1.1Z" fill="#000"/>',
  ring: '<circle r="1.5" fill="none" stroke="#000" stroke-width="0.4"/>',
  earth:
    '<path d="M0 0V1.2M-1.3 1.2H1.3M-0.8 1.8H0.8M-0.35 2.4H0.35" fill="none" stroke="#000" stroke-width="0.3"/>',
}

const at = (x: number, y: number, markup: string): string =>
  `<g transform="translate(${n(x)} ${n(y)})">${markup}</g>`

function signMarkup({ step, pins: [a, b] }: LadderSign, style: LadderStyle): string {
  if (step.kind === 'spare') return ''
  if (step.kind === 'wire')
    return `<path class="wire" data-wire="${step.number}" d="M${n(a.x)} ${n(a.y)}H${n(b.x)}" fill="none" stroke="${INK}" stroke-width="0.9"/>`
  return `<g class="part" data-id="${escapeText(step.id)}" transform="translate(${n((a.x + b.x) / 2)} ${n(a.y)})"><title>${escapeText(step.name)}</title>${ladderSymbol(step, style)}</g>`
}

const labelMarkup = ({ kind, text, x, y, height, size, isBold }: LadderLabel): string =>
  `<text class="${kind}" x="${n(x)}" y="${n(y + height * 0.8)}" font-size="${n(size)}"${isBold ? ' font-weight="bold"' : ''}>${escapeText(text)}</text>`

function sceneMarkup(scene: LadderScene, style: LadderStyle): string {
  const { lines, dots, signs, marks, links, labels } = scene
  return [
    ...links.map(
      ({ a, b }) =>
        `<path class="link" d="M${n(a.x)} ${n(a.y)}L${n(b.x)} ${n(b.y)}" fill="none" stroke="${INK}" stroke-width="0.25" stroke-dasharray="1.2 0.8"/>`,
    ),
    ...lines.map(
      ({ a, b, kind }) =>
        `<path class="${kind}" d="M${n(a.x)} ${n(a.y)}L${n(b.x)} ${n(b.y)}" fill="none" stroke="${INK}" stroke-width="${WIDTHS[kind]}"/>`,
    ),
    ...signs.map(each => signMarkup(each, style)),
    ...marks.map(({ kind, x, y }) => at(x, y, MARKS[kind])),
    ...dots.map(
      ({ x, y }) => `<circle class="dot" cx="${n(x)}" cy="${n(y)}" r="0.75" fill="${INK}"/>`,
    ),
    ...labels.map(labelMarkup),
  ].join('\n')
}

function svgOf(
  { width, height }: { readonly width: number; readonly height: number },
  { id, title, says }: { readonly id: string; readonly title: string; readonly says: string },
  markup: string,
): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" class="board ladder" role="img" aria-labelledby="${id}-title ${id}-desc" viewBox="0 0 ${n(width)} ${n(height)}" width="${n(width)}mm" height="${n(height)}mm" font-family="${FONT}" fill="${INK}"><title id="${id}-title">${escapeText(title)}</title><desc id="${id}-desc">${escapeText(says)}</desc>
${markup}
</svg>`
}

const sectionTitle = (section: LadderSection, words: SheetWords): string =>
  `${words.page.ladder}: ${textOf(section.title, words)}`

const saysOf = (section: LadderSection, words: SheetWords): string =>
  section.rungs.map(each => `${each.number}: ${rungText(section, each, words)}.`).join(' ')

/** One part of the ladder as an SVG element, one unit to the millimetre. */
export function drawLadderSection(
  sheet: JobSheet,
  section: LadderSection,
  words: SheetWords,
): string {
  const scene = layOutLadder(section, words)
  const about = {
    id: `ladder-${sheet.ladder.sections.indexOf(section) + 1}`,
    title: sectionTitle(section, words),
    says: saysOf(section, words),
  }
  return svgOf(scene, about, sceneMarkup(scene, sheet.ladder.style))
}

const TITLE_ROOM = 6

/** The whole ladder as one SVG: its parts below each other. */
export function drawLadder(sheet: JobSheet, words: SheetWords): string {
  const { sections, style } = sheet.ladder
  let y = 0
  let width = 0
  const parts = sections.map(section => {
    const scene = layOutLadder(section, words)
    const title = `<text x="0.5" y="4" font-size="3.6" font-weight="bold">${escapeText(textOf(section.title, words))}</text>`
    const markup = at(0, y, `${title}${at(0, TITLE_ROOM - 2, sceneMarkup(scene, style))}`)
    y += scene.height + TITLE_ROOM
    width = Math.max(width, scene.width)
    return markup
  })
  const about = {
    id: 'ladder',
    title: `${words.page.ladder}: ${sheet.head.tub} → ${sheet.head.box}`,
    says: sections.map(each => `${textOf(each.title, words)}. ${saysOf(each, words)}`).join(' '),
  }
  return svgOf({ width, height: y }, about, parts.join('\n'))
}
