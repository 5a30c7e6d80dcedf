/** A seeded source of choices: the same seed, the same choices. */
export interface Random {
  /** A whole number from 0 to below the limit. */
  below(limit: number): number
  /** Whether something of this probability happens. */
  isTrue(probability: number): boolean
  of<Value>(list: readonly Value[]): Value
  shuffled<Value>(list: readonly Value[]): Value[]
}

/** @param seed - any whole number */
export function randomOf(seed: number): Random {
  let state = seed | 0
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0
    let word = Math.imul(state ^ (state >>> 15), 1 | state)
    word = (word + Math.imul(word ^ (word >>> 7), 61 | word)) ^ word
    return ((word ^ (word >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (limit: number): number => Math.floor(next() * limit)
  return {
    below,
    isTrue: probability => next() < probability,
    of: list => {
      if (list.length === 0) throw new Error('nothing to choose from')
      return list[below(list.length)] as (typeof list)[number]
    },
    shuffled: list => {
      const all = [...list]
      for (let index = all.length - 1; index > 0; index--) {
        const other = below(index + 1)
        const kept = all[index] as (typeof list)[number]
        all[index] = all[other] as (typeof list)[number]
        all[other] = kept
      }
      return all
    },
  }
}
