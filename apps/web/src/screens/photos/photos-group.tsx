import { withdrawnBelow } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useJobView, useWeb } from '../../app/context.ts'
import '../../style/photos.css'
import { PhotoMap } from './photo-map.tsx'
import { PHOTOS, photoOf } from './photo-record.ts'
import { PhotoView } from './photo-view.tsx'
import type { Common } from './slot-card.tsx'
import { SlotCard, Thumbs } from './slot-card.tsx'
import { othersOf, slotsOf } from './slots.ts'
import { Inputs, TakeButtons } from './take-buttons.tsx'
import { TakingLine } from './taking-line.tsx'
import type { Photos } from './use-photos.ts'
import { usePhotos } from './use-photos.ts'
import { useTake } from './use-take.ts'
import { usePhotosView } from './use-view.ts'

const OTHER = '' // what a photo is of before anybody has said it

/** The photos of a job: those that every job wants, others, one of them with its pins, or the map. */
export function PhotosGroup(): ReactNode {
  const photos = usePhotos()
  const { view, show, close } = usePhotosView()
  const last = useRef<string | undefined>(undefined)
  const shown =
    view && 'photo' in view ? photos.photos.find(each => each.id === view.photo) : undefined
  if (shown) last.current = shown.id
  // Whoever comes back from a photo is where that was opened.
  useEffect(() => {
    if (view || last.current === undefined) return
    document.querySelector<HTMLElement>(`[data-photo="${last.current}"]`)?.focus()
  }, [view])
  if (shown) return <PhotoView key={shown.id} photo={shown} photos={photos} close={close} />
  if (view && 'map' in view) return <PhotoMap photos={photos} close={close} />
  return (
    <Overview photos={photos} open={photo => show({ photo })} openMap={() => show({ map: true })} />
  )
}

function Overview({
  photos,
  open,
  openMap,
}: {
  readonly photos: Photos
  readonly open: (id: string) => void
  readonly openMap: () => void
}): ReactNode {
  const web = useWeb()
  const [keepsOriginals, setKeepsOriginals] = useState(false)
  const take = useTake(keepsOriginals)
  const isBusy = Object.values(take.taking).some(each => each.kind === 'working')
  const common: Common = { photos, take, isBusy, open }
  const slots = slotsOf(photos.photos, photos.loads)
  return (
    <>
      <p>{web['photos.intro']}</p>
      <Inputs take={take} />
      <Resume {...common} />
      <Originals keeps={keepsOriginals} set={setKeepsOriginals} />
      {photos.photos.some(each => each.pins.length > 0) && (
        <p>
          <button type="button" onClick={openMap}>
            {web['photos.map-open']}
          </button>
        </p>
      )}
      <h2>{web['photos.wanted']}</h2>
      <ol className="plain slots">
        {slots.map(slot => (
          <li key={slot.of} className="card" data-slot={slot.of} data-state={slot.state}>
            <SlotCard slot={slot} {...common} />
          </li>
        ))}
      </ol>
      <Others {...common} />
      <TakenOut photos={photos} />
    </>
  )
}

function Originals({
  keeps,
  set,
}: {
  readonly keeps: boolean
  readonly set: (keeps: boolean) => void
}): ReactNode {
  const web = useWeb()
  return (
    <div className="originals">
      <label className="chip">
        <input
          type="checkbox"
          checked={keeps}
          aria-describedby="originals-hint"
          onChange={event => set(event.target.checked)}
        />
        <span>{web['photos.original']}</span>
      </label>
      <p className="hint" id="originals-hint">
        {web['photos.original-hint']}
      </p>
    </div>
  )
}

/** What stands where a camera was opened and the page was lost: the slot is known, the picture is not. */
function Resume({ photos, take, isBusy }: Common): ReactNode {
  const web = useWeb()
  const waiting = photos.photos.filter(each => each.hash === undefined)
  if (isBusy) return undefined
  return waiting.map(({ id, of }) => (
    <div key={id} className="card waiting">
      <p>
        <strong>{say(web['photos.resume'], { name: photos.nameOf(of) })}</strong>
      </p>
      <div className="row">
        <TakeButtons
          of={of}
          name={photos.nameOf(of)}
          waiting={id}
          take={take}
          isOff={!photos.canWrite}
        />
        <button
          type="button"
          disabled={!photos.canWrite}
          onClick={() => void photos.act({ do: 'withdraw', path: [...PHOTOS, id] })}
        >
          {web['photos.leave-it']}
        </button>
      </div>
    </div>
  ))
}

function Others({ photos, take, isBusy, open }: Common): ReactNode {
  const web = useWeb()
  const others = othersOf(photos.photos)
  return (
    <section aria-label={web['photos.others']}>
      <h2>{web['photos.others']}</h2>
      <div className="row">
        <TakeButtons
          of={OTHER}
          name={web['photos.others']}
          take={take}
          isOff={!photos.canWrite || isBusy}
        />
      </div>
      <TakingLine taking={take.taking[OTHER]} />
      {others.length === 0 ? (
        <p>{web['photos.none']}</p>
      ) : (
        <p className="quiet">{say(web['photos.count'], { count: String(others.length) })}</p>
      )}
      <Thumbs list={others} photos={photos} open={open} />
    </section>
  )
}

/** Photos that were taken out: each comes back with one tap. */
function TakenOut({ photos }: { readonly photos: Photos }): ReactNode {
  const web = useWeb()
  const { state } = useJobView()
  const gone = withdrawnBelow(state, PHOTOS)
    .map(({ document }) => photoOf(document as Readonly<Record<string, unknown>>))
    .filter(each => each.hash !== undefined)
  return gone.map(({ id, of }) => (
    <div key={id} className="card row">
      <span>{say(web['photos.taken-out'], { name: photos.nameOf(of) })}</span>
      <button
        type="button"
        disabled={!photos.canWrite}
        onClick={() => void photos.act({ do: 'restore', path: [...PHOTOS, id] })}
      >
        {web.undo}
      </button>
    </div>
  ))
}
