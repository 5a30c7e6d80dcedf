import type { Database, Space } from './database.ts'
import { openDatabase } from './database.ts'

/** Errors that a lost connection shows itself by: opening it again is worth a try. */
const LOST = ['InvalidStateError', 'UnknownError', 'AbortError', 'TransactionInactiveError']

const isLost = (error: unknown): boolean =>
  error instanceof DOMException && LOST.includes(error.name)

/**
 * The connection to one space. Browsers lose them in the background: it is then opened again and the
 * work done once more. What is done has to be safe to do twice.
 */
export class Connection {
  readonly space: Space
  #database: Promise<Database> | undefined
  /** How often it had to be opened again. */
  reopened = 0

  constructor(space: Space) {
    this.space = space
  }

  async use<Value>(work: (database: Database) => Promise<Value>): Promise<Value> {
    try {
      return await work(await this.#open())
    } catch (error) {
      if (!isLost(error)) throw error
      this.#database = undefined
      this.reopened++
      return work(await this.#open())
    }
  }

  async close(): Promise<void> {
    const database = await this.#database
    this.#database = undefined
    database?.close()
  }

  #open(): Promise<Database> {
    this.#database ??= openDatabase(this.space, () => {
      this.#database = undefined
    })
    return this.#database
  }
}
