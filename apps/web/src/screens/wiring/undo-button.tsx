import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { useWiring } from './wiring-context.ts'

/** Takes back the last move or tick, and says which. */
export function UndoButton(): ReactNode {
  const web = useWeb()
  const { acts, rows } = useWiring()
  const { last, undo, canWrite } = acts
  if (!last) return undefined
  const row = rows.find(({ ends }) => ends.some(each => each.end === last.what))
  const what = row ? say(web['wiring.wire'], { number: row.wire.number }) : last.what
  return (
    <button type="button" className="undo" disabled={!canWrite} onClick={undo}>
      ↶ {say(web[`wiring.undo-${last.kind}`], { what })}
    </button>
  )
}
