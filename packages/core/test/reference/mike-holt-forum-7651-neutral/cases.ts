import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface WyeCase extends Printed {
  /** Amps of leg A, B and C; 0 for a leg that is not used. */
  readonly legAmps: readonly [number, number, number]
  readonly neutralAmps: number
}

export const CASES: readonly WyeCase[] = [
  {
    id: 'neutral-wye-5-5-5',
    found: 'page',
    why: 'balanced: nothing comes back',
    legAmps: [5, 5, 5],
    neutralAmps: 0,
  },
  {
    id: 'wye-2leg-LN-equal',
    found: 'derived',
    why: 'two equal legs of a wye load the neutral as much as a leg; split phase would give 0 A',
    legAmps: [20, 20, 0],
    neutralAmps: 20,
  },
  {
    id: 'wye-2leg-LN-12-8',
    found: 'derived',
    why: 'two unequal legs',
    legAmps: [12, 8, 0],
    neutralAmps: 10.583,
  },
  {
    id: 'wye-2leg-LN-16-0',
    found: 'derived',
    why: 'one leg alone',
    legAmps: [16, 0, 0],
    neutralAmps: 16,
  },
  {
    id: 'wye-2leg-LN-10-20',
    found: 'derived',
    why: 'one leg twice the other',
    legAmps: [10, 20, 0],
    neutralAmps: 17.321,
  },
]
