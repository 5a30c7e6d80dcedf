import { invariant } from '../../../base/invariant.ts'
import type { Outcome } from '../../../base/outcome.ts'
import { ok } from '../../../base/outcome.ts'
import type { Catalogue } from '../../../domain/job.ts'
import type { Load, PoweredLoad } from '../../../domain/load/load.ts'
import { isMotor } from '../../../domain/load/load.ts'
import type { Situation } from '../../../domain/supply/readings.ts'
import { isOnSupply, lumped } from '../../../domain/wiring/supply-loads.ts'
import type { Survey } from '../../survey/artifact.ts'
import type { ConditionFailure, FittingFault, SituatedLoad, SupplyCondition } from './artifact.ts'
import { meterReadings } from './meter-readings.ts'
import { nameCondition } from './name-condition.ts'

const isHeater = ({ kind }: Load): boolean => kind === 'heater'

/** Idle, only what always runs is on: the circulation pump, the ozonator, the transformer of the box. */
function onIn(load: PoweredLoad): readonly Situation[] {
  if (isHeater(load)) return ['heating']
  return load.kind === 'circulation-pump' || load.kind === 'ozonator' ? ['idle', 'heating'] : []
}

/** A control transformer that nobody surveyed hangs on one leg of any box: 10 VA or so. */
const TRANSFORMER: SituatedLoad = {
  id: 'control-transformer',
  between: ['leg1', 'neutral'],
  volts: 120,
  amps: 0.1, // common practice, no source
  powerFactor: 0.6,
  on: ['idle', 'heating'],
}

/** In other boxes it hangs between the legs: through it a lost leg shows the volts of the other. */
const BRIDGING: SituatedLoad = {
  ...TRANSFORMER,
  between: ['leg1', 'leg2'],
  volts: 240,
  amps: 0.05, // common practice, no source
}

/**
 * Names the condition of a supply from the readings of its survey; undefined where there are none.
 *
 * Motors that start and stop are left out: six readings are taken with them off.
 */
export function surveyedCondition(
  survey: Survey,
  catalogue: Catalogue,
): Outcome<SupplyCondition, ConditionFailure> | undefined {
  if (!survey.readings || survey.readings.length === 0) return undefined
  const devices = new Map(
    survey.supply.devices.flatMap(({ id, device }) => {
      const found = catalogue.get(device)
      return found ? [[id, found] as const] : []
    }),
  )
  if (devices.size < survey.supply.devices.length) return undefined
  const arriving = survey.supply.cables
    .filter(each => each.to === 'box')
    .flatMap(each => each.conductors.map(one => one.function))
  const loads = survey.loads
    .filter(isOnSupply)
    .filter(load => !isMotor(load) || load.kind === 'circulation-pump')
    .flatMap((load): readonly SituatedLoad[] => {
      const on = onIn(load)
      return on.length > 0 ? lumped(load, arriving).map(each => ({ ...each, on })) : []
    })
  const hasNeutral = arriving.includes('leg1') && arriving.includes('neutral')
  const isIdleLoaded = loads.some(each => each.on.includes('idle'))
  const readings = meterReadings(survey.readings, survey.loads.find(isHeater)?.id)
  if (readings.length === 0) return undefined
  const own = [...loads, ...(hasNeutral && !isIdleLoaded ? [TRANSFORMER] : [])]
  const hasLegs = arriving.includes('leg1') && arriving.includes('leg2')
  const nameWith = (all: readonly SituatedLoad[]): Outcome<SupplyCondition, ConditionFailure> => {
    const either = hasLegs ? onEitherLeg(all) : [all]
    const found = either.map(each => nameCondition({ tub: survey, devices, loads: each, readings }))
    const failed = found.find(each => !each.ok)
    return failed ?? ok(joined(found.flatMap(each => (each.ok ? [each.value] : []))))
  }
  const plain = nameWith(own)
  if (!plain.ok) return plain
  if (!hasLegs) return ok(withoutLegs(plain.value))
  const isNothing = plain.value.fits.length === 0 && !plain.value.offBand
  const bridged = isNothing ? nameWith([...own, BRIDGING]) : plain
  return bridged.ok && bridged.value.fits.length > 0 ? bridged : plain
}

const LEGS_MOST = 3 // loads to neutral whose legs are tried one by one; more of them go together

/** Nobody surveyed on which leg a load to neutral hangs: every way of it. */
function onEitherLeg(loads: readonly SituatedLoad[]): readonly (readonly SituatedLoad[])[] {
  const free = loads.filter(each => each.between[1] === 'neutral').map(each => each.id)
  const groups = free.length <= LEGS_MOST ? free.map(each => [each]) : [free]
  const onLeg2 = (group: readonly string[], set: readonly SituatedLoad[]) =>
    set.map(each =>
      group.includes(each.id) ? { ...each, between: ['leg2', 'neutral'] as const } : each,
    )
  let all: readonly (readonly SituatedLoad[])[] = [loads]
  for (const group of groups) all = all.flatMap(set => [set, onLeg2(group, set)])
  return all
}

/** What fits in any of some ways fits; what all that have a name call it is its name. */
function joined(found: readonly SupplyCondition[]): SupplyCondition {
  const fitting = found.filter(each => each.fits.length > 0)
  const [first, ...others] = fitting.length > 0 ? fitting : found
  invariant(first !== undefined, 'a supply is tried in one way at least')
  return others.reduce((a, b) => {
    const isSame = a.named !== undefined && a.named === b.named
    const { named: _, ...rest } = a
    const fits = [...a.fits, ...b.fits.filter(each => !a.fits.some(one => isAlike(one, each)))]
    return { ...(isSame ? a : rest), fits, dangers: [...a.dangers, ...b.dangers] }
  }, first)
}

const isAlike = (a: FittingFault, b: FittingFault): boolean =>
  a.fault.kind === b.fault.kind &&
  JSON.stringify([a.places, whatOf(a)]) === JSON.stringify([b.places, whatOf(b)])

const whatOf = ({ fault }: FittingFault): unknown =>
  'conductor' in fault ? fault.conductor : 'line' in fault ? fault.line : ''

/** With one line there is no other leg to be fed back by: it is off, tripped or open. */
const withoutLegs = (found: SupplyCondition): SupplyCondition =>
  found.named === 'leg-open' ? { ...found, named: 'off' } : found
