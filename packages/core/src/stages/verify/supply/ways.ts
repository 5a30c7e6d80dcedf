import type { Possible } from '../../../base/possible.ts'
import { given } from '../../../base/possible.ts'
import { nextRating } from '../../../domain/codebook/book.ts'
import type { ConductorSize } from '../../../domain/conductor.ts'
import { AREAS, GAUGES, sizeFrom } from '../../../domain/conductor.ts'
import type { CodeFinding, FeedWay } from './artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'
import { isAmerican } from './evidence.ts'
import type { SupplyRule } from './rule.ts'

/** Rules that a changed feed has to pass. */
export type Gates = readonly SupplyRule[]

const outcomeOf = (findings: readonly CodeFinding[]): FeedWay['outcome'] => {
  if (findings.some(each => each.verdict === 'breaks' || each.verdict === 'experts-differ'))
    return 'breaks'
  return findings.some(each => each.verdict !== 'holds') ? 'open' : 'holds'
}

const againstOf = (findings: readonly CodeFinding[]): readonly string[] => [
  ...new Set(
    findings.flatMap(each =>
      each.verdict === 'breaks' || each.verdict === 'experts-differ' ? [each.rule] : [],
    ),
  ),
]

/** The same evidence with one circuit changed. */
const changed = (
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  change: Partial<CircuitEvidence>,
): SupplyEvidence => ({ ...evidence, circuits: [{ ...circuit, ...change }] })

const tried = (
  gates: Gates,
  evidence: SupplyEvidence,
  way: Omit<FeedWay, 'outcome' | 'against'>,
): FeedWay => {
  const found = gates.flatMap(rule => rule.check(evidence))
  return { ...way, outcome: outcomeOf(found), against: againstOf(found) }
}

const greatest = ({ values }: Possible<number>): number => Math.max(...values)

/** The same segments in another size of copper, neutral and earth as large. */
const resized = (segments: readonly Segment[], size: ConductorSize): readonly Segment[] =>
  segments.map(segment => ({
    ...segment,
    material: given('copper' as const),
    lines: segment.lines.map(each => ({ ...each, size })),
    ...(segment.neutral ? { neutral: { ...segment.neutral, size } } : {}),
    ...(segment.earth ? { earth: { ...segment.earth, size } } : {}),
    cable: {
      ...segment.cable,
      conductors: segment.cable.conductors.map(each => ({ ...each, size })),
    },
  }))

const sizesFor = (
  evidence: SupplyEvidence,
  segments: readonly Segment[],
): readonly ConductorSize[] => {
  const least = Math.min(...segments.flatMap(({ lines }) => lines.map(each => each.size.mm2)))
  const all = isAmerican(evidence.survey.region) ? GAUGES : AREAS
  return all.flatMap(text => sizeFrom(text) ?? []).filter(each => each.mm2 > least)
}

/** The thinnest wire with which the breaker that is needed holds, or else may hold. */
function thickerWire(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  breaker: number,
): FeedWay | undefined {
  let open: FeedWay | undefined
  for (const size of sizesFor(evidence, circuit.segments)) {
    const segments = resized(circuit.segments, size)
    const way = tried(gates, changed(evidence, circuit, { breaker: given(breaker), segments }), {
      kind: 'change-wire',
      breaker,
      size: size.text,
    })
    if (way.outcome === 'holds') return way
    if (way.outcome === 'open') open ??= way
  }
  return open
}

/**
 * What can be done so that supply and tub fit, the cheapest kind first: keep it, set the box lower,
 * change the breaker, change the wire. Each is judged by the same rules as what is there; what is
 * dearer is looked at only where everything cheaper fails.
 */
export function waysWith(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
): readonly FeedWay[] {
  const { book } = evidence
  if (!book) return []
  const lasting = book.lasting.value
  const draws = greatest(circuit.draws)
  const breaker = greatest(circuit.breaker)
  const limit = Math.min(...circuit.breaker.values) / lasting
  const needed = nextRating(book, lasting * draws)
  const kinds: readonly (() => FeedWay | undefined)[] = [
    () => tried(gates, changed(evidence, circuit, {}), { kind: 'keep', breaker }),
    () =>
      limit < draws
        ? tried(gates, changed(evidence, circuit, { draws: given(limit) }), {
            kind: 'set-lower',
            breaker,
            limit,
          })
        : undefined,
    () =>
      needed === undefined || needed === breaker
        ? undefined
        : tried(gates, changed(evidence, circuit, { breaker: given(needed) }), {
            kind: 'change-breaker',
            breaker: needed,
          }),
    () => (needed === undefined ? undefined : thickerWire(gates, evidence, circuit, needed)),
  ]
  const ways: FeedWay[] = []
  for (const kind of kinds) {
    const way = kind()
    if (way) ways.push(way)
    if (way && way.outcome !== 'breaks') break
  }
  return ways
}
