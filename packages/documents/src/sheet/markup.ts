import { escapeText } from '../escape.ts'

/** Markup that is safe to put on a page: made here only, from escaped text. */
export interface Html {
  readonly html: string
}

type Content = Html | string | number | readonly Content[] | undefined

const contentText = (content: Content): string => {
  if (content === undefined) return ''
  if (typeof content === 'string') return escapeText(content)
  if (typeof content === 'number') return String(content)
  return 'html' in content ? content.html : content.map(contentText).join('')
}

/** Markup with holes: every hole that is not markup already is escaped. */
export const html = (parts: TemplateStringsArray, ...holes: readonly Content[]): Html => ({
  html: parts.reduce((sum, part, index) => sum + contentText(holes[index - 1]) + part),
})

/** Markup made elsewhere in this package. */
export const raw = (markup: string): Html => ({ html: markup })

export const join = (all: readonly Html[]): Html => ({ html: all.map(each => each.html).join('') })

/** A table whose columns have heads and whose rows never break over a page; keys reach it where it scrolls. */
export function table(name: string, heads: readonly string[], rows: readonly Html[]): Html {
  return html`<table class="${name}" tabindex="0"><thead><tr>${heads.map(each => html`<th scope="col">${each}</th>`)}</tr></thead>${join(rows)}</table>`
}

export const row = (cells: readonly Content[]): Html =>
  html`<tr>${cells.map((each, index) => (index === 0 ? html`<th scope="row">${each}</th>` : html`<td>${each}</td>`))}</tr>`

export const tick: Html = html`<span class="tick" aria-hidden="true"></span>`
