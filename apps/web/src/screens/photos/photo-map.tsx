import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useRef } from 'react'
import { useJobView, useWeb } from '../../app/context.ts'
import type { MappedPhoto } from './photo-record.ts'
import { photoMap } from './photo-record.ts'
import { PinLayer } from './pin-layer.tsx'
import type { Photos } from './use-photos.ts'
import { usePicture } from './use-photos.ts'

/** Every photo with pins, and which lead each number is: to be printed and laid beside the box. */
export function PhotoMap({
  photos,
  close,
}: {
  readonly photos: Photos
  readonly close: () => void
}): ReactNode {
  const web = useWeb()
  const { state } = useJobView()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <article className="photo-map">
      <h2 tabIndex={-1} ref={heading}>
        {web['photos.map']}
      </h2>
      <p className="on-screen">{web['photos.map-help']}</p>
      <div className="row on-screen">
        <button type="button" onClick={close}>
          {web['photos.close']}
        </button>
        <button type="button" className="main" onClick={() => print()}>
          {web.print}
        </button>
      </div>
      {photoMap(state).map(each => (
        <Mapped key={each.id} photo={each} photos={photos} />
      ))}
    </article>
  )
}

function Mapped({
  photo,
  photos,
}: {
  readonly photo: MappedPhoto
  readonly photos: Photos
}): ReactNode {
  const web = useWeb()
  const { url, isMissing } = usePicture(photo.hash)
  const name = photos.nameOf(photo.of)
  const { width, height, pins, note } = photo
  return (
    <section className="mapped" aria-label={name}>
      <h3>{name}</h3>
      {note !== '' && <p>{note}</p>}
      {isMissing && <p>{web['photos.no-bytes']}</p>}
      <div className="mapped-face" style={{ aspectRatio: `${width} / ${height}` }}>
        {url !== undefined && <img src={url} alt={say(web['photos.photo-of'], { name })} />}
        <PinLayer pins={pins} />
      </div>
      <div className="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">{web['photos.map-number']}</th>
              <th scope="col">{web['photos.map-lead']}</th>
              <th scope="col">{web['photos.map-terminal']}</th>
              <th scope="col">{web['photos.map-note']}</th>
            </tr>
          </thead>
          <tbody>
            {pins.map(({ id, number, end, terminal, note: said }) => (
              <tr key={id}>
                <th scope="row">{number}</th>
                <td>{end === undefined ? '–' : photos.leadName(end)}</td>
                <td>{terminal ?? '–'}</td>
                <td>{said ?? '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  )
}
