import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useId, useRef, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { landedOn } from './net.ts'
import type { EndRow, WireRow } from './rows.ts'
import { isOff, shortName } from './rows.ts'
import { useTell, useWiring } from './wiring-context.ts'

interface Place {
  readonly id: string
  readonly label: string
}

const MANY = 12 // from so many rows on they can be searched

/** Where an end is moved to: every terminal of its board, a row as large as a thumb. */
export function MoveDialog({
  row,
  end,
  move,
  close,
}: {
  readonly row: WireRow
  readonly end: EndRow
  readonly move: (to: string) => void
  readonly close: () => void
}): ReactNode {
  const web = useWeb()
  const id = useId()
  const dialog = useRef<HTMLDialogElement>(null)
  const [typed, setTyped] = useState('')
  useEffect(() => dialog.current?.showModal(), [])
  const places = usePlaces(end)
  const wanted = typed.trim().toLocaleLowerCase()
  const shown = places.filter(
    each =>
      isOff(each.id) || `${shortName(each.id)} ${each.label}`.toLocaleLowerCase().includes(wanted),
  )
  return (
    <dialog ref={dialog} className="move" aria-labelledby={id} onClose={close}>
      <h2 id={id}>{say(web['wiring.move-title'], { number: row.wire.number })}</h2>
      <p className="hint">{web['wiring.move-hint']}</p>
      <button type="button" className="move-close" onClick={close}>
        {web.cancel}
      </button>
      {places.length > MANY && (
        <div className="field">
          <label className="label" htmlFor={`${id}-filter`}>
            {web['wiring.filter']}
          </label>
          <input
            id={`${id}-filter`}
            type="search"
            value={typed}
            onChange={event => setTyped(event.target.value)}
          />
        </div>
      )}
      <ul className="plain places">
        {shown.map(each => (
          <li key={each.id}>
            <button
              type="button"
              className="place"
              data-place={each.id}
              aria-current={each.id === end.at ? 'true' : undefined}
              onClick={() => move(each.id)}
            >
              <PlaceLine place={each} end={end} />
            </button>
          </li>
        ))}
      </ul>
    </dialog>
  )
}

/** What the plan says first, then the board in its order, then off the board. */
function usePlaces(end: EndRow): readonly Place[] {
  const web = useWeb()
  const { wired } = useWiring()
  const terminals = wired.places[end.end] ?? []
  const off = [
    { id: 'insulated', label: web['wiring.cap-it'] },
    { id: 'loose', label: web['wiring.leave-loose'] },
  ]
  const all = [...terminals, ...off]
  const planned = all.filter(each => each.id === end.planned)
  return [...planned, ...all.filter(each => each.id !== end.planned)]
}

/** A terminal: its name, what is printed at it, what it has and what is on it. */
function PlaceLine({ place, end }: { readonly place: Place; readonly end: EndRow }): ReactNode {
  const web = useWeb()
  const { rows, live } = useWiring()
  const tell = useTell()
  const wires = landedOn(rows, place.id).map(each => each.wire.number)
  const point = live?.terminals[place.id]
  const facts = [
    ...(place.id === end.at ? [web['wiring.is-here']] : []),
    ...(place.id === end.planned ? [web['wiring.is-plan']] : []),
    ...(wires.length > 0 && !isOff(place.id)
      ? [say(web['wiring.wires-here'], { wires: wires.join(', ') })]
      : []),
    ...(point?.isLive ? [`⚡ ${tell.volts(point.volts)}`] : []),
  ]
  return (
    <>
      <span className="place-name">
        {isOff(place.id) ? place.label : <strong>{shortName(place.id)}</strong>}
        {!isOff(place.id) && place.label !== shortName(place.id) && ` ${place.label}`}
      </span>
      <span className="quiet">{facts.join(' · ')}</span>
    </>
  )
}
