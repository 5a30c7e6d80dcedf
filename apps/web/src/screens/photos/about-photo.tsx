import type { ReactNode } from 'react'
import { useId } from 'react'
import { useWeb } from '../../app/context.ts'
import { TextEditor } from '../survey/editors.tsx'
import { PHOTOS } from './photo-record.ts'
import { isWanted, WANTED } from './slots.ts'
import type { Shown } from './use-pins.ts'

/** What the photo is of, and what is to be said of it. */
export function About({ photo, photos }: Shown): ReactNode {
  const web = useWeb()
  const { of, note } = photo
  const isKnown = isWanted(of) || photos.loads.some(each => each.id === of)
  const path = [...PHOTOS, photo.id]
  const set = (key: string) => (value: unknown) =>
    void photos.act({ do: 'set', path: [...path, key], value: String(value) })
  const isDisabled = !photos.canWrite
  return (
    <section className="about-photo">
      <WhatOf of={isKnown ? of : OTHER} photos={photos} set={set('of')} />
      {!isKnown && (
        <TextEditor
          label={web['photos.other-name']}
          value={of}
          set={set('of')}
          clear={() => set('of')('')}
          isDisabled={isDisabled}
        />
      )}
      <TextEditor
        label={web['photos.note']}
        value={note}
        set={set('note')}
        clear={() => void photos.act({ do: 'clear', path: [...path, 'note'] })}
        most={400}
        lines
        isDisabled={isDisabled}
      />
    </section>
  )
}

const OTHER = 'other'

function WhatOf({
  of,
  photos,
  set,
}: Pick<Shown, 'photos'> & {
  readonly of: string
  readonly set: (of: string) => void
}): ReactNode {
  const web = useWeb()
  const id = useId()
  const known = [...WANTED, ...photos.loads.map(each => each.id)]
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {web['photos.what-of']}
      </label>
      <select
        id={id}
        value={of}
        disabled={!photos.canWrite}
        onChange={({ target: { value } }) => set(value === OTHER ? '' : value)}
      >
        {known.map(each => (
          <option key={each} value={each}>
            {photos.nameOf(each)}
          </option>
        ))}
        <option value={OTHER}>{web['photos.something-else']}</option>
      </select>
    </div>
  )
}
