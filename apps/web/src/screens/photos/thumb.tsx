import { say } from '@tubwright/words'
import type { ReactNode, RefObject } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import type { PhotoItem } from './photo-record.ts'
import { usePicture } from './use-photos.ts'

/** Whether an element is on the screen or near it. */
function useIsNear(at: RefObject<HTMLElement | null>): boolean {
  const [isNear, setIsNear] = useState(false)
  useEffect(() => {
    if (!at.current) return
    const observer = new IntersectionObserver(
      entries => setIsNear(entries.some(each => each.isIntersecting)),
      { rootMargin: '50% 0px' },
    )
    observer.observe(at.current)
    return () => observer.disconnect()
  }, [at])
  return isNear
}

/** A small photo, which opens; its picture is there only while it is seen, so that many cost little. */
export function Thumb({
  photo,
  name,
  open,
}: {
  readonly photo: PhotoItem
  readonly name: string
  readonly open: (id: string) => void
}): ReactNode {
  const web = useWeb()
  const at = useRef<HTMLButtonElement>(null)
  const isNear = useIsNear(at)
  const { url, isMissing } = usePicture(isNear ? photo.hash : undefined)
  const { id, note, pins } = photo
  return (
    <button
      ref={at}
      type="button"
      className="thumb"
      data-photo={id}
      aria-label={say(web['photos.open'], { name: note === '' ? name : `${name}, ${note}` })}
      onClick={() => open(id)}
    >
      {url !== undefined && <img src={url} alt="" decoding="async" />}
      {isMissing && <span>{web['photos.no-bytes']}</span>}
      {pins.length > 0 && <span className="pin-count">{pins.length}</span>}
    </button>
  )
}
