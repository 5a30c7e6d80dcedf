import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { useAsk } from '../../app/use-ask.ts'
import { OpenList } from './open-list.tsx'
import { useDraft } from './use-draft.ts'
import { useDocument } from './use-survey.ts'

/** What is still open, what looks unlikely, and the way on once nothing is. */
export function DoneGroup(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const { isSurvey } = useDraft()
  return (
    <>
      <OpenList />
      {isSurvey && (
        <>
          <p>{web['survey.open-none']}</p>
          <SupplyAsks />
          <Link className="button main" href={`/job/${id}/match`}>
            {web['survey.to-match']}
          </Link>
        </>
      )}
    </>
  )
}

/** How much a verdict on the supply asks besides: nothing is said before it is known. */
function SupplyAsks(): ReactNode {
  const web = useWeb()
  const { language } = useApp()
  const { id = '' } = useParams()
  const { answer } = useAsk('supply', { document: useDocument(), language })
  if (!answer) return undefined
  const { length } = answer.report.asks
  return length === 0 ? (
    <p>{web['survey.supply-asks-none']}</p>
  ) : (
    <p>
      {say(web['survey.supply-asks'], { count: String(length) })}{' '}
      <Link className="button" href={`/job/${id}/supply`}>
        {web['survey.to-supply']}
      </Link>
    </p>
  )
}
