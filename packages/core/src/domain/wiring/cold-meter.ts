import { complex } from '../../base/complex.ts'
import { invariant } from '../../base/invariant.ts'
import type { Element, NodeId } from '../../engines/circuit/network.ts'
import { resistanceBetween } from '../../engines/circuit/resistance-between.ts'
import type { Cold } from './cold.ts'
import { COLD } from './cold-figures.ts'
import type { ColdElement, ColdPart, OhmBand } from './cold-ohms.ts'

/** What an ohmmeter reads, cold. Its own accuracy is in `low` and `high`; all in ohms. */
export type ColdReading = {
  /** Of the network alone, over tolerances and unknowns; `greatest` is absent where it may be open. */
  readonly least: number
  readonly greatest?: number
  /** Loads whose capacitor charges first: the meter starts low and climbs. */
  readonly charges: readonly string[]
} & (
  | { readonly kind: 'open' }
  | {
      readonly kind: 'ohms'
      readonly expected: number
      readonly low: number
      readonly high: number
    }
  /** Through insulation alone, and not for certain above what a meter calls open. */
  | { readonly kind: 'above'; readonly expected: number; readonly low: number }
  /** An unknown decides: each of these has to be known. */
  | { readonly kind: 'not-shown'; readonly asks: readonly ColdPart[] }
)

/** A value for each element [Ω]; infinite leaves it out. */
type Values = (element: ColdElement) => number

const OPEN = Number.POSITIVE_INFINITY

/**
 * Ohms between two nodes with these values; infinite where nothing joins them.
 *
 * @param elements - of a cold network, or some of it
 */
export function ohmsWith(
  elements: readonly ColdElement[],
  a: NodeId,
  b: NodeId,
  ohmsOf: Values,
): number {
  if (a === b) return 0
  const kept = elements.flatMap((each): Element[] => {
    const ohms = ohmsOf(each)
    const { id, between } = each
    return ohms < OPEN && between[0] !== between[1]
      ? [{ kind: 'impedance', id, between, ohms: complex(ohms) }]
      : []
  })
  const result = resistanceBetween({ hertz: 60, reference: a, elements: kept }, a, b)
  if (result.ok) return result.value
  invariant(
    result.failure.reason !== 'structure',
    'every cold element has ohms that mean something',
  )
  return OPEN
}

const at =
  (which: keyof OhmBand, unknown: number): Values =>
  ({ ohms }) =>
    ohms ? ohms[which] : unknown

/**
 * Least and greatest ohms between two nodes, over every tolerance and every unknown.
 *
 * Rayleigh's monotonicity law: the resistance between two nodes of a network of resistances never
 * falls when one of them rises. So the least is that of all at their least, the greatest that of all
 * at their greatest, and nothing between reads outside: no other corner has to be looked at.
 *
 * @returns [Ω], `greatest` infinite where it may be open
 * @source [DOYLE-SNELL] Rayleigh's monotonicity law
 */
export const ohmBounds = (
  { elements }: Cold,
  a: NodeId,
  b: NodeId,
): { readonly least: number; readonly greatest: number } => ({
  least: ohmsWith(elements, a, b, at('least', COLD.unknownLeast)),
  greatest: ohmsWith(elements, a, b, at('greatest', OPEN)),
})

/** How far a reading may be from what is there [Ω]. */
const accuracy = (ohms: number): number => COLD.meterShare * ohms + COLD.meterOhms

/** Whether a meter tells two values apart; above what it calls open it tells nothing. */
function isTold(low: number, high: number): boolean {
  if (low >= COLD.opensAt) return false
  return high >= COLD.opensAt || high - low > accuracy(low)
}

/** Ohms that no two unknowns share, so that no bridge of them is in balance by chance. */
const GENERIC = { from: 20, step: 3 } // [Ω]

/** Ohms between two nodes with one element otherwise, the unknown ones at generic values. */
function withOne(elements: readonly ColdElement[], a: NodeId, b: NodeId) {
  const generic = new Map(
    elements
      .filter(each => !each.ohms)
      .map((each, index) => [each, GENERIC.from + GENERIC.step * index] as const),
  )
  return (one: ColdElement, ohms: number): number =>
    ohmsWith(elements, a, b, each =>
      each === one ? ohms : (generic.get(each) ?? each.ohms?.expected ?? OPEN),
    )
}

/** Shares of the meter's own ohms: what never shows, and what is not counted on. */
const NEVER = { across: 0.1, between: 0.001 }

/**
 * Unknown elements that may show in a reading.
 *
 * Each from its least to open, the others at generic values meanwhile: at their ends one unknown can
 * hide what another does. One that lies across next to nothing never shows, whatever the others are: a
 * part between two nodes changes no reading by more than the ohms between these without it.
 */
function deciding(elements: readonly ColdElement[], a: NodeId, b: NodeId): readonly ColdElement[] {
  const ohmsOf = withOne(elements, a, b)
  const greatest = at('greatest', OPEN)
  return elements.filter(each => {
    if (!each.part || each.ohms) return false
    const least = ohmsOf(each, COLD.unknownLeast)
    if (least >= COLD.opensAt) return false
    if (ohmsOf(each, OPEN) - least <= NEVER.between * COLD.meterOhms) return false
    const [from, to] = each.between
    const across = ohmsWith(elements, from, to, one => (one === each ? OPEN : greatest(one)))
    return across > NEVER.across * COLD.meterOhms
  })
}

/** Loads with a capacitor across what a reading passes through. */
function charging(elements: readonly ColdElement[], a: NodeId, b: NodeId): readonly string[] {
  const ohmsOf = withOne(elements, a, b)
  return elements.flatMap(each => {
    const { part, ohms } = each
    if (part?.charges !== true || part.load === undefined) return []
    const least = ohmsOf(each, ohms?.least ?? COLD.unknownLeast)
    return isTold(least, ohmsOf(each, OPEN)) ? [part.load] : []
  })
}

const partsOf = (elements: readonly ColdElement[]): readonly ColdPart[] =>
  elements.flatMap(each => each.part ?? [])

/**
 * What an ohmmeter reads between two nodes, cold, its leads zeroed.
 *
 * Where an unknown makes a difference that the meter tells, the reading is not shown, and the parts
 * to ask about are named. The expected value is never that of an unknown.
 */
export function ohmsBetween(cold: Cold, a: NodeId, b: NodeId): ColdReading {
  const { elements } = cold
  const { least, greatest } = ohmBounds(cold, a, b)
  const bounds = {
    least: Math.min(least, FINITE_MAX),
    ...(greatest < OPEN ? { greatest } : {}),
    charges: [...new Set(charging(elements, a, b))],
  }
  if (least >= COLD.opensAt) return { ...bounds, kind: 'open' }
  const expected = ohmsWith(elements, a, b, at('expected', OPEN))
  if (isTold(ohmsWith(elements, a, b, at('expected', COLD.unknownLeast)), expected))
    return { ...bounds, kind: 'not-shown', asks: partsOf(deciding(elements, a, b)) }
  const low = Math.max(0, least - accuracy(least))
  if (greatest >= COLD.opensAt) return { ...bounds, kind: 'above', expected, low }
  return { ...bounds, kind: 'ohms', expected, low, high: greatest + accuracy(greatest) }
}

/** A reading with no path at all is told as this many ohms: no number is infinite in a wire form [Ω]. */
const FINITE_MAX = 1e15
