/** Whoever holds it may change what it owns in place; a new one freezes all that came before. */
export interface Owner {
  readonly name?: string
}

interface Bucket<Value> {
  readonly owner: Owner
  readonly map: Map<string, Value>
}

/**
 * A map by text of which every copy is cheap: a change copies one bucket, or nothing where the owner
 * is the same. Iteration has no meaning: readers sort.
 */
export interface Shelf<Value> {
  readonly owner: Owner
  size: number
  buckets: Bucket<Value>[]
}

const NARROW = 24 // up to here one bucket
const WIDE = 128 // buckets from then on

const hash = (key: string): number => {
  let sum = 0
  for (let index = 0; index < key.length; index++) sum = (sum * 31 + key.charCodeAt(index)) | 0
  return (sum ^ (sum >>> 15)) & (WIDE - 1)
}

const bucketOf = <Value>(shelf: Shelf<Value>, key: string): number =>
  shelf.buckets.length === 1 ? 0 : hash(key)

export const emptyShelf = <Value>(owner: Owner): Shelf<Value> => ({
  owner,
  size: 0,
  buckets: [{ owner, map: new Map() }],
})

export const taken = <Value>(shelf: Shelf<Value> | undefined, key: string): Value | undefined =>
  shelf?.buckets[bucketOf(shelf, key)]?.map.get(key)

export function* valuesOf<Value>(shelf: Shelf<Value> | undefined): Generator<Value> {
  for (const bucket of shelf?.buckets ?? []) yield* bucket.map.values()
}

const ownShelf = <Value>(shelf: Shelf<Value>, owner: Owner): Shelf<Value> =>
  shelf.owner === owner ? shelf : { owner, size: shelf.size, buckets: [...shelf.buckets] }

function ownBucket<Value>(shelf: Shelf<Value>, index: number): Map<string, Value> {
  const bucket = shelf.buckets[index] as Bucket<Value>
  if (bucket.owner === shelf.owner) return bucket.map
  const map = new Map(bucket.map)
  shelf.buckets[index] = { owner: shelf.owner, map }
  return map
}

function widen<Value>(shelf: Shelf<Value>): void {
  const { owner } = shelf
  const all = [...(shelf.buckets[0]?.map ?? [])]
  shelf.buckets = Array.from({ length: WIDE }, () => ({ owner, map: new Map() }))
  for (const [key, value] of all) shelf.buckets[hash(key)]?.map.set(key, value)
}

/** The shelf with a value on it: itself where the owner is the same, a copy where not. */
export function put<Value>(
  shelf: Shelf<Value> | undefined,
  owner: Owner,
  key: string,
  value: Value,
): Shelf<Value> {
  const mine = shelf ? ownShelf(shelf, owner) : emptyShelf<Value>(owner)
  const map = ownBucket(mine, bucketOf(mine, key))
  if (!map.has(key)) mine.size++
  map.set(key, value)
  if (mine.buckets.length === 1 && mine.size > NARROW) widen(mine)
  return mine
}

/** The shelf without a key. */
export function drop<Value>(shelf: Shelf<Value>, owner: Owner, key: string): Shelf<Value> {
  if (taken(shelf, key) === undefined) return shelf
  const mine = ownShelf(shelf, owner)
  ownBucket(mine, bucketOf(mine, key)).delete(key)
  mine.size--
  return mine
}
