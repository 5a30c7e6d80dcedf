import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface PowerFactorCase extends Printed {
  readonly legs: readonly {
    readonly amps: number
    readonly degrees: number
    /** Lagging. */
    readonly powerFactor: number
  }[]
  readonly neutralAmps: number
  /** What adding or subtracting magnitudes alone would give. */
  readonly wrongAmps: number
}

const split = (
  id: string,
  why: string,
  [amps1, powerFactor1]: readonly [number, number],
  [amps2, powerFactor2]: readonly [number, number],
  neutralAmps: number,
  wrongAmps: number,
): PowerFactorCase => ({
  id,
  found: 'derived',
  why,
  legs: [
    { amps: amps1, degrees: 0, powerFactor: powerFactor1 },
    { amps: amps2, degrees: 180, powerFactor: powerFactor2 },
  ],
  neutralAmps,
  wrongAmps,
})

export const CASES: readonly PowerFactorCase[] = [
  {
    id: 'neutral-wye-pf-10-9-8',
    found: 'page',
    why: 'magnitudes alone give 1.73 A',
    legs: [
      { amps: 10, degrees: 0, powerFactor: 1 },
      { amps: 9, degrees: -120, powerFactor: 0.9 },
      { amps: 8, degrees: 120, powerFactor: 0.8 },
    ],
    neutralAmps: 4.55,
    wrongAmps: 1.732,
  },
  split('neutral-split-pf-15-10', 'a motor against a heater', [15, 1], [10, 0.8], 9.22, 5),
  split('neutral-split-pf-12-12', 'equal amps, far from 0 A', [12, 1], [12, 0.7], 9.295, 0),
  split('neutral-split-pf-pump-heater', '½ hp against 1 kW', [9.8, 0.65], [8.33, 1], 7.701, 1.47),
  split('neutral-split-pf-same', 'equal factors: the difference holds', [14, 0.8], [6, 0.8], 8, 8),
]
