import type { KeyboardEvent, RefObject } from 'react'
import { useMemo } from 'react'
import type { LiveBoard } from './live-board.ts'
import type { WireRow } from './rows.ts'
import { neighbour } from './rows.ts'
import { useWiring } from './wiring-context.ts'

const STEP = 0.2 // of the window, a key
const FACTOR = 1.4 // a key

type BoardRef = RefObject<LiveBoard | undefined>

/** Moves and scales the drawing; says whether the key was one of these. */
function moveBy(board: LiveBoard | undefined, key: string): boolean {
  switch (key) {
    case 'ArrowLeft':
      board?.panBy(STEP, 0)
      return true
    case 'ArrowRight':
      board?.panBy(-STEP, 0)
      return true
    case 'ArrowUp':
      board?.panBy(0, STEP)
      return true
    case 'ArrowDown':
      board?.panBy(0, -STEP)
      return true
    case '+':
    case '=':
      board?.scaleBy(FACTOR)
      return true
    case '-':
      board?.scaleBy(1 / FACTOR)
      return true
    case '0':
      board?.fit()
      return true
    default:
      return false
  }
}

function toDetails(): boolean {
  const heading = document.querySelector<HTMLElement>('#wiring-details h2')
  heading?.focus()
  return heading !== null
}

/** Which wire a key goes to; Tab leaves at the first and the last, and at once where none is chosen. */
function wireFor(
  event: KeyboardEvent,
  here: readonly WireRow[],
  own: string | undefined,
): WireRow | undefined {
  switch (event.key) {
    case 'n':
    case 'N':
      return neighbour(here, own, 1)
    case 'p':
    case 'P':
      return neighbour(here, own, -1)
    case 'Tab': {
      const at = here.findIndex(each => each.wire.id === own)
      return at < 0 ? undefined : here[at + (event.shiftKey ? -1 : 1)]
    }
    default:
      return undefined
  }
}

/** Moves the drawing by keys, and goes from wire to wire. */
export function useKeys(board: BoardRef): (event: KeyboardEvent) => void {
  const { rows, panel, chosen, choose } = useWiring()
  const here = useMemo(
    () => rows.filter(({ ends }) => ends.some(each => each.panel === panel)),
    [rows, panel],
  )
  const own = chosen?.kind === 'wire' ? chosen.id : undefined
  const act = (event: KeyboardEvent): boolean => {
    const wire = wireFor(event, here, own)
    if (wire) choose({ kind: 'wire', id: wire.wire.id })
    if (event.key === 'Escape') choose(undefined)
    if (event.key === 'Enter') return toDetails()
    return wire !== undefined || event.key === 'Escape' || moveBy(board.current, event.key)
  }
  return event => {
    if (event.ctrlKey || event.altKey || event.metaKey) return
    if (act(event)) event.preventDefault()
  }
}
