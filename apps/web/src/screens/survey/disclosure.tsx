import type { ReactNode } from 'react'
import { useState } from 'react'
import { useJobView } from '../../app/context.ts'
import { useAsked } from './asked.ts'
import { isBelow } from './survey-path.ts'
import type { SurveyPath } from './use-survey.ts'
import { inRecord } from './use-survey.ts'

/**
 * Questions that few verdicts need, shown when they are asked for.
 *
 * It is open for who is sent to one of them, and where two people disagree.
 *
 * @param below - where its answers stand
 * @param except - what is asked elsewhere all the same
 */
export function Disclosure({
  title,
  below,
  except = [],
  children,
}: {
  readonly title: string
  readonly below: readonly SurveyPath[]
  readonly except?: readonly SurveyPath[]
  readonly children: ReactNode
}): ReactNode {
  const { state } = useJobView()
  const asked = useAsked()
  const isIn = (path: SurveyPath): boolean =>
    below.some(each => isBelow(path, each)) && !except.some(each => isBelow(path, each))
  const isSentTo = asked !== undefined && isIn(asked)
  const isContested = state.conflicts.some(({ path }) => isIn(path.slice(inRecord([]).length)))
  const [isOpen, setIsOpen] = useState(isSentTo || isContested)
  return (
    <details open={isOpen} onToggle={event => setIsOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {isOpen && children}
    </details>
  )
}
