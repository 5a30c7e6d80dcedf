import type { WireLanding } from '@tubwright/formats'
import type { Act, JobState, Json } from '@tubwright/records'
import { heldBack, JobLog, must } from '@tubwright/records'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Done } from '../../src/screens/wiring/acts.ts'
import {
  backTo,
  moveEnd,
  moveJumper,
  stillStands,
  tickEnd,
  tickedIn,
} from '../../src/screens/wiring/acts.ts'
import {
  differing,
  isAsPlannedIn,
  laidOver,
  NOTHING_MOVED,
} from '../../src/screens/wiring/as-built.ts'
import type { Taken } from '../../src/screens/wiring/use-landing.ts'
import { takenIn } from '../../src/screens/wiring/use-landing.ts'

const PLAN: WireLanding = {
  schema: 'landing/1',
  survey: 'tub',
  box: 'heron-4',
  ends: { 'run.leg1@box': 'box.A1', 'pump.hot': 'box.B1', 'pump.common': 'box.B3' },
  jumpers: { J1: 'at-120' },
  straps: {},
  settings: { profile: 'one', currentLimit: '40 A' },
  adapters: {},
}
const ENDS = Object.keys(PLAN.ends)
const PLACES = ['box.A1', 'box.B1', 'box.B3', 'box.C2', 'insulated', 'loose']
const HAND = { author: 'Somebody', at: '2026-05-01T08:00:00.000Z' }

function logWith(...acts: readonly Act[]): JobLog {
  const log = JobLog.empty('here')
  const value = { box: 'heron-4', landing: PLAN } as unknown as Json
  must(log.append([{ do: 'set', path: ['plan', 'taken'], value }, ...acts], HAND))
  return log
}

const takenOf = (state: JobState): Taken => {
  const taken = takenIn(state)
  if (!taken) throw new Error('no plan is taken')
  return taken
}

const write = (log: JobLog, acts: readonly Act[]): void => {
  if (acts.length > 0) must(log.append(acts, HAND))
}

const places = fc.dictionary(fc.constantFrom(...ENDS, 'gone.lead'), fc.constantFrom(...PLACES))

describe('what is as built, laid over the plan', () => {
  test('is the plan where nothing was said', () => {
    expect(laidOver(PLAN, NOTHING_MOVED)).toEqual(PLAN)
    expect(isAsPlannedIn(PLAN, NOTHING_MOVED)).toBe(true)
  })

  test('has every end of the plan and no other, each as found or else as planned', () => {
    fc.assert(
      fc.property(places, ends => {
        const laid = laidOver(PLAN, { ends, jumpers: {} })
        expect(Object.keys(laid.ends)).toEqual(ENDS)
        for (const end of ENDS) expect(laid.ends[end]).toBe(ends[end] ?? PLAN.ends[end])
        expect({ ...laid, ends: PLAN.ends }).toEqual(PLAN)
      }),
    )
  })

  test('laid over twice is the same, and as planned exactly where it differs in nothing', () => {
    fc.assert(
      fc.property(places, ends => {
        const once = laidOver(PLAN, { ends, jumpers: {} })
        expect(laidOver(once, { ends, jumpers: {} })).toEqual(once)
        const isSame = ENDS.every(each => once.ends[each] === PLAN.ends[each])
        expect(isAsPlannedIn(PLAN, { ends, jumpers: {} })).toBe(isSame)
        expect(differing(PLAN.ends, ends).length === 0).toBe(isSame)
      }),
    )
  })
})

describe('what is written down', () => {
  test('no plan: nothing is taken', () => {
    expect(takenIn(JobLog.empty('here').state)).toBeUndefined()
  })

  test('a move is said; back where the plan has it, nothing is said any more', () => {
    const log = logWith()
    write(log, moveEnd(log.state, takenOf(log.state), 'pump.hot', 'box.C2'))
    expect(takenOf(log.state).landing.ends['pump.hot']).toBe('box.C2')
    expect(takenOf(log.state).asBuilt.ends).toEqual({ 'pump.hot': 'box.C2' })
    expect(takenOf(log.state).isAsPlanned).toBe(false)
    write(log, moveEnd(log.state, takenOf(log.state), 'pump.hot', 'box.B1'))
    expect(takenOf(log.state).asBuilt).toEqual(NOTHING_MOVED)
    expect(takenOf(log.state).isAsPlanned).toBe(true)
    expect(moveEnd(log.state, takenOf(log.state), 'pump.hot', 'box.B1')).toEqual([])
  })

  test('a jumper likewise', () => {
    const log = logWith()
    write(log, moveJumper(log.state, takenOf(log.state), 'J1', 'at-240'))
    expect(takenOf(log.state).landing.jumpers).toEqual({ J1: 'at-240' })
    write(log, moveJumper(log.state, takenOf(log.state), 'J1', 'at-120'))
    expect(takenOf(log.state).isAsPlanned).toBe(true)
  })

  test('a tick goes when its end is moved: it was of another place', () => {
    const log = logWith()
    write(log, tickEnd(log.state, takenOf(log.state), 'pump.hot', true))
    expect([...tickedIn(log.state, takenOf(log.state))]).toEqual(['pump.hot'])
    write(log, moveEnd(log.state, takenOf(log.state), 'pump.hot', 'loose'))
    expect([...tickedIn(log.state, takenOf(log.state))]).toEqual([])
    expect(tickEnd(log.state, takenOf(log.state), 'pump.hot', false)).toEqual([])
  })

  test('any row of steps is taken back one by one, to what was said before each', () => {
    const step = fc.oneof(
      fc.record({
        kind: fc.constant('move' as const),
        end: fc.constantFrom(...ENDS),
        to: fc.constantFrom(...PLACES),
      }),
      fc.record({
        kind: fc.constant('tick' as const),
        end: fc.constantFrom(...ENDS),
        to: fc.boolean(),
      }),
    )
    fc.assert(
      fc.property(fc.array(step, { maxLength: 8 }), steps => {
        const log = logWith()
        const seen: { said: unknown; done: Done }[] = []
        const said = () => [
          takenOf(log.state).asBuilt,
          [...tickedIn(log.state, takenOf(log.state))].sort(),
        ]
        for (const each of steps) {
          const before = log.state
          const acts =
            each.kind === 'move'
              ? moveEnd(before, takenOf(before), each.end, each.to)
              : tickEnd(before, takenOf(before), each.end, each.to)
          if (acts.length === 0) continue
          seen.push({
            said: said(),
            done: { kind: 'moved', what: each.end, acts, back: backTo(before, acts) },
          })
          write(log, acts)
        }
        for (const { said: earlier, done } of seen.reverse()) {
          expect(stillStands(log.state, done)).toBe(true)
          write(log, done.back)
          expect(said()).toEqual(earlier)
        }
        expect(takenOf(log.state).isAsPlanned).toBe(true)
      }),
      { numRuns: 60 },
    )
  })

  test('what somebody said since is not taken back unseen', () => {
    const log = logWith()
    const acts = moveEnd(log.state, takenOf(log.state), 'pump.hot', 'loose')
    const done: Done = { kind: 'moved', what: 'pump.hot', acts, back: backTo(log.state, acts) }
    write(log, acts)
    write(log, moveEnd(log.state, takenOf(log.state), 'pump.hot', 'insulated'))
    expect(stillStands(log.state, done)).toBe(false)
  })
})

describe('two copies of a job', () => {
  test('that say different things of one end: the plan is shown, and every verdict held back', () => {
    const one = logWith()
    const other = JobLog.open('there', one.entries)
    write(one, moveEnd(one.state, takenOf(one.state), 'pump.hot', 'box.C2'))
    write(other, moveEnd(other.state, takenOf(other.state), 'pump.hot', 'loose'))
    one.merge(other.entries)
    expect(takenOf(one.state).landing.ends['pump.hot']).toBe('box.B1')
    expect(heldBack(one.state).map(each => each.kind)).toContain('conflict')
  })

  test('that took different plans: somebody has to decide', () => {
    const one = logWith()
    const other = JobLog.open('there', one.entries)
    const take = (box: string): Act => ({
      do: 'set',
      path: ['plan', 'taken'],
      value: { box, landing: { ...PLAN, box } } as unknown as Json,
    })
    write(one, [take('rowan-2')])
    write(other, [take('bittern-8')])
    one.merge(other.entries)
    expect(takenOf(one.state).isContested).toBe(true)
  })
})
