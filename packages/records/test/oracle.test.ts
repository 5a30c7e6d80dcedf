import type { Entry, JobState, Reader } from '@tubwright/records'
import { JobLog, stateText } from '@tubwright/records'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyEntries, digestOfEntry } from './support/arbitrary-entries.ts'
import { opinionOfState } from './support/opinion-of-state.ts'
import { opinionOf } from './support/oracle.ts'
import { NEW, OLD } from './support/two-versions.ts'

const RUNS = { numRuns: 3000, seed: 20_310_504 }

const textOf = (entries: readonly Entry[], reader: Reader): string =>
  stateText(JobLog.open('me', entries, reader).state)

describe.each([
  ['the version before', OLD],
  ['the version after', NEW],
])('any few entries, read by %s', (_, reader) => {
  it('say what the definitions say', () => {
    fc.assert(
      fc.property(anyEntries, entries => {
        const { state } = JobLog.open('me', entries, reader)
        expect(opinionOfState(state, stateText(state))).toEqual(
          opinionOf(entries, reader, digestOfEntry),
        )
      }),
      RUNS,
    )
  })

  it('say the same in any order, twice, in parts, and looked at in between', () => {
    const orders = anyEntries.chain(entries =>
      fc.tuple(
        fc.constant(entries),
        fc.shuffledSubarray([...entries, ...entries], {
          minLength: 2 * entries.length,
          maxLength: 2 * entries.length,
        }),
        fc.integer({ min: 1, max: 5 }),
      ),
    )
    fc.assert(
      fc.property(orders, ([entries, shuffled, size]) => {
        const log = JobLog.empty('me', reader)
        const kept: (readonly [JobState, readonly Entry[]])[] = []
        for (let start = 0; start < shuffled.length; start += size) {
          log.merge(shuffled.slice(start, start + size))
          kept.push([log.state, shuffled.slice(0, start + size)])
        }
        expect(stateText(log.state)).toBe(textOf(entries, reader))
        for (const [state, held] of kept) expect(stateText(state)).toBe(textOf(held, reader))
      }),
      RUNS,
    )
  })
})
