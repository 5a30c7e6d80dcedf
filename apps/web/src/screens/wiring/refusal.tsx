import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import type { App } from '../../app/context.ts'
import { useWeb } from '../../app/context.ts'
import type { Refusal } from '../../ask/protocol.ts'

/** Why the core has no answer, as a sentence. */
export const refusalText = (web: App['words']['web'], { reason, detail }: Refusal): string =>
  say(web[`wiring.${reason}`], { detail })

/** Why there is no drawing, and where that is put right. */
export function Refused({ refusal }: { readonly refusal: Refusal }): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  return (
    <section className="card" role="alert">
      <p className="breaks">{refusalText(web, refusal)}</p>
      {refusal.reason === 'not-a-survey' && (
        <Link className="button main" href={`/job/${id}/survey/done`}>
          {web['wiring.to-survey']}
        </Link>
      )}
      {refusal.reason === 'no-such-box' && (
        <Link className="button main" href={`/job/${id}/match`}>
          {web['wiring.to-match']}
        </Link>
      )}
    </section>
  )
}
