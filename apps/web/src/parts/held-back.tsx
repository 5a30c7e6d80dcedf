import type { Hold } from '@tubwright/records'
import { heldBack, settleOf } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useMemo } from 'react'
import { useJob, useJobView, useRole, useWeb } from '../app/context.ts'
import { useTellPath } from '../screens/survey/tell-path.ts'

/** What holds every verdict of this job back; empty where verdicts may be given. */
export function useHolds(): readonly Hold[] {
  const { state } = useJobView()
  return useMemo(() => heldBack(state), [state])
}

/** Two plans taken apart hold back only what rests on a plan. */
export const isOfPlan = (hold: Hold): boolean => hold.kind === 'conflict' && hold.path[0] === 'plan'

function useTellHold(): (hold: Hold) => string {
  const web = useWeb()
  const tellPath = useTellPath()
  const whatOf = ([top, ...path]: readonly string[]): string => {
    if (top === 'survey') return path.length > 0 ? tellPath(path) : web['shell.survey']
    if (top === 'plan') return web['match.the-plan']
    return path.join(' · ')
  }
  return hold => {
    switch (hold.kind) {
      case 'conflict':
      case 'shape':
      case 'withdrawn':
      case 'orphan':
        return say(web[`match.hold-${hold.kind}`], { what: whatOf(hold.path) })
      case 'gap':
        return say(web['match.hold-gap'], { from: String(hold.from), to: String(hold.to) })
      case 'fork':
        return web['match.hold-fork']
      case 'not-understood':
        return web['match.hold-not-understood']
    }
  }
}

/** Something was taken out by somebody who had not seen what was done in it: one of the two is said. */
function Withdrawn({ holds }: { readonly holds: readonly Hold[] }): ReactNode {
  const web = useWeb()
  const job = useJob()
  const canWrite = useRole() === 'writes'
  const decide = (act: 'restore' | 'withdraw', path: readonly string[]) =>
    void job.append({ do: act, path }).catch(() => undefined)
  return holds.flatMap(hold =>
    hold.kind === 'withdrawn'
      ? [
          <p key={hold.path.join('/')} className="row">
            <strong>{hold.path.at(-1)}</strong>
            <button type="button" disabled={!canWrite} onClick={() => decide('restore', hold.path)}>
              {web['survey.bring-back']}
            </button>
            <button
              type="button"
              disabled={!canWrite}
              onClick={() => decide('withdraw', hold.path)}
            >
              {web['match.leave-out']}
            </button>
          </p>,
        ]
      : [],
  )
}

/** Somebody who looked at every entry under one number says so: what he then sets counts for all. */
function Settle(): ReactNode {
  const web = useWeb()
  const job = useJob()
  const role = useRole()
  const { state } = useJobView()
  const open = state.forks.filter(each => !each.isSettled)
  if (open.length === 0) return undefined
  return (
    <button
      type="button"
      disabled={role !== 'writes'}
      onClick={() => void job.append(...open.map(settleOf)).catch(() => undefined)}
    >
      {web['match.settle']}
    </button>
  )
}

/** Says why no verdict is shown, each reason once. */
export function HeldBack({ holds }: { readonly holds: readonly Hold[] }): ReactNode {
  const web = useWeb()
  const tell = useTellHold()
  return (
    <section className="conflict" role="alert">
      <p>
        <strong>{web['match.held']}</strong>
      </p>
      <ul>
        {[...new Set(holds.map(tell))].map(each => (
          <li key={each}>{each}</li>
        ))}
      </ul>
      <Withdrawn holds={holds} />
      <Settle />
    </section>
  )
}
