import type { ReactNode, RefObject } from 'react'
import { useWeb } from '../../app/context.ts'
import type { LiveBoard } from './live-board.ts'
import { neighbour } from './rows.ts'
import { useWiring } from './wiring-context.ts'

const STEP = 0.35 // of the window, a press
const FACTOR = 1.5

/** Everything that fingers do to the drawing, one press each. */
export function BoardTools({
  board,
}: {
  readonly board: RefObject<LiveBoard | undefined>
}): ReactNode {
  const web = useWeb()
  const { rows, panel, chosen, choose } = useWiring()
  const here = rows.filter(({ ends }) => ends.some(each => each.panel === panel))
  const go = (step: 1 | -1): void => {
    const next = neighbour(here, chosen?.kind === 'wire' ? chosen.id : undefined, step)
    if (next) choose({ kind: 'wire', id: next.wire.id })
  }
  const tools = [
    ['smaller', '−', () => board.current?.scaleBy(1 / FACTOR)],
    ['fit', '⤢', () => board.current?.fit()],
    ['larger', '+', () => board.current?.scaleBy(FACTOR)],
    ['previous-wire', '‹', () => go(-1)],
    ['next-wire', '›', () => go(1)],
    ['left', '←', () => board.current?.panBy(STEP, 0)],
    ['up', '↑', () => board.current?.panBy(0, STEP)],
    ['down', '↓', () => board.current?.panBy(0, -STEP)],
    ['right', '→', () => board.current?.panBy(-STEP, 0)],
  ] as const
  return (
    <section className="board-tools" aria-label={web['wiring.tools']}>
      {tools.map(([name, sign, act]) => (
        <button key={name} type="button" aria-label={web[`wiring.${name}`]} onClick={act}>
          {sign}
        </button>
      ))}
    </section>
  )
}
