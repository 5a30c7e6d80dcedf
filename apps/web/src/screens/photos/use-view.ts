import { useCallback, useEffect, useState } from 'react'

/** What is shown in place of the list: a photo by its id, or the map. */
type PhotosView = { readonly photo: string } | { readonly map: true }

const KEY = 'photosView'

function inHistory(): PhotosView | undefined {
  const state = history.state as { readonly [KEY]?: PhotosView } | null
  return state?.[KEY]
}

/**
 * What is shown, kept beside the address: the way back closes it, and a page that is loaded again, as
 * after a camera, shows it again.
 */
export function usePhotosView(): {
  readonly view: PhotosView | undefined
  readonly show: (view: PhotosView) => void
  readonly close: () => void
} {
  const [view, setView] = useState(inHistory)
  useEffect(() => {
    const follow = (): void => setView(inHistory())
    addEventListener('popstate', follow)
    return () => removeEventListener('popstate', follow)
  }, [])
  const show = useCallback((next: PhotosView) => {
    const state = { ...(history.state as object | null), [KEY]: next }
    if (inHistory()) history.replaceState(state, '')
    else history.pushState(state, '')
    setView(next)
  }, [])
  const close = useCallback(() => {
    if (inHistory()) history.back()
    else setView(undefined)
  }, [])
  return { view, show, close }
}
