import { expect, test } from 'vitest'
import {
  dwellingLoad,
  generalLoad,
  SECTION_220_82,
} from '../../../src/domain/codebook/nec/section-220-82.ts'
import { nextStandard } from '../../../src/domain/codebook/nec/section-240-6.ts'
import { DWELLINGS, SERVICES } from './cases.ts'

test.each(DWELLINGS)('NEC annex D $name: $sum VA', each => {
  expect(generalLoad(each.loads)).toBe(each.general)
  expect(dwellingLoad(each.loads, [])).toBe(each.shared)
  expect(dwellingLoad(each.loads, each.heating) - each.shared).toBe(each.climate)
  expect(dwellingLoad(each.loads, each.heating)).toBe(each.sum)
})

test.each(DWELLINGS)(
  'NEC annex D $name: the smaller choice of heating and cooling is left out',
  each => {
    const sums = each.heating.map(choice => dwellingLoad(each.loads, [choice]))
    expect(Math.max(...sums)).toBe(each.sum)
    expect(dwellingLoad(each.loads, [...each.heating].reverse())).toBe(each.sum)
  },
)

test.each(SERVICES)('NEC annex D $name: the service at 240 V', service => {
  const sum = DWELLINGS.find(({ name }) => name === service.name)?.sum ?? Number.NaN
  if ('computed' in service) expect(Math.round(sum / 240)).toBe(service.computed)
  else expect(nextStandard(sum / 240)).toBe(service.standard)
  expect(sum / 240).toBeGreaterThan(SECTION_220_82.leastService)
})
