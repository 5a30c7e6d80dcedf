import { expect, test } from 'vitest'
import { correctedAmps } from '../../../src/domain/codebook/nec/corrected-ampacity.ts'
import { terminalColumn } from '../../../src/domain/codebook/nec/section-110-14-c.ts'
import { TERMINALS } from './cases.ts'

test.each(TERMINALS)('NEC 110.14(C): $circuit A, marked $marked: $column', each =>
  expect(terminalColumn({ circuit: each.circuit, marked: each.marked })).toBe(each.column),
)

test('8 AWG of 90 °C carries 40 A at unmarked terminals and 50 A at marked ones, never 55 A', () => {
  const at = (marked?: '60 °C' | '75 °C') =>
    correctedAmps({
      metal: 'copper',
      size: '8 AWG',
      insulation: '90 °C',
      terminals: terminalColumn({ circuit: 50, marked }),
      ambient: 30,
      loaded: 3,
    })
  expect([at(), at('75 °C')]).toEqual([40, 50])
})
