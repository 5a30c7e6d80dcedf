import { fieldAt } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { useApp, useJob, useJobView, useRole, useWeb } from '../../app/context.ts'
import { Screen } from '../../app/frame.tsx'
import { Signal } from '../../parts/signal.tsx'
import type { Stop } from '../../store/stops.ts'
import { cleared, FOUND_LEAST, standingStops, stopActs, stopPath } from '../../store/stops.ts'

/** Takes over the screen while a red stop stands: nothing else of the job is shown. */
export function RedStops({ children }: { readonly children: ReactNode }): ReactNode {
  const { state } = useJobView()
  const web = useWeb()
  const standing = standingStops(state)
  if (standing.length === 0) return children
  return (
    <div className="red">
      <Screen heading={web['stop.title']}>
        {standing.map(stop => (
          <Standing key={stop} stop={stop} />
        ))}
      </Screen>
    </div>
  )
}

function Standing({ stop }: { readonly stop: Stop }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const job = useJob()
  const role = useRole()
  const { state } = useJobView()
  const id = useId()
  const [found, setFound] = useState('')
  const isSaid = found.trim().length >= FOUND_LEAST
  const isContested = fieldAt(state, stopPath(stop)).kind === 'conflict'
  const clear = (): void => {
    if (isSaid)
      void job.append(...stopActs(state, stop, cleared(found.trim()))).catch(() => undefined)
  }
  return (
    <section role="alert">
      <h2>
        <Signal severity="danger" />
        {say(web['stop.stands'], { what: web[`stop.${stop}`] })}
      </h2>
      <p className="lead">
        {web[`stop.do-${stop}`]}
        {words.hasUnreviewed && <em> ({words.unreviewedMark})</em>}
      </p>
      {isContested && <p>{web['stop.disagree']}</p>}
      <p>{web['stop.clear']}</p>
      <label className="label" htmlFor={id}>
        {web['stop.found']}
      </label>
      <p className="hint">{say(web['stop.found-hint'], { least: String(FOUND_LEAST) })}</p>
      <textarea
        id={id}
        rows={3}
        maxLength={1000}
        value={found}
        disabled={role !== 'writes'}
        onChange={event => setFound(event.target.value)}
      />
      <p className="foot">
        <button type="button" disabled={!isSaid || role !== 'writes'} onClick={clear}>
          {web['stop.clear-button']}
        </button>
      </p>
    </section>
  )
}
