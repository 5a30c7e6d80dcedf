import { readFileSync, unwatchFile, watchFile } from 'node:fs'

const LOOK_EVERY = 150 // [ms]
const STILL_FOR = 80 // [ms] an editor that writes in two goes is given time for the second

/** What a watched file holds now; absent where there is none, or none that can be read. */
export type Seen = (text: string | undefined) => void

function textOf(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8')
  } catch {
    return undefined
  }
}

/**
 * Tells what a file holds, at once and whenever that changes, until it is to stop.
 *
 * It looks rather than being told: so it survives the file being deleted, renamed over and written
 * anew, as editors do. It only reads. The same text is told once.
 */
export function watchText(path: string, seen: Seen, stop: AbortSignal): Promise<void> {
  return new Promise(resolve => {
    let known: { readonly text: string | undefined } | undefined
    let waiting: NodeJS.Timeout | undefined
    const look = () => {
      const text = textOf(path)
      if (known && known.text === text) return
      known = { text }
      seen(text)
    }
    const lookIn = (time: number) => {
      clearTimeout(waiting)
      waiting = setTimeout(look, time)
    }
    const changed = () => lookIn(STILL_FOR)
    const end = () => {
      clearTimeout(waiting)
      unwatchFile(path, changed)
      resolve()
    }
    if (stop.aborted) return end()
    stop.addEventListener('abort', end, { once: true })
    watchFile(path, { interval: LOOK_EVERY }, changed)
    look()
    // What changes before the first look of the watcher, it takes for how it always was.
    lookIn(2 * LOOK_EVERY)
  })
}
