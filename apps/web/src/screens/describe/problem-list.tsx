import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { Problem } from './problems.ts'
import { signOf } from './problems.ts'
import type { LintView } from './use-lint.ts'

/** What was found, each with its number, its place and what to do; a tap goes there. */
export function ProblemList({
  problems,
  lint,
  goTo,
}: {
  readonly problems: readonly Problem[]
  readonly lint: LintView
  readonly goTo: (problem: Problem) => void
}): ReactNode {
  const web = useWeb()
  const { linted, isWorking, fault } = lint
  return (
    <>
      <p role="status" className="quiet">
        {isWorking ? web['describe.checking'] : summary(web, problems, linted !== undefined)}
      </p>
      {fault !== undefined && (
        <p className="wrong" role="alert">
          {say(web['describe.not-checked'], { why: fault })}
        </p>
      )}
      <ol className="plain problems">
        {problems.map(each => (
          <li key={each.number}>
            <button type="button" className="card" onClick={() => goTo(each)}>
              <span className="sign">{signOf(each.number)}</span>{' '}
              <Severity severity={each.severity} />{' '}
              <span className="quiet">
                {say(web['describe.line'], {
                  line: String(each.line),
                  column: String(each.column),
                })}
              </span>
              <br />
              {each.told}
            </button>
          </li>
        ))}
      </ol>
    </>
  )
}

type Web = ReturnType<typeof useWeb>

function summary(web: Web, problems: readonly Problem[], isChecked: boolean): string {
  if (!isChecked) return ''
  const notices = problems.filter(each => each.severity === 'notice').length
  if (problems.length === 0) return web['describe.clean']
  return say(web['describe.counted'], {
    mend: String(problems.length - notices),
    know: String(notices),
  })
}

function Severity({ severity }: Pick<Problem, 'severity'>): ReactNode {
  const { words } = useApp()
  const web = useWeb()
  const word =
    severity === 'error'
      ? web['describe.error']
      : words.lintTalk[severity === 'warning' ? 'warning-mark' : 'notice-mark']
  return (
    <span className="word" data-severity={severity === 'error' ? 'danger' : severity}>
      {word}
    </span>
  )
}
