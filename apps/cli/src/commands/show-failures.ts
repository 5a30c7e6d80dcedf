import type { PlannedRefit } from '@tubwright/core'
import { CANNOT_EN, SETTLED_BY_EN, say, tellMatch } from '@tubwright/words'
import type { Talk } from '../talk.ts'
import { showFindings } from './findings.ts'

type Failures = PlannedRefit['failures']
type Failed = Failures[number]

/** What has to be found out before any landing can be tried, each question once, with its answer. */
export const openQuestions = (failures: Failures): readonly string[] => [
  ...new Set(
    failures.flatMap(({ failure }) =>
      failure.reason === 'open'
        ? [
            [tellMatch(failure.question), SETTLED_BY_EN[failure.question.message]]
              .filter(each => each !== undefined)
              .join(' '),
          ]
        : [],
    ),
  ),
]

/** The boxes that wait for an answer together: it is one answer for all of them. */
function showOpen(failures: Failures, talk: Talk): void {
  const boxes = failures.filter(each => each.failure.reason === 'open').map(each => each.box)
  if (boxes.length === 0) return
  talk.data(
    `\n${talk.yellow('not known')}  ${boxes.join(', ')}: the survey leaves open what every landing hangs on.`,
  )
  for (const question of openQuestions(failures)) talk.data(`  ${question}`)
}

function showOne({ box, failure }: Failed, talk: Talk): void {
  switch (failure.reason) {
    case 'no-plan': {
      const { considered } = failure.search
      const tried = considered === 1 ? 'the one candidate' : `each of ${considered} candidates`
      if (!failure.closest) {
        talk.data(`\n${talk.yellow('no verdict')}  ${box}: ${tried} cannot be judged.`)
        return
      }
      talk.data(`\n${talk.red('no plan')}  ${box}: ${tried} breaks something. The least bad:`)
      showFindings(failure.closest.findings, talk)
      return
    }
    case 'limit-reached':
      talk.data(
        `\n${talk.yellow('stopped')}  ${box}: the search reached its limit of ${failure.limit} solves; that proves nothing.`,
      )
      return
    case 'cannot':
      talk.data(
        `\n${talk.red('cannot')}  ${box}: ${say(CANNOT_EN[failure.message], failure.params)}`,
      )
      return
    case 'open':
      return
  }
}

/** Why boxes have no plan. */
export function showFailures(failures: Failures, talk: Talk): void {
  for (const each of failures) showOne(each, talk)
  showOpen(failures, talk)
}
