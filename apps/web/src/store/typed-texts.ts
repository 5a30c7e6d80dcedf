import { noteTyped } from './typed.ts'

/** What stands in a field of the survey and is not in the record. */
export interface TypedText {
  readonly text: string
  /** It was refused when the field was left; else somebody was still typing it. */
  readonly isLeft: boolean
}

/** By the path of the field. */
export type Texts = Readonly<Record<string, TypedText>>

const PAUSE = 300 // [ms] after the last key

const isAtOrBelow = (field: string, above: string): boolean =>
  field === above || field.startsWith(`${above}/`)

interface Disk {
  readonly put: (texts: Texts) => Promise<void>
  /** At once and on the spot: a page that goes may not live to see `put` through. */
  readonly jot: (texts: Texts | undefined) => void
  /** Resolves once what was entered so far is on the disk. */
  readonly settled: () => Promise<void>
}

/**
 * What stands in the fields of one job beside its record: there again after a reload, as it was typed.
 *
 * It is no answer and leaves no entry. A text goes from the disk only once the entry that it became is
 * there.
 */
export class TypedTexts {
  #texts: Texts
  readonly #disk: Disk
  /** Texts that became entries which are not on the disk yet. */
  readonly #going = new Map<string, TypedText>()
  #timer: ReturnType<typeof setTimeout> | undefined
  #done: (() => void) | undefined
  #writing: Promise<void> = Promise.resolve()
  readonly #listeners = new Set<() => void>()

  constructor(texts: Texts, disk: Disk) {
    this.#texts = texts
    this.#disk = disk
  }

  get all(): Texts {
    return this.#texts
  }

  at(field: string): TypedText | undefined {
    return this.#texts[field]
  }

  hasBelow(path: string): boolean {
    return Object.keys(this.#texts).some(field => field.startsWith(`${path}/`))
  }

  note(field: string, text: TypedText): void {
    this.#going.delete(field)
    this.#show({ ...this.#texts, [field]: text })
    this.#later()
  }

  /** Forgets what stands at a path or below it: it is in the record, or another answer is. */
  forget(path: string): void {
    const gone = Object.entries(this.#texts).filter(([field]) => isAtOrBelow(field, path))
    if (gone.length === 0) return
    for (const [field, text] of gone) this.#going.set(field, text)
    const kept = Object.entries(this.#texts).filter(([field]) => !isAtOrBelow(field, path))
    this.#show(Object.fromEntries(kept))
    void this.#disk.settled().then(() => {
      for (const [field, text] of gone)
        if (this.#going.get(field) === text) this.#going.delete(field)
      this.#later()
    })
  }

  /** Another tab wrote them. */
  replace(texts: Texts): void {
    if (this.#timer === undefined) this.#show(texts)
  }

  /** Writes at once what waits: the page may go. */
  flush(): void {
    if (this.#timer === undefined) return
    clearTimeout(this.#timer)
    this.#timer = undefined
    const done = this.#done
    this.#done = undefined
    const texts = { ...Object.fromEntries(this.#going), ...this.#texts }
    this.#disk.jot(texts)
    // What cannot be written now is written with the next key.
    this.#writing = this.#disk
      .put(texts)
      .then(() => {
        if (this.#timer === undefined) this.#disk.jot(undefined)
      })
      .catch(() => undefined)
      .finally(() => done?.())
  }

  /** Resolves once everything is on the disk. */
  written(): Promise<void> {
    this.flush()
    return this.#writing
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  #later(): void {
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => this.flush(), PAUSE)
    this.#done ??= noteTyped(() => this.flush())
  }

  #show(texts: Texts): void {
    this.#texts = texts
    for (const listener of this.#listeners) listener()
  }
}
