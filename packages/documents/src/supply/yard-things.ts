import type { CodeFinding, Entered, Known, SupplyReport, Survey, Verdict } from '@tubwright/core'
import { boundsOf } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { say } from '@tubwright/words'
import { worstOf } from './sign.ts'

export type ThingKind = 'disconnect' | 'receptacles' | 'lights' | 'switches' | 'metal'

/** One thing in the yard, as it was surveyed and judged. */
export interface YardThing {
  /** Where the survey has it, as findings name it. */
  readonly at: string
  readonly kind: ThingKind
  /** What it is, in one word. */
  readonly what: string
  /** As a person calls it; nothing where there is only one. */
  readonly label: string
  /** From the inside wall of the tub [m]; undefined where nobody knows. */
  readonly span: { readonly from: number; readonly to: number } | undefined
  /** The same, as somebody wrote it. */
  readonly distance: string
  readonly verdict: Verdict
}

/** What is said of the yard and of no thing in it. */
export interface YardRest {
  readonly title: string
  readonly verdict: Verdict
}

/** A distance at which the book draws a line [m]. */
export interface Ring {
  readonly metres: number
  readonly text: string
}

type KnownDistance = Known<Entered<'m'>>

function distanceText(known: KnownDistance | undefined, { supplyPage }: Words): string {
  switch (known?.kind) {
    case 'known':
      return known.value.text
    case 'range':
      return say(supplyPage['yard-range'], { from: known.from.text, to: known.to.text })
    case 'one-of':
      return known.values.map(each => each.text).join(' / ')
    default:
      return supplyPage['yard-unknown']
  }
}

const LISTS = ['receptacles', 'lights', 'switches', 'metal'] as const

/** Everything in the yard, the disconnect first: it is asked for even where nobody named one. */
export function thingsOf(
  { yard }: Survey,
  report: SupplyReport,
  words: Words,
): readonly YardThing[] {
  if (!yard) return []
  const thing = (
    kind: ThingKind,
    at: string,
    label: string,
    known: KnownDistance | undefined,
  ): YardThing => ({
    at,
    kind,
    what: words.supplyPage[`yard-${kind}`],
    label,
    span: known && boundsOf(known),
    distance: distanceText(known, words),
    verdict: worstOf(findingsAt(report, at)) ?? 'not-shown',
  })
  return [
    thing('disconnect', 'yard.disconnect', '', yard.disconnect?.distance),
    ...LISTS.flatMap(list =>
      (yard[list] ?? []).map(each =>
        thing(list, `yard.${list}.${each.id}`, each.label, each.distance),
      ),
    ),
  ]
}

const findingsAt = ({ yard }: SupplyReport, at: string): readonly CodeFinding[] =>
  yard.filter(each => each.subjects[0] === at)

/** Every rule that speaks of no drawn thing, once, with the worst that it says. */
export function restOf(
  { yard }: SupplyReport,
  things: readonly YardThing[],
  { supplyRules }: Words,
): readonly YardRest[] {
  const drawn = new Set(things.map(each => each.at))
  const others = yard.filter(each => !drawn.has(each.subjects[0] ?? ''))
  const titles: Readonly<Record<string, string>> = supplyRules
  return [...new Set(others.map(each => each.rule))].flatMap(rule => {
    const verdict = worstOf(others.filter(each => each.rule === rule))
    return verdict ? [{ title: titles[rule] ?? rule, verdict }] : []
  })
}

const LENGTHS = ['ft', 'ft-m', 'm']

/** The distances that the findings hold things against, the least first. */
export function ringsOf({ yard }: SupplyReport): readonly Ring[] {
  const found = new Map<string, Ring>()
  for (const { params } of yard) {
    const { unit = '' } = params
    if (!LENGTHS.includes(String(unit))) continue
    for (const metres of [params['least'], params['may']])
      if (typeof metres === 'number' && metres > 0) {
        // Beside a ring there is room for one unit.
        const text = say(unit === 'm' ? '{metres:m}' : '{metres:ft}', { metres })
        found.set(text, { metres, text })
      }
  }
  return [...found.values()].sort((a, b) => a.metres - b.metres)
}
