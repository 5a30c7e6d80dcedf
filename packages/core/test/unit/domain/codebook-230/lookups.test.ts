import { expect, test } from 'vitest'
import { leastEarth3000 } from '../../../../src/domain/codebook/as-nzs/earth-size.ts'
import { ampsTable4 } from '../../../../src/domain/codebook/as-nzs/table-4.ts'
import { ampsTable10 } from '../../../../src/domain/codebook/as-nzs/table-10.ts'
import { ampsTable11 } from '../../../../src/domain/codebook/as-nzs/table-11.ts'
import {
  droppedVolts,
  MILLIVOLTS_THERMOPLASTIC,
  MILLIVOLTS_THERMOSETTING,
} from '../../../../src/domain/codebook/bs-7671/millivolts.ts'
import {
  BREAKER_RATINGS,
  leastBreaker,
} from '../../../../src/domain/codebook/bs-7671/ratings-60898.ts'
import {
  overloadFailure,
  requiredRating,
} from '../../../../src/domain/codebook/bs-7671/section-433.ts'
import {
  ratingAtTerminal,
  TERMINAL_CELSIUS,
} from '../../../../src/domain/codebook/bs-7671/section-512.ts'
import { amps4D1A } from '../../../../src/domain/codebook/bs-7671/table-4d1a.ts'
import { amps4D2A } from '../../../../src/domain/codebook/bs-7671/table-4d2a.ts'
import { amps4D4A, TABLE_4D4A } from '../../../../src/domain/codebook/bs-7671/table-4d4a.ts'
import { amps4D5, TABLE_4D5 } from '../../../../src/domain/codebook/bs-7671/table-4d5.ts'
import { amps4E4A, TABLE_4E4A } from '../../../../src/domain/codebook/bs-7671/table-4e4a.ts'
import { greatestLoop, greatestRun } from '../../../../src/domain/codebook/bs-7671/table-41-3.ts'
import {
  adiabaticSize,
  leastProtective,
} from '../../../../src/domain/codebook/bs-7671/table-54-7.ts'
import { ampsB522 } from '../../../../src/domain/codebook/hd-60364/b-52-2.ts'
import {
  leastArea,
  ohmsAt20C,
  r1PlusR2,
  warmed,
} from '../../../../src/domain/codebook/iec-60228.ts'

test.each([
  ['4D1A', amps4D1A(50, 'C 2')],
  ['4D1A between sizes', amps4D1A(3, 'C 2')],
  ['4D2A above its last size', amps4D2A(25, 'C 2')],
  ['4D4A below its first size', amps4D4A(1, 'C 2')],
  ['4D5 above its last size', amps4D5(25, 'C')],
  ['B.52.2 below its first size', ampsB522(1, 'C')],
  ['3008 table 4', ampsTable4(35, 'enclosed')],
  ['3008 table 11', ampsTable11(25, 'buried')],
  ['loop of an unusual breaker', greatestLoop(13, 'B', 0.4)],
  ['loop of D 63 A', greatestLoop(63, 'D', 0.4)],
  ['resistance', ohmsAt20C(50, 1, 'rigid')],
  ['flexible 35 mm²', ohmsAt20C(35, 1, 'flexible')],
  ['line without its protective conductor', r1PlusR2(6, 3)],
  ['earth', leastEarth3000(50, 'separate')],
])('%s: what is not printed is not guessed', (_what, value) => expect(value).toBeUndefined())

test.each([
  { table: TABLE_4D5, column: 'C', amps: 27, mm2: 2.5 },
  { table: TABLE_4D5, column: 'C', amps: 27.01, mm2: 4 },
  { table: TABLE_4D5, column: '103', amps: 13.5, mm2: 2.5 },
  { table: TABLE_4D5, column: 'C', amps: 85, mm2: 16 },
  { table: TABLE_4D5, column: 'C', amps: 85.1, mm2: undefined },
  { table: TABLE_4D4A, column: 'D 2', amps: 40, mm2: 6 },
  { table: TABLE_4E4A, column: 'D 2', amps: 44, mm2: 6 },
  { table: TABLE_4D4A, column: 'C 2', amps: 1, mm2: 1.5 },
])('$amps A in column $column want $mm2 mm²', ({ table, column, amps, mm2 }) =>
  expect(leastArea<string>(table, column, amps)).toBe(mm2),
)

test('a quotient that should be whole is not taken for more', () => {
  // 0.1 + 0.2 and the like: 27 A by two factors come out as 27.000000000000004 A.
  const needed = requiredRating(27 * 0.94 * 0.8, [0.94, 0.8])
  expect(leastArea<string>(TABLE_4D5, 'C', needed)).toBe(2.5)
})

test.each([
  { load: 30, device: 32, cable: 37, failure: undefined },
  { load: 32, device: 32, cable: 32, failure: undefined },
  { load: 32.1, device: 32, cable: 37, failure: 'device-below-load' },
  { load: 30, device: 40, cable: 37, failure: 'cable-below-device' },
  { load: 30, device: 30, cable: 37, opensAt: 60, failure: 'opens-too-late' },
  { load: 30, device: 30, cable: 41.4, opensAt: 60, failure: undefined },
])('$load A behind $device A on a cable for $cable A: $failure', ({ failure, ...each }) =>
  expect(overloadFailure(each)).toBe(failure),
)

test.each([
  { load: 5, breaker: 6 },
  { load: 32, breaker: 32 },
  { load: 32.01, breaker: 40 },
  { load: 63, breaker: 63 },
  { load: 126, breaker: undefined },
])('$load A want a breaker of $breaker A', ({ load, breaker }) =>
  expect(leastBreaker(load)).toBe(breaker),
)

test('a breaker one step up is never twice the one before', () => {
  for (const [at, rating] of BREAKER_RATINGS.entries())
    if (at > 0) expect(rating / (BREAKER_RATINGS[at - 1] ?? 1)).toBeLessThanOrEqual(4 / 3)
})

test('a cable for 90 °C at a terminal for 70 °C carries what one for 70 °C does', () => {
  const at = (terminal: number) =>
    ratingAtTerminal(amps4D4A(10, 'C 2') ?? 0, amps4E4A(10, 'C 2') ?? 0, terminal)
  expect(at(TERMINAL_CELSIUS)).toBe(67)
  expect(at(75)).toBe(67)
  expect(at(90)).toBe(85)
})

test('a tub at the end of 40 m of armoured cable: what heat allows, the drop does not', () => {
  // 32 A, 40 m, limit 11.5 V: 4 mm² by current (38 A), 14.08 V; 6 mm² loses 9.344 V. By hand.
  expect(leastArea<string>(TABLE_4D4A, 'C 2', 32)).toBe(4)
  const volts = (mm2: number) =>
    droppedVolts(MILLIVOLTS_THERMOPLASTIC, 'single-phase', { amps: 32, metres: 40, mm2 })
  expect(volts(4)).toBeCloseTo(14.08, 9)
  expect(volts(6)).toBeCloseTo(9.344, 9)
  expect(volts(50)).toBeUndefined()
  expect(
    droppedVolts(MILLIVOLTS_THERMOSETTING, 'single-phase', { amps: 32, metres: 40, mm2: 6 }),
  ).toBeGreaterThan(volts(6) ?? 0)
})

test('a supply that is worse than the breaker allows leaves no run at all', () => {
  expect(greatestRun(greatestLoop(32, 'C', 0.4) ?? 0, 0.8, 10.49)).toBeLessThan(0)
  expect(greatestRun(greatestLoop(32, 'B', 0.4) ?? 0, 0.35, 10.49)).toBeCloseTo(71.12, 2)
})

test('a fault that lasts four times as long wants twice the copper', () => {
  const once = adiabaticSize(600, 0.1, 115)
  expect(adiabaticSize(600, 0.4, 115)).toBeCloseTo(2 * once, 9)
  expect(adiabaticSize(1200, 0.1, 115)).toBeCloseTo(2 * once, 9)
})

test('a thicker line never has a thinner protective conductor', () => {
  const lines = [1, 1.5, 2.5, 4, 6, 10, 16, 16.1, 25, 35, 35.1, 50, 70]
  const least = lines.map(leastProtective)
  expect([...least].sort((a, b) => a - b)).toEqual(least)
})

test('copper at 70 °C has a fifth more than at 20 °C', () => {
  expect(warmed(20)).toBe(1)
  expect(warmed(70) / warmed(20)).toBeCloseTo(1.2, 9)
})

test('an earth on its own is never below 2.5 mm², as a core it may be', () => {
  expect(leastEarth3000(1.5, 'core of the cable')).toBe(1.5)
  expect(leastEarth3000(1.5, 'separate')).toBe(2.5)
  expect(leastEarth3000(10, 'separate')).toBe(4)
})

test('a column that names no method has no cell', () => {
  expect(ampsTable10(2.5, 'enclosed')).toBe(23)
  expect(leastArea<string>(TABLE_4D5, 'B', 1)).toBeUndefined()
})
