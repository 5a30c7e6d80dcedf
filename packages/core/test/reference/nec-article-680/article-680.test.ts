import { expect, test } from 'vitest'
import type { TubFigure, TubSupply } from '../../../src/domain/codebook/nec/article-680.ts'
import {
  ARTICLE_680,
  emergencySwitchNeeded,
  heaterParts,
  tubEarthConductor,
  tubFigure,
  tubProtection,
} from '../../../src/domain/codebook/nec/article-680.ts'
import { nextStandard } from '../../../src/domain/codebook/nec/section-240-6.ts'
import { ABSENT, EARTH, FIGURES, METRES, PARTS, PLAIN, PROTECTION } from './cases.ts'

test.each(FIGURES)('NEC 680, $name: $value $unit', ({ name, value, unit, editions }) => {
  expect(ARTICLE_680[name].unit).toBe(unit)
  for (const edition of editions) expect(tubFigure(name, edition)).toBe(value)
})

test.each(ABSENT)('NEC 680, $name is not in $editions', ({ name, editions }) => {
  for (const edition of editions) expect(tubFigure(name, edition)).toBeUndefined()
})

test.each(METRES)('NEC 680, $name is $metres m', ({ name, metres }) => {
  const feet = tubFigure(name, '2020') ?? Number.NaN
  expect(Math.abs(feet * 0.3048 - metres)).toBeLessThan(0.25)
})

test.each(PROTECTION)('NEC 680.44, $what: $expected', ({ change, expected }) =>
  expect(tubProtection({ ...PLAIN, ...change } as TubSupply)).toBe(expected),
)

test.each(EARTH)('NEC 680.7: earth of $earth behind $breaker A', ({ breaker, earth }) =>
  expect(tubEarthConductor(breaker)).toBe(earth),
)

test('NEC 680.7: behind more than the table prints there is no answer', () =>
  expect(tubEarthConductor(1600)).toBeUndefined())

test.each(PARTS)('NEC 680.10: a heater of $amps A in $parts parts', ({ amps, parts }) => {
  expect(heaterParts(amps)).toBe(parts)
  const breaker = nextStandard((amps / parts) * 1.25)
  expect(breaker).toBeLessThanOrEqual(tubFigure('heaterBreakerMost', '2020') ?? 0)
})

test('NEC 680.41: at a one-family dwelling no emergency switch is asked', () => {
  expect(emergencySwitchNeeded('one-family dwelling')).toBe(false)
  expect(emergencySwitchNeeded('other')).toBe(true)
})

test('NEC 680: a receptacle has a place between its least and its most', () => {
  for (const edition of ['2017', '2020', '2023'] as const) {
    for (const place of ['outdoor', 'indoor'] as const) {
      const least = tubFigure(`${place}ReceptacleLeast`, edition)
      expect(least).toBeLessThan(tubFigure(`${place}ReceptacleMost`, edition) ?? 0)
    }
    expect(tubFigure('indoorLuminaireHeightGroundFault', edition)).toBeLessThan(
      tubFigure('indoorLuminaireHeight', edition) ?? 0,
    )
  }
})

test('NEC 680: every figure has an edition, and what is from memory says so', () => {
  const figures: readonly TubFigure[] = Object.values(ARTICLE_680)
  for (const { clause, by } of figures) {
    expect(clause).not.toBe('')
    expect(Object.keys(by).length).toBeGreaterThan(0)
    for (const [value, read] of Object.values(by)) {
      expect(value).toBeGreaterThan(0)
      expect(['page', 'memory']).toContain(read)
    }
  }
})
