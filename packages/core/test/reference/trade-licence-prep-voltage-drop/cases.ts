import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface CircularMilCase extends Printed {
  readonly circularMils: number
  readonly dropVolts: number
  readonly dropPercent: number
}

/** Of both: 12.9 Ω·cmil/ft, 100 ft one way, 20 A, 120 V. */
export const K = 12.9
export const FEET = 100
export const AMPS = 20
export const VOLTS = 120

export const CASES: readonly CircularMilCase[] = [
  {
    id: 'vd-12awg-120V-20A',
    found: 'page',
    why: '12 AWG is too thin for this run',
    circularMils: 6530,
    dropVolts: 7.9,
    dropPercent: 6.6,
  },
  {
    id: 'vd-8awg-120V-20A',
    found: 'page',
    why: '8 AWG brings it below 3 %',
    circularMils: 16510,
    dropVolts: 3.1,
    dropPercent: 2.6,
  },
]
