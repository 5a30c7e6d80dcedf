import { atMost } from '../../../../base/compare.ts'
import { boundsOf } from '../../../../base/known.ts'
import type { Possible } from '../../../../base/possible.ts'
import { numberOf } from '../../../../base/possible.ts'
import type { House, HouseDemand } from '../../../../domain/codebook/house-demand.ts'
import { demandBy } from '../../../../domain/codebook/house-demand.ts'
import type { Service } from '../../../../domain/supply/yard.ts'
import { isOnSupply, loadSpan } from '../../../../domain/wiring/supply-loads.ts'
import type { CodeFinding } from '../../supply/artifact.ts'
import { askingFor } from '../../supply/either.ts'
import type { CircuitEvidence, SupplyEvidence } from '../../supply/evidence.ts'
import { yesOrNo } from '../../supply/place.ts'
import type { PointFinding, SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered } from '../../supply/rule.ts'

const LOADS = 'service.loads'

/** Up to here a house hardly has room for a tub: the calculation is asked for [A]. Common practice, no source. */
const SMALL_MAIN = 100

/** What an unknown may be: all that a survey may say of it. Common practice, no source. */
const IMAGINABLE = {
  /** [A] */
  main: { from: 1, to: 1000 },
  /** [m²] */
  area: { from: 1, to: 5000 },
  /** Of one load [VA]. */
  load: { from: 0, to: 50_000 },
  /** Of all that is fixed in a house [VA]. */
  house: 60_000,
} as const

/** Between the lines of the service [V]: two legs of a wye have less than two of one transformer. */
const serviceVolts = ({ survey: { supply } }: SupplyEvidence): number =>
  supply.system === 'two-legs-of-wye' ? 208 : 240

type Loads = House['loads']

/** The house with least and with most in it: what it counts for only grows with each load. */
function loadsOf({ loads }: Service): Possible<Loads> {
  if (!loads)
    return {
      values: [[], [{ kind: 'other', va: IMAGINABLE.house }]],
      kind: 'unknown',
      at: LOADS,
    }
  const bounds = loads.map(({ kind, power }) => {
    const { from, to } = boundsOf(power) ?? IMAGINABLE.load
    return { kind, from, to }
  })
  const least = bounds.map(({ kind, from }) => ({ kind, va: from }))
  if (bounds.every(({ from, to }) => from === to))
    return { values: [least], kind: 'known', at: LOADS }
  const isUnknown = loads.some(({ power }) => power.kind === 'unknown')
  const most = bounds.map(({ kind, to }) => ({ kind, va: to }))
  return { values: [least, most], kind: isUnknown ? 'unknown' : 'range', at: LOADS }
}

const openLoads = ({ loads }: Service): readonly string[] =>
  loads
    ? loads.flatMap(({ id, power }) => (power.kind === 'known' ? [] : [`${LOADS}.${id}.power`]))
    : [LOADS]

/** The tub by its plate, never by its breaker; listed tubs are this one and any other. */
function withTub(loads: Loads, plate: number): { readonly loads: Loads; readonly tubs: number } {
  const others = loads.filter(each => each.kind !== 'tub')
  const listed = loads.reduce((sum, { kind, va }) => sum + (kind === 'tub' ? va : 0), 0)
  const tubs = Math.max(plate, listed)
  return { loads: [...others, { kind: 'tub', va: tubs }], tubs }
}

/** By its plate or by its loads, each at its own volts, whichever says more [VA]. */
function tubOf({ survey }: SupplyEvidence, circuit: CircuitEvidence, draws: number): number {
  const { demand, volts } = circuit
  const plate = survey.plate?.draws && boundsOf(survey.plate.draws)
  const own = survey.loads.filter(isOnSupply).flatMap(load => {
    const at = load.straps?.positions[load.straps.found]?.volts.si ?? load.volts?.si ?? volts
    const span = loadSpan(load)
    return span ? [{ volts: Math.min(at, volts), amps: span.to }] : []
  })
  const amps = own.reduce((sum, each) => sum + each.amps, 0)
  const va = own.reduce((sum, each) => sum + each.volts * each.amps, 0)
  // More than all of them together is the plate's, or of what nobody listed.
  if (!demand.isListed || amps <= 0 || !atMost(draws, amps)) return draws * volts
  return Math.max((va * draws) / amps, Math.min(plate?.to ?? 0, draws) * volts)
}

interface Found extends HouseDemand {
  readonly tubs: number
  readonly main: number
  readonly may: number
}

function judgePoint(
  { strict, lenient, by, tubs, main, may }: Found,
  isComplete: boolean,
): PointFinding {
  const params = { is: strict, may, main, tubs }
  const found = { message: 'demand', clause: by, params, margin: may - strict }
  if (!atMost(lenient, may)) return { ...found, verdict: 'breaks' }
  if (!atMost(strict, may)) {
    const readings = { strict, lenient, decides: 'authority' } as const
    return { ...found, params: { ...params, unit: 'VA' }, verdict: 'experts-differ', readings }
  }
  // What is not listed can only add to it.
  return isComplete
    ? { ...found, verdict: 'holds' }
    : { ...found, verdict: 'not-covered', message: 'demand-needed' }
}

const about = () =>
  ({ rule: serviceDemand.id, subjects: ['service'], severity: 'warning' }) as const

function calculated(evidence: SupplyEvidence, service: Service): CodeFinding {
  const { book, circuits } = evidence
  const counts = book && demandBy(book)
  const [circuit] = circuits
  if (!counts || !circuit) return conclude(about(), {}, () => notCovered('demand'))
  const asked = {
    main: numberOf(service.main, IMAGINABLE.main, 'service.main'),
    area: numberOf(service.area, IMAGINABLE.area, 'service.area'),
    complete: yesOrNo(service.complete, 'service.complete'),
    loads: loadsOf(service),
    draws: circuit.draws,
  }
  const found = conclude(about(), asked, ({ main, area, complete, loads, draws }) => {
    const house = withTub(loads, tubOf(evidence, circuit, draws))
    const demand = counts({ area, loads: house.loads })
    const may = main * serviceVolts(evidence)
    return judgePoint({ ...demand, tubs: house.tubs, main, may }, complete === 'yes')
  })
  return askingFor(found, LOADS, openLoads(service))
}

const isListed = ({ main, area, complete, loads }: Service): boolean =>
  main !== undefined &&
  area !== undefined &&
  loads !== undefined &&
  complete?.kind === 'known' &&
  complete.value === 'yes'

const isLarge = ({ main }: Service): boolean => {
  const bounds = main && boundsOf(main)
  return bounds !== undefined && !atMost(bounds.from, SMALL_MAIN)
}

/** Without the whole house no sum is shown, unless what is listed is too much already. */
function judge(evidence: SupplyEvidence, service: Service): readonly CodeFinding[] {
  const found = calculated(evidence, service)
  const isCounted = evidence.book && demandBy(evidence.book)
  if (!isCounted || isListed(service) || found.verdict === 'breaks') return [found]
  if (isLarge(service)) return []
  const needed = conclude({ ...about(), topic: 'electrician' }, {}, () => ({
    ...notCovered('demand'),
    message: 'demand-needed',
    params: { tubs: found.params['tubs'] ?? 0 },
  }))
  return service.area || service.loads ? [needed, found] : [needed]
}

/** The service of the house carries all that is fixed in it, the tub by its plate. */
export const serviceDemand: SupplyRule = {
  id: 'SUPPLY-60',
  title: 'Room on the service of the house',
  about: 'service',
  source: 'NEC 220.83; CE Code 8-200',
  check: evidence => {
    const { service } = evidence.survey
    return service ? judge(evidence, service) : []
  },
}
