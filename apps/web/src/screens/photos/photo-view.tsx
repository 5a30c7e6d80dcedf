import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { About } from './about-photo.tsx'
import type { Pin } from './photo-record.ts'
import { PHOTOS } from './photo-record.ts'
import { PinForm } from './pin-form.tsx'
import { PhotoFace } from './pin-layer.tsx'
import type { Photos } from './use-photos.ts'
import { usePicture } from './use-photos.ts'
import type { Pins, Shown } from './use-pins.ts'
import { usePins } from './use-pins.ts'

const ZOOMS = [1, 1.5, 2, 3, 4] as const
const STEP = 0.01 // of the photo as wide as the screen; less where it is shown larger

/** One photo: its pins on it and in a list, and what it is of. */
export function PhotoView({
  photo,
  photos,
  close,
}: Shown & { readonly close: () => void }): ReactNode {
  const web = useWeb()
  const heading = useRef<HTMLHeadingElement>(null)
  const [zoom, setZoom] = useState(0)
  const pins = usePins({ photo, photos })
  useEffect(() => heading.current?.focus(), [])
  const share = ZOOMS[zoom] ?? 1
  const takeOut = async (): Promise<void> => {
    await photos.act({ do: 'withdraw', path: [...PHOTOS, photo.id] })
    close()
  }
  return (
    <article className="photo-view">
      <h2 tabIndex={-1} ref={heading}>
        {say(web['photos.photo-of'], { name: photos.nameOf(photo.of) })}
      </h2>
      <div className="row">
        <button type="button" onClick={close}>
          {web['photos.close']}
        </button>
        <Zoom zoom={zoom} setZoom={setZoom} />
      </div>
      {photos.canWrite && <p className="hint">{web['photos.place-hint']}</p>}
      <div className="photo-work">
        <Picture photo={photo} photos={photos} pins={pins} share={share} />
        <div>
          <Chosen photo={photo} photos={photos} pins={pins} step={STEP / share} />
          <PinList photo={photo} photos={photos} pins={pins} />
        </div>
      </div>
      <About photo={photo} photos={photos} />
      <p className="foot">
        <button type="button" disabled={!photos.canWrite} onClick={() => void takeOut()}>
          {web['photos.take-out']}
        </button>
      </p>
    </article>
  )
}

function Zoom({
  zoom,
  setZoom,
}: {
  readonly zoom: number
  readonly setZoom: (zoom: number) => void
}): ReactNode {
  const web = useWeb()
  const share = String(Math.round((ZOOMS[zoom] ?? 1) * 100))
  return (
    <>
      <button
        type="button"
        disabled={zoom === 0}
        aria-label={web['photos.zoom-out']}
        onClick={() => setZoom(zoom - 1)}
      >
        −
      </button>
      <span>{say(web['photos.zoom'], { share })}</span>
      <button
        type="button"
        disabled={zoom === ZOOMS.length - 1}
        aria-label={web['photos.zoom-in']}
        onClick={() => setZoom(zoom + 1)}
      >
        +
      </button>
    </>
  )
}

function Picture({
  photo,
  photos,
  pins,
  share,
}: Shown & { readonly pins: Pins; readonly share: number }): ReactNode {
  const web = useWeb()
  const { url, isMissing } = usePicture(photo.hash)
  const { width, height } = photo
  return (
    <>
      {isMissing && <p className="wrong">{web['photos.no-bytes']}</p>}
      <div className="photo-scroll">
        <PhotoFace
          url={url}
          name={photos.nameOf(photo.of)}
          pins={photo.pins}
          chosen={pins.chosen?.id}
          next={pins.next}
          size={{ width, height, share }}
          canWrite={photos.canWrite}
          place={pins.place}
          choose={pins.choose}
        />
      </div>
    </>
  )
}

/** The pin that is looked at, right below the photo: what it is can be said while it is seen. */
function Chosen({
  pins: { chosen, takeAway, gone, bringBack },
  photo,
  photos,
  step,
}: Shown & { readonly pins: Pins; readonly step: number }): ReactNode {
  const web = useWeb()
  return (
    <>
      {gone && (
        <div className="card row" role="status">
          <span>{say(web['photos.pin-taken'], { number: String(gone.number) })}</span>
          <button type="button" onClick={bringBack}>
            {web.undo}
          </button>
        </div>
      )}
      {chosen && (
        <PinForm
          key={chosen.id}
          photo={photo.id}
          pin={chosen}
          photos={photos}
          step={step}
          takeAway={() => takeAway(chosen)}
        />
      )}
    </>
  )
}

function PinList({ pins, photo, photos }: Shown & { readonly pins: Pins }): ReactNode {
  const web = useWeb()
  const { chosen, choose } = pins
  return (
    <section aria-label={web['photos.pins']}>
      <h3>{web['photos.pins']}</h3>
      {photo.pins.length === 0 && <p>{web['photos.no-pins']}</p>}
      <ol className="plain pins">
        {photo.pins.map(pin => (
          <li key={pin.id}>
            <button
              type="button"
              className="card"
              aria-pressed={pin.id === chosen?.id}
              onClick={() => choose(pin.id)}
            >
              <span className="pin-number">{pin.number}</span> <PinText pin={pin} photos={photos} />
            </button>
          </li>
        ))}
      </ol>
    </section>
  )
}

function PinText({ pin, photos }: { readonly pin: Pin; readonly photos: Photos }): ReactNode {
  const web = useWeb()
  const { end, terminal, note } = pin
  const all = [
    ...(end === undefined ? [] : [photos.leadName(end)]),
    ...(terminal === undefined ? [] : [say(web['photos.on-terminal'], { terminal })]),
    ...(note === undefined ? [] : [note]),
  ]
  return all.length > 0 ? all.join(' · ') : web['photos.pin-unsaid']
}
