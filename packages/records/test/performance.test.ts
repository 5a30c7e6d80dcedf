import type { Act, Entry } from '@tubwright/records'
import {
  documentOf,
  fromStored,
  heldBack,
  JobLog,
  must,
  stateText,
  toStored,
} from '@tubwright/records'
import { expect, it } from 'vitest'
import { HAND, set } from './support/logs.ts'

const ENTRIES = 20_000
/** Opening, as a share of reading the same entries from their texts: both slow down alike on a busy machine. */
const OPEN_SHARE_MAX = 0.75
/** One more entry, as a share of opening all of them. */
const APPEND_SHARE_MAX = 0.02

const LOADS = ['survey', 'loads']

function actOf(index: number): Act {
  const kind = index % 10
  if (kind < 6) return set([...LOADS, `l${index % 300}`, `f${index % 7}`], `${index % 50} V`)
  if (kind < 9) return set(['readings', `r${index}`], { volts: index, at: 'L1' })
  return set(['ticks', `t${index % 500}`], true)
}

/** A large job that four stores have written, now and then together. */
function largeJob(): readonly Entry[] {
  const logs = ['a', 'b', 'c', 'd'].map(store => JobLog.empty(store))
  for (let index = 0; index < ENTRIES; index++) {
    const log = logs[index % 4] as JobLog
    must(log.append(actOf(index), HAND))
    if (index % 50 === 0) for (const each of logs) each.merge(log.entries.slice(-200))
  }
  return JobLog.open(
    'x',
    logs.flatMap(each => each.entries),
  ).entries
}

const took = (run: () => unknown): number => {
  const began = performance.now()
  run()
  return performance.now() - began
}

it(`${ENTRIES} entries fold in less than it takes to read them; one more in a fiftieth of that`, () => {
  const entries = largeJob()
  expect(entries).toHaveLength(ENTRIES)
  const stored = entries.map(toStored)
  const fresh = stored.map(each => must(fromStored(each)))
  const opens = Array.from({ length: 15 }, () => took(() => JobLog.open('x', fresh).state))
  const reads = Array.from({ length: 3 }, () => took(() => stored.map(each => fromStored(each))))
  const log = JobLog.open('x', fresh)
  const appends = Array.from({ length: 300 }, (_, index) =>
    took(() => {
      must(log.append(set(['readings', `n${index}`], { volts: index }), HAND))
      heldBack(log.state)
    }),
  )
  const edits = Array.from({ length: 300 }, (_, index) =>
    took(() => {
      must(log.append(set([...LOADS, `l${index}`, 'f1'], index), HAND))
      heldBack(log.state)
    }),
  )
  const middle = (all: readonly number[]) => all.toSorted((a, b) => a - b)[all.length >> 1] ?? 0
  const documents = Array.from({ length: 5 }, () => took(() => documentOf(log.state, ['survey'])))
  console.log('20,000 entries [ms]', {
    open: Math.min(...opens),
    openMiddle: middle(opens),
    readStored: Math.min(...reads),
    append: middle(appends),
    edit: middle(edits),
    document: Math.min(...documents),
  })
  const open = Math.min(...opens)
  expect(open / Math.min(...reads)).toBeLessThanOrEqual(OPEN_SHARE_MAX)
  expect(middle(appends) / open).toBeLessThanOrEqual(APPEND_SHARE_MAX)
  expect(middle(edits) / open).toBeLessThanOrEqual(APPEND_SHARE_MAX)
  expect(stateText(log.state)).toBe(stateText(JobLog.open('y', log.entries).state))
})
