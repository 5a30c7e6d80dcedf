import type { ShelfText } from '../../store/database.ts'
import type { DescriptionKey } from './description.ts'
import { isSame } from './description.ts'
import type { Kept } from './text-keeper.ts'
import { TextKeeper } from './text-keeper.ts'

/** What a row asks of the shelf that it lies on. */
export interface RowShelf {
  readonly put: (text: ShelfText) => Promise<void>
  readonly takeOff: (key: DescriptionKey) => Promise<void>
  readonly find: (key: DescriptionKey) => Promise<ShelfText | undefined>
  readonly now: () => string
}

/** `there`: nothing to do. `failed`: the disk did not take it, and all is as it was. */
export type Moved = 'moved' | 'taken' | 'there' | 'failed'

/** One description on the shelf while it is written: its writes one after the other, and its name. */
export class ShelfRow {
  readonly keeper: TextKeeper
  readonly #shelf: RowShelf
  #stored: ShelfText
  #latest: string
  #moving: Promise<unknown> = Promise.resolve()

  constructor(shelf: RowShelf, stored: ShelfText, changed: (kept: Kept) => void) {
    this.#shelf = shelf
    this.#stored = stored
    this.#latest = stored.text
    this.keeper = new TextKeeper(text => this.#put(text), changed)
  }

  write(text: string): void {
    this.#latest = text
    this.keeper.keep(text)
  }

  /** Moves to another name, one move after the other. */
  move(to: DescriptionKey): Promise<Moved> {
    const moved = this.#moving.then(() => this.#move(to))
    this.#moving = moved.catch(() => undefined)
    return moved
  }

  async #put(text: string): Promise<void> {
    this.#stored = { ...this.#stored, text, at: this.#shelf.now() }
    await this.#shelf.put(this.#stored)
  }

  /** The new place is on the disk before the old one goes: cut off in between, both are there. */
  async #move(to: DescriptionKey): Promise<Moved> {
    if (isSame(this.#stored, to)) return 'there'
    await this.keeper.settled()
    const there = await this.#shelf.find(to)
    // Of a move that was cut off there are two with one text: then it is only finished.
    if (there && (there.isGiven || there.text !== this.#latest)) return 'taken'
    const { kind, id } = this.#stored
    this.#stored = { ...this.#stored, kind: to.kind, id: to.id }
    this.keeper.keep(this.#latest)
    if (await this.keeper.settled()) {
      await this.#shelf.takeOff({ kind, id })
      return 'moved'
    }
    this.#stored = { ...this.#stored, kind, id }
    return 'failed'
  }
}
