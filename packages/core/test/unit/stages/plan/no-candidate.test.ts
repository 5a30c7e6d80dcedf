import { expect, test } from 'vitest'
import type { Job } from '../../../../src/index.ts'
import { planAndProve } from '../../../../src/index.ts'
import { demoJob } from '../../../support/demo.ts'
import { tinyJob } from '../../../support/tiny.ts'

type Breaker = Job['tub']['supply']['breaker']

const withBreaker = (job: Job, breaker: Breaker): Job => ({
  ...job,
  tub: { ...job.tub, supply: { ...job.tub.supply, breaker } },
})

const failureOf = (job: Job) => {
  const planned = planAndProve(job)
  return planned.ok ? 'planned' : planned.failure
}

test('a breaker that nobody knows leaves a question open, and no candidate is tried', () => {
  const job = withBreaker(tinyJob('5 A'), { kind: 'unknown', reason: 'not visible' })
  expect(failureOf(job)).toEqual({
    reason: 'open',
    box: 'tiny',
    question: { message: 'ask-breaker', subjects: ['supply'], params: {} },
  })
})

test('a breaker of several values is known enough', () => {
  const [a, b] = [20, 30].map(amps => ({ si: amps as never, text: `${amps} A` }))
  if (!a || !b) throw new Error('no values')
  const job = withBreaker(tinyJob('5 A'), { kind: 'one-of', values: [a, b], source: 'owner' })
  expect(failureOf(job)).not.toMatchObject({ reason: 'open' })
})

test('a breaker below every setting', () => {
  const five = { si: 5 as never, text: '5 A' }
  const job = withBreaker(tinyJob('5 A'), { kind: 'known', value: five })
  expect(failureOf(job)).toMatchObject({ reason: 'cannot', message: 'no-setting-low-enough' })
})

test('more loads of a kind than places for them', () => {
  const job = tinyJob('5 A')
  const [pump] = job.tub.loads
  if (!pump) throw new Error('no pump')
  const more = [
    { ...pump, id: 'second', label: 'second pump' },
    { ...pump, id: 'third', label: 'third pump' },
  ]
  const crowded = { ...job, loads: [...job.loads, ...more] }
  expect(failureOf(crowded)).toMatchObject({
    reason: 'cannot',
    message: 'too-few-places',
    params: { loads: expect.stringContaining('third pump') },
  })
})

test('loads whose volts no jumper position gives', () => {
  const job = tinyJob('5 A')
  const loads = job.loads.map(each =>
    each.kind === 'pump' ? { ...each, volts: { si: 240 as never, text: '240 V' } } : each,
  )
  expect(failureOf({ ...job, loads })).toMatchObject({
    reason: 'cannot',
    message: 'volts-not-together',
  })
})

test('a supply that no feed of the box takes', () => {
  expect(failureOf(demoJob('garden-230', 'heron-4'))).toMatchObject({
    reason: 'cannot',
    message: 'not-for-system',
  })
})

test('no landing that holds: the least bad one is told as data alone, which can be kept and sent', () => {
  const failure = failureOf(demoJob('turnable-120', 'heron-4'))
  expect(failure).toMatchObject({ reason: 'no-plan', closest: { holds: false } })
  expect(structuredClone(failure)).toEqual(failure)
})
