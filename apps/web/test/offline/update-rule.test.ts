import fc from 'fast-check'
import { expect, test } from 'vitest'
import { leave, wasLeft } from '../../src/offline/left-versions.ts'
import type { UpdateAct, UpdateEvent, UpdateState } from '../../src/offline/update-rule.ts'
import { startOfUpdates, stepUpdate } from '../../src/offline/update-rule.ts'

const seen = { hidden: false, spent: false }

/** What is done after each event, in turn. */
function actsOf(events: readonly UpdateEvent[], start = seen): readonly (UpdateAct | undefined)[] {
  let state = startOfUpdates(start)
  return events.map(event => {
    const step = stepUpdate(state, event)
    state = step.state
    return step.act
  })
}

const lastAct = (...events: UpdateEvent[]): UpdateAct | undefined => actsOf(events).at(-1)

test('takes what waits at a cold start at once, before the app can be used', () => {
  expect(actsOf(['waiting', 'replaced'])).toEqual(['take-over', 'reload'])
})

test('leaves a page alone that is looked at', () => {
  expect(lastAct('started', 'waiting')).toBeUndefined()
})

test('renews a page that is hidden and holds nothing', () => {
  expect(actsOf(['started', 'waiting', 'hidden', 'replaced'])).toEqual([
    undefined,
    undefined,
    'take-over',
    'reload',
  ])
})

test('renews nothing while one screen of two still holds, and does once both let go', () => {
  const held: UpdateEvent[] = ['started', 'held', 'held', 'waiting', 'hidden', 'released']
  expect(lastAct(...held)).toBeUndefined()
  expect(lastAct(...held, 'released')).toBe('take-over')
})

test('waits with the reload when somebody comes back in between', () => {
  const back: UpdateEvent[] = ['started', 'waiting', 'hidden', 'shown', 'held', 'replaced']
  expect(lastAct(...back)).toBeUndefined()
  expect(lastAct(...back, 'hidden')).toBeUndefined()
  expect(lastAct(...back, 'hidden', 'released')).toBe('reload')
})

test('asks again after another page declined, but only when something happens', () => {
  const declined: UpdateEvent[] = ['started', 'waiting', 'hidden', 'declined']
  expect(lastAct(...declined)).toBeUndefined()
  expect(lastAct(...declined, 'shown', 'hidden')).toBe('take-over')
})

test('asks once and reloads once', () => {
  expect(actsOf(['waiting', 'waiting', 'hidden', 'replaced', 'replaced', 'hidden'])).toEqual([
    'take-over',
    undefined,
    undefined,
    'reload',
    undefined,
    undefined,
  ])
})

const anyEvents = fc.array(
  fc.constantFrom<UpdateEvent>(
    'waiting',
    'started',
    'hidden',
    'shown',
    'held',
    'released',
    'replaced',
    'declined',
  ),
  { maxLength: 60 },
)

test('whatever happens: nothing is done under a hold, nor under a look', () => {
  fc.assert(
    fc.property(anyEvents, fc.boolean(), (events, hidden) => {
      let state: UpdateState = startOfUpdates({ hidden, spent: false })
      for (const event of events) {
        const { state: after, act } = stepUpdate(state, event)
        if (act) expect(after.holds === 0 && (after.hidden || !after.started)).toBe(true)
        state = after
      }
    }),
    { seed: 11, numRuns: 2000 },
  )
})

test('whatever happened: what waits is taken at the next idle moment', () => {
  fc.assert(
    fc.property(anyEvents, events => {
      let state: UpdateState = startOfUpdates(seen)
      for (const event of events) state = stepUpdate(state, event).state
      const left: UpdateEvent[] = Array.from({ length: state.holds }, () => 'released')
      const acts: (UpdateAct | undefined)[] = []
      for (const event of [...left, 'declined', 'waiting', 'hidden'] as UpdateEvent[]) {
        const step = stepUpdate(state, event)
        acts.push(step.act)
        state = step.state
      }
      expect(state.reloading || state.asked || acts.includes('take-over')).toBe(true)
    }),
    { seed: 12, numRuns: 2000 },
  )
})

/** A tab's memory, as a browser keeps it over reloads. */
function memory() {
  const kept = new Map<string, string>()
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  }
}

/** Opens a page again and again on a host that has two versions and never gives the one it has. */
function reloadsOnARestlessHost(remembers: ReturnType<typeof memory> | 'no guard'): number {
  const guard = remembers === 'no guard' ? undefined : remembers
  let version = 'A'
  for (let reloads = 0; reloads < 100; reloads++) {
    const spent = guard ? wasLeft(guard, version) : false
    let state = startOfUpdates({ hidden: false, spent })
    const acts = (['waiting', 'replaced', 'started', 'hidden'] as const).map(event => {
      const step = stepUpdate(state, event)
      state = step.state
      return step.act
    })
    if (!acts.includes('reload')) return reloads
    if (guard) leave(guard, version)
    version = version === 'A' ? 'B' : 'A'
  }
  return Number.POSITIVE_INFINITY
}

test('a host that sends versions back and forth causes no loop of reloads', () => {
  expect(reloadsOnARestlessHost(memory())).toBe(2)
  // The same without the guard never ends, so it is the guard that ends it.
  expect(reloadsOnARestlessHost('no guard')).toBe(Number.POSITIVE_INFINITY)
})

test('without a memory there is no reload at all, since nothing would end a loop', () => {
  expect(wasLeft(undefined, 'A')).toBe(true)
  const broken = { ...memory(), getItem: () => 'no JSON' }
  expect(wasLeft(broken, 'A')).toBe(true)
  expect(actsOf(['waiting', 'replaced', 'hidden'], { hidden: false, spent: true })).toEqual([
    undefined,
    undefined,
    undefined,
  ])
})
