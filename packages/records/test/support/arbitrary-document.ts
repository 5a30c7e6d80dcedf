import type { Json, JsonObject } from '@tubwright/records'
import { isSame } from '@tubwright/records'
import fc from 'fast-check'

const name = fc.constantFrom('a', 'b', 'c', '10', '9', 'constructor', 'from', 'unknown')
const id = fc.constantFrom('p', 'q', 'r')

const plain: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json>('240 V', '', null, false, 0, 1.5e-7, [], {}, ['high', 'low'], [[1], {}]),
  fc.constantFrom<Json>(
    { unknown: 'not visible' },
    { from: '8 A', to: '9 A', source: 'plate' },
    { oneOf: ['1 A', '2 A'], source: 'plate' },
    { oneOf: 1 },
    [{ id: 'p' }, { id: 'p' }],
    [{ id: 'p' }, 'x'],
    [{ id: '' }],
    { '': 1, a: 2 },
    { unknown: 'x', a: 1 },
  ),
)

const withId = fc.record({ fields: fc.dictionary(name, plain, { maxKeys: 3 }), id })

/** Documents of every shape: groups, lists of items in items, single values, and near misses of all. */
export const anyDocument: fc.Arbitrary<JsonObject> = fc.letrec<{ value: Json; group: JsonObject }>(
  tie => ({
    group: fc.dictionary(name, tie('value'), { maxKeys: 4 }),
    value: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      plain,
      tie('group'),
      fc
        .uniqueArray(fc.tuple(id, fc.dictionary(name, tie('value'), { maxKeys: 3 })), {
          minLength: 1,
          maxLength: 3,
          selector: ([each]) => each,
        })
        .map(all => all.map(([each, fields]) => ({ ...fields, id: each }))),
      withId.map(({ fields, id: own }) => [{ id: own, ...fields }]),
    ),
  }),
).group

const isItem = (value: Json): value is JsonObject & { readonly id: string } =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && 'id' in value

/** The document with every list of items in order of their ids. */
export function byIds(value: Json): Json {
  if (typeof value !== 'object' || value === null) return value
  if (!Array.isArray(value))
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, byIds(each)]))
  const all = value.map(byIds)
  return all.every(isItem) ? all.toSorted((a, b) => (a.id < b.id ? -1 : 1)) : all
}

/** Whether two documents say the same, whatever the order of their items. */
export const saySame = (a: Json, b: Json): boolean => isSame(byIds(a), byIds(b))
