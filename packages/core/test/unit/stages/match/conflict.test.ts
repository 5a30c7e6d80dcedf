import * as fc from 'fast-check'
import { describe, test } from 'vitest'
import { irreducible } from '../../../../src/stages/match/match-equipment.ts'
import type { Candidate, Demand } from '../../../../src/stages/match/requirements.ts'
import { haveOwnPlaces } from '../../../../src/stages/match/requirements.ts'

const DEMANDS = 6

/** Candidates as the sets of demands they fail; a demand looks its own number up. */
const tableOf = (lacking: readonly (readonly number[])[]) => {
  const candidates = lacking.map(set => ({ set }) as unknown as Candidate)
  const demands = Array.from(
    { length: DEMANDS },
    (_, n): Demand => ({
      id: String(n),
      message: 'needs',
      subjects: [],
      params: {},
      lacks: candidate =>
        (candidate as unknown as { set: readonly number[] }).set.includes(n)
          ? { message: 'lacks', params: {} }
          : undefined,
    }),
  )
  return { candidates, demands }
}

const someSets = fc.array(
  fc.uniqueArray(fc.nat(DEMANDS - 1), { minLength: 1, maxLength: DEMANDS }),
  { minLength: 1, maxLength: 12 },
)

describe('the conflict when no box may serve', () => {
  test('rules every candidate out, and nothing in it can be left out', () => {
    fc.assert(
      fc.property(someSets, lacking => {
        const { candidates, demands } = tableOf(lacking)
        const kept = irreducible(demands, candidates).map(each => Number(each.id))
        const rulesOut = (set: readonly number[]) =>
          lacking.every(lacks => lacks.some(each => set.includes(each)))
        return rulesOut(kept) && kept.every(each => !rulesOut(kept.filter(other => other !== each)))
      }),
      { seed: 20_261_125, numRuns: 1000 },
    )
  })
})

/** Every load a place of its own, by trying all. */
function bySearch(choices: readonly (readonly string[])[], taken: readonly string[] = []): boolean {
  const [first, ...rest] = choices
  if (!first) return true
  return first.some(place => !taken.includes(place) && bySearch(rest, [...taken, place]))
}

test('a place for each load: augmenting paths agree with trying all', () => {
  const places = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { maxLength: 4 })
  fc.assert(
    fc.property(fc.array(places, { maxLength: 6 }), choices => {
      return haveOwnPlaces(choices) === bySearch(choices)
    }),
    { seed: 20_261_125, numRuns: 2000 },
  )
})
