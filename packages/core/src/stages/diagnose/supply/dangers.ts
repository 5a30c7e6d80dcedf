import { boundsOf } from '../../../base/known.ts'
import type { Severity } from '../../../base/verdict.ts'
import { LINES } from '../../../domain/board/board.ts'
import { ownFunction } from '../../../domain/supply/circuits.ts'
import { LEG_VOLTS } from '../../../domain/wiring/figures.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type {
  FittingFault,
  MeterReading,
  SupplyCircumstances,
  SupplyDanger,
  VoltsOf,
} from './artifact.ts'
import { NEUTRAL_VOLTS } from './tolerances.ts'

type Danger = Pick<SupplyDanger, 'reason' | 'severity'>

const danger = (reason: SupplyDanger['reason'], severity: Severity = 'danger'): Danger => ({
  reason,
  severity,
})

/** What a joint may turn into heat before it sets fire to what holds it [W]. Trade judgement, no source. */
const JOINT_WATTS = 50

/** What is dangerous about a fault while the supply is on. Trade judgement, no source. */
function dangerOf(
  { amountsTo, ohms }: FittingFault,
  { isTurnable, amps }: { readonly isTurnable: boolean; readonly amps: number },
): Danger | undefined {
  switch (amountsTo) {
    case 'neutral-open':
    case 'neutral-poor':
      return danger('neutral')
    case 'earth-open':
      return danger('earth')
    case 'neutral-earth-swapped':
      return danger('earth-carries-current')
    case 'high-leg':
      return danger('high-leg')
    case 'joint':
      return danger('joint', amps * amps * (ohms?.from ?? 0) > JOINT_WATTS ? 'danger' : 'warning')
    case 'line-neutral-swapped':
      return danger('polarity', isTurnable ? 'notice' : 'warning')
    default:
      return undefined
  }
}

const isLineTo = ({ between }: VoltsOf, to: 'neutral' | 'earth'): boolean => {
  const own = between.map(ownFunction)
  return own.includes(to) && own.some(each => LINES.some(line => line === each))
}

const isNeutralToEarth = ({ between }: VoltsOf): boolean => {
  const own = between.map(ownFunction)
  return own.includes('neutral') && own.includes('earth')
}

/** What a reading says by itself, whatever fits: so many volts were there. */
function dangersOfReading(
  reading: MeterReading,
  { tub }: SupplyCircumstances,
): readonly SupplyDanger[] {
  const volts = reading.kind === 'volts' ? boundsOf(reading.value)?.to : undefined
  if (reading.kind !== 'volts' || volts === undefined) return []
  const most = LIMITS.most * LEG_VOLTS[tub.supply.system]
  const shown = { certainty: 'shown', reading } as const
  const isLoaded = reading.situation !== 'loads-off'
  return [
    ...(isLineTo(reading, 'neutral') && volts > most
      ? [{ ...danger('over-volts'), ...shown }]
      : []),
    ...(isNeutralToEarth(reading) && isLoaded && volts > NEUTRAL_VOLTS
      ? [{ ...danger('neutral-to-earth', 'caution'), ...shown }]
      : []),
  ]
}

/** What is dangerous about readings, and about the faults that fit them. */
export function dangersOf(
  circumstances: SupplyCircumstances,
  readings: readonly MeterReading[],
  fits: readonly FittingFault[],
): readonly SupplyDanger[] {
  const { turnable } = circumstances.tub.supply
  const amps = Math.max(0, ...circumstances.loads.map(each => each.amps))
  const found = fits.map(each => dangerOf(each, { isTurnable: turnable, amps }))
  // Of two that share a reason the worse one speaks.
  const worstLast = found.toSorted(
    (a, b) => Number(a?.severity === 'danger') - Number(b?.severity === 'danger'),
  )
  const reasons = new Map(worstLast.flatMap(each => (each ? [[each.reason, each] as const] : [])))
  const isShown = (reason: SupplyDanger['reason']): boolean =>
    found.every(each => each?.reason === reason)
  return [
    ...readings.flatMap(each => dangersOfReading(each, circumstances)),
    ...[...reasons.values()].map(
      (each): SupplyDanger => ({
        ...each,
        certainty: isShown(each.reason) ? 'shown' : 'possible',
      }),
    ),
  ]
}
