import type { JobSheet, LoadSheetRow } from '@tubwright/core'
import { figure, say } from '@tubwright/words'
import type { SheetWords } from '../sheet-words.ts'
import { textOf } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, table } from './markup.ts'
import { settingTable } from './tables.ts'

const lines = (all: readonly (Html | string)[]): Html =>
  html`${all.map(each => html`<div>${each}</div>`)}`

function leads({ leads: all }: LoadSheetRow, words: SheetWords): Html {
  return lines(
    all.map(
      ({ wire, terminal, letters, functionText }) =>
        html`<strong>${terminal ?? words.page.notLanded}</strong> · ${wire} ${letters} ${textOf(functionText, words)}`,
    ),
  )
}

const plate = ({ amps }: LoadSheetRow, words: SheetWords): Html =>
  lines(
    amps.map(({ circuit, amps: each }) => {
      const name = circuit ? `${textOf(circuit, words)} ` : ''
      return html`${name}${textOf(each, words)}`
    }),
  )

const blanks = ({ amps }: LoadSheetRow): Html =>
  lines(amps.map(() => html`<span class="blank"></span>`))

function positions({ strap, jumpers }: LoadSheetRow, words: SheetWords): Html {
  return lines([
    ...(strap === undefined ? [] : [say(words.page.strapAt, { volts: strap })]),
    ...jumpers.map(({ id, position }) => html`<strong>${id}</strong> ${position}`),
  ])
}

const protects = ({ fuses, contacts }: LoadSheetRow): Html =>
  lines([...fuses, ...contacts].map(({ name, rating }) => html`<strong>${name}</strong> ${rating}`))

function runs({ commands, isAlwaysOn }: LoadSheetRow, { page }: SheetWords): Html {
  if (commands.length > 0) return lines(commands)
  return html`${isAlwaysOn ? page.alwaysOn : page.off}`
}

function loadRow(each: LoadSheetRow, words: SheetWords): Html {
  const { page } = words
  const live = each.liveWhenOff ? html`<span class="do move">${page.live}</span>` : page.no
  return html`<tr><th scope="row">${each.label}${each.place === undefined ? '' : html`<div class="plug">${each.place}</div>`}</th><td>${leads(each, words)}</td><td class="n">${figure(each.volts)}</td><td class="k">${plate(each, words)}</td><td>${blanks(each)}</td><td>${positions(each, words)}</td><td class="k">${protects(each)}</td><td>${runs(each, words)}</td><td>${live}</td></tr>`
}

/** For the lid of the box: one line a load, and the settings. */
export function loadSheet(sheet: JobSheet, words: SheetWords): Html {
  const { page } = words
  const heads = [
    page.load,
    page.terminals,
    'V',
    page.plate,
    `${page.measured} [A]`,
    page.strapAndJumper,
    page.protects,
    page.command,
    page.liveOff,
  ]
  const rows = sheet.loadSheet.map(each => loadRow(each, words))
  const note = sheet.lidNote
    ? html`<p><strong>${textOf(sheet.lidNote, words)}</strong></p>`
    : undefined
  const not = sheet.head.holds ? undefined : html`<p><strong>${page.notShown}</strong></p>`
  return html`<section class="page whole"><h2>${page.loadSheet}: ${sheet.head.tub} → ${sheet.head.box}</h2>${not}${table('loads', heads, [html`<tbody>${rows}</tbody>`])}${note}${settingTable(sheet, words)}</section>`
}
