import { escapeStyle } from '../escape.ts'

/**
 * The look of the sheet: black on white, nothing below 2.5 mm, margins that suit A4 and Letter.
 *
 * Page numbers are set where the browser can; the job stands on every page.
 */
export const sheetStyle = (job: string): string => `
@page {
  margin: 13mm 12mm 12mm 12mm;
  @top-left { content: "${escapeStyle(job)}"; font: bold 9pt Arial, sans-serif; }
  @top-right { content: counter(page) " / " counter(pages); font: bold 9pt Arial, sans-serif; }
}
* { box-sizing: border-box; }
html { font-size: 10pt; }
body { margin: 0 auto; padding: 4mm; max-width: 194mm; background: #fff; color: #000;
  font: 1rem/1.3 "Liberation Sans", Arial, Helvetica, sans-serif; }
h1 { font-size: 1.9rem; line-height: 1.1; margin: 0 0 1mm; }
h2 { font-size: 1.3rem; line-height: 1.1; margin: 3.6mm 0 1.2mm; padding-top: 1mm; border-top: 0.6mm solid #000;
  break-after: avoid; }
h3 { font-size: 1.05rem; margin: 0; break-after: avoid; }
p { margin: 0 0 1mm; }
ul, ol { margin: 0; padding: 0; list-style: none; }
.lead { font-size: 1.15rem; }
.head { display: flex; justify-content: space-between; gap: 4mm; align-items: baseline; }
.head .job { font-weight: bold; white-space: nowrap; }
.stops { border: 0.9mm solid #000; padding: 2mm 2.5mm; margin: 2.5mm 0; }
.stops li { padding-left: 5mm; text-indent: -5mm; }
.stops li::before { content: "■"; display: inline-block; width: 5mm; text-indent: 0; }
.stops li:first-child { font-weight: bold; font-size: 1.15rem; }
.word { display: inline-block; min-width: 20mm; padding: 0 1.2mm; margin-right: 1.5mm; border: 0.4mm solid #000;
  font-weight: bold; font-size: 0.9rem; text-align: center; text-indent: 0; }
.danger .word { background: #000; color: #fff; }
.warning .word { background: #ddd; border-width: 0.8mm; }
.caution .word { border-width: 0.8mm; }
.notice .word { border-style: dashed; }
.open li { display: grid; grid-template-columns: 9mm minmax(25mm, max-content) 1fr; align-items: start; padding: 0.7mm 0;
  border-bottom: 0.15mm solid #999; break-inside: avoid; }
.open .mark { font-weight: bold; }
.mark span, .board-mark { background: #000; color: #fff; font-weight: bold; padding: 0 1mm; border-radius: 0.5mm; }
.cols { display: grid; grid-template-columns: 1fr 1fr; gap: 0 6mm; }
.cols { break-inside: avoid; }
.cols > section { min-width: 0; }
table { width: 100%; border-collapse: collapse; margin: 1mm 0 2mm; }
caption { text-align: left; font-weight: bold; }
th, td { text-align: left; vertical-align: top; padding: 0.6mm 1.2mm; border-bottom: 0.15mm solid #777;
  overflow-wrap: anywhere; }
thead th { border-bottom: 0.5mm solid #000; font-size: 0.9rem; vertical-align: bottom; overflow-wrap: normal; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
tbody th { font-weight: bold; }
.group th { background: #eee; border-top: 0.4mm solid #000; break-after: avoid; }
.group .plug { font-weight: normal; }
.group { break-after: avoid; }
td.n, th.n { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; overflow-wrap: normal; }
.k { white-space: nowrap; overflow-wrap: normal; }
.do { font-weight: bold; white-space: nowrap; }
.do.move { background: #000; color: #fff; padding: 0 1mm; }
.tick { display: inline-block; width: 4mm; height: 4mm; border: 0.4mm solid #000; background: #fff; vertical-align: -0.6mm; }
.blank { display: inline-block; width: 20mm; height: 5.6mm; border-bottom: 0.35mm solid #000; }
.blank.long { width: 46mm; }
.unit { display: inline-block; width: 6mm; }
.whole { break-inside: avoid; }
figure { margin: 0; break-inside: avoid; }
figcaption { margin-top: 1mm; }
svg.board { display: block; width: 100%; max-width: 186mm; height: auto; margin: 0 auto; }
svg.glyph { display: inline-block; vertical-align: -1mm; margin-right: 1mm; }
.legend { display: flex; flex-wrap: wrap; gap: 0.6mm 5mm; }
.legend svg { vertical-align: middle; margin-right: 1mm; }
.step { border-top: 0.4mm solid #000; padding: 1.5mm 0 2.5mm; }
.step > .keep { break-inside: avoid; }
.step h3 { font-size: 1.2rem; display: flex; gap: 2.5mm; align-items: baseline; }
.step h3 .no { font-size: 1.45rem; min-width: 8mm; }
.step .licensed { margin-left: auto; font-size: 0.9rem; border: 0.4mm solid #000; padding: 0 1.2mm; white-space: nowrap; }
.step .caution-line { padding: 0.6mm 0 1mm; font-weight: bold; display: grid; grid-template-columns: minmax(25mm, max-content) 1fr; }
.wires { table-layout: fixed; }
.wires th:nth-child(1) { width: 9mm; }
.wires th:nth-child(2) { width: 21mm; }
.wires th:nth-child(3) { width: 24mm; }
.wires th:nth-child(4) { width: 18mm; }
.wires th:nth-child(5) { width: 36mm; }
.wires th:nth-child(6) { width: 31mm; }
.wires th:nth-child(8) { width: 11mm; }
.ticks li { padding: 0.3mm 0 0.3mm 7mm; text-indent: -7mm; break-inside: avoid; }
.step li { padding: 0.5mm 0 0.5mm 7mm; text-indent: -7mm; break-inside: avoid; }
.ticks .tick, .step li .tick { margin-right: 3mm; text-indent: 0; }
.outside { display: grid; grid-template-columns: minmax(25mm, max-content) 1fr; break-inside: avoid; break-before: avoid; padding-top: 0.5mm; }
.step .outside li { padding-left: 4mm; text-indent: -4mm; }
.step .outside li::before { content: "▸"; display: inline-block; width: 4mm; text-indent: 0; }
.readings td, .readings th { vertical-align: bottom; }
.readings tbody th { font-weight: normal; }
.readings.short { break-inside: avoid; break-before: avoid; }
.readings tr:nth-child(-n+2), .readings tr:nth-last-child(2) { break-after: avoid; }
.readings col.what { width: 46%; }
.quiet { font-size: 0.9rem; }
.rungs th:nth-child(1) { width: 12mm; }
.rungs th:nth-child(3) { width: 48mm; }
.designations th:nth-child(1) { width: 17mm; }
.designations th:nth-child(3) { width: 34mm; }
.designations th:nth-child(4) { width: 20mm; }
.designations th:nth-child(5) { width: 26mm; }
.designations th:nth-child(6) { width: 17mm; }
svg.photo { width: 100%; max-height: 170mm; border: 0.3mm solid #000; }
.pins th, .pins td { padding: 0.6mm 1mm; border-bottom: 0.2mm solid #000; text-align: left; }
.loads { font-size: 0.9rem; }
.loads th, .loads td { padding: 0.8mm 0.8mm; border-bottom: 0.3mm solid #000; }
.loads .blank { width: 13mm; height: 3.6mm; }
.loads .plug { font-weight: normal; }
.loads td:nth-child(2) { white-space: nowrap; overflow-wrap: normal; }
@media screen {
  body { padding: 5mm; }
  .scroll { overflow-x: auto; }
  .head .job, .step .licensed { white-space: normal; overflow-wrap: anywhere; }
}
@media screen and (max-width: 700px) {
  html { font-size: 16px; }
  .cols { display: block; }
  main table { display: block; overflow-x: auto; }
  .scroll svg.board { width: 186mm; max-width: none; }
  .open li { grid-template-columns: 9mm 1fr; }
  .open li > :last-child { grid-column: 1 / -1; }
  .step h3 { flex-wrap: wrap; }
  .head { display: block; }
  .readings .blank { width: 14mm; }
}
@media print {
  body { padding: 0; max-width: none; }
  .page { break-before: page; }
  .alone .page { break-before: auto; }
  .page > h2 { margin-top: 0; }
}
`
