import type { HeatColumn } from '../nec/table-310-16.ts'
import type { Printed } from '../printed.ts'

/** Columns that terminals without a marking allow. */
export const CE_RULE_4_006: Printed & {
  readonly unit: string
  readonly upTo: number
  readonly smaller: HeatColumn
  readonly larger: HeatColumn
  /** Length of conductor from the terminal that the rule is for [m]. */
  readonly metres: number
} = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'rule 4-006',
  read: 'page',
  unit: 'A',
  upTo: 100,
  smaller: '60 °C',
  larger: '75 °C',
  metres: 1.2,
}

/**
 * The column of tables 2 and 4 that the terminals of equipment allow.
 *
 * Equipment marked for 1 AWG and smaller counts as up to 100 A.
 *
 * @param equipment - its rating [A]
 * @param marked - what the terminals are marked for, where they are
 * @source [CEC-4-006] rule 4-006
 */
export const ceTerminalColumn = ({
  equipment,
  marked,
}: {
  readonly equipment: number
  readonly marked?: HeatColumn | undefined
}): HeatColumn =>
  marked ?? (equipment <= CE_RULE_4_006.upTo ? CE_RULE_4_006.smaller : CE_RULE_4_006.larger)
