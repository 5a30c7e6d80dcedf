import { expect, test } from 'vitest'
import { leastEarth } from '../../../src/domain/codebook/earth-size.ts'
import { conductorSize } from '../../../src/domain/conductor.ts'
import { PRINTED } from './cases.ts'

test.each(PRINTED)('NEC 250.122: $earth behind $breaker A', ({ breaker, earth }) =>
  expect(leastEarth(breaker)).toMatchObject(conductorSize.parse(earth)),
)

test('past the table nothing is said', () => expect(leastEarth(200.1)).toBeUndefined())
