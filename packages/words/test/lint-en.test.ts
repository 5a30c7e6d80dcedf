import type { LintId } from '@tubwright/core'
import { LINT_FINDINGS } from '@tubwright/core'
import { fieldNames, SCHEMA_NAMES } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import { FIELD_EN } from '../src/en/fields.ts'
import { LINT_EN } from '../src/en/lint.ts'
import { holesOf } from '../src/say.ts'

describe('lint', () => {
  it.each(Object.keys(LINT_FINDINGS) as LintId[])('%s is said with what it gives', id => {
    const given: readonly string[] = LINT_FINDINGS[id].params
    for (const hole of holesOf(LINT_EN[id])) expect(given).toContain(hole)
  })

  it('has no sentence that nothing says', () => {
    expect(Object.keys(LINT_EN).sort()).toEqual(Object.keys(LINT_FINDINGS).sort())
  })
})

describe('fields', () => {
  it('have no text without a field', () => {
    const names = new Set<string>([...SCHEMA_NAMES, ...SCHEMA_NAMES.flatMap(fieldNames)])
    expect(Object.keys(FIELD_EN).filter(each => !names.has(each))).toEqual([])
  })

  it('stand on one line', () => {
    for (const text of Object.values(FIELD_EN)) expect(text).not.toMatch(/\n|#/u)
  })
})
