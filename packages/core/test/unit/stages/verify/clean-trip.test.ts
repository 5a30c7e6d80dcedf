import { describe, expect, it } from 'vitest'
import { findingsOf, planned, slipped } from '../../../support/judged.ts'

const { job, landing } = planned('everyday-240-circulation', 'heron-4')

/** What VERIFY-13 says of a slip: message and params of each finding. */
const told = (slip: Parameters<typeof slipped>[1]) =>
  findingsOf(job, slipped(landing, slip))
    .filter(each => each.rule === 'VERIFY-13')
    .map(({ message, subjects, params }) => ({ message, subjects, params }))

describe('where a trip points to', () => {
  it('the jumper that stands otherwise than the feed needs, found and needed by their labels', () => {
    const [trip, pointer, ...more] = told({ jumpers: { J1: 'in' } })
    expect(trip?.message).toBe('dead-short')
    expect(pointer).toEqual({
      message: 'jumper-against-feed',
      subjects: ['J1'],
      params: {
        jumper: 'J1',
        label: 'link from neutral to the second-leg terminal',
        found: 'link in',
        needed: 'link out',
        feed: '120/240 V, two legs, neutral and earth',
      },
    })
    expect(more).toEqual([])
  })

  it('no jumper where all stand as the feed needs', () => {
    const found = told({ ends: { 'pump-b.hot': 'box.A1', 'pump-a.high': 'box.A1' } })
    expect(found.filter(each => each.message === 'jumper-against-feed')).toEqual([])
    const shorted = told({ ends: { 'run.neutral@box': 'box.A3' } })
    expect(shorted.map(each => each.message)).toEqual(['dead-short'])
  })

  it('nothing where nothing trips, though another jumper moved', () => {
    expect(told({ jumpers: { J2: 'v120' } })).toEqual([])
  })
})
