import type { Act } from '@tubwright/records'
import { JobLog, must } from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import { leadsIn } from '../../src/screens/photos/leads.ts'
import {
  keepActs,
  nextNumber,
  photoMap,
  photosIn,
  pinActs,
  pinPath,
  placeActs,
  waitActs,
} from '../../src/screens/photos/photo-record.ts'
import { othersOf, slotsOf } from '../../src/screens/photos/slots.ts'

const PICTURE = {
  bytes: new Blob(['x'], { type: 'image/jpeg' }),
  width: 1536,
  height: 2048,
  hash: 'ab12',
}

function stateOf(...acts: readonly (readonly Act[])[]) {
  const log = JobLog.empty('store')
  for (const each of acts) must(log.append(each, { author: 'x', at: '2026-01-01T00:00:00.000Z' }))
  return log.state
}

const slotIn = (state: ReturnType<typeof stateOf>, of: string, kinds: readonly string[] = []) =>
  slotsOf(
    photosIn(state),
    kinds.map((kind, index) => ({ id: `l${index}`, kind })),
  ).find(each => each.of === of)

describe('the wanted photos', () => {
  it('are eight, and missing at first', () => {
    const slots = slotsOf([], [])
    expect(slots.length).toBe(8)
    expect(new Set(slots.map(each => each.state))).toEqual(new Set(['missing']))
  })

  it('wait from before the camera opens until the picture is there', () => {
    const waiting = stateOf(waitActs('p1', 'heater'))
    expect(slotIn(waiting, 'heater')).toMatchObject({ state: 'waiting', waiting: { id: 'p1' } })
    const there = stateOf(waitActs('p1', 'heater'), keepActs('p1', PICTURE))
    expect(slotIn(there, 'heater')).toMatchObject({ state: 'done', photos: [{ hash: 'ab12' }] })
    const cancelled = stateOf(waitActs('p1', 'heater'), [
      { do: 'withdraw', path: ['photos', 'p1'] },
    ])
    expect(slotIn(cancelled, 'heater')).toMatchObject({ state: 'missing' })
  })

  it('want a plate of each pump that the survey has', () => {
    const one = stateOf(waitActs('p1', 'pumps'), keepActs('p1', PICTURE))
    expect(slotIn(one, 'pumps')).toMatchObject({ state: 'done', wanted: 1 })
    const kinds = ['pump', 'circulation-pump', 'light']
    expect(slotIn(one, 'pumps', kinds)).toMatchObject({ state: 'some', wanted: 2 })
  })

  it('leave others apart', () => {
    const state = stateOf(waitActs('p1', ''), keepActs('p1', PICTURE), waitActs('p2', 'pump-a'))
    expect(othersOf(photosIn(state)).map(each => each.id)).toEqual(['p1'])
  })
})

describe('pins', () => {
  const photo = [waitActs('p1', 'board'), keepActs('p1', PICTURE)]
  const pin = pinActs('p1', { id: 'a', number: 1, x: 0.2, y: 0.333_333 })

  it('are numbered, and a number is never given twice', () => {
    expect(nextNumber([])).toBe(1)
    expect(nextNumber([1, 4, 2])).toBe(5)
  })

  it('lie on the photo, whatever is said', () => {
    const [read] = photosIn(stateOf(...photo, pin, placeActs('p1', 'a', 1.7, -3)))
    expect(read?.pins).toMatchObject([{ id: 'a', number: 1, x: 1, y: 0 }])
  })

  it('make a map, in the order of their numbers; what was taken away is not in it', () => {
    const state = stateOf(
      ...photo,
      waitActs('p2', 'bay'),
      keepActs('p2', PICTURE),
      pinActs('p1', { id: 'b', number: 2, x: 0.5, y: 0.5 }),
      pin,
      pinActs('p1', { id: 'c', number: 3, x: 0.5, y: 0.5 }),
      [
        { do: 'set', path: [...pinPath('p1', 'a'), 'end'], value: 'pump-a.high' },
        { do: 'set', path: [...pinPath('p1', 'b'), 'terminal'], value: 'J4' },
        { do: 'withdraw', path: pinPath('p1', 'c') },
      ],
    )
    expect(photoMap(state)).toMatchObject([
      {
        id: 'p1',
        of: 'board',
        hash: 'ab12',
        width: 1536,
        pins: [
          { number: 1, x: 0.2, y: 0.333, end: 'pump-a.high' },
          { number: 2, terminal: 'J4' },
        ],
      },
    ])
  })

  it('are read as far as they make sense', () => {
    const state = stateOf(...photo, [
      { do: 'add', path: pinPath('p1', 'z') },
      { do: 'set', path: [...pinPath('p1', 'z'), 'x'], value: 'left' },
    ])
    expect(photosIn(state)[0]?.pins).toEqual([{ id: 'z', number: 0, x: 0.5, y: 0.5 }])
  })
})

describe('leads that a pin may be', () => {
  it('are those of the loads, and of the cable where it ends in the box', () => {
    const survey = {
      loads: [{ id: 'pump-a', label: 'Pump A', leads: [{ id: 'high', function: 'high' }] }],
      supply: {
        cables: [
          { id: 'run', label: 'Run', to: 'box', conductors: [{ id: 'leg1', function: 'leg1' }] },
          { id: 'far', to: 'gf', conductors: [{ id: 'leg1' }] },
        ],
      },
    }
    expect(leadsIn(survey).map(each => [each.end, each.owner, each.carries])).toEqual([
      ['pump-a.high', 'Pump A', 'high'],
      ['run.leg1@box', 'Run', 'leg1'],
    ])
    expect(leadsIn({})).toEqual([])
  })
})
