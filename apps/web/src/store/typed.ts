/** What is typed in fields and not yet on the disk: each field knows how to put it there. */
interface Unkept {
  readonly keep: () => void
  readonly hold: () => void
}

const typed = new Set<Unkept>()
const listeners = new Set<() => void>()

const changed = (): void => {
  for (const listener of listeners) listener()
}

/**
 * Notes that something is typed that is not kept yet; what comes back notes that it is.
 *
 * @param hold - keeps it before the page goes, where there is no time for more
 */
export function noteTyped(keep: () => void, hold = keep): () => void {
  const unkept = { keep, hold }
  typed.add(unkept)
  changed()
  return () => {
    typed.delete(unkept)
    changed()
  }
}

/** Keeps everything that is typed: before another tab writes. */
export function keepTyped(): void {
  for (const { keep } of [...typed]) keep()
}

function holdTyped(): void {
  for (const { hold } of [...typed]) hold()
}

export const isTyping = (): boolean => typed.size > 0

export function subscribeTyped(listener: () => void): () => void {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

/** From here on what is typed is kept when the page is hidden or left. */
export function keepTypedOnLeaving(): () => void {
  const hidden = (): void => {
    if (document.visibilityState === 'hidden') holdTyped()
  }
  document.addEventListener('visibilitychange', hidden)
  window.addEventListener('pagehide', holdTyped)
  return () => {
    document.removeEventListener('visibilitychange', hidden)
    window.removeEventListener('pagehide', holdTyped)
  }
}
