import type { HeatColumn } from '../nec/table-310-16.ts'
import { HEAT_COLUMNS } from '../nec/table-310-16.ts'
import type { PrintedTable } from '../printed.ts'

/** Aluminium; none is printed at 14 AWG. Looked up by `ceAmps`. */
export const CE_TABLE_4: PrintedTable<HeatColumn> = {
  standard: 'CE Code',
  edition: '2024',
  clause: 'table 4',
  read: 'page',
  unit: 'A',
  columns: HEAT_COLUMNS,
  rows: {
    '12 AWG': [15, 20, 25],
    '10 AWG': [25, 30, 35],
    '8 AWG': [35, 40, 45],
    '6 AWG': [40, 50, 55],
    '4 AWG': [55, 65, 75],
    '3 AWG': [65, 75, 85],
    '2 AWG': [75, 90, 100],
    '1 AWG': [85, 100, 115],
    '1/0 AWG': [100, 120, 135],
    '2/0 AWG': [115, 135, 150],
    '3/0 AWG': [130, 155, 175],
    '4/0 AWG': [150, 180, 205],
  },
}
