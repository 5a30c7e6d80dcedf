import { expect, test } from 'vitest'
import { CONDUCTOR_SIZES, conductorAmps } from '../../../src/domain/codebook/conductor-amps.ts'
import { conductorSize } from '../../../src/domain/conductor.ts'
import { PRINTED, SMALL, STANDARD } from './cases.ts'

const amps = (size: string) => conductorAmps(conductorSize.parse(size))

test.each(PRINTED)('NEC 310.16: $size carries $carries A', ({ size, carries }) =>
  expect(amps(size)?.carries).toBe(carries),
)

test.each(SMALL)('NEC 240.4(D): $breaker A before $size', ({ size, breaker }) =>
  expect(amps(size)?.breaker).toBe(breaker),
)

test.each(PRINTED.slice(SMALL.length))(
  'NEC 240.4(B): before $size the next standard rating from $carries A on',
  ({ size, carries }) => {
    expect(amps(size)?.breaker).toBe(STANDARD.find(each => each >= carries))
  },
)

test('every size that can be written has its line, larger ones more', () => {
  for (const unit of ['AWG', 'mm²']) {
    const sizes = CONDUCTOR_SIZES.filter(each => each.endsWith(unit))
      .map(each => conductorSize.parse(each))
      .sort((a, b) => a.mm2 - b.mm2)
    expect(sizes.length).toBeGreaterThan(8)
    const lines = sizes.map(each => conductorAmps(each))
    lines.slice(1).forEach((line, index) => {
      expect(line?.carries).toBeGreaterThan(lines[index]?.carries ?? 0)
      expect(line?.breaker).toBeGreaterThan(lines[index]?.breaker ?? 0)
    })
  }
})
