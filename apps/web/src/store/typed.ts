/** What is typed in fields and not yet in the record: each field knows how to put it there. */
const typed = new Set<() => void>()
const listeners = new Set<() => void>()

const changed = (): void => {
  for (const listener of listeners) listener()
}

/** Notes that something is typed that is not kept yet; what comes back notes that it is. */
export function noteTyped(keep: () => void): () => void {
  typed.add(keep)
  changed()
  return () => {
    typed.delete(keep)
    changed()
  }
}

/** Keeps everything that is typed: before the page goes, before another tab writes. */
export function keepTyped(): void {
  for (const keep of [...typed]) keep()
}

export const isTyping = (): boolean => typed.size > 0

export function subscribeTyped(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** From here on what is typed is kept when the page is hidden or left. */
export function keepTypedOnLeaving(): () => void {
  const hidden = (): void => {
    if (document.visibilityState === 'hidden') keepTyped()
  }
  document.addEventListener('visibilitychange', hidden)
  window.addEventListener('pagehide', keepTyped)
  return () => {
    document.removeEventListener('visibilitychange', hidden)
    window.removeEventListener('pagehide', keepTyped)
  }
}
