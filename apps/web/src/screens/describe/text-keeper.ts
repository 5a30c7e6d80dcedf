/** How far what was typed is on the disk. */
export interface Kept {
  readonly state: 'saved' | 'saving' | 'failed'
  /** Why the last write failed. */
  readonly why?: string
}

const textOf = (error: unknown): string => (error instanceof Error ? error.message : String(error))

/**
 * The way of a text to the disk: at every change, one write after the other, the newest text next.
 *
 * Texts that a newer one overtakes while a write runs are not written; the newest always is. One that
 * could not be written stays and is tried again with the next change or when somebody asks.
 */
export class TextKeeper {
  readonly #write: (text: string) => Promise<void>
  readonly #changed: (kept: Kept) => void
  #next: string | undefined
  #running: Promise<void> | undefined
  #kept: Kept = { state: 'saved' }

  constructor(write: (text: string) => Promise<void>, changed: (kept: Kept) => void) {
    this.#write = write
    this.#changed = changed
  }

  get kept(): Kept {
    return this.#kept
  }

  keep(text: string): void {
    this.#next = text
    this.#start()
  }

  retry(): void {
    if (this.#next !== undefined) this.#start()
  }

  /** Once nothing is being written any more: whether all of it is on the disk. */
  async settled(): Promise<boolean> {
    while (this.#running) await this.#running
    return this.#next === undefined
  }

  #start(): void {
    this.#tell({ state: 'saving' })
    this.#running ??= this.#run().finally(() => {
      this.#running = undefined
    })
  }

  async #run(): Promise<void> {
    while (this.#next !== undefined) {
      const text = this.#next
      this.#next = undefined
      try {
        await this.#write(text)
      } catch (error) {
        this.#next ??= text
        this.#tell({ state: 'failed', why: textOf(error) })
        return
      }
    }
    this.#tell({ state: 'saved' })
  }

  #tell(kept: Kept): void {
    this.#kept = kept
    this.#changed(kept)
  }
}
