import type { Space } from './database.ts'

/** What tabs of one browser tell each other. */
export type Told =
  | { readonly kind: 'grew'; readonly job: string }
  | { readonly kind: 'jobs' }
  | { readonly kind: 'shelf' }
  | { readonly kind: 'hand-over' }

/** Whether this tab writes, or follows another one that does. */
export type Role = 'writes' | 'follows' | 'waits'

type Listener = () => void

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
  #release: (() => void) | undefined
  /** Finishes what is being written before the lock goes. */
  #beforeRelease: () => Promise<void> = () => Promise.resolve()
  role: Role = 'waits'

  constructor(space: Space) {
    this.#lock = `tubwright-writer-${space}`
    this.#channel = new BroadcastChannel(`tubwright-${space}`)
    this.#channel.onmessage = ({ data }: MessageEvent<Told>) => this.#hear(data)
  }

  /** Takes the lock if it is free; else follows, and takes it once it comes free. */
  async start(beforeRelease: () => Promise<void>): Promise<void> {
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
    this.#release?.()
    this.#channel.close()
  }

  #wait(): void {
    this.#become('follows')
    void navigator.locks.request(this.#lock, () => this.#hold())
  }

  #hold(): Promise<void> {
    this.#become('writes')
    return new Promise(resolve => {
      this.#release = resolve
    })
  }

  #hear(told: Told): void {
    if (told.kind === 'hand-over') void this.#handOver()
    for (const listener of this.#told) listener(told)
  }

  async #handOver(): Promise<void> {
    if (this.role !== 'writes') return
    await this.#beforeRelease()
    const release = this.#release
    this.#release = undefined
    // Queue first, then let go: the tab that asked stands before this one.
    this.#become('follows')
    release?.()
    setTimeout(() => this.#wait(), 50)
  }

  #become(role: Role): void {
    this.role = role
    for (const listener of this.#listeners) listener()
  }
}
