import type { Act, Entry, Reader } from '@tubwright/records'

/**
 * A second opinion on the fold, straight from the definitions: every pair of entries compared, no
 * index, nothing kept. It shares the types with the source, and the text of a value.
 */
export interface Opinion {
  /** By path: what nobody has replaced, as sorted `id says`. */
  readonly heads: Readonly<Record<string, readonly string[]>>
  /** Paths of withdrawals that stand and are not inside another withdrawn item. */
  readonly withdrawn: readonly string[]
  /** Withdrawn paths, each with what was done inside that no withdrawal saw, by entry id. */
  readonly beside: Readonly<Record<string, readonly string[]>>
  readonly conflicts: readonly string[]
  /** Shown beside items of a list, and no item. */
  readonly orphans: readonly string[]
  readonly gaps: readonly string[]
  readonly forks: readonly string[]
  readonly strange: readonly string[]
}

interface Told {
  readonly entry: Entry
  readonly act: Act
  readonly level: number
}

const KINDS = ['set', 'clear', 'add', 'withdraw', 'restore', 'settle']

const textOf = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(textOf).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value)
  const pairs = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))
  return `{${pairs.map(([key, each]) => `${JSON.stringify(key)}:${textOf(each)}`).join(',')}}`
}

const levelOf = (entry: Entry): number => Number(entry.schema.split('/')[1])

function tell(entry: Entry, reader: Reader): readonly Told[] {
  const level = levelOf(entry)
  if (level > reader.level || !KINDS.includes(String(entry.act.do))) return []
  let act = entry.act as Act
  for (const each of reader.migrations) if (each.from >= level) act = each.upcast(act)
  return [{ entry, act, level }]
}

const keyOf = (path: readonly string[]): string => path.join('/')

const isInside = (inner: string, outer: string): boolean => inner.startsWith(`${outer}/`)

const isBeside = (a: string, b: string): boolean =>
  a.slice(0, a.lastIndexOf('/') + 1) === b.slice(0, b.lastIndexOf('/') + 1)

const isEmptyContainer = (value: unknown): boolean =>
  textOf(value) === '[]' || textOf(value) === '{}'

/** What a set of entries says, by the definitions. Digests come from the caller: they are names. */
export function opinionOf(
  all: readonly Entry[],
  reader: Reader,
  digestOf: (entry: Entry) => string,
): Opinion {
  const entries = all.filter(
    (each, index) => all.findIndex(other => textOf(other) === textOf(each)) === index,
  )
  const told = entries.flatMap(each => tell(each, reader))
  const variantsOf = (id: string) => entries.filter(each => each.id === id)
  const names = (later: Entry, earlier: Entry): boolean => {
    const [store = '', counter] = earlier.id.split(':')
    return Object.hasOwn(later.seen, store) && Number(later.seen[store]) >= Number(counter)
  }
  const hasSeen = (later: Told, earlier: Told): boolean =>
    later.level >= earlier.level &&
    names(later.entry, earlier.entry) &&
    (variantsOf(earlier.entry.id).length < 2 ||
      told.some(
        ({ act, entry }) =>
          act.do === 'settle' &&
          act.fork === earlier.entry.id &&
          act.variants.includes(digestOf(earlier.entry)) &&
          names(later.entry, entry),
      ))
  const at = (key: string, ...kinds: readonly string[]) =>
    told.filter(
      ({ act }) => act.do !== 'settle' && kinds.includes(act.do) && keyOf(act.path) === key,
    )
  const pathOf = ({ act }: Told): readonly string[] => (act.do === 'settle' ? [] : act.path)
  const keys = [
    ...new Set(
      told.flatMap(each => pathOf(each).map((_, depth) => keyOf(pathOf(each).slice(0, depth + 1)))),
    ),
  ].sort()
  const headsAt = (key: string) =>
    at(key, 'set', 'clear').filter(
      each => !at(key, 'set', 'clear').some(other => hasSeen(other, each)),
    )
  const withdrawalsAt = (key: string) =>
    at(key, 'withdraw').filter(
      each => !at(key, 'restore', 'add').some(other => hasSeen(other, each)),
    )
  const gone = keys.filter(key => withdrawalsAt(key).length > 0)
  const isVisible = (key: string): boolean =>
    !gone.some(outer => outer === key || isInside(key, outer))
  const saysAt = (key: string): boolean =>
    at(key, 'add').length > 0 || headsAt(key).some(({ act }) => act.do === 'set')
  const saying = ({ act }: Told): string => (act.do === 'set' ? textOf(act.value) : 'nothing')
  const isLeaf = ({ act }: Told): boolean => act.do === 'set' && !isEmptyContainer(act.value)
  const isOpen = (key: string): boolean =>
    at(key, 'add').length > 0 ||
    keys.some(inner => isInside(inner, key) && isVisible(inner) && saysAt(inner))
  const isContested = (key: string): boolean =>
    isOpen(key) ? headsAt(key).some(isLeaf) : new Set(headsAt(key).map(saying)).size > 1
  const besideOf = (key: string): readonly string[] => {
    const inside = keys.filter(inner => isInside(inner, key))
    const stands = [
      ...headsAt(key),
      ...inside.flatMap(inner => [...headsAt(inner), ...at(inner, 'add', 'withdraw', 'restore')]),
    ]
    return stands
      .filter(each => !withdrawalsAt(key).some(withdrawal => hasSeen(withdrawal, each)))
      .map(each => each.entry.id)
      .sort()
  }
  const outermost = gone.filter(key => !gone.some(outer => isInside(key, outer)))
  return {
    heads: Object.fromEntries(
      keys.flatMap(key => {
        const heads = headsAt(key).map(each => `${each.entry.id} ${saying(each)}`)
        return heads.length > 0 ? [[key, heads.sort()] as const] : []
      }),
    ),
    withdrawn: outermost,
    beside: Object.fromEntries(outermost.map(key => [key, besideOf(key)])),
    conflicts: keys.filter(key => isVisible(key) && isContested(key)),
    orphans: keys.filter(
      key =>
        isVisible(key) &&
        at(key, 'add').length === 0 &&
        keys.some(other => isBeside(other, key) && at(other, 'add').length > 0) &&
        keys.some(
          inner => (inner === key || isInside(inner, key)) && isVisible(inner) && saysAt(inner),
        ),
    ),
    gaps: missingFrom(entries),
    forks: [
      ...new Set(entries.filter(each => variantsOf(each.id).length > 1).map(each => each.id)),
    ].sort(),
    strange: entries
      .filter(each => tell(each, reader).length === 0)
      .map(each => each.id)
      .sort(),
  }
}

/** Every id that must have been written and is not here, one by one. */
export function missingFrom(entries: readonly Entry[]): readonly string[] {
  const ids = new Set<string>(entries.map(each => each.id))
  const tops = new Map<string, number>()
  const know = (store: string, counter: number): void => {
    tops.set(store, Math.max(tops.get(store) ?? 0, counter))
  }
  for (const { id, seen } of entries) {
    const [store = '', counter] = id.split(':')
    know(store, Number(counter))
    for (const [each, least] of Object.entries(seen)) know(each, least)
  }
  return [...tops]
    .flatMap(([store, top]) => Array.from({ length: top }, (_, index) => `${store}:${index + 1}`))
    .filter(id => !ids.has(id))
    .sort()
}
