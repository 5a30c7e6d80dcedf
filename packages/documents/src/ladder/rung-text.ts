import type { LadderEnd, LadderRung, LadderSection, LadderStep } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { SheetWords } from '../sheet-words.ts'
import { textOf } from '../sheet-words.ts'
import { noteText } from './grid.ts'

function endText(
  section: LadderSection,
  end: LadderEnd,
  rung: LadderRung,
  words: SheetWords,
): string {
  const { page } = words
  switch (end.kind) {
    case 'rail': {
      const rail = section.rails.find(each => each.node === end.node)
      return rail ? textOf(rail.name, words) : ''
    }
    case 'joint': {
      const first = section.rungs.find(
        each => each !== rung && each.steps.some(step => step.nodes.includes(end.node)),
      )
      return say(page.joint, { rung: String(first?.number ?? '') })
    }
    case 'elsewhere':
      return say(page.joint, { rung: String(end.rung ?? '') })
    case 'open':
      return end.terminal === undefined ? page.openEnd : `${end.terminal} (${page.openEnd})`
  }
}

function stepText(step: LadderStep, words: SheetWords): string {
  const { page } = words
  if (step.kind === 'spare') {
    const [left, right] = step.terminals
    return [left, `(${page.empty})`, right].filter(each => each !== undefined).join(' ')
  }
  if (step.kind === 'wire') {
    const [left, right] = step.terminals
    const wire = say(page.wireIs, { number: String(step.number) })
    return [left, wire, right].filter(each => each !== undefined).join(' ')
  }
  const note = noteText(step, words)
  const rests = step.restsClosed ? page.restsClosed : ''
  const more = [note, rests].filter(each => each !== '').join(', ')
  return more === '' ? step.name : `${step.name} (${more})`
}

/** A rung in words: what the drawing shows, for the table and for whoever does not see it. */
export function rungText(section: LadderSection, rung: LadderRung, words: SheetWords): string {
  const isThere = (end: LadderEnd) => end.node !== ''
  const way = [
    ...(isThere(rung.from) ? [endText(section, rung.from, rung, words)] : []),
    ...rung.steps.map(each => stepText(each, words)),
    ...(isThere(rung.to) ? [endText(section, rung.to, rung, words)] : []),
  ].join(' – ')
  const extras = rung.extras.map(({ number, terminal, isEarth }) =>
    [
      isEarth ? words.page.earthed : undefined,
      say(words.page.wireIs, { number: String(number) }),
      terminal ?? words.page.notLanded,
    ]
      .filter(each => each !== undefined)
      .join(' '),
  )
  return [way, ...extras].join('; ')
}
