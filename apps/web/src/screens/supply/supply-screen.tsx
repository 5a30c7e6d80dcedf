import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import '../../style/supply.css'
import { useApp, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import { HeldBack, isOfPlan, useHolds } from '../../parts/held-back.tsx'
import { NoAnswerHere } from '../../parts/no-answer.tsx'
import { NotUsed } from '../survey/not-used.tsx'
import { OpenList } from '../survey/open-list.tsx'
import { useDraft } from '../survey/use-draft.ts'
import { useDocument } from '../survey/use-survey.ts'
import { Report } from './report.tsx'
import { useTakenBox } from './use-taken-box.ts'

/** What the code book of the region says of what feeds the tub; no box is needed for it. */
export function SupplyScreen(): ReactNode {
  const web = useWeb()
  // Two plans taken apart are no matter here: nothing rests on a plan.
  const holds = useHolds().filter(each => !isOfPlan(each))
  const draft = useDraft()
  return (
    <Screen heading={web['supply.title']}>
      <NotUsed />
      {holds.length > 0 ? (
        <HeldBack holds={holds} />
      ) : draft.isRead && !draft.isSurvey ? (
        <div className="card" data-supply="not-judged">
          <p>
            {say(web['supply.open'], {
              count: String(draft.open.length + draft.diagnostics.length),
            })}
          </p>
          <OpenList isOfBoxes={false} />
        </div>
      ) : draft.isSurvey ? (
        <Judged />
      ) : (
        <Working />
      )}
    </Screen>
  )
}

function Judged(): ReactNode {
  const { language } = useApp()
  const document = useDocument()
  const taken = useTakenBox()
  const { answer, isWorking, failure, cancel } = useAsk('supply', { document, language, ...taken })
  if (failure) return <NoAnswerHere refusal={failure} />
  if (isWorking || !answer) return <Working cancel={cancel} />
  return <Report judged={answer} />
}
