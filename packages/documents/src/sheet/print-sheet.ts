import type { JobSheet } from '@tubwright/core'
import type { SheetWords } from '../sheet-words.ts'
import { drawings } from './drawings.ts'
import { frontMatter } from './front.ts'
import { html, raw } from './markup.ts'
import { sheetStyle } from './sheet-style.ts'
import { stepList } from './step-list.ts'
import { bring, tables, wireTable } from './tables.ts'

/**
 * Prints the work sheet as one HTML file: no script, nothing fetched, A4 and Letter alike.
 *
 * Equal sheets and words give equal bytes.
 */
export function printSheet(sheet: JobSheet, words: SheetWords): string {
  const title = `${words.page.title}: ${sheet.head.tub} → ${sheet.head.box}`
  const style = sheetStyle(`${words.page.title} · ${words.page.job} ${sheet.id}`)
  return `<!doctype html>\n${
    html`<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="Tubwright">
<title>${title}</title>
<style>${raw(style)}</style>
</head>
<body>
<main>
${frontMatter(sheet, words)}
${bring(sheet, words)}
${drawings(sheet, words)}
${wireTable(sheet, words)}
${tables(sheet, words)}
${stepList(sheet, words)}
</main>
</body>
</html>
`.html
  }`
}
