import type { Outcome } from '../../../base/outcome.ts'
import type { Catalogue } from '../../../domain/job.ts'
import type { Load, PoweredLoad } from '../../../domain/load/load.ts'
import { isMotor } from '../../../domain/load/load.ts'
import type { Situation } from '../../../domain/supply/readings.ts'
import { isOnSupply, lumped } from '../../../domain/wiring/supply-loads.ts'
import type { Survey } from '../../survey/artifact.ts'
import type { ConditionFailure, SituatedLoad, SupplyCondition } from './artifact.ts'
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
  return nameCondition({
    tub: survey,
    devices,
    loads: [...loads, ...(hasNeutral && !isIdleLoaded ? [TRANSFORMER] : [])],
    readings: meterReadings(survey.readings, survey.loads.find(isHeater)?.id),
  })
}
