import { readPlate } from '@tubwright/core'
import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'

describe('readPlate', () => {
  const lines: readonly (readonly [line: string, read: ReturnType<typeof readPlate>])[] = [
    ['16.4/4.8 A', { amps: ['16.4 A', '4.8 A'], rest: '' }],
    ['10/3', { amps: ['10 A', '3 A'], rest: '' }],
    ['.5', { amps: ['0.5 A'], rest: '' }],
    [
      '240V 60Hz 10.0/3.0A',
      { volts: '240 V', frequency: '60 Hz', amps: ['10.0 A', '3.0 A'], rest: '' },
    ],
    [
      '230 V 50 Hz 9,5 A cos φ 0,93',
      {
        volts: '230 V',
        frequency: '50 Hz',
        powerFactor: 0.93,
        amps: ['9.5 A'],
        rest: '',
      },
    ],
    ['5.5 kW 240 V', { volts: '240 V', watts: '5.5 kW', amps: [], rest: '' }],
    ['12V 6W', { volts: '12 V', watts: '6 W', amps: [], rest: '' }],
    ['120 VAC, 1.2 amps', { volts: '120 V', amps: ['1.2 A'], rest: ',' }],
    // Horsepower says nothing of the current: it stays in the rest.
    ['2.0 HP 240 V 12 A', { volts: '240 V', amps: ['12 A'], rest: '2.0 HP' }],
    // Two voltages are a strap's affair, and never guessed.
    ['115/230 V 14/7 A', { amps: ['14 A', '7 A'], rest: '115/230 V' }],
    // No figure on a plate has a minus: it was typed by mistake, and nobody guesses at which key.
    ['-3 A', { amps: [], rest: '-3 A', hasMinus: true }],
    ['− 3', { amps: [], rest: '− 3', hasMinus: true }],
    ['240 V -3 A', { amps: [], rest: '240 V -3 A', hasMinus: true }],
    ['10/-3 A', { amps: [], rest: '10/-3 A', hasMinus: true }],
    ['type X-12 240V - 3 A', { volts: '240 V', amps: ['3 A'], rest: 'type X-12 -' }],
    ['220-240 V 3 A', { volts: '240 V', amps: ['3 A'], rest: '220-' }],
    ['frame 56Y', { amps: [], rest: 'frame 56Y' }],
    ['', { amps: [], rest: '' }],
  ]
  test.each(lines)('%s', (line, read) => expect(readPlate(line)).toEqual(read))

  test('loses no digit: each stands in what was read or in the rest', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), line => {
        const { rest, ...read } = readPlate(line)
        const digits = (text: string) =>
          [...text.replace(/^0(?=\.)/gu, '')].filter(each => /[1-9]/u.test(each)).sort()
        expect(digits(JSON.stringify(read) + rest)).toEqual(digits(line.trim()))
      }),
      { seed: 4, numRuns: 2000 },
    )
  })
})
