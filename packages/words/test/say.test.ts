import type { Diagnostic, Finding } from '@tubwright/core'
import { describe, expect, it } from 'vitest'
import { tellDiagnostic, tellFinding, tellMatch } from '../src/en/index.ts'
import { DIAGNOSTIC_EN } from '../src/en/terms.ts'
import { amps, figure, holesOf, say } from '../src/say.ts'

describe('a figure', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.001, '0'],
    [0.004, '0'],
    [0.005, '0.01'],
    [0.25, '0.25'],
    [0.5, '0.5'],
    [1, '1'],
    [1.005, '1'],
    [9.994, '9.99'],
    [9.999, '10'],
    [12, '12'],
    [12.04, '12'],
    [12.06, '12.1'],
    [99.96, '100'],
    [100, '100'],
    [240.4, '240'],
    [1335.2, '1335'],
    [-7.5, '-7.5'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '–'],
  ])('of %d reads %s', (value, text) => {
    expect(figure(value)).toBe(text)
  })

  it.each([
    [0, '0 A'],
    [0.0045, '4.5 mA'],
    [0.0999, '99.9 mA'],
    [0.1, '0.1 A'],
    [-0.006, '-6 mA'],
    [12, '12 A'],
    [1335.2, '1335 A'],
  ])('of %d amperes reads %s', (value, text) => {
    expect(amps(value)).toBe(text)
  })

  it.each([
    ['A', 0.006, '6 mA'],
    ['V', 239.6, '240 V'],
    ['W', 999, '999 W'],
    ['W', 5500, '5.5 kW'],
    ['C', 40, '40 °C (104 °F)'],
    ['Hz', 60, '60 Hz'],
    ['percent', 0.805, '80.5 %'],
    ['mm', 0.35, '350 mm'],
    ['number', 3.4567, '3.46'],
  ])('as %s', (format, value, text) => {
    expect(say(`{x:${format}}`, { x: value })).toBe(text)
  })
})

describe('a sentence', () => {
  it('puts texts and numbers where they belong, as often as they are asked for', () => {
    expect(say('{a} and {b}, {a:A}', { a: 12, b: 'it' })).toBe('12 and it, 12 A')
  })

  it('takes what stands in a text for a text', () => {
    expect(say('{a}', { a: '{b} $& $1' })).toBe('{b} $& $1')
  })

  it.each([
    ['{a}', {}, 'needs a'],
    ['{a}', { b: 1 }, 'needs a'],
    ['{constructor}', {}, 'needs constructor'],
    ['{a:parsecs}', { a: 1 }, 'no such format: parsecs'],
  ])('%s of %j is a fault of ours', (template, params, told) => {
    expect(() => say(template, params)).toThrow(told)
  })

  it('that nobody wrote is a fault of ours', () => {
    const unknown = { message: 'no-such', params: {} }
    expect(() => tellMatch({ ...unknown, subjects: [] })).toThrow('no sentence for no-such')
  })

  it('says what it asks for', () => {
    expect(holesOf('{a} {b:A} {a:V}')).toEqual(['a', 'b'])
  })
})

describe('word for word', () => {
  const finding = (message: string, params: Finding['params'], rest: Partial<Finding> = {}) =>
    tellFinding({
      rule: 'VERIFY-0',
      message,
      params,
      verdict: 'breaks',
      severity: 'danger',
      subjects: [],
      ...rest,
    })

  it.each([
    [
      'Dead short: gf.P2 would carry 1335 A (50 A rated) and trips at once. With everything off.',
      () => finding('dead-short', { part: 'gf.P2', amps: 1335.2, rated: 50 }, { on: [] }),
    ],
    [
      'pump A high (terminal) carries 12.4 A; it is rated 12 A. Worst with: heat, pump-a-high.',
      () =>
        finding(
          'above-rating',
          { label: 'pump A high', kind: 'terminal', amps: 12.4, rated: 12 },
          { on: ['heat', 'pump-a-high'] },
        ),
    ],
    [
      'The metal of Heater is not joined to earth.',
      () => finding('metal-not-on-earth', { thing: 'Heater' }),
    ],
    [
      'The current limit of 40 A is exactly what 80 % of the breaker allows (40 A): no margin.',
      () => finding('no-margin', { allowed: 40, share: 40 }),
    ],
    [
      'Jets pump B needs 240 V; it offers 120 V there.',
      () =>
        tellMatch({
          message: 'wrong-volts',
          subjects: [],
          params: { load: 'Jets pump B', plate: '240', offers: '120' },
        }),
    ],
    [
      'It measures 280 mm × 200 mm × 100 mm: it does not go into the bay.',
      () =>
        tellMatch({
          message: 'too-big',
          subjects: [],
          params: { width: 0.28, height: 0.2, depth: 0.1 },
        }),
    ],
    [
      'loads.0.volts is 240. It may be a number and a unit. Did you mean "240 V"?',
      () =>
        tellDiagnostic({
          code: 'wrong-quantity',
          path: ['loads', 0, 'volts'],
          is: '240',
          may: 'a number and a unit',
          didYouMean: '240 V',
        }),
    ],
    [
      'warning: supply.breaker is "500 A", which is hardly ever so; usual is from 5 A to 200 A. Look again.',
      () =>
        tellDiagnostic({
          code: 'implausible',
          severity: 'warning',
          path: ['supply', 'breaker'],
          is: '"500 A"',
          may: 'from 5 A to 200 A',
        }),
    ],
    [
      'this landing is for survey "a" on box "b"; here are survey "c" and box "d". Give the landing of these, or its own.',
      () =>
        tellDiagnostic({
          code: 'other-job',
          path: ['survey'],
          is: 'survey "a" on box "b"',
          may: 'survey "c" and box "d"',
        }),
    ],
  ])('%s', (text, tell) => {
    expect(tell()).toBe(text)
  })

  it('every diagnostic says what is, and what may be', () => {
    for (const code of Object.keys(DIAGNOSTIC_EN) as Diagnostic['code'][]) {
      const told = tellDiagnostic({ code, path: [], is: 'IS', may: 'MAY' })
      expect(told).toMatch(/IS.*MAY/u)
      expect(told).not.toMatch(/[{}]|invalid/iu)
    }
  })
})
