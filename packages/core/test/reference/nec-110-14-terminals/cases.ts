/** Circuit [A], the marking of the terminals, and the column. */
export const TERMINALS = [
  { circuit: 15, marked: undefined, column: '60 °C' },
  { circuit: 60, marked: undefined, column: '60 °C' },
  { circuit: 100, marked: undefined, column: '60 °C' },
  { circuit: 100, marked: '75 °C', column: '75 °C' },
  { circuit: 60, marked: '75 °C', column: '75 °C' },
  { circuit: 110, marked: undefined, column: '75 °C' },
  { circuit: 200, marked: '60 °C', column: '60 °C' },
] as const
