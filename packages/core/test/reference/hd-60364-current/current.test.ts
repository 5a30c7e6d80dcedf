import { expect, test } from 'vitest'
import type { ReferenceMethod } from '../../../src/domain/codebook/hd-60364/b-52-2.ts'
import { ampsB522 } from '../../../src/domain/codebook/hd-60364/b-52-2.ts'
import { ampsB523 } from '../../../src/domain/codebook/hd-60364/b-52-3.ts'
import { ampsB524 } from '../../../src/domain/codebook/hd-60364/b-52-4.ts'
import { ampsB525 } from '../../../src/domain/codebook/hd-60364/b-52-5.ts'
import { SIZES, THREE_70, THREE_90, TWO_70, TWO_90 } from './cases.ts'

const cells = (second: Readonly<Record<ReferenceMethod, readonly number[]>>) =>
  (Object.keys(second) as ReferenceMethod[]).flatMap(method =>
    SIZES.map((mm2, at) => ({ method, mm2, carries: second[method][at] ?? Number.NaN })),
  )

test.each(cells(TWO_70))('B.52.2: $method, $mm2 mm² carries $carries A', each =>
  expect(ampsB522(each.mm2, each.method)).toBe(each.carries),
)

test.each(cells(TWO_90))('B.52.3: $method, $mm2 mm² carries $carries A', each =>
  expect(ampsB523(each.mm2, each.method)).toBe(each.carries),
)

test.each(cells(THREE_70))('B.52.4: $method, $mm2 mm² carries $carries A', each =>
  expect(ampsB524(each.mm2, each.method)).toBe(each.carries),
)

test.each(cells(THREE_90))('B.52.5: $method, $mm2 mm² carries $carries A', each =>
  expect(ampsB525(each.mm2, each.method)).toBe(each.carries),
)
