/** Table 13: ampacity and breaker; the ends and the starts of its bands. */
export const BREAKERS = [
  { carries: 15, breaker: 15 },
  { carries: 15.1, breaker: 20 },
  { carries: 16, breaker: 20 },
  { carries: 20, breaker: 20 },
  { carries: 36, breaker: 40 },
  { carries: 51, breaker: 60 },
  { carries: 65, breaker: 70 },
  { carries: 251, breaker: 300 },
  { carries: 326, breaker: 350 },
  { carries: 501, breaker: 600 },
  { carries: 600, breaker: 600 },
] as const

/** Rule 14-104 2), second page. */
export const SMALL = [
  { metal: 'copper', size: '14 AWG', carries: 25, breaker: 15 },
  { metal: 'copper', size: '12 AWG', carries: 30, breaker: 20 },
  { metal: 'copper', size: '10 AWG', carries: 40, breaker: 30 },
  { metal: 'aluminium', size: '12 AWG', carries: 25, breaker: 15 },
  { metal: 'aluminium', size: '10 AWG', carries: 35, breaker: 25 },
  { metal: 'copper', size: '8 AWG', carries: 50, breaker: 50 },
] as const

/** The second page of table 16; where it parts from the first, `ours` is the first. */
export const BONDING = [
  { amps: 15, copper: '14 AWG', aluminium: '12 AWG' },
  { amps: 20, copper: '12 AWG', aluminium: '10 AWG', ours: ['14 AWG', '12 AWG'] },
  { amps: 30, copper: '10 AWG', aluminium: '8 AWG', ours: ['12 AWG', '10 AWG'] },
  { amps: 60, copper: '10 AWG', aluminium: '8 AWG' },
  { amps: 100, copper: '8 AWG', aluminium: '6 AWG' },
  { amps: 200, copper: '6 AWG', aluminium: '4 AWG' },
  { amps: 300, copper: '4 AWG', aluminium: '2 AWG' },
  { amps: 400, copper: '3 AWG', aluminium: '1 AWG' },
  { amps: 600, copper: '1 AWG', aluminium: '2/0 AWG' },
] as const

/** Where each band of table 16 ends: the next standard rating asks another conductor. */
export const BAND_ENDS = [
  { upTo: 20, next: 25 },
  { upTo: 30, next: 35 },
  { upTo: 60, next: 70 },
  { upTo: 100, next: 110 },
  { upTo: 200, next: 225 },
  { upTo: 300, next: 350 },
  { upTo: 400, next: 450 },
  { upTo: 500, next: 600 },
] as const

/** Rule 8-104: marking, how the conductors lie, and percent of breaker and of conductors. */
export const CONTINUOUS = [
  { mark: '80 %', laid: 'raceway or cable', breaker: 80, conductors: 80 },
  { mark: '80 %', laid: 'single in free air', breaker: 80, conductors: 70 },
  { mark: '100 %', laid: 'raceway or cable', breaker: 100, conductors: 100 },
  { mark: '100 %', laid: 'single in free air', breaker: 100, conductors: 85 },
] as const

/** Hours that tell a continuous load, to 225 A and above. */
export const HOURS = { split: 225, below: [1, 2], above: [3, 6] } as const
