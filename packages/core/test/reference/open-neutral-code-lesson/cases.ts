import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface OpenNeutralCase extends Printed {
  /** Each rated at 120 V, on a leg of its own. */
  readonly ratedWatts: readonly [number, number]
  readonly ohms: readonly [number, number]
  readonly amps: number
  readonly volts: readonly [number, number]
  readonly actualWatts: readonly [number, number]
}

export const CASES: readonly OpenNeutralCase[] = [
  {
    id: 'open-neutral-100-200',
    found: 'derived',
    why: 'the ohms are printed; the lighter load gets the higher voltage',
    ratedWatts: [100, 200],
    ohms: [144, 72],
    amps: 1.1111,
    volts: [160, 80],
    actualWatts: [177.8, 88.9],
  },
  {
    id: 'open-neutral-1000-500',
    found: 'derived',
    why: 'the other way round',
    ratedWatts: [1000, 500],
    ohms: [14.4, 28.8],
    amps: 5.5556,
    volts: [80, 160],
    actualWatts: [444.4, 888.9],
  },
  {
    id: 'open-neutral-1500-60',
    found: 'derived',
    why: 'a small load beside a large one is given nearly all of 240 V',
    ratedWatts: [1500, 60],
    ohms: [9.6, 240],
    amps: 0.9615,
    volts: [9.23, 230.77],
    actualWatts: [8.9, 221.9],
  },
]
