/** The second page down its columns; its 0, 00, 000 and 0000 are 1/0 to 4/0. */
export const COPPER_SIZES = [
  '14 AWG',
  '12 AWG',
  '10 AWG',
  '8 AWG',
  '6 AWG',
  '4 AWG',
  '3 AWG',
  '2 AWG',
  '1 AWG',
  '1/0 AWG',
  '2/0 AWG',
  '3/0 AWG',
  '4/0 AWG',
] as const
export const COPPER = [
  { column: '60 °C', amps: [15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195] },
  { column: '75 °C', amps: [20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230] },
  { column: '90 °C', amps: [25, 30, 40, 55, 75, 95, 115, 130, 145, 170, 195, 225, 260] },
] as const

/** The third page, row by row: 60, 75 and 90 °C. */
export const ALUMINIUM = [
  { size: '12 AWG', amps: [15, 20, 25] },
  { size: '10 AWG', amps: [25, 30, 35] },
  { size: '8 AWG', amps: [35, 40, 45] },
  { size: '6 AWG', amps: [40, 50, 55] },
  { size: '4 AWG', amps: [55, 65, 75] },
  { size: '3 AWG', amps: [65, 75, 85] },
  { size: '2 AWG', amps: [75, 90, 100] },
  { size: '1 AWG', amps: [85, 100, 115] },
  { size: '1/0 AWG', amps: [100, 120, 135] },
  { size: '2/0 AWG', amps: [115, 135, 150] },
  { size: '3/0 AWG', amps: [130, 155, 175] },
  { size: '4/0 AWG', amps: [150, 180, 205] },
] as const

/** At 60 °C in the edition of 2012. */
export const IN_2012 = [
  { metal: 'copper', size: '14 AWG', amps: 20 },
  { metal: 'copper', size: '12 AWG', amps: 25 },
  { metal: 'aluminium', size: '12 AWG', amps: 20 },
] as const

/** Equipment [A], its marking, and the column. */
export const TERMINALS = [
  { equipment: 40, marked: undefined, column: '60 °C' },
  { equipment: 100, marked: undefined, column: '60 °C' },
  { equipment: 101, marked: undefined, column: '75 °C' },
  { equipment: 60, marked: '75 °C', column: '75 °C' },
  { equipment: 60, marked: '90 °C', column: '90 °C' },
] as const
