import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface RatioCase extends Printed {
  readonly ratedVolts: number
  readonly volts: number
  readonly percent: number
  /** Half a unit of the last digit given. */
  readonly tolerancePercent: number
}

export const CASES: readonly RatioCase[] = [
  {
    id: 'heater-208-ratio',
    found: 'page',
    why: 'a wye in place of split phase',
    ratedVolts: 240,
    volts: 208,
    percent: 75,
    tolerancePercent: 0.5,
  },
  {
    id: 'heater-230-ratio',
    found: 'page',
    why: 'a supply at 230 V',
    ratedVolts: 240,
    volts: 230,
    percent: 92,
    tolerancePercent: 0.5,
  },
  {
    id: 'heater-120-ratio',
    found: 'page',
    why: 'the return lands on neutral',
    ratedVolts: 240,
    volts: 120,
    percent: 25,
    tolerancePercent: 0.5,
  },
  {
    id: 'heater-277-ratio',
    found: 'page',
    why: 'an overvoltage',
    ratedVolts: 240,
    volts: 277,
    percent: 133,
    tolerancePercent: 0.5,
  },
  {
    id: 'heater-240-on-208-rated',
    found: 'derived',
    why: 'a 208 V element on 240 V',
    ratedVolts: 208,
    volts: 240,
    percent: 133.14,
    tolerancePercent: 0.01,
  },
]
