import { once } from '../../../base/once.ts'
import type { Possible } from '../../../base/possible.ts'
import { given } from '../../../base/possible.ts'
import type { Codebook } from '../../../domain/codebook/book.ts'
import type { ConductorSize } from '../../../domain/conductor.ts'
import { AREAS, GAUGES, sizeFrom } from '../../../domain/conductor.ts'
import { isOnSupply, loadSpan } from '../../../domain/wiring/supply-loads.ts'
import type { CodeFinding, FeedWay } from './artifact.ts'
import type { CircuitEvidence, Segment, SupplyEvidence } from './evidence.ts'
import { isAmerican } from './evidence.ts'
import type { SupplyRule } from './rule.ts'
import { supplyNetwork } from './solved.ts'

/** Rules that a changed feed has to pass. */
export type Gates = readonly SupplyRule[]

/** Good practice is no gate: it is said besides. */
const ADVICE = 'volt-drop-advice'

const stands = ({ verdict }: CodeFinding): boolean =>
  verdict === 'breaks' || verdict === 'experts-differ'

const outcomeOf = (findings: readonly CodeFinding[]): FeedWay['outcome'] => {
  if (findings.some(stands)) return 'breaks'
  return findings.some(each => each.verdict !== 'holds') ? 'open' : 'holds'
}

const rulesOf = (findings: readonly CodeFinding[]): readonly string[] => [
  ...new Set(findings.filter(stands).map(each => each.rule)),
]

/** The same evidence with one circuit changed. */
const changed = (
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  change: Partial<CircuitEvidence>,
): SupplyEvidence => ({ ...evidence, circuits: [{ ...circuit, ...change }] })

type Way = Omit<FeedWay, 'outcome' | 'isDisputed' | 'against' | 'besides'>

function wayWith(found: readonly CodeFinding[], way: Way): FeedWay {
  const [advice, gates] = [
    found.filter(each => each.message === ADVICE),
    found.filter(each => each.message !== ADVICE),
  ]
  const isDisputed = gates.some(stands) && gates.every(each => each.verdict !== 'breaks')
  return {
    ...way,
    outcome: outcomeOf(gates),
    isDisputed,
    against: rulesOf(gates),
    besides: rulesOf(advice),
  }
}

const tried = (gates: Gates, evidence: SupplyEvidence, way: Way): FeedWay =>
  wayWith(
    gates.flatMap(rule => rule.check(evidence)),
    way,
  )

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

/** The same supply with its run of other wire, solved anew. */
function withRun(evidence: SupplyEvidence, segments: readonly Segment[]): SupplyEvidence {
  const { survey, devices } = evidence
  const run = new Map(segments.map(({ cable }) => [cable.id, cable]))
  const cables = survey.supply.cables.map(each => run.get(each.id) ?? each)
  const wired = { ...survey, supply: { ...survey.supply, cables } }
  return { ...evidence, network: once(() => supplyNetwork(wired, devices, [{ segments }])) }
}

const sizesFor = (
  evidence: SupplyEvidence,
  segments: readonly Segment[],
): readonly ConductorSize[] => {
  const least = Math.min(...segments.flatMap(({ lines }) => lines.map(each => each.size.mm2)))
  const all = isAmerican(evidence.survey.region) ? GAUGES : AREAS
  return all.flatMap(text => sizeFrom(text) ?? []).filter(each => each.mm2 > least)
}

/** Rules that another breaker, another setting or another wire can mend; what else breaks is mended first. */
const FEED_RULES = [
  'SUPPLY-1',
  'SUPPLY-2',
  'SUPPLY-3',
  'SUPPLY-4',
  'SUPPLY-5',
  'SUPPLY-9',
  'SUPPLY-10',
]

/** Breakers that let everything run, the smallest first. */
const breakersFor = ({ ratings }: Codebook, least: number): readonly number[] =>
  ratings.value.filter(each => each >= least * (1 - 1e-9) && each <= MOST_BREAKER)

const MOST_BREAKER = 100 // [A] no portable tub is behind more; common practice, no source

const isBetter = (way: FeedWay, than: FeedWay): boolean =>
  way.outcome === 'open' || way.against.length < than.against.length

/** The first of some ways that holds, else the first that is open, else what fewest rules stand against. */
function firstGood(ways: Iterable<FeedWay>): FeedWay | undefined {
  let second: FeedWay | undefined
  for (const way of ways) {
    if (way.outcome === 'holds') return way
    if (!second || (second.outcome === 'breaks' && isBetter(way, second))) second = way
  }
  return second
}

function* otherBreakers(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  breakers: readonly number[],
): Generator<FeedWay> {
  for (const breaker of breakers)
    yield tried(gates, changed(evidence, circuit, { breaker: given(breaker) }), {
      kind: 'change-breaker',
      breaker,
    })
}

/** Thicker wires, the thinnest first, each behind every breaker that would do. */
function* thickerWires(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  breakers: readonly number[],
): Generator<FeedWay> {
  for (const size of sizesFor(evidence, circuit.segments)) {
    const segments = resized(circuit.segments, size)
    const wired = withRun(evidence, segments)
    for (const breaker of breakers)
      yield tried(gates, changed(wired, circuit, { breaker: given(breaker), segments }), {
        kind: 'change-wire',
        breaker,
        size: size.text,
      })
  }
}

/** The most that one load takes [A]: what a box is set to draw lets it run, or it is no way. */
const largestLoad = ({ loads }: SupplyEvidence['survey']): number =>
  Math.max(0, ...loads.filter(isOnSupply).flatMap(each => loadSpan(each)?.to ?? []))

/** A setting is a way where the heater, which takes the most, is known to run with it. */
function setLower(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  { draws, breaker, limit }: Readonly<Record<'draws' | 'breaker' | 'limit', number>>,
): FeedWay | undefined {
  if (limit >= draws || limit < largestLoad(evidence.survey)) return undefined
  const way = tried(gates, changed(evidence, circuit, { draws: given(limit) }), {
    kind: 'set-lower',
    breaker,
    limit,
  })
  const isOpen = way.outcome === 'holds' && !circuit.demand.isKnown
  return isOpen ? { ...way, outcome: 'open' } : way
}

/**
 * What can be done so that supply and tub fit, the cheapest kind first: keep it, set the box lower,
 * change the breaker, change the wire. Each is judged by the same rules as what is there; what is
 * dearer is looked at only where everything cheaper fails, and nothing of it where something breaks
 * that none of them mends.
 *
 * @param asFound - what the gates say of the circuit as it is, where that is known already
 * @param besides - rules that break of it and are no gates: no way mends them
 */
export function waysWith(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  asFound: readonly CodeFinding[] | undefined,
  besides: readonly string[],
): readonly FeedWay[] {
  return waysOf(gates, evidence, circuit, asFound).map(each => ({
    ...each,
    besides: [...each.besides, ...besides],
  }))
}

function waysOf(
  gates: Gates,
  evidence: SupplyEvidence,
  circuit: CircuitEvidence,
  asFound: readonly CodeFinding[] | undefined,
): readonly FeedWay[] {
  const { book } = evidence
  if (!book) return []
  const draws = greatest(circuit.draws)
  const breaker = greatest(circuit.breaker)
  const kept: Way = { kind: 'keep', breaker }
  const keep = asFound ? wayWith(asFound, kept) : tried(gates, changed(evidence, circuit, {}), kept)
  const isFeed = keep.against.every(each => FEED_RULES.includes(each))
  // Nobody knows what it takes: then nobody knows what would be enough.
  if (keep.outcome !== 'breaks' || !isFeed || circuit.draws.kind === 'unknown') return [keep]
  const limit = Math.min(...circuit.breaker.values) / book.lasting.value
  const breakers = breakersFor(book, book.lasting.value * draws)
  const kinds: readonly (() => FeedWay | undefined)[] = [
    () => setLower(gates, evidence, circuit, { draws, breaker, limit }),
    () =>
      firstGood(
        otherBreakers(
          gates,
          evidence,
          circuit,
          breakers.filter(each => each !== breaker),
        ),
      ),
    () => firstGood(thickerWires(gates, evidence, circuit, breakers)),
  ]
  const ways: FeedWay[] = [keep]
  for (const kind of kinds) {
    const way = kind()
    if (way) ways.push(way)
    if (way && way.outcome !== 'breaks') break
  }
  return ways
}
