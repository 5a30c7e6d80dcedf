import type { Json, Path } from '@tubwright/records'
import { fieldAt, isSame, JobLog, must, stateText } from '@tubwright/records'
import { expect, it } from 'vitest'
import { randomOf } from './support/random.ts'

const PAIRS = 100_000
const SEED = 20_310_504

const VALUES: readonly Json[] = [
  '240 V',
  '120 V',
  240,
  0,
  '',
  null,
  false,
  [],
  {},
  ['high', 'common'],
  { unknown: 'not visible' },
  { from: '8 A', to: '9 A', source: 'plate' },
]
const TOPS = ['survey', 'readings', 'ticks', 'stops', 'asBuilt']

it(`${PAIRS} pairs of values set at once, merged both ways: none is dropped unseen`, () => {
  const random = randomOf(SEED)
  const hand = (author: string) => ({ author, at: `20${10 + random.below(80)}-05-04T10:20:30Z` })
  const met = { equal: 0, conflicts: 0 }
  for (let pair = 0; pair < PAIRS; pair++) {
    const path: Path = [random.of(TOPS), `f${random.below(1000)}`, `g${random.below(10)}`]
    const [a, b] = [JobLog.empty('a'), JobLog.empty('b')]
    if (random.isTrue(0.5))
      b.merge(must(a.append({ do: 'set', path, value: 'before' }, hand('Anna'))))
    const [own, other] = [random.of(VALUES), random.of(VALUES)]
    const [first] = must(a.append({ do: 'set', path, value: own }, hand('Anna')))
    const [second] = must(b.append({ do: 'set', path, value: other }, hand('Ben')))
    a.merge([second as never])
    b.merge([first as never])
    expectBoth(fieldAt(a.state, path), own, other)
    if (stateText(a.state) !== stateText(b.state)) expect.fail(`pair ${pair}: two states`)
    if (isSame(own, other)) met.equal++
    else met.conflicts++
  }
  console.log(`pairs from seed ${SEED}`, met)
  expect(met.equal).toBeGreaterThan(1000)
  expect(met.conflicts).toBeGreaterThan(1000)
})

/** Agreement where the values are equal, else both of them and nothing besides. */
function expectBoth(field: ReturnType<typeof fieldAt>, own: Json, other: Json): void {
  if (isSame(own, other)) {
    if (field.kind !== 'set' || field.agreed.length !== 1 || !isSame(field.value, own))
      expect.fail(`agreement on ${JSON.stringify(own)} shows as ${JSON.stringify(field)}`)
    return
  }
  if (field.kind !== 'conflict' || field.values.length !== 2)
    expect.fail(`conflict shows as ${JSON.stringify(field)}`)
  for (const each of [own, other])
    if (
      field.kind !== 'conflict' ||
      !field.values.some(({ kind, value }) => kind === 'set' && isSame(value, each))
    )
      expect.fail(`${JSON.stringify(each)} is not shown`)
}
