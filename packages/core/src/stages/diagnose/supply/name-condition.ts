import type { Outcome } from '../../../base/outcome.ts'
import { fail, ok } from '../../../base/outcome.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import { LEG_VOLTS } from '../../../domain/wiring/figures.ts'
import type { SupplyFault, SupplyFaultKind } from '../../../domain/wiring/supply-faults.ts'
import { isAsDescribed, isPlaced, isPoor } from '../../../domain/wiring/supply-faults.ts'
import type {
  ConditionFailure,
  ConditionInput,
  ExcludedFault,
  FittingFault,
  Interval,
  MeterReading,
  SupplyCondition,
} from './artifact.ts'
import { dangersOf } from './dangers.ts'
import type { Fit, Miss, Needed } from './fit.ts'
import { fitCandidate, neededBy } from './fit.ts'
import { canTellApart, nextReading } from './next-reading.ts'
import type { Predictor } from './predict.ts'
import { predictorOf } from './predict.ts'
import { AS_OPEN_OHMS, NEGLIGIBLE_SHARE, POOR_OHMS } from './tolerances.ts'

/** Nothing hangs on earth, so volts may never show whether it is whole: told beside, never ruled out. */
const ON_EARTH: readonly SupplyFaultKind[] = ['earth-open', 'neutral-earth-swapped']

/** Says why a reading cannot be one of this supply. */
function checkReadings(
  { alone, circumstances }: Predictor,
  readings: readonly MeterReading[],
): ConditionFailure | undefined {
  for (const reading of readings) {
    if (reading.kind === 'volts') {
      const conductor = reading.between.find(each => !alone.ends.has(each))
      if (conductor) return { reason: 'not-arriving', conductor }
    } else if (!circumstances.loads.some(each => each.id === reading.load))
      return { reason: 'no-load', load: reading.load }
  }
  return undefined
}

/** The open fault of the same conductor as a poor one. */
const isOpenOf = (open: SupplyFault, poor: SupplyFault): boolean =>
  isPlaced(open) && isPlaced(poor) && !isPoor(open) && open.conductor === poor.conductor

/** Whether a poor joint would take next to nothing of the volts, whatever of the loads is on. */
function isNothing(
  { ampsIn, circumstances }: Predictor,
  conductor: FeedFunction,
  ohms: Interval,
): boolean {
  const most = NEGLIGIBLE_SHARE * LEG_VOLTS[circumstances.tub.supply.system]
  return ohms.from <= POOR_OHMS.least && ohms.to * ampsIn(conductor) <= most
}

const asDescribed = ({ alone }: Predictor, fits: readonly Fit[]): Fit | undefined =>
  fits.find(each => isAsDescribed(alone.site, each.candidate.fault))

/** What a fit comes to, beside the others that fit. */
function amountsTo(predictor: Predictor, fit: Fit, fits: readonly Fit[]): SupplyFaultKind {
  const { candidate, ohms } = fit
  const { fault } = candidate
  if (!ohms || !isPlaced(fault)) return fault.kind
  const open = fits.find(each => isOpenOf(each.candidate.fault, fault))
  if (open && ohms.from >= AS_OPEN_OHMS) return open.candidate.fault.kind
  const described = asDescribed(predictor, fits)
  return described && isNothing(predictor, fault.conductor, ohms)
    ? described.candidate.fault.kind
    : fault.kind
}

const hullOf = (all: readonly Interval[]): Interval => ({
  from: Math.min(...all.map(each => each.from)),
  to: Math.max(...all.map(each => each.to)),
})

const fittingFault = (fit: Fit, amounts: SupplyFaultKind): FittingFault => ({
  fault: fit.candidate.fault,
  places: fit.candidate.places,
  ...(fit.ohms ? { ohms: fit.ohms } : {}),
  source: hullOf(fit.cells.map(each => each.source)),
  amountsTo: amounts,
})

const excludedFault = ({ candidate, by, nearest }: Miss): ExcludedFault => ({
  fault: candidate.fault,
  places: candidate.places,
  by,
  ...(nearest ? { nearest } : {}),
})

/** Faults of earth that no reading, taken or not, tells from a supply as described. */
function neverShown(predictor: Predictor, fits: readonly Fit[]): ReadonlySet<Fit> {
  const described = asDescribed(predictor, fits)
  const isHidden = (fit: Fit): boolean =>
    ON_EARTH.includes(fit.candidate.fault.kind) &&
    described !== undefined &&
    !canTellApart(predictor, described, fit)
  return new Set(fits.filter(isHidden))
}

const OFF_BAND: Interval = { from: 0.5, to: 1.5 } // share of nominal; beyond it another source

/** A sound supply whose source alone is out of its band. */
function offBand(predictor: Predictor, needed: readonly Needed[]): Interval | undefined {
  const sound = predictor.candidates.find(each => each.fault.kind === 'sound')
  const found = sound && fitCandidate(predictor, sound, needed, OFF_BAND)
  return found && 'fit' in found ? found.fit.cells[0]?.source : undefined
}

/**
 * Names the condition of a supply from what was read, with everything that may be wrong tried in turn.
 *
 * Each fault is solved as a network with the meter across what is read; a reading excludes it only
 * where no source in the band, no load and no copper within their tolerances would make it.
 *
 * @returns fails with 'not-arriving' or 'no-load' where a reading is of something that is not there
 */
export function conditionFrom(
  predictor: Predictor,
  readings: readonly MeterReading[],
): Outcome<SupplyCondition, ConditionFailure> {
  const wrong = checkReadings(predictor, readings)
  if (wrong) return fail(wrong)
  const needed = neededBy(readings, predictor)
  const tried = predictor.candidates.map(each => fitCandidate(predictor, each, needed))
  const fits = tried.flatMap(each => ('fit' in each ? [each.fit] : []))
  const excluded = tried.flatMap(each => ('miss' in each ? [excludedFault(each.miss)] : []))
  const beside = neverShown(predictor, fits)
  const rivals = fits.filter(each => !beside.has(each))
  const labels = rivals.map(each => amountsTo(predictor, each, fits))
  const told = rivals.map((each, index) => fittingFault(each, labels[index] ?? 'sound'))
  const kinds = new Set(labels)
  const [named] = kinds
  const isNamed = kinds.size === 1 && named !== undefined
  const next = isNamed ? undefined : nextReading(predictor, rivals, labels, needed)
  const off = fits.length === 0 ? offBand(predictor, needed) : undefined
  return ok({
    ...(isNamed ? { named } : {}),
    fits: told,
    neverShown: [...beside].map(each => fittingFault(each, each.candidate.fault.kind)),
    excluded,
    ...(next ? { next } : {}),
    ...(off ? { offBand: off } : {}),
    dangers: dangersOf(predictor.circumstances, readings, told),
  })
}

/** The same from the description of the supply. */
export function nameCondition(input: ConditionInput): Outcome<SupplyCondition, ConditionFailure> {
  const { readings, ...circumstances } = input
  const predictor = predictorOf(circumstances)
  return predictor.ok ? conditionFrom(predictor.value, readings) : predictor
}
