import type { Seen } from './entry.ts'
import { byText } from './json.ts'

/** Counters of one store that nobody here holds, both ends among them. */
export interface Gap {
  readonly store: string
  readonly from: number
  readonly to: number
}

/** What is held of one store, and how far it is known to go. */
interface Held {
  /** All of 1 to here are held. */
  prefix: number
  /** Held beyond the first hole. */
  readonly beyond: Set<number>
  /** The greatest counter held, or named by whoever saw it. */
  top: number
}

/** Counts what is held of every store: where the holes are, and what one may say one has seen. */
export class Tally {
  readonly #stores = new Map<string, Held>()
  #gaps: readonly Gap[] | undefined = []

  #of(store: string): Held {
    const old = this.#stores.get(store)
    if (old) return old
    const held = { prefix: 0, beyond: new Set<number>(), top: 0 }
    this.#stores.set(store, held)
    return held
  }

  hold(store: string, counter: number): void {
    const held = this.#of(store)
    if (held.top !== held.prefix || counter !== held.prefix + 1) this.#gaps = undefined
    held.top = Math.max(held.top, counter)
    if (counter === held.prefix + 1) held.prefix++
    else if (counter > held.prefix) held.beyond.add(counter)
    while (held.beyond.delete(held.prefix + 1)) held.prefix++
  }

  /** Notes that somebody had all of these. */
  name(seen: Seen): void {
    for (const store in seen) {
      const counter = seen[store] as number
      const held = this.#of(store)
      if (counter <= held.top) continue
      held.top = counter
      this.#gaps = undefined
    }
  }

  /** The greatest counter of a store that is held or known of, 0 for none. */
  topOf(store: string): number {
    return this.#stores.get(store)?.top ?? 0
  }

  /**
   * What was seen, without a hole: of a store with holes only what lies before the first, since a
   * vector that went further would say that somebody saw what was never here.
   */
  get seen(): Seen {
    const all = [...this.#stores].filter(([, { prefix }]) => prefix > 0)
    return Object.fromEntries(
      all.sort(([a], [b]) => byText(a, b)).map(([store, { prefix }]) => [store, prefix]),
    )
  }

  /** By store, then counter. Never a list as long as a counter is great. */
  get gaps(): readonly Gap[] {
    this.#gaps ??= [...this.#stores]
      .sort(([a], [b]) => byText(a, b))
      .flatMap(([store, held]) => gapsOf(store, held))
    return this.#gaps
  }
}

function gapsOf(store: string, { prefix, beyond, top }: Held): readonly Gap[] {
  const ends = [...beyond, top + 1].sort((a, b) => a - b)
  let last = prefix
  const gaps: Gap[] = []
  for (const each of ends) {
    if (each > last + 1) gaps.push({ store, from: last + 1, to: each - 1 })
    last = Math.max(last, each)
  }
  return gaps
}
