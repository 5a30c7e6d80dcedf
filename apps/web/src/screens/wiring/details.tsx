import type { LivePoint } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { CSSProperties, ReactNode } from 'react'
import { useId, useLayoutEffect, useState } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { JumperDetails } from './jumper-details.tsx'
import { MoveDialog } from './move-dialog.tsx'
import type { Chosen } from './net.ts'
import { landedOn } from './net.ts'
import type { EndRow, WireRow } from './rows.ts'
import { carries, neighbour, shortName } from './rows.ts'
import { UndoButton } from './undo-button.tsx'
import type { VerdictView } from './use-live.ts'
import { VerdictLine } from './verdict-line.tsx'
import { useSheetText, useTell, useTellPlace, useWiring } from './wiring-context.ts'

/**
 * Everything about what was chosen: beside the drawing on a desk; on a phone a sheet from below, low
 * enough that the drawing stays in sight, which goes up for more.
 */
export function Details({ verdict }: { readonly verdict: VerdictView }): ReactNode {
  const web = useWeb()
  const { chosen, rows, taken, acts } = useWiring()
  const [isHigh, setIsHigh] = useState(false)
  const room = useRoom()
  if (!chosen)
    return (
      <aside className="details is-empty" aria-label={web['wiring.details']}>
        <p className="quiet">{web['wiring.choose']}</p>
      </aside>
    )
  const row = chosen.kind === 'wire' ? rows.find(each => each.wire.id === chosen.id) : undefined
  return (
    <aside
      className="details"
      id="wiring-details"
      aria-label={web['wiring.details']}
      data-high={isHigh}
      style={room}
    >
      <div className="details-bar">
        <h2 tabIndex={-1}>
          <Title chosen={chosen} row={row} />
        </h2>
        <Steps isHigh={isHigh} setIsHigh={setIsHigh} />
      </div>
      {acts.last?.kind === 'moved' && <UndoButton />}
      {!taken.isAsPlanned && <VerdictLine view={verdict} />}
      {row && <WireDetails row={row} />}
      {chosen.kind === 'terminal' && <TerminalDetails name={chosen.name} />}
      {chosen.kind === 'jumper' && <JumperDetails id={chosen.id} />}
    </aside>
  )
}

/** How much the bars above and below take, whatever the size of their letters. */
function useRoom(): CSSProperties {
  const [room, setRoom] = useState<CSSProperties>({})
  useLayoutEffect(() => {
    const bars = [...document.querySelectorAll<HTMLElement>('.bar, .steps')]
    const measure = (): void => {
      const [above = 0, below = 0] = bars.map(each => each.offsetHeight)
      setRoom({ '--above': `${above}px`, '--below': `${below}px` } as CSSProperties)
    }
    const watch = new ResizeObserver(measure)
    for (const each of bars) watch.observe(each)
    return () => watch.disconnect()
  }, [])
  return room
}

function Title({
  chosen,
  row,
}: {
  readonly chosen: Chosen
  readonly row: WireRow | undefined
}): ReactNode {
  const web = useWeb()
  const { wired } = useWiring()
  const tell = useSheetText(wired.commandLabels)
  if (chosen.kind === 'terminal')
    return say(web['wiring.terminal'], { terminal: shortName(chosen.name) })
  if (chosen.kind === 'jumper') {
    const label = wired.sheet.jumpers.find(each => each.id === chosen.id)?.label ?? ''
    return say(web['wiring.jumper-named'], { jumper: chosen.id, label })
  }
  if (!row) return undefined
  return (
    <>
      <span className="number">{row.wire.number}</span> {tell(row.wire.functionText)},{' '}
      {row.wire.letters}
    </>
  )
}

/** To the wires before and after, whichever board they are on; more room; and away. */
function Steps({
  isHigh,
  setIsHigh,
}: {
  readonly isHigh: boolean
  readonly setIsHigh: (isHigh: boolean) => void
}): ReactNode {
  const web = useWeb()
  const { rows, chosen, choose } = useWiring()
  const go = (step: 1 | -1): void => {
    const next = neighbour(rows, chosen?.kind === 'wire' ? chosen.id : undefined, step)
    if (next) choose({ kind: 'wire', id: next.wire.id })
  }
  return (
    <div className="details-steps">
      <button type="button" aria-label={web['wiring.previous-wire']} onClick={() => go(-1)}>
        ‹
      </button>
      <button type="button" aria-label={web['wiring.next-wire']} onClick={() => go(1)}>
        ›
      </button>
      <button
        type="button"
        className="only-phone"
        aria-label={web['wiring.more-room']}
        aria-expanded={isHigh}
        onClick={() => setIsHigh(!isHigh)}
      >
        {isHigh ? '▾' : '▴'}
      </button>
      <button type="button" aria-label={web.close} onClick={() => choose(undefined)}>
        ×
      </button>
    </div>
  )
}

function WireDetails({ row }: { readonly row: WireRow }): ReactNode {
  const web = useWeb()
  const { wired, panel, acts } = useWiring()
  const tell = useSheetText(wired.commandLabels)
  const { wire, title, plug, ends } = row
  const notes = [...wire.notes.map(tell), ...(plug ? [tell(plug)] : [])]
  const hereFirst = [...ends].sort((a, b) => Number(b.panel === panel) - Number(a.panel === panel))
  return (
    <>
      {hereFirst.map(each => (
        <EndDetails key={each.end} row={row} end={each} />
      ))}
      {acts.last?.kind !== 'moved' && <UndoButton />}
      <dl className="facts">
        <dt>{web['wiring.colour']}</dt>
        <dd>
          <ColourName row={row} />
        </dd>
        <dt>{web['wiring.size']}</dt>
        <dd>{wire.size || '–'}</dd>
        <dt>{web['wiring.belongs']}</dt>
        <dd>{tell(title)}</dd>
        {notes.length > 0 && (
          <>
            <dt>{web['wiring.do']}</dt>
            {notes.map(each => (
              <dd key={each}>{each}</dd>
            ))}
          </>
        )}
      </dl>
      <NetList own={wire.id} />
      <button type="button" className="only-phone" onClick={showBoard}>
        {web['wiring.show']}
      </button>
    </>
  )
}

/** Letters and name of a colour; a wire that is marked again says so. */
export function ColourName({ row: { wire } }: { readonly row: WireRow }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const name = `${wire.letters} ${words.colours[wire.colour]}`
  return wire.reidentify ? say(web['wiring.re-identified'], { letters: name }) : name
}

/** One end: where it is, its torque, what is on it; to be ticked, moved and put back in one press each. */
function EndDetails({ row, end }: { readonly row: WireRow; readonly end: EndRow }): ReactNode {
  const web = useWeb()
  const { wired, acts } = useWiring()
  const tell = useSheetText(wired.commandLabels)
  const tellPlace = useTellPlace()
  const [isMoving, setIsMoving] = useState(false)
  const id = useId()
  const move = (to: string): void => {
    setIsMoving(false)
    acts.move(end.end, to)
  }
  return (
    <section className="end" data-end={end.end} data-at={end.at}>
      <h3 id={id}>{say(web['wiring.end-at'], { panel: end.panelLabel })}</h3>
      <p className="where">
        <strong>
          <Where end={end} />
        </strong>
        {end.fixing && ` · ${tell(end.fixing)}`}
      </p>
      {end.isMoved && (
        <p className="look">{say(web['wiring.planned-at'], { at: tellPlace(end.planned) })}</p>
      )}
      <Charge end={end} />
      <div className="row">
        <label className="chip tick">
          <input
            type="checkbox"
            checked={end.isTicked}
            disabled={!acts.canWrite}
            aria-describedby={id}
            onChange={event => acts.tick(end.end, event.target.checked)}
          />
          <span>{web['wiring.landed']}</span>
        </label>
        <button
          type="button"
          aria-describedby={id}
          disabled={!acts.canWrite}
          onClick={() => setIsMoving(true)}
        >
          {web['wiring.move']}
        </button>
        {end.isMoved && (
          <button type="button" disabled={!acts.canWrite} onClick={() => move(end.planned)}>
            {say(web['wiring.back-to-plan'], { at: tellPlace(end.planned) })}
          </button>
        )}
        <ShowEnd end={end} />
      </div>
      {isMoving && <MoveDialog row={row} end={end} move={move} close={() => setIsMoving(false)} />}
    </section>
  )
}

/** The place of an end in a line, with what is printed at it. */
function Where({ end }: { readonly end: EndRow }): ReactNode {
  const web = useWeb()
  const { wired } = useWiring()
  const tellPlace = useTellPlace()
  const place = wired.places[end.end]?.find(each => each.id === end.at)
  if (!place) return tellPlace(end.at)
  const terminal = shortName(place.id)
  return place.label === terminal
    ? say(web['wiring.lands-on'], { terminal })
    : say(web['wiring.lands-on-label'], { terminal, label: place.label })
}

/** The way to the board where the end is, if it is another one. */
function ShowEnd({ end }: { readonly end: EndRow }): ReactNode {
  const web = useWeb()
  const { panel } = useWiring()
  const { id = '' } = useParams()
  if (panel === end.panel) return undefined
  return (
    <Link className="button" href={`/job/${id}/wiring/${end.panel}`}>
      {say(web['wiring.show-on'], { panel: end.panelLabel })}
    </Link>
  )
}

function showBoard(): void {
  document.querySelector('.board-card')?.scrollIntoView({ block: 'start' })
}

/** Volts and amps of an end in the mode, and whether it stays live with everything off. */
export function Charge({ end }: { readonly end: EndRow }): ReactNode {
  const web = useWeb()
  if (!end.now) return undefined
  return (
    <p className="charge">
      <Figures point={end.now} />
      {end.isLiveWhenOff && <span className="stays">{web['wiring.live-when-off']}</span>}
    </p>
  )
}

export function Figures({ point }: { readonly point: LivePoint }): ReactNode {
  const web = useWeb()
  const tell = useTell()
  return (
    <>
      {point.isLive && <span className="is-live">⚡ {web['wiring.is-live']}</span>}{' '}
      <span className="figure">{tell.volts(point.volts)}</span>
      {' · '}
      <span className="figure">
        {carries(point) ? tell.amps(point.amps) : web['wiring.no-amps']}
      </span>
    </>
  )
}

/** Everything that copper joins with a wire or terminal, each a press away. */
function NetList({ own }: { readonly own: string }): ReactNode {
  const web = useWeb()
  const { net, choose, wired } = useWiring()
  const tell = useSheetText(wired.commandLabels)
  const others = net.rows.filter(each => each.wire.id !== own)
  const terminals = net.terminals.map(each => `${panelOf(each)}${shortName(each)}`)
  return (
    <>
      <h3>{web['wiring.net']}</h3>
      {others.length === 0 && <p>{web['wiring.net-alone']}</p>}
      <p className="row net">
        {others.map(({ wire }) => (
          <button key={wire.id} type="button" onClick={() => choose({ kind: 'wire', id: wire.id })}>
            {wire.number} {tell(wire.functionText)}
          </button>
        ))}
      </p>
      {terminals.length > 0 && (
        <p>{say(web['wiring.net-terminals'], { terminals: terminals.join(', ') })}</p>
      )}
    </>
  )
}

/** Terminals of the box go by their own name; of a device, with its. */
const panelOf = (terminal: string): string =>
  terminal.startsWith('box.') ? '' : `${terminal.slice(0, terminal.indexOf('.'))} `

/** A terminal that nothing is landed on. */
function TerminalDetails({ name }: { readonly name: string }): ReactNode {
  const web = useWeb()
  const { wired, live, rows } = useWiring()
  const point = live?.terminals[name]
  const [board = '', id = ''] = [name.slice(0, name.indexOf('.')), shortName(name)]
  const panel = wired.sheet.panels.find(each => each.id === board)
  const label = panel?.terminals.find(each => each.id === id)?.label
  return (
    <>
      <p>{[panel?.label, label].filter(each => each).join(', ')}</p>
      {landedOn(rows, name).length === 0 && <p>{web['wiring.nothing-on']}</p>}
      {point && (
        <p className="charge">
          <Figures point={point} />
        </p>
      )}
      <NetList own="" />
    </>
  )
}
