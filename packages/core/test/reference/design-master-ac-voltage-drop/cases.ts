import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface ReactiveDropCase extends Printed {
  readonly volts: number
  readonly amps: number
  readonly powerFactor: number
  readonly feet: number
  readonly ohmsPerKilofoot: number
  readonly reactancePerKilofoot: number
  readonly dropVolts: number
}

export const CASES: readonly ReactiveDropCase[] = [
  {
    id: 'vd-ac-formula-designmaster',
    found: 'derived',
    why: 'a lagging load on a run with reactance',
    volts: 240,
    amps: 40,
    powerFactor: 0.85,
    feet: 75,
    ohmsPerKilofoot: 0.49,
    reactancePerKilofoot: 0.051,
    dropVolts: 2.66,
  },
  {
    id: 'dip-cable-2hp',
    found: 'derived',
    why: 'a motor that starts at a low power factor',
    volts: 230,
    amps: 78.2,
    powerFactor: 0.5,
    feet: 50,
    ohmsPerKilofoot: 1.2,
    reactancePerKilofoot: 0.05,
    dropVolts: 5.03,
  },
]
