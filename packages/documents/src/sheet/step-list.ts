import type { JobSheet, Reading, SheetStep, SheetText } from '@tubwright/core'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, tick } from './markup.ts'

function readingRow({ what, expected, unit }: Reading, words: SheetWords): Html {
  const blank =
    unit === '' ? html`<span class="blank long"></span>` : html`<span class="blank"></span>`
  return html`<tr><th scope="row">${capital(textOf(what, words))}</th><td>${expected ? textOf(expected, words) : ''}</td><td class="k">${blank} <span class="unit">${unit}</span></td></tr>`
}

/** Rows of a table that stays in one piece, under its step. */
const SHORT = 7

function readings(all: readonly Reading[], words: SheetWords): Html | undefined {
  if (all.length === 0) return undefined
  const { page } = words
  const name = all.length <= SHORT ? 'readings short' : 'readings'
  return html`<table class="${name}"><colgroup><col class="what"><col><col></colgroup><thead><tr><th scope="col">${page.reading}</th><th scope="col">${page.shouldBe}</th><th scope="col">${page.read}</th></tr></thead><tbody>${all.map(each => readingRow(each, words))}</tbody></table>`
}

/** What to do where a reading is not what it should be: read only then, so it has nothing to tick. */
function outsideLines(all: readonly SheetText[], words: SheetWords): Html | undefined {
  if (all.length === 0) return undefined
  return html`<div class="outside"><p><strong>${words.page.outside}</strong></p><ul>${all.map(each => html`<li>${textOf(each, words)}</li>`)}</ul></div>`
}

function step(each: SheetStep, number: number, words: SheetWords): Html {
  const { severity, text } = each.caution
  const licensed = each.licensed
    ? html`<span class="licensed">${words.page.licensed}</span>`
    : undefined
  return html`<li><section class="step"><div class="keep"><h3><span class="no">${number}</span>${textOf(each.title, words)}${licensed}</h3>
<p class="caution-line ${severity}"><span><span class="word">${words.severities[severity]}</span></span><span>${textOf(text, words)}</span></p>
<ul>${each.actions.map(action => html`<li>${tick}${textOf(action, words)}</li>`)}</ul></div>${readings(each.readings, words)}${outsideLines(each.outside, words)}</section></li>`
}

/** The steps in order, each with its caution, its ticks and its readings. */
export const stepList = ({ steps }: JobSheet, words: SheetWords): Html =>
  html`<section class="page"><h2>${words.page.steps}</h2><ol>${steps.map((each, index) => step(each, index + 1, words))}</ol></section>`
