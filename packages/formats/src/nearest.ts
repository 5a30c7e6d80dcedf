import { distance } from 'fastest-levenshtein'

const NEAR = 3 // [edits]
const LONG = 60 // [characters] no name is longer; a longer word is like none
const STEM = 4 // [characters] from so many on, the beginning of a word stands for it

/** Names that differ in a number are different things: L9 is no slip for L1. */
const digitsOf = (word: string): string => word.replace(/\D/gu, '')

/** The word nearest to a misspelt one, if any is near: few edits away, or begun by it. */
export function nearest(word: string, words: readonly string[]): string | undefined {
  if (word === '' || word.length > LONG) return undefined
  const small = word.toLowerCase()
  const ranked = words
    .filter(each => digitsOf(each) === digitsOf(word))
    .map(each => ({ each, edits: distance(small, each.toLowerCase()) }))
    .sort((a, b) => a.edits - b.edits)
  const best = ranked[0]
  if (best && best.edits <= Math.min(NEAR, Math.ceil(word.length / 2))) return best.each
  const begun = words.filter(each => each.toLowerCase().startsWith(small))
  return word.length >= STEM ? begun[0] : undefined
}

/** The nearest word as the part of a diagnostic that suggests it, or nothing. */
export function suggested(word: string, words: readonly string[]): { didYouMean?: string } {
  const near = nearest(word, words)
  return near === undefined || near === word ? {} : { didYouMean: near }
}
