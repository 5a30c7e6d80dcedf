import type { Space } from './database.ts'

/** What tabs of one browser tell each other. */
export type Told =
  | { readonly kind: 'grew'; readonly job: string }
  | { readonly kind: 'typed'; readonly job: string }
  | { readonly kind: 'jobs' }
  | { readonly kind: 'shelf' }
  | { readonly kind: 'hand-over' }

/** Whether this tab writes, or follows another one that does. */
export type Role = 'writes' | 'follows' | 'waits'

type Listener = () => void

/** Time for the tab that asked to come first [ms]. */
const AFTER_YOU = 50

/**
 * One writer a browser: the tab that holds the lock of a space writes, the others follow it.
 *
 * A tab that closes or is killed gives the lock up by itself; a tab may ask for it.
 */
export class Writer {
  readonly #lock: string
  readonly #channel: BroadcastChannel
  readonly #listeners = new Set<Listener>()
  readonly #told = new Set<(told: Told) => void>()
  /** Ends every request for the lock that is still waiting. */
  readonly #ended = new AbortController()
  #release: (() => void) | undefined
  #isWaiting = false
  #isHandingOver = false
  #beforeRelease: () => Promise<boolean> = () => Promise.resolve(true)
  role: Role = 'waits'

  constructor(space: Space) {
    this.#lock = `tubwright-writer-${space}`
    this.#channel = new BroadcastChannel(`tubwright-${space}`)
    this.#channel.onmessage = ({ data }: MessageEvent<Told>) => this.#hear(data)
  }

  /**
   * Takes the lock if it is free; else follows, and takes it once it comes free.
   *
   * @param beforeRelease - finishes what is being written; false where something could not be, and
   *   then the lock stays here
   */
  async start(beforeRelease: () => Promise<boolean>): Promise<void> {
    this.#beforeRelease = beforeRelease
    const isFree = await new Promise<boolean>(resolve => {
      void navigator.locks.request(this.#lock, { ifAvailable: true }, lock => {
        resolve(lock !== null)
        return lock ? this.#hold() : undefined
      })
    })
    if (!isFree) this.#wait()
  }

  /** Asks the writing tab to hand over; it does once its writing is done. */
  ask(): void {
    this.tell({ kind: 'hand-over' })
  }

  /** Resolves once this tab writes; asks for it where it does not. */
  toWrite(): Promise<void> {
    if (this.role === 'writes') return Promise.resolve()
    this.ask()
    return new Promise(resolve => {
      const stop = this.subscribe(() => {
        if (this.role !== 'writes') return
        stop()
        resolve()
      })
    })
  }

  tell(told: Told): void {
    this.#channel.postMessage(told)
  }

  hear(listener: (told: Told) => void): () => void {
    this.#told.add(listener)
    return () => this.#told.delete(listener)
  }

  subscribe(listener: Listener): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  stop(): void {
    this.#ended.abort()
    this.#release?.()
    this.#release = undefined
    this.#channel.close()
  }

  /** Queues for the lock, once: whoever holds it already stays what he is. */
  #wait(): void {
    if (this.#isWaiting || this.#release || this.#ended.signal.aborted) return
    this.#isWaiting = true
    this.#become('follows')
    navigator.locks
      .request(this.#lock, { signal: this.#ended.signal }, () => {
        this.#isWaiting = false
        return this.#hold()
      })
      .catch(() => undefined)
  }

  #hold(): Promise<void> {
    if (this.#ended.signal.aborted) return Promise.resolve()
    return new Promise(resolve => {
      this.#release = resolve
      this.#become('writes')
    })
  }

  #hear(told: Told): void {
    if (told.kind === 'hand-over') void this.#handOver()
    for (const listener of this.#told) listener(told)
  }

  async #handOver(): Promise<void> {
    if (this.role !== 'writes' || this.#isHandingOver) return
    this.#isHandingOver = true
    try {
      if (!(await this.#beforeRelease())) return
      const release = this.#release
      this.#release = undefined
      this.#become('follows')
      release?.()
      await new Promise(resolve => setTimeout(resolve, AFTER_YOU))
      this.#wait()
    } finally {
      this.#isHandingOver = false
    }
  }

  #become(role: Role): void {
    this.role = role
    for (const listener of this.#listeners) listener()
  }
}
