import type { SupplyNotice } from '@tubwright/documents'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../app/context.ts'
import { useAsk } from '../app/use-ask.ts'
import { useTakenBox } from '../screens/supply/use-taken-box.ts'
import { useDraft } from '../screens/survey/use-draft.ts'
import { useDocument } from '../screens/survey/use-survey.ts'
import { isOfPlan, useHolds } from './held-back.tsx'
import { Signal } from './signal.tsx'

/** As it was told last: the next screen begins with it. */
let last: { readonly job: string; readonly notice: SupplyNotice } | undefined

/** What feeds the tub is judged apart: a screen about something else says where that does not hold. */
export function SupplyBar(): ReactNode {
  const web = useWeb()
  const { language, words } = useApp()
  const { id = '' } = useParams()
  const document = useDocument()
  const isSurvey = useDraft().isSurvey
  const isHeld = useHolds().some(each => !isOfPlan(each))
  const taken = useTakenBox()
  const { answer } = useAsk(
    'notice',
    isSurvey && !isHeld ? { document, language, ...taken } : undefined,
    { keepsLast: true },
  )
  if (answer) last = { job: id, notice: answer }
  const notice = answer ?? (last?.job === id ? last.notice : undefined)
  if (!isSurvey || isHeld) return undefined
  // Whatever it will say, what stands below it does not move under a finger.
  if (!notice) return <p className="supply-open">{words.page.supply}: …</p>
  const { outcome, lead, dangers } = notice
  const [first, ...more] = dangers
  const told = `${words.page.supply}: ${lead}`
  if (outcome !== 'breaks')
    return (
      <Link className="supply-open" data-supply-bar={outcome} href={`/job/${id}/supply`}>
        {told}
      </Link>
    )
  return (
    <aside className="card supply-bar" data-supply-bar={outcome} aria-label={words.page.supply}>
      <p>
        {first !== undefined && <Signal severity="danger" />}{' '}
        <strong>
          {told} {first !== undefined && words.page.supplyStop}
        </strong>{' '}
        {first}
        {more.length > 0 && ` (+${more.length})`}
      </p>
      <Link className="button" href={`/job/${id}/supply`}>
        {web['supply.see']}
      </Link>
    </aside>
  )
}
