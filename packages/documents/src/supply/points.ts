import type { CodeFinding, SupplyReport, Verdict } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import type { Html } from '../sheet/markup.ts'
import { html } from '../sheet/markup.ts'
import { namesIn } from './run-text.ts'
import { sign } from './sign.ts'

/** Where a finding stands on the page. */
export const POINT_GROUPS = ['breaks', 'differ', 'provided', 'open', 'authority', 'holds'] as const
export type PointGroup = (typeof POINT_GROUPS)[number]

function groupOf({ verdict, asks }: CodeFinding): PointGroup {
  switch (verdict) {
    case 'holds':
      return 'holds'
    case 'breaks':
      return 'breaks'
    case 'experts-differ':
      return 'differ'
    case 'provided':
      return 'provided'
    // What no answer at the site settles is for whoever decides.
    case 'not-shown':
      return asks.length > 0 ? 'open' : 'authority'
  }
}

/** Every finding of a report, once. */
export const pointsIn = ({ findings }: SupplyReport, group: PointGroup): readonly CodeFinding[] =>
  findings.filter(each => groupOf(each) === group)

const titleOf = ({ rule }: CodeFinding, words: Words): string => {
  const titles: Readonly<Record<string, string>> = words.supplyRules
  return titles[rule] ?? rule
}

/**
 * What a finding is about, as a person calls it; undefined where nobody named it, or where there is
 * one thing only that it can be about.
 */
function subjectOf(
  { names, circuits }: SupplyReport,
  { subjects }: CodeFinding,
): string | undefined {
  const id = subjects[0]?.split('.').at(-1) ?? ''
  const [only, other] = circuits
  const isWhole = !other && only?.install.devices[0]?.device === id
  const isRun = !other && only?.segments.length === 1 && only.segments[0]?.cable === id
  return Object.hasOwn(names, id) && !isWhole && !isRun ? names[id] : undefined
}

/** A finding by its title and what it is about. */
export function headingOf(report: SupplyReport, finding: CodeFinding, words: Words): string {
  const subject = subjectOf(report, finding)
  const title = titleOf(finding, words)
  return subject === undefined ? title : `${title} (${subject})`
}

const clauseOf = ({ clause }: CodeFinding, words: Words): Html | undefined =>
  clause ? html` <span class="by">[${words.tellClause(clause)}]</span>` : undefined

/** Beside a sentence that safety rests on, where nobody qualified has read it in this language. */
export const unreviewed = (id: string, words: Words): Html | undefined =>
  words.isUnreviewed(id)
    ? html` <span class="unreviewed">(${words.unreviewedMark})</span>`
    : undefined

/** Which of the questions at the site settle it, by their numbers. */
const settledBy = (report: SupplyReport, { asks }: CodeFinding, words: Words): string =>
  say(words.electrician.settled, {
    questions: asks.map(each => String(report.asks.indexOf(each) + 1)).join(', '),
  })

function saysOf(
  report: SupplyReport,
  finding: CodeFinding,
  group: PointGroup,
  words: Words,
): string {
  return group === 'open'
    ? `${headingOf(report, finding, words)}: ${settledBy(report, finding, words)}.`
    : words.tellCode(finding, namesIn(report))
}

/** A sign never stands alone at the end of a line. */
function signed(verdict: Verdict, text: string): Html {
  const end = text.indexOf(' ')
  const first = end < 0 ? text : text.slice(0, end)
  return html`<span class="keep">${sign(verdict)}${first}</span>${text.slice(first.length)}`
}

function point(report: SupplyReport, finding: CodeFinding, group: PointGroup, words: Words): Html {
  const { severity, verdict, rule } = finding
  const says = saysOf(report, finding, group, words)
  const clause = clauseOf(finding, words)
  if (group === 'holds')
    return html`<li data-rule="${rule}">${signed(verdict, says)}${clause}</li>\n`
  const mark = group === 'open' ? undefined : unreviewed(`supplySays/${finding.message}`, words)
  return html`<li class="${severity}" data-rule="${rule}">${sign(verdict)}<span class="word">${words.severities[severity]}</span> ${says}${mark}${clause}</li>\n`
}

/** The findings of one group, the worst first. */
export const pointList = (report: SupplyReport, group: PointGroup, words: Words): Html =>
  html`<ul class="points ${group}">${pointsIn(report, group).map(each => point(report, each, group, words))}</ul>`
