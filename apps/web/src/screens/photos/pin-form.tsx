import type { Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useId, useRef } from 'react'
import { useWeb } from '../../app/context.ts'
import { TextEditor } from '../survey/editors.tsx'
import type { Lead } from './leads.ts'
import type { Pin } from './photo-record.ts'
import { pinPath, placeActs } from './photo-record.ts'
import type { Photos } from './use-photos.ts'
import { carried } from './use-photos.ts'

interface PinProps {
  readonly photo: string
  readonly pin: Pin
  readonly photos: Photos
}

/** What a pin is: a lead, the terminal it sits on, a note; and where it is, moved without a drag. */
export function PinForm({
  photo,
  pin,
  photos,
  step,
  takeAway,
}: PinProps & {
  /** How far one tap moves it, as a share of the photo. */
  readonly step: number
  readonly takeAway: () => void
}): ReactNode {
  const web = useWeb()
  const heading = useRef<HTMLHeadingElement>(null)
  // The photo stays where it is: several pins may be put on it, one after the other.
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  const number = String(pin.number)
  const isDisabled = !photos.canWrite
  const move = (x: number, y: number): void =>
    void photos.act(...placeActs(photo, pin.id, pin.x + x * step, pin.y + y * step))
  return (
    <section className="card pin-form" aria-label={say(web['photos.pin'], { number })}>
      <h3 tabIndex={-1} ref={heading}>
        {say(web['photos.pin'], { number })}
      </h3>
      <PinFields photo={photo} pin={pin} photos={photos} />
      <Move legend={say(web['photos.move'], { number })} isDisabled={isDisabled} by={move} />
      <p className="foot">
        <button type="button" disabled={isDisabled} onClick={takeAway}>
          {say(web['photos.take-pin'], { number })}
        </button>
      </p>
    </section>
  )
}

function PinFields({ photo, pin, photos }: PinProps): ReactNode {
  const web = useWeb()
  const path = pinPath(photo, pin.id)
  const set = (key: string) => (value: Json) =>
    void photos.act({ do: 'set', path: [...path, key], value })
  const clear = (key: string) => () => void photos.act({ do: 'clear', path: [...path, key] })
  const isDisabled = !photos.canWrite
  return (
    <>
      <LeadChoice
        leads={photos.leads}
        chosen={pin.end}
        choose={end => (end === '' ? clear('end')() : set('end')(end))}
        isDisabled={isDisabled}
      />
      {(['terminal', 'note'] as const).map(key => (
        <TextEditor
          key={key}
          label={web[`photos.${key}`]}
          value={pin[key]}
          set={set(key)}
          clear={clear(key)}
          most={key === 'terminal' ? 40 : 200}
          isDisabled={isDisabled}
        />
      ))}
    </>
  )
}

function LeadChoice({
  leads,
  chosen,
  choose,
  isDisabled,
}: {
  readonly leads: readonly Lead[]
  readonly chosen: string | undefined
  readonly choose: (end: string) => void
  readonly isDisabled: boolean
}): ReactNode {
  const web = useWeb()
  const id = useId()
  const owners = [...new Map(leads.map(each => [each.ownerId, each.owner]))]
  const isStrange = chosen !== undefined && !leads.some(each => each.end === chosen)
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {web['photos.lead']}
      </label>
      <select
        id={id}
        value={chosen ?? ''}
        disabled={isDisabled}
        onChange={event => choose(event.target.value)}
      >
        <option value="">{web['photos.lead-none']}</option>
        {isStrange && <option value={chosen}>{chosen}</option>}
        {owners.map(([ownerId, owner]) => (
          <optgroup key={ownerId} label={owner}>
            {leads
              .filter(each => each.ownerId === ownerId)
              .map(each => (
                <option key={each.end} value={each.end}>
                  {carried(web, each)}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </div>
  )
}

const WAYS = [
  { name: 'left', sign: '←', x: -1, y: 0 },
  { name: 'up', sign: '↑', x: 0, y: -1 },
  { name: 'down', sign: '↓', x: 0, y: 1 },
  { name: 'right', sign: '→', x: 1, y: 0 },
] as const

function Move({
  legend,
  isDisabled,
  by,
}: {
  readonly legend: string
  readonly isDisabled: boolean
  readonly by: (x: number, y: number) => void
}): ReactNode {
  const web = useWeb()
  return (
    <fieldset className="move">
      <legend>{legend}</legend>
      <div className="row">
        {WAYS.map(({ name, sign, x, y }) => (
          <button
            key={name}
            type="button"
            disabled={isDisabled}
            aria-label={web[`photos.${name}`]}
            onClick={() => by(x, y)}
          >
            {sign}
          </button>
        ))}
      </div>
    </fieldset>
  )
}
