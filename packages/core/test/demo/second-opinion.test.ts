import { describe, expect, test } from 'vitest'
import type { Landing } from '../../src/index.ts'
import { judgeLanding, landing as landingSchema, statesOf } from '../../src/index.ts'
import { demoMeasured } from '../measure/measure.ts'
import { judgeLanding as judgeByOracle, statesOf as statesByOracle } from '../oracle/oracle.ts'
import { slipped } from '../support/judged.ts'

const keys = (states: readonly Iterable<string>[]): readonly string[] =>
  states.map(each => [...each].sort().join('+') || 'off').sort()

const all = demoMeasured('every')

describe('every proven plan of the demo, in the oracle’s eyes', () => {
  test('there are at least as many plans as tubs that can be served', () => {
    expect(all.length).toBeGreaterThanOrEqual(10)
  })

  test.each(all.map(each => [each.name, each] as const))('%s is right', (_, { oracle }) => {
    expect(judgeByOracle(oracle, oracle.plan)).toEqual({ class: 'right', reasons: [] })
  })
})

describe('the states a box can reach, enumerated twice', () => {
  test.each(all.map(each => [each.name, each] as const))('%s', (_, { job, oracle }) => {
    const planned: Landing = landingSchema.parse({
      schema: 'landing/1',
      survey: job.tub.id,
      box: job.box.id,
      ...oracle.plan,
    })
    for (const profile of job.box.profiles)
      for (const offered of job.box.currentLimit.offered) {
        const ours = statesOf(job, slipped(planned, { profile: profile.id, amps: offered.si }))
        if (!ours.ok) throw new Error('too many')
        const theirs = statesByOracle(oracle, { profile: profile.id, currentLimit: offered.text })
        expect(keys(ours.value.map(each => each.commands))).toEqual(keys(theirs.all))
      }
  })
})

describe('a plan whose findings are read again', () => {
  test('equal input gives equal findings, bit for bit', () => {
    const [first] = all
    if (!first) throw new Error('no plan')
    const planned = landingSchema.parse({
      schema: 'landing/1',
      survey: first.job.tub.id,
      box: first.job.box.id,
      ...first.oracle.plan,
    })
    expect(JSON.stringify(judgeLanding(first.job, planned))).toBe(
      JSON.stringify(judgeLanding(first.job, planned)),
    )
  })
})
