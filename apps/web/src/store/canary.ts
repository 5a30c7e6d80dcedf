import type { JobCard, Space } from './database.ts'

/**
 * What this browser should hold, kept apart from the database: a store that was wiped or evicted is
 * then noticed, and it can be said what is missing. Where everything of the origin was wiped, this is
 * too, and nothing can be told.
 */
interface Canary {
  readonly store: string
  readonly jobs: readonly {
    readonly id: string
    readonly title: string
    readonly entries: number
  }[]
}

const keyOf = (space: Space): string => `tubwright-canary-${space}`

export function readCanary(space: Space): Canary | undefined {
  try {
    const text = localStorage.getItem(keyOf(space))
    return text === null ? undefined : (JSON.parse(text) as Canary)
  } catch {
    return undefined
  }
}

export function writeCanary(space: Space, store: string, cards: readonly JobCard[]): void {
  const jobs = cards.map(({ id, title, entries }) => ({ id, title, entries }))
  try {
    localStorage.setItem(keyOf(space), JSON.stringify({ store, jobs } satisfies Canary))
  } catch {
    // A browser that keeps nothing apart cannot tell of a loss; the database is kept all the same.
  }
}

/** Jobs that should be there and are not, or that have fewer entries than they had. */
export function missingFrom(
  canary: Canary | undefined,
  cards: readonly JobCard[],
): readonly string[] {
  const has = new Map(cards.map(each => [each.id, each.entries]))
  return (canary?.jobs ?? [])
    .filter(each => (has.get(each.id) ?? -1) < each.entries)
    .map(each => each.title)
}
