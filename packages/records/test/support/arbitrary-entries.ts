import type { Act, Entry, Json, Path } from '@tubwright/records'
import { canonical, digestOf } from '@tubwright/records'
import fc from 'fast-check'

const STORES = ['a', 'b', 'constructor'] as const
const COUNTER_MOST = 4

const PATHS: readonly Path[] = [
  ['survey', 'loads', 'p', 'volts'],
  ['survey', 'loads', 'p'],
  ['survey', 'loads', 'q'],
  ['survey', 'loads'],
  ['survey', 'loads', 'p', 'leads', 'l'],
  ['survey', 'loads', 'p', 'leads', 'l', 'size'],
  ['survey', 'bay'],
  ['survey', 'room'],
  ['survey', 'feeder', 'length'],
]

const VALUES: readonly Json[] = ['240 V', { unknown: 'not visible' }, 2, 20, [], {}]

const path = fc.constantFrom(...PATHS)
const act: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant('set' as const),
      path,
      value: fc.constantFrom(...VALUES),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({ do: fc.constantFrom('clear', 'add', 'withdraw', 'restore'), path }),
  },
)
const strange = fc.constant({ do: 'stamp', ink: 'red' } as const)

const seen = fc.dictionary(fc.constantFrom(...STORES), fc.integer({ min: 1, max: COUNTER_MOST }))

interface Draft {
  readonly store: string
  readonly counter: number
  readonly seen: Readonly<Record<string, number>>
  readonly level: number
}

const draft: fc.Arbitrary<Draft> = fc.record({
  store: fc.constantFrom(...STORES),
  counter: fc.integer({ min: 1, max: COUNTER_MOST }),
  seen,
  level: fc.constantFrom(1, 1, 1, 2),
})

function entryOf({ store, counter, seen, level }: Draft, act: Entry['act']): Entry {
  const { [store]: own = 0, ...others } = seen
  const most = Math.min(own, counter - 1)
  return {
    schema: `entry/${level}`,
    id: `${store}:${counter}`,
    author: 'Anna',
    at: '2031-05-04T10:20:30Z',
    seen: most > 0 ? { ...others, [store]: most } : others,
    act,
  }
}

const entry = fc
  .tuple(draft, fc.oneof({ weight: 12, arbitrary: act }, { weight: 1, arbitrary: strange }))
  .map(([each, does]) => entryOf(each, does))

export const digestOfEntry = (each: Entry): string => digestOf(canonical(each as unknown as Json))

/** Acts that say of some entries that they were looked at. */
const settled = (entries: readonly Entry[]) =>
  fc
    .array(fc.tuple(draft, fc.subarray([...entries], { minLength: 1 })), { maxLength: 3 })
    .map(all =>
      all.map(([each, looked]) =>
        entryOf(each, {
          do: 'settle',
          fork: (looked[0] as Entry).id,
          variants: looked.map(digestOfEntry),
        }),
      ),
    )

/**
 * Any few entries at all: vectors that no honest log would write, ids that several share, both
 * versions. The fold is defined on every set of entries, so its laws hold on these too.
 */
export const anyEntries: fc.Arbitrary<readonly Entry[]> = fc
  .array(entry, { minLength: 1, maxLength: 12 })
  .chain(entries => settled(entries).map(settles => [...entries, ...settles]))
