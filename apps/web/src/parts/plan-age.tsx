import { canonical, digestOf, fieldAt } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useMemo } from 'react'
import { Link, useParams } from 'wouter'
import { useJobView, useWeb } from '../app/context.ts'
import type { Document } from '../ask/protocol.ts'
import { useDocument } from '../screens/survey/use-survey.ts'
import { Signal } from './signal.tsx'

/** Names a survey by what is judged of it: what a plan was taken for. Name and note are not. */
export function surveyDigest({ title: _, note: __, ...judged }: Document): string {
  return digestOf(canonical(judged as never))
}

/** Says that the survey is another one since the plan was taken; nothing where it is the same. */
export function PlanAge(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const { state } = useJobView()
  const document = useDocument()
  const now = useMemo(() => surveyDigest(document), [document])
  const taken = fieldAt(state, ['plan', 'taken'])
  const of =
    taken.kind === 'set' ? (taken.value as { readonly of?: unknown } | null)?.of : undefined
  if (typeof of !== 'string' || of === now) return undefined
  return (
    <p className="card" role="status">
      <Signal severity="caution" />
      {web['findings.survey-changed']} <Link href={`/job/${id}/match`}>{web['shell.match']}</Link>
    </p>
  )
}
