import { describe, expect, test } from 'vitest'
import type { FeedFunction, Job } from '../../src/index.ts'
import {
  boardNode,
  feedOf,
  jobOf,
  matchEquipment,
  observe,
  planAndProve,
  planRefit,
  plantOf,
} from '../../src/index.ts'
import { demoBox, demoBoxes, demoDevices, demoJob, demoTub } from '../support/demo.ts'
import { findingsOf, messages, planned, proposed, slipped } from '../support/judged.ts'

// Every supply of the demo, as it arrives at the box with nothing running; volts follow from the system.

/** Volts at the feed terminals of a proposed landing, everything off: to the reference, and between. */
function arriving(job: Job) {
  const plant = plantOf(job, proposed(job))
  const feed = feedOf(job)
  if (!plant.ok || !feed) throw new Error('not solved')
  const { solved } = observe(plant.value, { kind: 'mode', commands: new Set<string>() })
  const node = (does: FeedFunction) => {
    const terminal = job.box.board.terminals.find(each => each.id === feed.lands[does])
    return boardNode('box', terminal?.node ?? '')
  }
  return {
    at: (does: FeedFunction) => solved.potential(node(does)),
    between: (a: FeedFunction, b: FeedFunction) => solved.across(node(a), node(b)),
  }
}

describe('what stands at the terminals of the box', () => {
  test.each([
    ['everyday-240-plain', 'heron-4', 'split-phase', 120, 240],
    ['wye-208', 'dunlin-208', 'two-legs-of-wye', 120, 208],
    ['two-lives-230', 'redshank-230', 'two-lives-230', 133, 230],
    ['three-phase-400', 'curlew-400', 'three-phase-230-400', 230, 398],
  ] as const)('%s: %s', (tub, box, system, toEarth, between) => {
    const job = demoJob(tub, box)
    expect(job.tub.supply.system).toBe(system)
    const volts = arriving(job)
    expect(volts.at('leg1')).toBeCloseTo(toEarth, -0.5)
    expect(volts.between('leg1', 'leg2')).toBeCloseTo(between, -0.5)
  })

  test.each([
    ['cord-120-15', 'plover-1', 'single-leg', 120],
    ['plain-breaker-230', 'teal-32', 'single-phase-230', 230],
  ] as const)('%s: %s on one line', (tub, box, system, volts) => {
    const job = demoJob(tub, box)
    expect(job.tub.supply.system).toBe(system)
    expect(arriving(job).between('leg1', 'neutral')).toBeCloseTo(volts, -0.5)
  })

  test('three phases stand alike to neutral and to each other', () => {
    const volts = arriving(demoJob('three-phase-400', 'curlew-400'))
    for (const leg of ['leg1', 'leg2', 'leg3'] as const)
      expect(volts.between(leg, 'neutral')).toBeCloseTo(230, -0.5)
    expect(volts.between('leg2', 'leg3')).toBeCloseTo(398, -0.5)
  })
})

describe('two circuits, by fedBy', () => {
  test('on two legs 240 V stand between the two hots', () => {
    const volts = arriving(demoJob('split-two-legs', 'whimbrel-2'))
    expect(volts.between('leg1', 'second-leg1')).toBeCloseTo(240, -0.5)
    expect(volts.at('second-neutral')).toBeLessThan(0.1)
    expect(volts.at('second-earth')).toBeLessThan(0.1)
  })

  test('on one leg nothing stands between them', () => {
    const volts = arriving(demoJob('split-one-leg', 'whimbrel-2'))
    expect(volts.between('leg1', 'second-leg1')).toBeLessThan(1)
  })

  test('with two legs each the second brings no neutral', () => {
    const job = demoJob('split-240', 'whimbrel-4')
    expect(arriving(job).between('second-leg1', 'second-leg2')).toBeCloseTo(240, -0.5)
    expect(feedOf(job)?.lands['second-neutral']).toBeUndefined()
  })

  test('the heater returning by the neutral of the first circuit is a danger or trips', () => {
    const { job, landing } = planned('split-two-legs', 'whimbrel-2')
    const found = findingsOf(job, slipped(landing, { ends: { 'heater.common': 'box.T2' } }))
    const hit = found.filter(
      each => each.severity === 'danger' || each.message === 'ground-fault-trips',
    )
    expect(hit.length).toBeGreaterThan(0)
  })
})

describe('a plug that is turnable', () => {
  test.each(['heron-4', 'plover-1', 'sedge-20'])(
    '%s switches one pole: it may serve by its papers, and the proof refuses it',
    box => {
      const match = matchEquipment(demoTub('turnable-120'), [demoBox(box)])
      expect(match.boxes[0]?.verdict).toBe('may-serve')
      expect(planAndProve(demoJob('turnable-120', box)).ok).toBe(false)
      const job = demoJob('turnable-120', box)
      expect(messages(findingsOf(job, proposed(job)))).toContain('only-neutral-switched')
    },
  )

  test('the same tub on a plug of one way is served by them', () => {
    const tub = demoTub('turnable-120')
    const job = jobOf(
      { ...tub, supply: { ...tub.supply, turnable: false } },
      demoBox('plover-1'),
      demoDevices,
    )
    expect(planAndProve(job).ok).toBe(true)
  })

  test.each(['turnable-120', 'turnable-230'])('%s is served by the box of two poles', tub => {
    const { plans } = planRefit(demoTub(tub), demoBoxes(), demoDevices)
    expect(plans.map(each => each.plan.box)).toEqual(['tern-2'])
  })
})

describe('a high-leg-delta', () => {
  test('is recognised, and every box refused for it', () => {
    const match = matchEquipment(demoTub('high-leg'), demoBoxes())
    for (const box of match.boxes)
      expect(box.shortfalls.map(each => each.message)).toContain('high-leg')
    expect(match.conflict.map(each => each.id)).toEqual(['high-leg'])
  })
})

describe('a feeder given by length and size', () => {
  test('lowers the volts of what runs', () => {
    const { job, proven } = planned('long-feeder-230', 'curlew-400')
    const { feeder, ...supply } = job.tub.supply
    expect(feeder?.length.si).toBe(90)
    const without = planAndProve(jobOf({ ...job.tub, supply }, job.box, demoDevices))
    if (!without.ok) throw new Error('no plan')
    const least = (plan: typeof proven) =>
      Math.min(...plan.verification.expected.map(each => each.volts.low))
    expect(least(proven)).toBeLessThan(least(without.value))
  })
})

describe('a residual-current device in the box', () => {
  test('behind a plain breaker the box that has one is the only one that serves', () => {
    const { plans } = planRefit(demoTub('plain-breaker-230'), demoBoxes(), demoDevices)
    expect(plans.map(each => each.plan.box)).toEqual(['teal-32'])
  })

  test('without it nothing watches for a fault to earth', () => {
    const job = demoJob('plain-breaker-230', 'teal-32')
    const board = {
      ...job.box.board,
      parts: job.box.board.parts.filter(each => each.kind !== 'ground-fault'),
    }
    const bare = jobOf(job.tub, { ...job.box, board }, demoDevices)
    expect(messages(findingsOf(bare, proposed(bare)))).toContain('no-ground-fault-device')
  })
})

describe('the joining bar of a box for three phases', () => {
  test('is in on one phase and out on three', () => {
    expect(planned('long-feeder-230', 'curlew-400').landing.jumpers['BAR']).toBe('in')
    expect(planned('three-phase-400', 'curlew-400').landing.jumpers['BAR']).toBe('out')
  })

  test('left in on three phases it is a dead short', () => {
    const { job, landing } = planned('three-phase-400', 'curlew-400')
    const found = findingsOf(job, slipped(landing, { jumpers: { BAR: 'in' } }))
    expect(messages(found)).toContain('dead-short')
  })

  test('left out on one phase blower and heater stay dead', () => {
    const { job, landing } = planned('long-feeder-230', 'curlew-400')
    const found = findingsOf(job, slipped(landing, { jumpers: { BAR: 'out' } }))
    const dead = found.filter(each => each.message === 'load-dead').map(each => each.subjects[0])
    expect(dead.toSorted()).toEqual(['blower', 'heater'])
  })
})
