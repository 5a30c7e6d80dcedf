import type { Entry } from '@tubwright/records'
import { JobLog } from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import type { AnyFold } from './support/broken-folds.ts'
import { BROKEN, realFold } from './support/broken-folds.ts'
import { chooseAct } from './support/choose-act.ts'
import { LAWS } from './support/laws.ts'
import { randomOf } from './support/random.ts'

const LOGS = 100

/** What some of three replicas hold after a while apart and together, some of it lost. */
function someEntries(seed: number): readonly Entry[] {
  const random = randomOf(seed)
  const logs = ['a', 'b', 'c'].map(store => JobLog.empty(store))
  for (let step = 0; step < 40; step++) {
    const log = random.of(logs)
    const at = new Date(Date.UTC(2021 + random.below(20), random.below(12))).toISOString()
    log.append(chooseAct(random, log.state), { author: 'Anna', at })
    if (random.isTrue(0.2)) random.of(logs).merge(random.of(logs).entries)
  }
  const all = JobLog.open(
    'all',
    logs.flatMap(each => each.entries),
  ).entries
  return random.isTrue(0.5) ? all : all.filter(() => random.isTrue(0.7))
}

const CASES = Array.from({ length: LOGS }, (_, seed) => someEntries(seed))

/** Laws that a fold breaks on any of the logs. */
const brokenBy = (fold: AnyFold): readonly string[] =>
  Object.entries(LAWS)
    .filter(([, law]) => CASES.some((entries, seed) => !law(fold, entries, randomOf(seed))))
    .map(([name]) => name)

describe('the laws', () => {
  it('hold for the fold', () => {
    expect(brokenBy(realFold)).toEqual([])
  })

  it.each([
    ['the last by the clock wins', 'no value is dropped unseen'],
    ['the last to arrive wins', 'any order'],
    ['nothing is ever replaced', 'what was seen is replaced'],
    ['what comes twice counts twice', 'once or twice'],
    ['a restore needs to have seen nothing', 'a withdrawal stands until a restore that saw it'],
    ['nothing is missing as long as something is there', 'what is missing is told'],
    ['only what lies between is missing', 'what is missing is told'],
  ])('find the fold in which %s', (name, law) => {
    expect(brokenBy(BROKEN[name] as AnyFold)).toContain(law)
  })

  it('are all needed: each is broken by some fold', () => {
    const broken = new Set(Object.values(BROKEN).flatMap(brokenBy))
    expect([...broken].sort()).toEqual(Object.keys(LAWS).sort())
  })
})
