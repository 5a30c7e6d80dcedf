/** The second page down its columns, 14 to 4/0 AWG: area [cmil], copper and aluminium [Ω/kft]. */
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
export const AREAS = [
  4110, 6530, 10380, 16510, 26240, 41740, 52620, 66360, 83690, 105600, 133100, 167800, 211600,
] as const
export const COPPER = [
  3.07, 1.93, 1.21, 0.764, 0.491, 0.308, 0.245, 0.194, 0.154, 0.122, 0.0967, 0.0766, 0.0608,
] as const
export const ALUMINIUM = [
  5.06, 3.18, 2.0, 1.26, 0.808, 0.508, 0.403, 0.319, 0.253, 0.201, 0.159, 0.126, 0.1,
] as const

/** Rows up to here are solid, from the next on stranded. */
export const LAST_SOLID = '8 AWG'

/** Copper, stranded: 16 AWG from a page, the others from memory. */
export const STRANDED = [
  { size: '16 AWG', ohms: 4.99 },
  { size: '14 AWG', ohms: 3.14 },
  { size: '12 AWG', ohms: 1.98 },
  { size: '10 AWG', ohms: 1.24 },
  { size: '8 AWG', ohms: 0.778 },
] as const

/** 6 AWG copper at other temperatures, by note 2. */
export const OTHER_TEMPERATURES = [
  { celsius: 20, ohms: 0.4038 },
  { celsius: 30, ohms: 0.4196 },
  { celsius: 60, ohms: 0.4672 },
  { celsius: 90, ohms: 0.5148 },
] as const

/** What is left at 20 °C, as the second page says in words. */
export const AT_20 = 0.82
