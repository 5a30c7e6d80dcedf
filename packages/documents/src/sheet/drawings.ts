import type { JobSheet, SheetPanel, WireRole } from '@tubwright/core'
import { DASHES, drawBoard, WIDTHS, wiresOf } from '../board/draw-board.ts'
import type { SheetWords } from '../sheet-words.ts'
import type { Html } from './markup.ts'
import { html, raw } from './markup.ts'

const ROLES = Object.keys(DASHES) as readonly WireRole[]

const isMarked = ({ terminals, jumpers, partners }: SheetPanel): boolean =>
  [...terminals, ...jumpers, ...partners].some(each => each.points.length > 0)

function legend(sheet: JobSheet, panel: SheetPanel, words: SheetWords): Html {
  const wires = wiresOf(sheet).filter(each => each.ends.some(end => end.panel === panel.id))
  const used = ROLES.filter(role => wires.some(each => each.role === role))
  return html`<p class="legend quiet"><strong>${words.page.lines}</strong>${used.map(
    role =>
      html`<span>${raw(`<svg width="14mm" height="2mm" viewBox="0 0 14 2" aria-hidden="true"><path d="M0 1H14" stroke="#000" stroke-width="${WIDTHS[role]}"${DASHES[role] === '' ? '' : ` stroke-dasharray="${DASHES[role]}"`}/></svg>`)}${words.lines[role]}</span>`,
  )}${
    wires.some(each => each.reidentify)
      ? html`<span>* ${words.messages['note.re-identify']}</span>`
      : undefined
  }${
    isMarked(panel)
      ? html`<span><span class="board-mark">!1</span> ${words.page.point}</span>`
      : undefined
  }</p>`
}

function fuses({ fuses: all }: SheetPanel, words: SheetWords): Html | undefined {
  if (all.length === 0) return undefined
  return html`<p class="quiet"><strong>${words.page.fuses}</strong> ${all.map(each => `${each.id} ${each.rated}`).join(', ')}</p>`
}

function undrawn(panel: SheetPanel, words: SheetWords): Html | undefined {
  const hidden = panel.jumpers.filter(each => !each.at)
  if (hidden.length === 0) return undefined
  const label = (each: SheetPanel['jumpers'][number]) =>
    `${each.id}: ${each.positions.find(one => one.id === each.to)?.label ?? each.to}`
  return html`<p class="quiet"><strong>${words.page.boardRest}</strong> ${hidden.map(label).join(', ')}</p>`
}

function drawing(sheet: JobSheet, panel: SheetPanel, words: SheetWords): Html {
  return html`<figure><div class="scroll" tabindex="0">${raw(drawBoard(sheet, words, panel.id))}</div><figcaption>${legend(sheet, panel, words)}${fuses(panel, words)}${undrawn(panel, words)}</figcaption></figure>`
}

/** The control board on a page of its own, then each device of the supply. */
export function drawings(sheet: JobSheet, words: SheetWords): Html {
  const [box, ...devices] = sheet.panels
  const { page } = words
  return html`${box ? html`<section><h2>${page.board}: ${box.label}</h2>${drawing(sheet, box, words)}</section>` : undefined}
${devices.map(each => html`<section><h2>${page.device}: ${each.label}</h2>${drawing(sheet, each, words)}</section>`)}`
}
