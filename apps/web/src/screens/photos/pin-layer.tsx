import { say } from '@tubwright/words'
import type { MouseEvent, ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import type { Pin } from './photo-record.ts'

const NEAR = 24 // [px] of the screen: a tap so near to a pin means that pin
const CENTRE = 0.5

const percent = (share: number): string => `${share * 100}%`

/** The pins of a photo, drawn over it: numbers of one size, however large the photo is shown. */
export function PinLayer({
  pins,
  chosen,
}: {
  readonly pins: readonly Pin[]
  readonly chosen?: string | undefined
}): ReactNode {
  return (
    <svg className="pin-layer" aria-hidden="true">
      {pins.map(({ id, number, x, y }) => (
        <g key={id} data-pin={number} className={id === chosen ? 'pin chosen' : 'pin'}>
          <circle cx={percent(x)} cy={percent(y)} r={15} />
          <text x={percent(x)} y={percent(y)} dy="0.36em">
            {number}
          </text>
        </g>
      ))}
    </svg>
  )
}

/** Where somebody tapped, as shares; the middle where a key did it. */
function shareOf({
  detail,
  clientX,
  clientY,
  currentTarget,
}: MouseEvent): readonly [number, number] {
  if (detail === 0) return [CENTRE, CENTRE]
  const { left, top, width, height } = currentTarget.getBoundingClientRect()
  return [(clientX - left) / width, (clientY - top) / height]
}

function nearestPin(pins: readonly Pin[], event: MouseEvent): Pin | undefined {
  if (event.detail === 0) return undefined
  const { width, height } = event.currentTarget.getBoundingClientRect()
  const [x, y] = shareOf(event)
  const away = (pin: Pin) => Math.hypot((pin.x - x) * width, (pin.y - y) * height)
  const [nearest] = pins.toSorted((a, b) => away(a) - away(b))
  return nearest && away(nearest) <= NEAR ? nearest : undefined
}

/** A photo that takes pins: a tap puts one there, or chooses the one that is there. */
export function PhotoFace({
  url,
  name,
  pins,
  chosen,
  next,
  size,
  canWrite,
  place,
  choose,
}: {
  readonly url: string | undefined
  readonly name: string
  readonly pins: readonly Pin[]
  readonly chosen: string | undefined
  readonly next: number
  readonly size: { readonly width: number; readonly height: number; readonly share: number }
  readonly canWrite: boolean
  readonly place: (x: number, y: number) => void
  readonly choose: (pin: string) => void
}): ReactNode {
  const web = useWeb()
  const tap = (event: MouseEvent): void => {
    const near = nearestPin(pins, event)
    if (near) choose(near.id)
    else if (canWrite) place(...shareOf(event))
  }
  return (
    <button
      type="button"
      className="photo-face"
      aria-label={say(web['photos.place'], { number: String(next), name })}
      style={{ width: percent(size.share), aspectRatio: `${size.width} / ${size.height}` }}
      onClick={tap}
    >
      {url !== undefined && <img src={url} alt="" />}
      <PinLayer pins={pins} chosen={chosen} />
    </button>
  )
}
