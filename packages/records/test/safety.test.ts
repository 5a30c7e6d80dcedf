import { heldBack, isSafetyPath, JobLog, SAFETY_PATHS } from '@tubwright/records'
import { describe, expect, it } from 'vitest'
import { copyOf, entryOf, logOf, meet, set } from './support/logs.ts'
import { TUBS } from './support/tubs.ts'

const LOAD = ['survey', 'loads', 'pump-a']
const CABLE = ['survey', 'supply', 'cables', 'run']
const CONDUCTOR = [...CABLE, 'conductors', 'leg1']

describe('safety rests on', () => {
  it.each([
    ['the region', ['survey', 'region']],
    ['the system', ['survey', 'supply', 'system']],
    ['the frequency of the supply', ['survey', 'supply', 'frequency']],
    ['the volts of a load', [...LOAD, 'volts']],
    ['the frequency of a load', [...LOAD, 'frequency']],
    ['the strap that was found', [...LOAD, 'straps', 'found']],
    ['the volts of a strap', [...LOAD, 'straps', 'positions', 'v115', 'volts']],
    ['what a lead does', [...LOAD, 'leads', 'high', 'function']],
    ['the size of a lead', [...LOAD, 'leads', 'high', 'size']],
    ['what a circuit is across', [...LOAD, 'circuits', 'high', 'across']],
    ['the breaker', ['survey', 'supply', 'breaker']],
    ['a device', ['survey', 'supply', 'devices', 'gf', 'device']],
    ['the size of a conductor', [...CONDUCTOR, 'size']],
    ['what a conductor carries', [...CONDUCTOR, 'function']],
    ['the length of a cable', [...CABLE, 'length']],
    ['what moves water through the heater', [...LOAD, 'movesWaterThroughHeater']],
    ['a power factor', [...LOAD, 'circuits', 'high', 'powerFactor']],
    ['the plan that was taken', ['plan', 'taken']],
    ['where a conductor begins', [...CONDUCTOR, 'from']],
    ['where a conductor ends', [...CONDUCTOR, 'to']],
    ['the curve of a probe', ['survey', 'loads', 'probe', 'curve']],
    ['the place of a probe', ['survey', 'loads', 'probe', 'place']],
    ['where an end was landed', ['asBuilt', 'ends', 'pump-a.high']],
    ['a jumper', ['asBuilt', 'jumpers', 'J1']],
    ['a strap as built', ['asBuilt', 'straps', 'pump-a']],
    ['a setting', ['asBuilt', 'settings', 'currentLimit']],
    ['a red stop', ['stops', 'smell']],
    ['a load as a whole', LOAD],
    ['all loads', ['survey', 'loads']],
    ['the survey as a whole', ['survey']],
  ])('%s', (_, path) => expect(isSafetyPath(path)).toBe(true))

  it.each([
    ['the title', ['survey', 'title']],
    ['the note', ['survey', 'note']],
    ['the label of a load', [...LOAD, 'label']],
    ['the colour of a lead', [...LOAD, 'leads', 'high', 'colour']],
    ['the bay', ['survey', 'bay', 'width']],
    ['a note', ['notes', 'n1']],
    ['a photo', ['photos', 'p1', 'hash']],
    ['a tick', ['ticks', 'fit-1']],
    ['the note of a landing', ['asBuilt', 'note']],
  ])('not on %s', (_, path) => expect(isSafetyPath(path)).toBe(false))

  it('paths of the demo tubs, every row of the survey among them', () => {
    const rows = SAFETY_PATHS.filter(({ path }) => path[0] === 'survey')
    const documents = TUBS.map(each => ({ survey: each.document }))
    for (const { path } of rows)
      expect([path, documents.some(each => isIn(each, path))]).toEqual([path, true])
  })
})

/** Whether a document has anything at a pattern. */
function isIn(value: unknown, [step, ...rest]: readonly string[]): boolean {
  if (step === undefined) return value !== undefined
  if (typeof value !== 'object' || value === null) return false
  if (step === '*') return Object.values(value).some(each => isIn(each, rest))
  return isIn((value as Record<string, unknown>)[step], rest)
}

describe('verdicts are held back', () => {
  const conflict = (path: readonly string[]) => {
    const a = logOf('a', set(path, 'x'))
    const b = logOf('b', set(path, 'y'))
    meet(a, b)
    return heldBack(a.state)
  }

  it('by nothing in an empty job, nor in one that agrees', () => {
    expect(heldBack(JobLog.empty('a').state)).toEqual([])
    const a = logOf('a', set(['survey', 'region'], 'US'))
    a.merge(logOf('b', set(['survey', 'region'], 'US')).entries)
    expect(heldBack(a.state)).toEqual([])
  })

  it('by a conflict that safety rests on, and by no other', () => {
    expect(conflict([...LOAD, 'volts'])).toEqual([
      { kind: 'conflict', path: [...LOAD, 'volts'], entries: ['a:1', 'b:1'] },
    ])
    expect(conflict([...LOAD, 'label'])).toEqual([])
  })

  it('by a value over others, where safety rests on any of them', () => {
    const a = logOf('a', set(['survey', 'supply', 'system'], 'split-phase'))
    a.merge(logOf('b', set(['survey', 'supply'], 'none')).entries)
    expect(heldBack(a.state)).toEqual([
      {
        kind: 'shape',
        path: ['survey', 'supply'],
        inside: [['survey', 'supply', 'system']],
      },
    ])
  })

  it('by what is missing, forked or not understood, wherever it is', () => {
    const log = JobLog.open('x', [
      entryOf({ id: 'b:2', act: set(['notes', 'n'], 1) }),
      entryOf({ id: 'c:1', act: set(['notes', 'm'], 1) }),
      entryOf({ id: 'c:1', act: set(['notes', 'o'], 1) }),
      entryOf({ id: 'd:1', act: { do: 'stamp' } }),
    ])
    expect(heldBack(log.state)).toEqual([
      { kind: 'gap', store: 'b', from: 1, to: 1 },
      { kind: 'fork', id: 'c:1', variants: [expect.any(String), expect.any(String)] },
      { kind: 'not-understood', entry: 'd:1', schema: 'entry/1', act: 'stamp' },
    ])
  })

  it('no longer than until somebody decides', () => {
    const a = logOf('a', set(['stops', 'smell'], 'burnt'))
    const b = copyOf(JobLog.empty('b'), 'b')
    b.append(set(['stops', 'smell'], 'none'), { author: 'Ben', at: '2031-05-04T10:20:30Z' })
    meet(a, b)
    expect(heldBack(b.state)).toHaveLength(1)
    b.append(set(['stops', 'smell'], 'burnt'), { author: 'Ben', at: '2031-05-04T10:20:31Z' })
    expect(heldBack(b.state)).toEqual([])
  })
})
