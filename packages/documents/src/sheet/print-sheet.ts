import type { JobSheet } from '@tubwright/core'
import type { SheetWords } from '../sheet-words.ts'
import type { SupplyNotice } from '../supply/supply-notice.ts'
import { drawings } from './drawings.ts'
import { frontMatter } from './front.ts'
import { ladderPages } from './ladder-pages.ts'
import { loadSheet } from './load-sheet.ts'
import type { Html } from './markup.ts'
import { html, raw } from './markup.ts'
import type { PhotoPage } from './photo-pages.ts'
import { photoPages } from './photo-pages.ts'
import { sheetStyle } from './sheet-style.ts'
import { stepList } from './step-list.ts'
import { bring, tables, wireTable } from './tables.ts'

/** Parts of the sheet that can be printed alone, in the order in which they stand. */
export const SHEET_PARTS = [
  'front',
  'bring',
  'board',
  'ladder',
  'wires',
  'tables',
  'steps',
  'load-sheet',
] as const
export type SheetPart = (typeof SHEET_PARTS)[number]

type Part = (sheet: JobSheet, words: SheetWords, supply?: SupplyNotice) => Html

const PARTS: Readonly<Record<SheetPart, Part>> = {
  front: frontMatter,
  bring,
  board: drawings,
  ladder: ladderPages,
  wires: wireTable,
  tables,
  steps: stepList,
  'load-sheet': loadSheet,
}

/** What a part alone is headed with: it must not pass for the whole. */
function partHead(sheet: JobSheet, { page, messages }: SheetWords): Html {
  const not = sheet.head.holds
    ? undefined
    : html`<p><strong>${messages['head.not-proven']}</strong></p>`
  return html`<header><div class="head"><h1>${page.title}</h1><span class="job">${page.job} ${sheet.id}</span></div><p class="quiet">${page.partOnly}</p>${not}</header>`
}

export interface PrintOptions {
  /** One part of it, on its own. */
  readonly only?: SheetPart | undefined
  /** What the check of the supply says: it stands on the first page. */
  readonly supply?: SupplyNotice
  /** Of the job, to stand at the end of the whole sheet. */
  readonly photos?: readonly PhotoPage[]
}

/**
 * Prints the work sheet as one HTML file: no script, nothing fetched, A4 and Letter alike.
 *
 * Equal sheets and words give equal bytes.
 *
 */
export function printSheet(
  sheet: JobSheet,
  words: SheetWords,
  { only, supply, photos = [] }: PrintOptions = {},
): string {
  const title = `${words.page.title}: ${sheet.head.tub} → ${sheet.head.box}`
  const warning = sheet.head.holds ? '' : ` · ${words.page.notShown}`
  const style = sheetStyle(`${words.page.title} · ${words.page.job} ${sheet.id}${warning}`)
  const parts = only === undefined ? SHEET_PARTS : [only]
  const head = only === undefined || only === 'front' ? undefined : partHead(sheet, words)
  return `<!doctype html>\n${
    html`<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Tubwright">
<title>${title}</title>
<style>${raw(style)}</style>
</head>
<body${only === undefined ? '' : raw(' class="alone"')}>
<main>
${head}
${parts.map(
  each => html`${PARTS[each](sheet, words, supply)}
`,
)}${only === undefined ? photoPages(photos, words) : undefined}
</main>
</body>
</html>
`.html
  }`
}
