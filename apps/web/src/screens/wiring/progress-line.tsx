import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId } from 'react'
import { useWeb } from '../../app/context.ts'
import { nextToLand, progressOf } from './rows.ts'
import { UndoButton } from './undo-button.tsx'
import { useWiring } from './wiring-context.ts'

/** How far the landing is, the way to the next end, and the last step taken back. */
export function ProgressLine({
  onlyOpen,
  setOnlyOpen,
}: {
  readonly onlyOpen: boolean
  readonly setOnlyOpen: (onlyOpen: boolean) => void
}): ReactNode {
  const web = useWeb()
  const id = useId()
  const { rows, chosen, choose } = useWiring()
  const { done, all } = progressOf(rows)
  const next = nextToLand(rows, chosen?.kind === 'wire' ? chosen.id : undefined)
  return (
    <div className="progress-line">
      <p id={id} role="status">
        <strong>{say(web['wiring.progress'], { done: String(done), all: String(all) })}</strong>
        {done === all && all > 0 && ` ${web['wiring.all-landed']}`}
      </p>
      <progress aria-labelledby={id} value={done} max={Math.max(1, all)} />
      <div className="row">
        <button
          type="button"
          className="main"
          disabled={!next}
          onClick={() => next && choose({ kind: 'wire', id: next.wire.id })}
        >
          {web['wiring.next-to-land']}
          {next && `: ${next.wire.number}`}
        </button>
        <label className="chip">
          <input
            type="checkbox"
            checked={onlyOpen}
            onChange={event => setOnlyOpen(event.target.checked)}
          />
          <span>{web['wiring.only-open']}</span>
        </label>
        <UndoButton />
      </div>
    </div>
  )
}
