import type { JobSheet, LadderDevice, LadderSection } from '@tubwright/core'
import { drawLadderSection } from '../ladder/draw-ladder.ts'
import { rungText } from '../ladder/rung-text.ts'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, raw, row, table } from './markup.ts'

const figure = (sheet: JobSheet, section: LadderSection, words: SheetWords): Html =>
  html`<figure><h3>${textOf(section.title, words)}</h3><div class="scroll" tabindex="0">${raw(drawLadderSection(sheet, section, words))}</div></figure>`

function rungRows(section: LadderSection, words: SheetWords): readonly Html[] {
  return section.rungs.map(rung => {
    const [what, ...more] = rung.says.map(each => textOf(each, words))
    const says = [what === undefined ? '' : capital(what), ...more].join('; ')
    return html`<tr><th scope="row" class="n">${rung.number}</th><td>${rungText(section, rung, words)}</td><td>${says}</td></tr>`
  })
}

const deviceRow = (
  { name, what, rating, own, terminals, rungs }: LadderDevice,
  words: SheetWords,
) => row([name, textOf(what, words), rating, own, terminals.join(' '), rungs.join(', ')])

function designations({ ladder }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const heads = [page.designation, page.what, page.rating, page.own, page.terminal, page.rungs]
  const rows = ladder.devices.map(each => deviceRow(each, words))
  return html`<section><h2>${page.designations}</h2>${table('designations', heads, [html`<tbody>${rows}</tbody>`])}</section>`
}

/** The ladder diagram, then everything that it shows in words, then what each name stands for. */
export function ladderPages(sheet: JobSheet, words: SheetWords): Html {
  const { page } = words
  const heads = [page.rung, page.runsThrough, page.isFor]
  const rows = sheet.ladder.sections.flatMap(each => rungRows(each, words))
  return html`<section class="page"><h2>${page.ladder}</h2><p class="quiet">${page.ladderSays}</p>${sheet.ladder.sections.map(each => figure(sheet, each, words))}</section>
<section><h2>${page.ladderTable}</h2>${table('rungs', heads, [html`<tbody>${rows}</tbody>`])}</section>
${designations(sheet, words)}`
}
