import { expect, test } from 'vitest'
import {
  CE_SECTION_68,
  CE_TUB_GROUND_FAULT_CLASS,
  ceEmergencySwitchNeeded,
  ceSiteBonding,
} from '../../../src/domain/codebook/ce-code/section-68.ts'
import { CLASS, DISTANCES, FROM_MEMORY } from './cases.ts'

test.each(DISTANCES)('CE section 68, $name: $metres m', ({ name, metres }) => {
  expect(CE_SECTION_68[name].value).toBe(metres)
  expect(CE_SECTION_68[name].unit).toBe('m')
})

test('CE section 68: every distance was compared, and two are from memory', () => {
  expect(Object.keys(CE_SECTION_68).sort()).toEqual(DISTANCES.map(({ name }) => name).sort())
  const memory = DISTANCES.filter(({ name }) => CE_SECTION_68[name].read === 'memory')
  expect(memory.map(({ name }) => name)).toEqual(FROM_MEMORY)
})

test('CE section 68: class A, and no emergency switch at a dwelling', () => {
  expect(CE_TUB_GROUND_FAULT_CLASS).toBe(CLASS)
  expect(ceEmergencySwitchNeeded('dwelling unit')).toBe(false)
  expect(ceEmergencySwitchNeeded('other')).toBe(true)
})

test('CE rule 68-402: where provinces differ, nothing is decided', () => {
  expect(ceSiteBonding('2024')).toBe('ask the inspector')
  expect(ceSiteBonding('2021')).toBe('not found')
})
