import { atLeast, atMost } from '../../../base/compare.ts'
import type { Entered } from '../../../base/entered.ts'
import type { Known } from '../../../base/known.ts'
import type { Possible } from '../../../base/possible.ts'
import { choiceOf, given, numberOf } from '../../../base/possible.ts'
import type { InputBound, Inputs, PointOf } from '../../../base/settle.ts'
import { settlePoints } from '../../../base/settle.ts'
import type { Cited } from '../../../domain/codebook/book.ts'
import type { Nearest, YardBook, YardPlace } from '../../../domain/codebook/yard-book.ts'
import { yardIn } from '../../../domain/codebook/yards.ts'
import { YES_NO } from '../../../domain/described.ts'
import type { Yard } from '../../../domain/supply/yard.ts'
import type { CodeFinding } from './artifact.ts'
import type { SupplyEvidence } from './evidence.ts'
import type { About, PointFinding } from './rule.ts'
import { conclude, notCovered } from './rule.ts'

/** What an unknown length may be [m]. Common practice, no source. */
const IMAGINABLE = {
  distance: { from: 0, to: 30 },
  /** Of a light over the water. */
  height: { from: 0, to: 6 },
  /** Of a rim over the floor. */
  rim: { from: 0, to: 1.5 },
} as const

/** What the book of the region says of a place; undefined where none is here. */
export const yardAt = ({ book }: SupplyEvidence, place: YardPlace): YardBook | undefined =>
  book && yardIn(book, place)

/** Figures at which a rule turns; asked for only where a length is open. */
export type Turns = () => readonly number[]

export const NO_TURNS: Turns = () => []

/** Every figure at which a rule turns, at all the places that the tub may be at. */
export const turnsOf =
  (evidence: SupplyEvidence, pick: (yard: YardBook) => readonly (number | undefined)[]): Turns =>
  () => {
    // Without a yard there is nothing to judge by them.
    if (!evidence.survey.yard) return []
    const found = settlePoints(evidence.place, place => {
      const yard = yardAt(evidence, place)
      return yard ? pick(yard) : []
    })
    return [...new Set(found.flat().flatMap(each => each ?? []))]
  }

/** Figures of how near something may be, as thresholds. */
export const turnsOfNearest = (nearest: Nearest | undefined): readonly (number | undefined)[] => [
  nearest?.breaksBelow?.value,
  nearest?.holdsFrom?.value,
]

export const lengthOf = (
  known: Known<Entered<'m'>> | undefined,
  kind: keyof typeof IMAGINABLE,
  at: string,
  turns: Turns,
): Possible<number> =>
  known?.kind === 'known'
    ? given(known.value.si, at)
    : numberOf(known, { ...IMAGINABLE[kind], thresholds: turns() }, at)

export const yesOrNo = (known: Known<(typeof YES_NO)[number]> | undefined, at: string) =>
  choiceOf(known, YES_NO, at)

/** How lengths are told in a region: feet and inches, with metres where its code has them, or metres. */
export function lengthUnit({ survey: { region } }: SupplyEvidence): 'ft' | 'ft-m' | 'm' {
  if (region === 'US') return 'ft'
  return region === 'CA' ? 'ft-m' : 'm'
}

/**
 * Judges a rule of the place.
 *
 * Without bounds of lengths: the sentence has the figure, in the unit of its region.
 */
export function concludeAt<const Asked extends Inputs>(
  about: About,
  asked: Asked,
  judge: (point: PointOf<Asked>) => PointFinding,
): CodeFinding {
  const found = conclude(about, asked, judge)
  const isLength = ({ holdsFor }: InputBound) => holdsFor.some(each => typeof each === 'number')
  return { ...found, bounds: found.bounds.filter(each => !isLength(each)) }
}

/** One listed thing in the yard, and where the survey has it. */
export interface Listed<Thing> {
  readonly thing: Thing
  readonly at: string
}

type Lists = Pick<Yard, 'receptacles' | 'lights' | 'switches' | 'metal'>

/** The things of one list; none without a yard. */
export const listed = <Name extends keyof Lists>(
  { survey: { yard } }: SupplyEvidence,
  name: Name,
): readonly Listed<NonNullable<Lists[Name]>[number]>[] =>
  ((yard?.[name] ?? []) as readonly NonNullable<Lists[Name]>[number][]).map(thing => ({
    thing,
    at: `yard.${name}.${thing.id}`,
  }))

const isWithin = (distance: number, limit: Cited<number>, kind: Nearest['kind']): boolean =>
  kind === 'distance' ? !atLeast(distance, limit.value) : atMost(distance, limit.value)

/**
 * Judges how near a thing is.
 *
 * Sentences are named after the thing and the kind of figure: `switch-zone`, `receptacle-pool`.
 *
 * @param nearest - undefined where the book has no figure
 */
export function judgeNearest(
  distance: number,
  nearest: Nearest | undefined,
  what: string,
): PointFinding {
  if (!nearest) return notCovered(what)
  const { kind, breaksBelow, holdsFrom, between } = nearest
  const shown = holdsFrom ?? breaksBelow
  if (!shown) return notCovered(what)
  const found = {
    message: `${what}-${kind}`,
    clause: shown.by,
    params: { is: distance, may: shown.value },
    margin: distance - shown.value,
  }
  if (breaksBelow && isWithin(distance, breaksBelow, kind))
    return { ...found, verdict: 'breaks', clause: breaksBelow.by }
  if (holdsFrom && !isWithin(distance, holdsFrom, kind)) return { ...found, verdict: 'holds' }
  if (!holdsFrom) return notCovered('in-a-room')
  if (between === 'not-covered' || !breaksBelow) return { ...found, verdict: 'not-covered' }
  const readings = { strict: holdsFrom.value, lenient: breaksBelow.value }
  return {
    ...found,
    verdict: 'experts-differ',
    readings: { ...readings, decides: 'authority' },
  }
}
