/** Sizes in the order of the columns below. */
export const SIZES = [
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

/** Amps down each column, as the second page prints them; no aluminium at 14 AWG. */
export const SECOND_PAGE = [
  {
    metal: 'copper',
    column: '60 °C',
    amps: [15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195],
  },
  {
    metal: 'copper',
    column: '75 °C',
    amps: [20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230],
  },
  {
    metal: 'copper',
    column: '90 °C',
    amps: [25, 30, 40, 55, 75, 95, 115, 130, 145, 170, 195, 225, 260],
  },
  {
    metal: 'aluminium',
    column: '60 °C',
    amps: [undefined, 15, 25, 35, 40, 55, 65, 75, 85, 100, 115, 130, 150],
  },
  {
    metal: 'aluminium',
    column: '75 °C',
    amps: [undefined, 20, 30, 40, 50, 65, 75, 90, 100, 120, 135, 155, 180],
  },
  {
    metal: 'aluminium',
    column: '90 °C',
    amps: [undefined, 25, 35, 45, 55, 75, 85, 100, 115, 135, 150, 175, 205],
  },
] as const

/** The old table down each column, 14 to 1 AWG, as its page prints it. */
export const BEFORE_2011 = [
  { metal: 'copper', column: '60 °C', amps: [20, 25, 30, 40, 55, 70, 85, 95, 110] },
  { metal: 'copper', column: '75 °C', amps: [20, 25, 35, 50, 65, 85, 100, 115, 130] },
  { metal: 'copper', column: '90 °C', amps: [25, 30, 40, 55, 75, 95, 110, 130, 150] },
  { metal: 'aluminium', column: '60 °C', amps: [undefined, 20, 25, 30, 40, 55, 65, 75, 85] },
  { metal: 'aluminium', column: '75 °C', amps: [undefined, 20, 30, 40, 50, 65, 75, 90, 100] },
  { metal: 'aluminium', column: '90 °C', amps: [undefined, 25, 35, 45, 60, 75, 85, 100, 115] },
] as const

/** Where it differs from the table of today. */
export const TRAPS = [
  'copper 14 AWG 60 °C',
  'copper 12 AWG 60 °C',
  'copper 3 AWG 90 °C',
  'copper 1 AWG 90 °C',
  'aluminium 12 AWG 60 °C',
  'aluminium 8 AWG 60 °C',
  'aluminium 6 AWG 90 °C',
] as const
