import type { JobSheet, OpenPoint, SheetText } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { SupplyNotice } from '../supply/supply-notice.ts'
import type { Html } from './markup.ts'
import { html } from './markup.ts'

const items = (texts: readonly SheetText[], words: SheetWords): readonly Html[] =>
  texts.map(each => html`<li>${textOf(each, words)}</li>`)

function saysOf({ says }: OpenPoint, words: SheetWords): string {
  switch (says.kind) {
    case 'finding':
      return words.findingText(says.finding)
    case 'question':
      return words.questionText(says.question)
    case 'change':
      return say(words.page.changeFirst, { change: words.changeText(says.change) })
    case 'text':
      return textOf(says.text, words)
  }
}

const point = (each: OpenPoint, words: SheetWords): Html =>
  html`<li class="${each.severity}"><span class="mark"><span>!${each.number}</span></span><span><span class="word">${words.severities[each.severity]}</span></span><span>${capital(saysOf(each, words))}</span></li>`

/** What feeds the tub is judged apart: what of it is dangerous stops the job as well. */
function supplyPart(
  { outcome, lead, dangers, open }: SupplyNotice,
  { page, severities }: SheetWords,
): Html {
  const notShown = open > 0 ? html` ${say(page.supplyOpen, { count: open })}` : undefined
  if (dangers.length === 0)
    return html`<p data-supply="${outcome}"><strong>${page.supply}: ${lead}</strong>${notShown}</p>`
  return html`<section class="danger" data-supply="${outcome}"><div class="stops"><p><span class="word">${severities.danger}</span> <strong>${page.supply}: ${lead} ${page.supplyStop}</strong>${notShown}</p><ul>${dangers.map(each => html`<li>${each}</li>`)}</ul></div></section>`
}

/** What the job is, what stops it, what is open: the first page. */
export function frontMatter(sheet: JobSheet, words: SheetWords, supply?: SupplyNotice): Html {
  const { head, stops, licence, open, remarks } = sheet
  const { page } = words
  return html`<header>
<div class="head"><h1>${page.title}</h1><span class="job">${page.job} ${sheet.id} · ${page.region} ${head.region}</span></div>${words.unreviewedNotice ? html`<p><strong>${words.unreviewedNotice}</strong></p>` : undefined}
<p class="lead"><strong>${head.tub}</strong> → <strong>${head.box}</strong>, ${head.maker}.</p>
${head.lines.map(each => html`<p>${textOf(each, words)}</p>`)}
</header>
<section class="danger"><div class="stops"><p><span class="word">${words.severities.danger}</span></p><ul>${items(stops, words)}</ul></div></section>
${supply && supplyPart(supply, words)}
<section><h2>${page.open}</h2>
<ol class="open">${open.length > 0 ? open.map(each => point(each, words)) : html`<li><span></span><span></span><span>${words.messages['open.none']}</span></li>`}</ol>
</section>
${remarks.length > 0 ? html`<section><h2>${page.remarks}</h2><ul>${items(remarks, words)}</ul></section>` : undefined}
<section><h2>${page.licence}</h2>${licence.map(each => html`<p>${textOf(each, words)}</p>`)}</section>`
}
