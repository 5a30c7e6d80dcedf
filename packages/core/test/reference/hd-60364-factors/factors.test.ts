import { expect, test } from 'vitest'
import { ambientFactorB5214 } from '../../../src/domain/codebook/hd-60364/b-52-14.ts'
import { groundFactorB5215 } from '../../../src/domain/codebook/hd-60364/b-52-15.ts'
import { groupFactorB5217 } from '../../../src/domain/codebook/hd-60364/b-52-17.ts'
import { AIR, COUNTS, GROUND, GROUPS, HOT_AIR } from './cases.ts'

test.each(AIR)('B.52.14: air of $celsius °C, $thermoplastic and $thermosetting', each => {
  expect(ambientFactorB5214(each.celsius, 'thermoplastic')).toBe(each.thermoplastic)
  expect(ambientFactorB5214(each.celsius, 'thermosetting')).toBe(each.thermosetting)
})

test.each(HOT_AIR)('B.52.14: air of $celsius °C, $thermosetting, and nothing for 70 °C', each => {
  expect(ambientFactorB5214(each.celsius, 'thermosetting')).toBe(each.thermosetting)
  expect(ambientFactorB5214(each.celsius, 'thermoplastic')).toBeUndefined()
})

test.each(GROUND)('B.52.15: ground of $celsius °C, $thermoplastic and $thermosetting', each => {
  expect(groundFactorB5215(each.celsius, 'thermoplastic')).toBe(each.thermoplastic)
  expect(groundFactorB5215(each.celsius, 'thermosetting')).toBe(each.thermosetting)
})

const groups = (Object.keys(GROUPS) as (keyof typeof GROUPS)[]).flatMap(lying =>
  GROUPS[lying].map((factor, at) => ({ lying, factor, circuits: COUNTS[at] ?? Number.NaN })),
)

test.each(groups)('B.52.17: $circuits circuits, $lying: $factor', each =>
  expect(groupFactorB5217(each.circuits, each.lying)).toBe(each.factor),
)
