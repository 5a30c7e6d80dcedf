import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import type { PhotoItem } from './photo-record.ts'
import type { Slot } from './slots.ts'
import { TakeButtons } from './take-buttons.tsx'
import { TakingLine } from './taking-line.tsx'
import { Thumb } from './thumb.tsx'
import type { Photos } from './use-photos.ts'
import type { Take } from './use-take.ts'

/** What every part of the list of photos works with. */
export interface Common {
  readonly photos: Photos
  readonly take: Take
  readonly isBusy: boolean
  readonly open: (id: string) => void
}

const MARKS = { missing: '○', waiting: '…', some: '◐', done: '✓' } as const

/** One of the wanted photos: whether it is there, and the ways to it. */
export function SlotCard({
  slot,
  photos,
  take,
  isBusy,
  open,
}: Common & { readonly slot: Slot }): ReactNode {
  const web = useWeb()
  const { of, state, waiting } = slot
  const name = photos.nameOf(of)
  return (
    <>
      <div className="slot-head">
        <p>
          <span className="mark" aria-hidden="true">
            {MARKS[state]}
          </span>{' '}
          <span className="title">{name}</span>
          <br />
          <span className="quiet">{slotText(web, slot)}</span>
        </p>
        <div className="row">
          <TakeButtons
            of={of}
            name={name}
            waiting={waiting?.id}
            take={take}
            isOff={!photos.canWrite || isBusy}
          />
        </div>
      </div>
      <TakingLine taking={take.taking[of]} />
      <Thumbs list={slot.photos} photos={photos} open={open} />
    </>
  )
}

function slotText(web: ReturnType<typeof useWeb>, { state, wanted, photos }: Slot): string {
  const count = String(photos.length)
  if (state === 'some') return say(web['photos.slot-some'], { count, wanted: String(wanted) })
  if (state === 'done') return say(web['photos.slot-done'], { count })
  return web[state === 'waiting' ? 'photos.slot-waiting' : 'photos.slot-missing']
}

/** Photos side by side. */
export function Thumbs({
  list,
  photos,
  open,
}: {
  readonly list: readonly PhotoItem[]
  readonly photos: Photos
  readonly open: (id: string) => void
}): ReactNode {
  if (list.length === 0) return undefined
  return (
    <ul className="plain thumbs">
      {list.map(each => (
        <li key={each.id}>
          <Thumb photo={each} name={photos.nameOf(each.of)} open={open} />
        </li>
      ))}
    </ul>
  )
}
