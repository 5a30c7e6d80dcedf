import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Signal } from '../../parts/signal.tsx'
import { useSurvey } from './use-survey.ts'

/**
 * Lets nobody measure what is live who has not done it before.
 *
 * @param caution - what is live, and who may measure it
 * @param leave - what everybody else does
 * @param isTaken - somebody measured already: what he found is shown
 */
export function MeterGate({
  caution,
  leave,
  isTaken,
  children,
}: {
  readonly caution: string
  readonly leave: string
  readonly isTaken: boolean
  readonly children: ReactNode
}): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { canWrite } = useSurvey()
  const [who, setWho] = useState<'able' | 'not' | undefined>(isTaken ? 'able' : undefined)
  return (
    <>
      <div className="card" data-severity="danger">
        <p>
          <Signal severity="danger" />
          {caution}
          {words.hasUnreviewed && <em> ({words.unreviewedMark})</em>}
        </p>
      </div>
      <Chips
        legend={web['survey.readings-who']}
        options={(['able', 'not'] as const).map(each => ({
          value: each,
          label: web[`survey.readings-${each}`],
        }))}
        chosen={who}
        choose={chosen => setWho(chosen === 'able' ? 'able' : 'not')}
        isDisabled={!canWrite}
      />
      {who === 'not' && (
        <p className="lead" role="status">
          {leave}
        </p>
      )}
      {who === 'able' && children}
    </>
  )
}
