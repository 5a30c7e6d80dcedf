import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface DeltaLoadCase extends Printed {
  /** Amps of the loads A–B, B–C and C–A, all at unity power factor; 0 for none. */
  readonly lineAmps: readonly [number, number, number]
  /** Amps of a load from A to neutral; 0 for none. */
  readonly neutralLoadAmps: number
  readonly legAmps: readonly [number, number, number]
  readonly neutralAmps: number
}

export const LINE_VOLTS: Printed & { readonly volts: number } = {
  id: 'wye-LL-voltage',
  found: 'page',
  why: 'line to line of a 120 V wye',
  volts: 207.85,
}

export const KILOVOLTAMPERES: Printed & { readonly kva: number } = {
  id: 'wye-3-LL-14A',
  found: 'page',
  why: 'apparent power of three line-to-line loads of 14 A',
  kva: 8.74,
}

export const CASES: readonly DeltaLoadCase[] = [
  {
    id: 'wye-3-LL-14A',
    found: 'page',
    why: 'the arithmetic sum, 28 A, is wrong',
    lineAmps: [14, 14, 14],
    neutralLoadAmps: 0,
    legAmps: [24.25, 24.25, 24.25],
    neutralAmps: 0,
  },
  {
    id: 'wye-3-LL-12-14-16',
    found: 'derived',
    why: 'unequal loads: each leg takes the difference of two',
    lineAmps: [12, 14, 16],
    neutralLoadAmps: 0,
    legAmps: [24.33, 22.54, 26],
    neutralAmps: 0,
  },
  {
    id: 'wye-2leg-mixed',
    found: 'derived',
    why: 'a heater on two legs and a load to neutral: 30 A is right on split phase only',
    lineAmps: [20, 0, 0],
    neutralLoadAmps: 10,
    legAmps: [29.09, 20, 0],
    neutralAmps: 10,
  },
]
