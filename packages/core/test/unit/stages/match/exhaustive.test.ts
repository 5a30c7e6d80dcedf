import { describe, expect, test } from 'vitest'
import { takes, terminalFor } from '../../../../src/domain/wiring/fits.ts'
import { jumperChoices } from '../../../../src/domain/wiring/offers.ts'
import { feedOf } from '../../../../src/domain/wiring/states.ts'
import type { Finding, Landing } from '../../../../src/index.ts'
import { jobOf, matchEquipment, planAndProve, verifyPlan } from '../../../../src/index.ts'
import { currentLimitFor, endsFor, seatings } from '../../../../src/stages/plan/candidates.ts'
import { demoBox, demoBoxes, demoDevices, demoIds, demoTub } from '../../../support/demo.ts'

/**
 * Every landing of a tub on a box that says it cannot serve, with none of the matcher's or the
 * planner's filters: any load on any place that takes its kind, every jumper, every profile. A
 * box that cannot even seat the loads, or has no feed of the system, has none.
 */
function* everyLanding(tub: string, box: string): Generator<Landing> {
  const job = jobOf(demoTub(tub), demoBox(box), demoDevices)
  const feed = feedOf(job)
  const limit = currentLimitFor(job) ?? job.box.currentLimit.offered[0]
  if (!feed || !limit) return
  for (const seating of seatings(job))
    for (const jumpers of jumperChoices(job.box, { ...feed, jumpers: {} }))
      for (const profile of job.box.profiles)
        yield {
          schema: 'landing/1',
          survey: tub,
          box,
          ends: endsFor(job, feed, seating),
          jumpers,
          straps: {},
          settings: { profile: profile.id, currentLimit: limit },
          adapters: {},
        }
}

/** Reasons that no circuit can show: a mark, a size, a breaker the maker does not allow. */
const NOT_ELECTRICAL = new Set(['region', 'room'])

const breaks = (each: Finding): boolean => each.verdict === 'breaks' && each.severity !== 'notice'

describe('every "cannot" of the demo, confirmed by exhaustive planning', () => {
  for (const tub of demoIds('tubs')) {
    const match = matchEquipment(demoTub(tub), demoBoxes())
    for (const each of match.boxes.filter(box => box.verdict === 'cannot')) {
      const electrical = each.shortfalls.filter(
        ({ requirement }) => !NOT_ELECTRICAL.has(requirement),
      )
      if (electrical.length === 0) continue
      test(`${tub} on ${each.box}: ${electrical.map(s => s.message).join(', ')}`, () => {
        const job = jobOf(demoTub(tub), demoBox(each.box), demoDevices)
        for (const landing of everyLanding(tub, each.box)) {
          const judged = verifyPlan(job, landing)
          if (!judged.ok) throw new Error('no verdict')
          const { findings } = judged.value
          expect(findings.filter(breaks).length, JSON.stringify(landing)).toBeGreaterThan(0)
        }
        expect(planAndProve(job).ok).toBe(false)
      })
    }
  }

  test('a reason that is not electrical alone: the planner finds the landing that the mark forbids', () => {
    const match = matchEquipment(demoTub('everyday-240-plain'), demoBoxes())
    const only = match.boxes.filter(
      each =>
        each.verdict === 'cannot' &&
        each.shortfalls.every(({ requirement }) => NOT_ELECTRICAL.has(requirement)),
    )
    expect(only.map(each => each.box)).toContain('rowan-2')
    for (const each of only) {
      const job = jobOf(demoTub('everyday-240-plain'), demoBox(each.box), demoDevices)
      expect(planAndProve(job).ok).toBe(true)
    }
  })

  test('a load that no place takes has no seat', () => {
    const job = jobOf(demoTub('large-60'), demoBox('heron-4'), demoDevices)
    const blower = job.loads.find(each => each.kind === 'blower')
    if (!blower) throw new Error('no blower')
    expect(job.box.places.filter(place => takes(place, blower))).toEqual([])
    const lead = blower.leads[0]
    expect(lead && job.box.places[0] && terminalFor(job.box.places[0], lead)).toBeDefined()
    expect(seatings(job)).toEqual([])
  })
})

describe('the demo as a whole', () => {
  const tubs = demoIds('tubs').map(demoTub)
  test('six boxes, eight tubs, two of them with unknowns', () => {
    expect(demoBoxes().length).toBeGreaterThanOrEqual(6)
    expect(tubs.length).toBeGreaterThanOrEqual(8)
    const unknown = tubs.filter(tub => JSON.stringify(tub).includes('"kind":"unknown"'))
    expect(unknown.length).toBeGreaterThanOrEqual(2)
  })
  test.each(tubs.map(tub => [tub.id, tub] as const))(
    '%s: every reason of every no is said',
    (_, tub) => {
      for (const box of matchEquipment(tub, demoBoxes()).boxes)
        expect(box.verdict === 'cannot').toBe(box.shortfalls.length > 0)
    },
  )
})
