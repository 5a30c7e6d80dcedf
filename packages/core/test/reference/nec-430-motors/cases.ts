/** The second page: 115, 200, 208 and 230 V [A]. */
export const FULL_LOAD = [
  { power: '1/6 hp', amps: [4.4, 2.5, 2.4, 2.2] },
  { power: '1/4 hp', amps: [5.8, 3.3, 3.2, 2.9] },
  { power: '1/3 hp', amps: [7.2, 4.1, 4.0, 3.6] },
  { power: '1/2 hp', amps: [9.8, 5.6, 5.4, 4.9] },
  { power: '3/4 hp', amps: [13.8, 7.9, 7.6, 6.9] },
  { power: '1 hp', amps: [16, 9.2, 8.8, 8] },
  { power: '1-1/2 hp', amps: [20, 11.5, 11, 10] },
  { power: '2 hp', amps: [24, 13.8, 13.2, 12] },
  { power: '3 hp', amps: [34, 19.6, 18.7, 17] },
  { power: '5 hp', amps: [56, 32.2, 30.8, 28] },
  { power: '7-1/2 hp', amps: [80, 46, 44, 40] },
  { power: '10 hp', amps: [100, 57.5, 55, 50] },
] as const

/** The second page, kVA/hp. It ends B at 3.55: where it and the first page part, the first is right. */
export const LETTERS = [
  { letter: 'A', least: 0, most: 3.14 },
  { letter: 'B', least: 3.15, most: 3.55 },
  { letter: 'C', least: 3.55, most: 3.99 },
  { letter: 'D', least: 4.0, most: 4.49 },
  { letter: 'E', least: 4.5, most: 4.99 },
  { letter: 'F', least: 5.0, most: 5.59 },
  { letter: 'G', least: 5.6, most: 6.29 },
  { letter: 'H', least: 6.3, most: 7.09 },
  { letter: 'J', least: 7.1, most: 7.99 },
  { letter: 'K', least: 8.0, most: 8.99 },
  { letter: 'L', least: 9.0, most: 9.99 },
  { letter: 'M', least: 10.0, most: 11.19 },
  { letter: 'N', least: 11.2, most: 12.49 },
  { letter: 'P', least: 12.5, most: 13.99 },
  { letter: 'R', least: 14.0, most: 15.99 },
  { letter: 'S', least: 16.0, most: 17.99 },
  { letter: 'T', least: 18.0, most: 19.99 },
  { letter: 'U', least: 20.0, most: 22.39 },
  { letter: 'V', least: 22.4, most: undefined },
] as const

/** The maker's association: one bound between two letters. */
export const BOUNDS = [
  3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1, 8.0, 9.0, 10.0, 11.2, 12.5, 14.0, 16.0, 18.0, 20.0,
  22.4,
] as const

/** Rotor held, single phase; ours. */
export const HELD = [
  { horsepower: 1, volts: 230, letter: 'L', least: 39.1, most: 43.4 },
  { horsepower: 1.5, volts: 230, letter: 'K', least: 52.2, most: 58.6 },
  { horsepower: 2, volts: 230, letter: 'K', least: 69.6, most: 78.2 },
  { horsepower: 2, volts: 115, letter: 'L', least: 156.5, most: 173.7 },
] as const

/** Rotor held, three phases: ours, and what a page prints. */
export const HELD_50_HP = {
  motor: { horsepower: 50, volts: 460, letter: 'G', phases: 3 },
  least: 351.4,
  most: 394.7,
  page: [362, 406],
} as const

/** 430.22: full-load current and the least of the conductors [A]. */
export const ONE_MOTOR = [
  { fullLoad: 8, least: 10 },
  { fullLoad: 10, least: 12.5 },
  { fullLoad: 12, least: 15 },
  { fullLoad: 17, least: 21.25 },
] as const

/** 430.24: only the largest of four is taken at 125 %. */
export const FOUR_MOTORS = { motors: [124, 124, 77, 11], least: 367, wrong: 420 } as const

/** 15 + 8 + 28.65 + 2 A; ours. */
export const MIXED = { motors: [12, 8], continuous: 22.92, other: 2, least: 53.65 } as const
