import { describe, expect, it } from 'vitest'
import { feet, metres, say } from '../src/say.ts'

const FOOT = 0.3048
const INCH = 0.0254

describe('a length', () => {
  it.each([
    [0, '0 in'],
    [11 * INCH, '11 in'],
    [FOOT, '1 ft'],
    [1.5, '4 ft 11 in'],
    [5 * FOOT, '5 ft'],
    [28 * INCH, '2 ft 4 in'],
    [3, '9 ft 10 in'],
    [50 * FOOT, '50 ft'],
    [30, '98 ft 5 in'],
    // These would pass for 5 ft, 7 ft 6 in, 12 ft and 5 ft.
    [1.52, '4 ft 11.8 in'],
    [2.28, '7 ft 5.8 in'],
    [3.66, '12 ft 0.1 in'],
    [1.53, '5 ft 0.2 in'],
    [9, '29 ft 6 in'],
  ])('of %d m is %s', (value, text) => {
    expect(feet(value)).toBe(text)
  })

  it.each([
    [0, '0 m'],
    [1.5, '1.5 m'],
    [2, '2 m'],
    [1.998, '1.998 m'],
    [1.25, '1.25 m'],
    [1.524, '1.52 m'],
    [30, '30 m'],
  ])('of %d m in metres is %s', (value, text) => {
    expect(metres(value)).toBe(text)
  })

  it('stands in the unit of its sentence', () => {
    const told = (unit: string) => say('{is:length}', { is: 1.5, unit })
    expect(told('ft')).toBe('4 ft 11 in')
    expect(told('ft-m')).toBe('4 ft 11 in (1.5 m)')
    expect(told('m')).toBe('1.5 m')
    expect(say('{is:in}', { is: 28 * INCH })).toBe('28 in')
    expect(say('{is:kVA}', { is: 11_520 })).toBe('11.52 kVA')
  })
})
