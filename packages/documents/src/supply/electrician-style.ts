import { escapeStyle } from '../escape.ts'

/**
 * The look of the electrician's page: black on white, nothing below 2.5 mm, margins that suit A4 and
 * Letter, so tight that an ordinary tub is one page.
 */
export const electricianStyle = (job: string): string => `
@page {
  margin: 10mm 11mm 7mm 11mm;
  @top-left { content: "${escapeStyle(job)}"; font: bold 8pt Arial, sans-serif; }
  @top-right { content: counter(page) " / " counter(pages); font: bold 8pt Arial, sans-serif; }
}
* { box-sizing: border-box; }
html { font-size: 8.15pt; }
body { margin: 0 auto; padding: 5mm; max-width: 200mm; background: #fff; color: #000;
  font: 1rem/1.24 "Liberation Sans", Arial, Helvetica, sans-serif; text-rendering: geometricPrecision; }
h1 { font-size: 1.4rem; line-height: 1.1; margin: 0 0 0.5mm; }
h2 { font-size: 1.1rem; line-height: 1.1; margin: 1.2mm 0 0.4mm; padding-top: 0.6mm; border-top: 0.5mm solid #000;
  break-after: avoid; }
h3 { font-size: 1rem; margin: 0.6mm 0 0; break-after: avoid; }
p { margin: 0 0 0.6mm; }
ul, ol { margin: 0; padding: 0; list-style: none; }
li { break-inside: avoid; }
.head { display: flex; justify-content: space-between; gap: 4mm; align-items: baseline; }
.head .job { font-weight: bold; white-space: nowrap; }
.outcome { font-size: 1.12rem; font-weight: bold; }
.authority { margin-top: 1mm; padding-top: 0.6mm; border-top: 0.5mm solid #000; }
.sign { vertical-align: -0.5mm; margin-right: 1mm; width: 3.2mm; height: 3.2mm; }
.word { display: inline-block; padding: 0.3mm 1mm 0; margin-right: 0.8mm; border: 1px solid #000;
  font-weight: bold; font-size: 0.9rem; line-height: 1; text-align: center;
  -webkit-print-color-adjust: exact; print-color-adjust: exact; }
.danger > .word { background: #000; color: #fff; }
.warning > .word { background: #ddd; border-width: 2px; }
.caution > .word { border-width: 2px; }
.notice > .word { border-style: dashed; }
.keep { white-space: nowrap; }
.by, .unreviewed, .small { font-size: 0.875rem; }
.by { overflow-wrap: anywhere; }
table { width: 100%; border-collapse: collapse; margin: 0.5mm 0 1mm; table-layout: fixed; }
th, td { text-align: left; vertical-align: top; padding: 0.35mm 1mm; border-bottom: 0.15mm solid #777;
  overflow-wrap: anywhere; }
thead th { border-bottom: 0.4mm solid #000; font-size: 0.9rem; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
.install th:nth-child(1) { width: 17%; }
.install th:nth-child(2) { width: 47%; }
.blank { display: inline-block; width: 14mm; height: 2.9mm; border-bottom: 0.3mm solid #000; }
.ways { list-style: decimal; padding-left: 5mm; }
figure { margin: 0; break-inside: avoid; }
svg.run, svg.yard { display: block; width: 100%; max-width: 188mm; height: auto; }
svg.yard { max-width: 162mm; }
.points li { padding: 0.3mm 0; border-bottom: 0.15mm solid #999; }
.points.breaks > li, .points.differ > li { padding: 0.6mm 0; }
.questions { columns: 2; column-gap: 5mm; }
.points.open .word { min-width: 17mm; }
.points.open li { border-bottom: 0; padding: 0.1mm 0; }
.points.holds { font-size: 0.875rem; line-height: 1.2; }
.points.holds li { display: inline; border: 0; margin-right: 2mm; }
.points.holds .by { font-size: 1em; }
.questions li { display: grid; grid-template-columns: 4mm 1fr 24mm; align-items: center; min-height: 5.05mm;
  padding: 0.15mm 0; gap: 1.2mm; }
.questions .no { font-weight: bold; text-align: right; }
.questions .box { border: 0.3mm solid #000; height: 4.9mm; }
.signatures { display: grid; grid-template-columns: 2fr 1.4fr 1fr 2fr; gap: 0 4mm; break-inside: avoid; margin-top: 1mm; }
.signatures div { border-bottom: 0.3mm solid #000; height: 7.2mm; font-size: 0.875rem; }
footer { margin-top: 1mm; font-size: 0.875rem; }
.whole { break-inside: avoid; }
@media screen {
  body { padding: 5mm; }
  .scroll { overflow-x: auto; }
}
@media screen and (max-width: 700px) {
  html { font-size: 15px; }
  .points.holds, .questions { columns: 1; }
  .install { min-width: 640px; }
  .scroll svg.run, .scroll svg.yard { width: 700px; max-width: none; }
  .head, .head > span { display: block; }
  .head .job { white-space: normal; }
  .signatures { grid-template-columns: 1fr 1fr; }
}
@media print { body { padding: 0; max-width: none; } }
`
