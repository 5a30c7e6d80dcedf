import { say } from '@tubwright/words'
import type { ReactNode, RefObject } from 'react'
import { useEffect, useId, useLayoutEffect, useMemo, useRef } from 'react'
import { useWeb } from '../../app/context.ts'
import { BoardTools } from './board-tools.tsx'
import { LiveBoard } from './live-board.ts'
import type { Hit } from './nearest.ts'
import { chosenBy, hitOf, traceOf } from './net.ts'
import type { EndRow } from './rows.ts'
import { carries, chargesOf } from './rows.ts'
import { useKeys } from './use-keys.ts'
import { useSheetText, useTell, useTellPlace, useWiring } from './wiring-context.ts'

const FREE = 0.62 // of the height of a phone that the sheet leaves

/** When the mode that is shown was chosen, so that its drawing can be timed. */
export interface Timed {
  current: number | undefined
}

/**
 * The drawing in its window, and the buttons that move it: nothing here needs a drag or two fingers.
 *
 * @param isFresh - whether the figures are those of the mode that was chosen
 */
export function Board({
  modeAt,
  isFresh,
  isDrawing,
}: {
  readonly modeAt: Timed
  readonly isFresh: boolean
  readonly isDrawing: boolean
}): ReactNode {
  const web = useWeb()
  const { wired, panel, chosen } = useWiring()
  const area = useRef<HTMLDivElement>(null)
  const paper = useRef<HTMLDivElement>(null)
  const hint = useId()
  const board = useBoard(area, paper)
  useDrawn(board)
  useCharged(board, area, modeAt, isFresh)
  const keys = useKeys(board)
  const label = wired.sheet.panels.find(each => each.id === panel)?.label ?? panel
  return (
    <div className="board-card">
      <div
        ref={area}
        className="board-window"
        id="board-window"
        role="application"
        aria-label={say(web['wiring.board'], { panel: label })}
        aria-describedby={hint}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it takes keys of its own, as its hint says
        tabIndex={0}
        data-chosen={chosen?.kind === 'terminal' ? chosen.name : chosen?.id}
        onKeyDown={keys}
      >
        <div ref={paper} className="paper" />
        {isDrawing && <p className="drawing">{web['wiring.drawing']}</p>}
      </div>
      <BoardTools board={board} />
      <p id={hint} className="keys">
        {web['wiring.keys']}
      </p>
      <ChosenAloud />
    </div>
  )
}

/** Says what was chosen to whoever does not see it: the drawing itself is one picture to them. */
function ChosenAloud(): ReactNode {
  const web = useWeb()
  const { chosen, rows, panel, wired } = useWiring()
  const tell = useSheetText(wired.commandLabels)
  const tellPlace = useTellPlace()
  const tellCharge = useTellCharge()
  const row = rows.find(each => chosen?.kind === 'wire' && each.wire.id === chosen.id)
  const end = row?.ends.find(each => each.panel === panel) ?? row?.ends[0]
  return (
    <p className="unseen" role="status">
      {row &&
        end &&
        say(web['wiring.said'], {
          number: row.wire.number,
          function: tell(row.wire.functionText),
          letters: row.wire.letters,
          at: tellPlace(end.at),
          charge: tellCharge(end),
        })}
    </p>
  )
}

/** What is on an end, in one line. */
function useTellCharge(): (end: EndRow) => string {
  const web = useWeb()
  const figures = useTell()
  return ({ now, isLiveWhenOff }) =>
    now
      ? [
          ...(now.isLive ? [web['wiring.is-live']] : []),
          figures.volts(now.volts),
          carries(now) ? figures.amps(now.amps) : web['wiring.no-amps'],
          ...(isLiveWhenOff ? [web['wiring.live-when-off']] : []),
        ].join(', ')
      : ''
}

type BoardRef = RefObject<LiveBoard | undefined>

/** One drawing that lives as long as its window; what a tap means is asked when it happens. */
function useBoard(
  area: RefObject<HTMLDivElement | null>,
  paper: RefObject<HTMLDivElement | null>,
): BoardRef {
  const { rows, chosen, choose } = useWiring()
  const board = useRef<LiveBoard>(undefined)
  const tapped = useRef<(hit: Hit) => void>(undefined)
  tapped.current = hit => {
    choose(chosenBy(hit, rows, chosen))
    clearOfSheet(area.current)
  }
  useLayoutEffect(() => {
    if (!area.current || !paper.current) return undefined
    const made = new LiveBoard(area.current, paper.current, hit => tapped.current?.(hit))
    board.current = made
    return () => {
      made.close()
      board.current = undefined
    }
  }, [area, paper])
  return board
}

/** On a phone the sheet comes from below: the drawing goes up, so that both are in sight. */
function clearOfSheet(area: HTMLElement | null): void {
  if (!area || matchMedia('(min-width: 60rem)').matches) return
  const { top, bottom } = area.getBoundingClientRect()
  if (bottom > innerHeight * FREE || top < 0) area.parentElement?.scrollIntoView({ block: 'start' })
}

/** The drawing of the panel, with the net of what was chosen. */
function useDrawn(board: BoardRef): void {
  const { wired, panel, chosen, net, rows } = useWiring()
  const svg = wired.drawings[panel] ?? ''
  const trace = useMemo(() => traceOf(chosen, net, rows), [chosen, net, rows])
  useLayoutEffect(() => board.current?.draw(svg), [board, svg])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing is traced afresh
  useLayoutEffect(() => board.current?.trace(trace), [board, trace, svg])
  const hit = chosen && hitOf(chosen, rows)
  const key = JSON.stringify(hit)
  // biome-ignore lint/correctness/useExhaustiveDependencies: brought into view when it is chosen, not when it moves
  useEffect(() => {
    if (hit) board.current?.reveal(hit)
  }, [board, key, panel])
}

/** What the wires carry; notes how long it took from the choice of the mode to its drawing. */
function useCharged(
  board: BoardRef,
  area: RefObject<HTMLDivElement | null>,
  modeAt: Timed,
  isFresh: boolean,
): void {
  const { rows, panel, live } = useWiring()
  const tell = useTell()
  const charges = useMemo(
    () => (live ? chargesOf(rows, panel, tell) : []),
    [rows, panel, tell, live],
  )
  useLayoutEffect(() => {
    board.current?.charge(charges)
    if (!isFresh || modeAt.current === undefined || !area.current) return
    area.current.dataset['modeMs'] = (performance.now() - modeAt.current).toFixed(1)
    modeAt.current = undefined
  }, [board, area, charges, modeAt, isFresh])
}
