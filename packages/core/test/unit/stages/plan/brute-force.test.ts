import { describe, expect, test } from 'vitest'
import type { Job, Landing, Score } from '../../../../src/index.ts'
import { planAndProve, scoreOf, verifyPlan } from '../../../../src/index.ts'
import { slipped } from '../../../support/judged.ts'
import { tinyJob } from '../../../support/tiny.ts'

/** Every ordered choice of so many of these. */
function arrangements(all: readonly string[], count: number): readonly (readonly string[])[] {
  if (count === 0) return [[]]
  return all.flatMap(first =>
    arrangements(
      all.filter(each => each !== first),
      count - 1,
    ).map(rest => [first, ...rest]),
  )
}

const PUMP = ['pump.hot', 'pump.common', 'pump.earth']
const HEATER = ['heater.hot', 'heater.common', 'heater.earth']
const PUMP_TERMINALS = ['P1', 'P3', 'P4', 'Q1', 'Q3', 'Q4'].map(id => `box.${id}`)
const HEATER_TERMINALS = ['H1', 'H2', 'H4'].map(id => `box.${id}`)

/** Goes through every landing of the loads' ends, jumper and profile: the best that holds. */
function bruteForce(job: Job, start: Landing): { best: Score | undefined; tried: number } {
  let best: Score | undefined
  let tried = 0
  for (const pump of arrangements(PUMP_TERMINALS, 3))
    for (const heater of arrangements(HEATER_TERMINALS, 3))
      for (const J1 of ['open', 'neutral'])
        for (const profile of ['one', 'two']) {
          const ends = Object.fromEntries([
            ...PUMP.map((end, index) => [end, pump[index] ?? '']),
            ...HEATER.map((end, index) => [end, heater[index] ?? '']),
          ])
          const landing = slipped(start, { ends, jumpers: { J1 }, profile })
          const judged = verifyPlan(job, landing)
          tried++
          if (!judged.ok || !judged.value.holds) continue
          const score = scoreOf(job, landing, 0, judged.value)
          if (!best || rank(score) < rank(best)) best = score
        }
  return { best, tried }
}

/** The score without its last resort, the order of the terminals, as text that sorts. */
const rank = ({
  dangers,
  replaced,
  adapters,
  heatModes,
  margin,
  imbalance,
  moved,
}: Score): string =>
  [dangers, replaced, adapters, heatModes, margin, imbalance, moved]
    .map(each => String(each + 1e9).padStart(12, '0'))
    .join(' ')

describe('the planner against brute force on a tiny box', () => {
  test.each(['5 A', '7 A'])('a pump of %s', amps => {
    const job = tinyJob(amps)
    const planned = planAndProve(job)
    if (!planned.ok) throw new Error(`no plan: ${planned.failure.reason}`)
    const { best, tried } = bruteForce(job, planned.value.plan.landing)
    expect(tried).toBe(120 * 6 * 2 * 2)
    expect(best && rank(best)).toBe(rank(planned.value.plan.score))
  })

  test('a pump of 7 A cannot sit on the contact of 6 A, and goes to the other', () => {
    const planned = planAndProve(tinyJob('7 A'))
    expect(planned.ok && planned.value.plan.landing.ends['pump.hot']).toBe('box.Q1')
  })

  test('a pump of 14 A has no landing that holds, planned or forced', () => {
    const job = tinyJob('14 A')
    const planned = planAndProve(job)
    expect(planned.ok ? 'planned' : planned.failure.reason).toBe('no-plan')
    const small = planAndProve(tinyJob('7 A'))
    if (!small.ok) throw new Error('no start')
    expect(bruteForce(job, small.value.plan.landing).best).toBeUndefined()
  })

  test('a search that reaches its limit says so', () => {
    const planned = planAndProve(tinyJob('5 A'), { solves: 1 })
    expect(planned.ok ? 'planned' : planned.failure.reason).toBe('limit-reached')
  })
})
