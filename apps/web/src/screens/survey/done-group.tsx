import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useWeb } from '../../app/context.ts'
import { OpenList } from './open-list.tsx'
import { useDraft } from './use-draft.ts'

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
          <Link className="button main" href={`/job/${id}/match`}>
            {web['survey.to-match']}
          </Link>
        </>
      )}
    </>
  )
}
