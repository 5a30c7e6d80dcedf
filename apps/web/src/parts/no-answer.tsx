import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../app/context.ts'
import type { Refusal } from '../ask/protocol.ts'
import { OpenList } from '../screens/survey/open-list.tsx'

/** Why the core gives no answer, and where that is settled. */
export function NoAnswerHere({ refusal }: { readonly refusal: Refusal }): ReactNode {
  const web = useWeb()
  const { reason, detail } = refusal
  if (reason === 'not-a-survey') return <OpenList />
  return (
    <p className="wrong" role="alert">
      {detail === 'cancelled'
        ? web['match.cancelled']
        : reason === 'no-such-box'
          ? say(web['wiring.no-such-box'], { detail })
          : reason === 'no-network'
            ? say(web['wiring.no-network'], { detail })
            : say(web['shell.fault'], { detail })}
    </p>
  )
}
