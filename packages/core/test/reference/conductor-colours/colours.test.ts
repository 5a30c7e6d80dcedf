import { expect, test } from 'vitest'
import {
  COLOUR_CODES,
  HIGH_LEG,
  isTurned,
  LEAST_PEN_MM2,
  mayBeTaped,
  meaningOf,
  PEN_COLOURS,
  UK_BEFORE_2006,
  WHITE_AS_LINE,
} from '../../../src/domain/codebook/colours.ts'
import { COLOURS } from '../../../src/domain/described.ts'
import { JOINED, SAYS, TAPE, TURNED, UNITED_KINGDOM } from './cases.ts'

test('the United Kingdom before and after April 2006', () => {
  expect(UK_BEFORE_2006.lines).toEqual(UNITED_KINGDOM.old.lines)
  expect(UK_BEFORE_2006.neutral).toEqual([UNITED_KINGDOM.old.neutral])
  expect(COLOUR_CODES.UK.lines).toEqual(UNITED_KINGDOM.now.lines)
  expect(COLOUR_CODES.UK.neutral).toEqual([UNITED_KINGDOM.now.neutral])
})

test.each(TURNED)('$colour turned its meaning: $turned', ({ colour, turned }) =>
  expect(isTurned(UK_BEFORE_2006, COLOUR_CODES.UK, colour)).toBe(turned),
)

test.each(SAYS)('$region: $colour says $means', ({ region, colour, means }) =>
  expect(meaningOf(COLOUR_CODES[region], colour)).toBe(means),
)

test.each(TAPE)('$awg AWG may be taped: $taped', ({ awg, taped }) =>
  expect(mayBeTaped(awg)).toBe(taped),
)

test('a white line is never marked with what says neutral or earth', () => {
  const said = COLOURS.filter(each => {
    const meaning = meaningOf(COLOUR_CODES.US, each)
    return meaning === 'neutral' || meaning === 'earth'
  })
  expect(WHITE_AS_LINE.neverMarked.filter(each => !said.includes(each))).toEqual([])
  expect(WHITE_AS_LINE.neverMarked).toContain('white')
  expect(meaningOf(COLOUR_CODES.US, HIGH_LEG)).toBe('line')
})

test('earth and neutral in one', () => {
  expect(PEN_COLOURS.map(({ along, ends }) => [along, ends])).toEqual(JOINED.ways)
  expect(LEAST_PEN_MM2).toBe(JOINED.mm2)
})

test('no colour is neutral and earth, or neutral and barred, in one book', () => {
  for (const code of [...Object.values(COLOUR_CODES), UK_BEFORE_2006])
    for (const colour of code.neutral) {
      expect(code.earth).not.toContain(colour)
      expect(code.barred).not.toContain(colour)
      expect(code.lines ?? []).not.toContain(colour)
    }
})
