import type { Printed } from '../../engines/circuit/support/printed.ts'

export interface DropCase extends Printed {
  /** Of line and neutral together [mV/(A·m)]. */
  readonly millivolts: number
  readonly metres: number
  readonly amps: number
  readonly dropVolts: number
}

const worked = (
  id: string,
  [millivolts, metres, amps]: readonly [number, number, number],
  dropVolts: number,
): DropCase => ({
  id,
  found: 'page',
  why: `${millivolts} mV/A/m over ${metres} m at ${amps} A`,
  millivolts,
  metres,
  amps,
  dropVolts,
})

export const CASES: readonly DropCase[] = [
  worked('vd-uk-aae-1', [11, 20, 30], 6.6),
  worked('vd-uk-aae-2', [7.3, 40, 45], 13.14),
  worked('vd-uk-aae-3', [29, 10, 16], 4.64),
  worked('vd-uk-aae-4', [4.4, 40, 45], 7.92),
]
