import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { ownMarkup } from '../../offline/index.ts'

/** Shares of the panel's width; the first one shows the whole board. */
const ZOOMS = [1, 1.5, 2, 3, 4] as const

/** Puts a drawing into the page; false where its words look like markup that acts. */
function draw(into: HTMLElement, drawing: string): boolean {
  try {
    into.innerHTML = ownMarkup(drawing)
    return true
  } catch {
    into.replaceChildren()
    return false
  }
}

/** The board as the text describes it, with the numbers of what is to be looked at. */
export function BoardPanel({
  drawing,
  isOld,
}: {
  readonly drawing: string | undefined
  /** The text cannot be read now: this is the board of the last one that could. */
  readonly isOld: boolean
}): ReactNode {
  const web = useWeb()
  const at = useRef<HTMLDivElement>(null)
  const [zoom, setZoom] = useState(0)
  const [isDrawn, setIsDrawn] = useState(true)
  useEffect(() => {
    if (at.current && drawing !== undefined) setIsDrawn(draw(at.current, drawing))
  }, [drawing])
  const share = ZOOMS[zoom] ?? 1
  return (
    <>
      {drawing === undefined && <p>{web['describe.no-board']}</p>}
      {drawing !== undefined && isOld && <p className="look">{web['describe.old-board']}</p>}
      {!isDrawn && <p className="wrong">{web['describe.not-drawn']}</p>}
      {drawing !== undefined && <BoardZoom zoom={zoom} setZoom={setZoom} />}
      <section
        className="board-scroll"
        hidden={drawing === undefined}
        aria-label={web['describe.board']}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it
        tabIndex={0}
      >
        <div className="board-drawing" ref={at} style={{ width: `${share * 100}%` }} />
      </section>
    </>
  )
}

function BoardZoom({
  zoom,
  setZoom,
}: {
  readonly zoom: number
  readonly setZoom: (zoom: number) => void
}): ReactNode {
  const web = useWeb()
  const share = String(Math.round((ZOOMS[zoom] ?? 1) * 100))
  return (
    <div className="row board-tools">
      <button
        type="button"
        disabled={zoom === 0}
        aria-label={web['describe.smaller']}
        onClick={() => setZoom(zoom - 1)}
      >
        −
      </button>
      <span>{say(web['describe.zoom'], { share })}</span>
      <button
        type="button"
        disabled={zoom === ZOOMS.length - 1}
        aria-label={web['describe.larger']}
        onClick={() => setZoom(zoom + 1)}
      >
        +
      </button>
    </div>
  )
}
