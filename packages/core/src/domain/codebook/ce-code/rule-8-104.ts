import type { PrintedTable } from '../printed.ts'
import { cellOf } from '../printed.ts'

/** What a breaker is marked for, continuously, in percent of its rating; most have no mark: 80. */
export type ContinuousMark = '80 %' | '100 %'
export type ConductorsLaid = 'raceway or cable' | 'single in free air'

/** Share of the ampacity of the conductors that a continuous load may take. */
export const CE_RULE_8_104: PrintedTable<ConductorsLaid> = {
  standard: 'CE Code',
  edition: '2021 and 2024',
  clause: 'rule 8-104 5) and 6)',
  read: 'page',
  unit: '%',
  columns: ['raceway or cable', 'single in free air'],
  rows: { '80 %': [80, 70], '100 %': [100, 85] },
}

/** A load is continuous unless it stays below so many hours in so many, up to 225 A and above. */
export const CE_CONTINUOUS = {
  split: 225,
  upToSplit: { hours: 1, inHours: 2 },
  aboveSplit: { hours: 3, inHours: 6 },
} as const

/**
 * The most that a circuit carries continuously: by its breaker and by its conductors.
 *
 * The load of a dwelling by rule 8-200 is not taken as continuous.
 *
 * @param breaker - [A]
 * @param amps - what the conductors carry, after every correction [A]
 * @returns [A]
 * @source [CEC-8-104] rule 8-104 5) and 6)
 */
export function ceMostContinuous(circuit: {
  readonly breaker: number
  readonly amps: number
  readonly mark: ContinuousMark
  readonly laid: ConductorsLaid
}): number {
  const byBreaker = (circuit.breaker * Number.parseInt(circuit.mark, 10)) / 100
  const percent = cellOf(CE_RULE_8_104, circuit.mark, circuit.laid) ?? 0
  return Math.min(byBreaker, (circuit.amps * percent) / 100)
}
