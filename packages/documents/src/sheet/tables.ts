import type { JobSheet, SheetJumper, SheetText, SheetWire, WireGroup } from '@tubwright/core'
import { figure } from '@tubwright/words'
import type { SheetWords } from '../sheet-words.ts'
import { capital, textOf } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, raw, row, table, tick } from './markup.ts'

const WIRE_COLUMNS = 8

const colourText = ({ letters, colour }: SheetWire, words: SheetWords): Html =>
  html`<strong>${letters}</strong> ${words.colours[colour] ?? colour}`

const endText = (wire: SheetWire, at: number): Html => {
  const end = wire.ends[at]
  if (!end?.terminal) return html`–`
  return html`<strong>${end.terminal}</strong> ${end.terminalLabel ?? ''}`
}

/** The far end of a supply wire, with its own fixing: it stands in the note. */
function farText(wire: SheetWire, words: SheetWords): Html | undefined {
  const far = wire.ends[0]
  if (wire.ends.length < 2 || !far) return undefined
  const fixing = far.fixing ? html`, ${textOf(far.fixing, words)}` : undefined
  return html`${words.page.far}: ${endText(wire, 0)}${fixing}. `
}

function wireRow(wire: SheetWire, words: SheetWords): Html {
  const last = wire.ends.length - 1
  const fixing = wire.ends[last]?.fixing
  return html`<tr><th scope="row" class="n">${wire.number}</th><td>${textOf(wire.functionText, words)}</td><td>${colourText(wire, words)}</td><td class="k">${wire.size}</td><td>${endText(wire, last)}</td><td class="k">${fixing ? textOf(fixing, words) : ''}</td><td>${farText(wire, words)}${wire.notes.map(each => html`<strong>${textOf(each, words)}</strong> `)}</td><td>${tick}</td></tr>`
}

function group(each: WireGroup, words: SheetWords): Html {
  const plug = each.plug ? html` <span class="plug">${textOf(each.plug, words)}</span>` : undefined
  return html`<tbody><tr class="group"><th scope="rowgroup" colspan="${WIRE_COLUMNS}">${capital(textOf(each.title, words))}.${plug}</th></tr>${each.wires.map(wire => wireRow(wire, words))}</tbody>`
}

/** Every wire by its number. */
export function wireTable({ wires }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const heads = [
    page.number,
    page.lead,
    page.colour,
    page.size,
    page.terminal,
    page.fixing,
    page.note,
    page.done,
  ]
  return html`<section><h2>${page.wires}</h2>${table(
    'wires',
    heads,
    wires.map(each => group(each, words)),
  )}</section>`
}

/** Which of its positions a jumper is in: the filled one. */
function glyph({ positions }: SheetJumper, at: string): Html {
  const pads = positions.map(({ id }, index) => {
    const fill = id === at ? '#000' : '#fff'
    return `<rect x="${index * 4 + 0.3}" y="0.3" width="3.4" height="3.4" fill="${fill}" stroke="#000" stroke-width="0.4"/>`
  })
  const width = positions.length * 4
  return raw(
    `<svg class="glyph" width="${width}mm" height="4mm" viewBox="0 0 ${width} 4" aria-hidden="true">${pads.join('')}</svg>`,
  )
}

const doText = (words: SheetWords, moves: boolean): Html =>
  moves
    ? html`<span class="do move">${words.page.move}</span>`
    : html`<span class="do">${words.page.leave}</span>`

function jumperTable({ jumpers }: JobSheet, words: SheetWords): Html | undefined {
  const { page } = words
  if (jumpers.length === 0) return undefined
  const rows = jumpers.map(each =>
    row([
      html`${each.id} <span class="plug">${each.label}</span>`,
      html`${glyph(each, each.from)}${each.fromLabel}`,
      html`${glyph(each, each.to)}<strong>${each.toLabel}</strong>`,
      doText(words, each.moves),
      tick,
    ]),
  )
  return html`<section class="whole"><h2>${page.jumpers}</h2>${table(
    'jumpers',
    [page.jumper, page.factory, page.planned, page.action, page.done],
    [html`<tbody>${rows}</tbody>`],
  )}</section>`
}

function strapTable({ straps }: JobSheet, words: SheetWords): Html | undefined {
  const { page } = words
  if (straps.length === 0) return undefined
  const rows = straps.map(each =>
    row([
      each.label,
      each.from,
      html`<strong>${each.to}</strong>`,
      doText(words, each.moves),
      tick,
    ]),
  )
  return html`<section class="whole"><h2>${page.straps}</h2>${table(
    'straps',
    [page.strap, page.found, page.planned, page.action, page.done],
    [html`<tbody>${rows}</tbody>`],
  )}</section>`
}

/** What is entered in the box, and what a reset makes of it. */
export function settingTable({ settings, afterReset }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const rows = settings.map(each =>
    row([
      textOf(each.name, words),
      html`<strong>${each.to}</strong>`,
      each.entered,
      each.factory,
      each.moves
        ? html`<span class="do move">${page.change}</span>`
        : html`<span class="do">${page.keep}</span>`,
      tick,
    ]),
  )
  return html`<section class="whole"><h2>${page.settings}</h2>${table(
    'settings',
    [page.setting, page.setTo, page.entered, page.factory, page.action, page.done],
    [html`<tbody>${rows}</tbody>`],
  )}${afterReset ? html`<p><strong>${textOf(afterReset, words)}</strong></p>` : undefined}</section>`
}

interface Band {
  readonly low: number
  readonly nominal: number
  readonly high: number
}

const bandCells = ({ low, nominal, high }: Band): Html =>
  html`<td class="n">${figure(low)}</td><td class="n"><strong>${figure(nominal)}</strong></td><td class="n">${figure(high)}</td>`

function meterTable({ meter }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const rows = meter.map(each => {
    const amps = each.amps
      ? bandCells(each.amps)
      : html`<td colspan="3">${each.unknown ? textOf(each.unknown, words) : ''}</td>`
    return html`<tr><th scope="row">${each.label}</th><td>${each.command ?? page.alwaysOn}</td><td class="k">${each.terminals}</td>${bandCells(each.volts)}${amps}</tr>`
  })
  const three = html`<th scope="col" class="n">${page.low}</th><th scope="col" class="n">${page.nominal}</th><th scope="col" class="n">${page.high}</th>`
  return html`<section class="whole"><h2>${page.meter}</h2><table class="meter" tabindex="0"><thead><tr><th scope="col" rowspan="2">${page.load}</th><th scope="col" rowspan="2">${page.output}</th><th scope="col" rowspan="2">${page.between}</th><th scope="colgroup" colspan="3">${page.volts} [V]</th><th scope="colgroup" colspan="3">${page.amps} [A]</th></tr><tr>${three}${three}</tr></thead><tbody>${rows}</tbody></table></section>`
}

function togetherTable(sheet: JobSheet, words: SheetWords): Html {
  const { page } = words
  const rows = sheet.together.map(
    ({ commands, heats, lineAmps }) =>
      html`<tr><th scope="row">${commands.join(' + ')}</th><td>${heats ? page.yes : html`<strong>${page.waits}</strong>`}</td>${lineAmps.map(each => html`<td class="n">${figure(each)}</td>`)}</tr>`,
  )
  const lines = sheet.lines.map(each => `${textOf(each, words)} [A]`)
  const heads = [page.runs, page.heats, ...lines]
  return html`<section class="whole"><h2>${page.together}</h2>${table('together', heads, [html`<tbody>${rows}</tbody>`])}${sheet.heat.map(each => html`<p>${textOf(each, words)}</p>`)}</section>`
}

function lid({ liveWhenOff, lidNote }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const none = lidNote ? undefined : html`<p>${page.lidNone}</p>`
  const list = html`<p><strong>${liveWhenOff.join(' · ')}</strong></p>`
  const note = lidNote ? html`<p><strong>${textOf(lidNote, words)}</strong></p>` : undefined
  return html`<section class="whole"><h2>${page.lid}</h2>${liveWhenOff.length > 0 ? list : none}${note}</section>`
}

/** Jumpers, straps, settings, readings, what may run together, and what stays live. */
export const tables = (sheet: JobSheet, words: SheetWords): Html =>
  html`${jumperTable(sheet, words)}${strapTable(sheet, words)}${settingTable(sheet, words)}${meterTable(sheet, words)}${togetherTable(sheet, words)}${lid(sheet, words)}`

/** What to bring, and what to make or buy before the visit. */
export function bring({ tools, parts, changes }: JobSheet, words: SheetWords): Html {
  const { page } = words
  const ticked = (all: readonly SheetText[]) =>
    html`<ul class="ticks">${all.map(each => html`<li>${tick}${textOf(each, words)}</li>`)}</ul>`
  const changeList =
    changes.length > 0
      ? html`<p><strong>${page.changesFirst}</strong></p><ul class="ticks">${changes.map(each => html`<li>${tick}<strong>${words.toGet[each.kind]}</strong> ${words.changeText(each)}</li>`)}</ul>`
      : undefined
  return html`<div class="cols"><section><h2>${page.tools}</h2>${ticked(tools)}</section><section><h2>${page.parts}</h2>${changeList}${ticked(parts)}</section></div>`
}
