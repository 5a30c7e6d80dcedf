import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useDeferredValue, useMemo, useRef, useState } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useJobView, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { PlanAge } from '../../parts/plan-age.tsx'
import { SupplyBar } from '../../parts/supply-bar.tsx'
import '../../style/wiring.css'
import { tickedIn } from './acts.ts'
import { Board } from './board.tsx'
import { Details } from './details.tsx'
import { JumperTable } from './jumper-table.tsx'
import { Legend } from './legend.tsx'
import { ModeChips } from './mode-chips.tsx'
import type { Mode } from './modes.ts'
import { ALL_OFF, isSameMode } from './modes.ts'
import type { Chosen } from './net.ts'
import { netOf, offTerminals } from './net.ts'
import { ProgressLine } from './progress-line.tsx'
import { Refused } from './refusal.tsx'
import { rowsOf } from './rows.ts'
import { useWiringActs } from './use-acts.ts'
import type { Taken, WiredView } from './use-landing.ts'
import { useOfLanding, useTaken, useWired } from './use-landing.ts'
import type { VerdictView } from './use-live.ts'
import { useLive, useVerdict } from './use-live.ts'
import { VerdictLine } from './verdict-line.tsx'
import { WireTable } from './wire-table.tsx'
import type { Wiring } from './wiring-context.ts'
import { useWiring, WiringProvider } from './wiring-context.ts'

/** The board, alive: what is landed where, what is on it, and what would happen. */
export function WiringScreen({ panel }: { readonly panel: string | undefined }): ReactNode {
  const web = useWeb()
  const taken = useTaken()
  return (
    <Screen heading={web['shell.wiring']} isWide>
      <SupplyBar />
      <PlanAge />
      {taken ? <OfPlan taken={taken} wanted={panel} /> : <NoPlan />}
    </Screen>
  )
}

function NoPlan(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  return (
    <section className="card">
      <p>{web['wiring.no-plan']}</p>
      <Link className="button main" href={`/job/${id}/match`}>
        {web['wiring.to-match']}
      </Link>
    </section>
  )
}

/** Asks everything of the landing as it is now: the verdict first, then what runs, then the drawing. */
function OfPlan({
  taken,
  wanted,
}: {
  readonly taken: Taken
  readonly wanted: string | undefined
}): ReactNode {
  const of = useOfLanding()
  const acts = useWiringActs(taken)
  const verdict = useVerdict(of, acts.movedAt)
  const [mode, setMode] = useState<Mode>(ALL_OFF)
  const off = useLive(of, ALL_OFF)
  const live = useLive(of, mode)
  const view = useWired()
  const { wired } = view
  const ticked = useTicked(taken)
  const [chosen, choose] = useState<Chosen>()
  const rows = useMemo(
    () => (wired ? rowsOf({ wired, taken, ticked, off, now: live }) : []),
    [wired, taken, ticked, off, live],
  )
  const net = useMemo(() => netOf(chosen, rows, live), [chosen, rows, live])
  const panel = wired?.sheet.panels.find(each => each.id === wanted)?.id ?? 'box'
  const wiring = useMemo<Wiring | undefined>(
    () => wired && { wired, taken, rows, panel, live, chosen, net, choose, acts },
    [wired, taken, rows, panel, live, chosen, net, acts],
  )
  if (view.refusal && !wiring) return <Refused refusal={view.refusal} />
  if (!wiring) return <Working />
  return (
    <WiringProvider value={wiring}>
      <Parts view={view} verdict={verdict} mode={mode} setMode={setMode} />
    </WiringProvider>
  )
}

function useTicked(taken: Taken): ReadonlySet<string> {
  const { state } = useJobView()
  return useMemo(() => tickedIn(state, taken), [state, taken])
}

function Parts({
  view,
  verdict,
  mode,
  setMode,
}: {
  readonly view: WiredView
  readonly verdict: VerdictView
  readonly mode: Mode
  readonly setMode: (mode: Mode) => void
}): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { rows, live, wired, taken, chosen, net, choose, acts } = useWiring()
  const [onlyOpen, setOnlyOpen] = useState(false)
  const modeAt = useRef<number>(undefined)
  const labels = mode.map(each => wired.commandLabels[each] ?? each).join(', ')
  const runs = mode.length === 0 ? web['wiring.all-off'] : labels
  const shown = useDeferredValue(
    useMemo(() => ({ rows, chosen, net, mode: runs }), [rows, chosen, net, runs]),
  )
  const change = (next: Mode): void => {
    modeAt.current = performance.now()
    setMode(next)
  }
  return (
    <div className="wiring" data-mode={mode.join(' ')}>
      <VerdictLine view={verdict} isBrief={!taken.isAsPlanned && chosen !== undefined} />
      {view.refusal && <Refused refusal={view.refusal} />}
      <Panels />
      <div className="wiring-main">
        <Board
          modeAt={modeAt}
          isFresh={live !== undefined && isSameMode(live.commands, mode)}
          isDrawing={view.isOld && !view.refusal}
        />
        <div className="wiring-side">
          <Details verdict={verdict} />
          <ModeChips mode={mode} setMode={change} />
          <ProgressLine onlyOpen={onlyOpen} setOnlyOpen={setOnlyOpen} />
          <OffTheBoard />
          <Legend />
        </div>
      </div>
      <WireTable
        shown={shown}
        onlyOpen={onlyOpen}
        labels={wired.commandLabels}
        choose={choose}
        tick={acts.tick}
        canWrite={acts.canWrite}
      />
      <JumperTable />
      {words.hasUnreviewed && <p className="card">{words.unreviewedNotice}</p>}
    </div>
  )
}

/** The box and every device of the supply, a tab each. */
function Panels(): ReactNode {
  const web = useWeb()
  const { wired, panel } = useWiring()
  const { id = '' } = useParams()
  return (
    <nav className="panels" aria-label={web['wiring.panels']}>
      {wired.sheet.panels.map(each => (
        <Link
          key={each.id}
          className="button"
          href={`/job/${id}/wiring/${each.id}`}
          aria-current={each.id === panel ? 'page' : undefined}
        >
          {each.label}
        </Link>
      ))}
    </nav>
  )
}

/** Wires that no drawing has, because an end of them is on no terminal. */
function OffTheBoard(): ReactNode {
  const web = useWeb()
  const { rows, choose } = useWiring()
  const off = offTerminals(rows)
  if (off.length === 0) return undefined
  return (
    <p className="row off-board">
      <span>{web['wiring.off-board']}</span>
      {off.map(({ wire }) => (
        <button key={wire.id} type="button" onClick={() => choose({ kind: 'wire', id: wire.id })}>
          {say(web['wiring.wire'], { number: wire.number })} {wire.letters}
        </button>
      ))}
    </p>
  )
}
