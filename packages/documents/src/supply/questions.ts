import type { SupplyReport } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import type { Html } from '../sheet/markup.ts'
import { html } from '../sheet/markup.ts'
import { namesIn } from './run-text.ts'

interface Question {
  readonly number: number
  readonly text: string
}

interface Group {
  readonly title: string
  readonly questions: Question[]
}

/** The thing that is asked of, where it has a name that the question begins with. */
const thingOf = ({ names }: SupplyReport, at: string, told: string): string | undefined =>
  at
    .split('.')
    .find(step => Object.hasOwn(names, step) && told.startsWith(`${names[step] ?? ''}: `))

/** Questions by the thing that they are asked of, in the order of the most telling of each. */
function grouped(report: SupplyReport, words: Words): readonly Group[] {
  const groups = new Map<string, Group>()
  for (const [index, at] of report.asks.entries()) {
    const told = words.tellAsk(at, namesIn(report))
    const thing = thingOf(report, at, told)
    const name = thing === undefined ? undefined : namesIn(report)(thing)
    const group = groups.get(thing ?? '') ?? {
      title: name ?? words.electrician['of-all'],
      questions: [],
    }
    group.questions.push({
      number: index + 1,
      text: name === undefined ? told : told.slice(name.length + 2),
    })
    groups.set(thing ?? '', group)
  }
  return [...groups.values()]
}

const item = ({ number, text }: Question): Html =>
  html`<li><span class="no">${number}</span><span>${text}</span><span class="box"></span></li>`

/** What is open, each with a box to write in; the number is what the open points call it by. */
export function questions(report: SupplyReport, words: Words): Html {
  const groups = grouped(report, words)
  const body =
    groups.length === 0
      ? html`<p>${words.supplyPage['nothing-to-ask']}</p>`
      : html`<div class="questions">${groups.map(
          each => html`<h3>${each.title}</h3><ul>${each.questions.map(item)}</ul>`,
        )}</div>`
  return html`<section><h2>${words.electrician.questions}</h2>${body}</section>`
}
