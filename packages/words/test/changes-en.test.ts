import { readdirSync, readFileSync } from 'node:fs'
import type { BoxChanges, Change, Shortfall } from '@tubwright/core'
import { cheapestChanges } from '@tubwright/core'
import { readControlBox, readSupplyDevice, readSurvey } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import type { ChangeMessage, ChangesMessage, SupplyMessage } from '../src/en/changes.ts'
import {
  ANOTHER_EN,
  CHANGE_EN,
  CHANGES_EN,
  STOPPED_EN,
  SUPPLY_EN,
  TO_GET_EN,
} from '../src/en/changes.ts'
import { tellChange, tellChanges, tellOutcome } from '../src/en/index.ts'
import { holesOf } from '../src/say.ts'

/** What is given with each sentence. */
const GIVEN: Readonly<Record<ChangeMessage, string>> = {
  replace: 'load another to from',
  'replace-earthed': 'load another',
  'replace-earthed-too': 'load another to from',
  'from-carton': 'load to',
  'new-keypad': 'load to',
  'new-keypad-and-plate': 'load to',
  'leave-out': 'load',
  adapter: 'load plug',
  'adapter-bare': 'load',
  'blanking-plate': 'width height ownWidth ownHeight',
}
const GIVEN_OF_SET: Readonly<Record<ChangesMessage, string>> = {
  holds: 'cost',
  waits: 'cost',
  'not-tried': 'cost',
  along: '',
  'only-supply': 'which',
  'not-supply-alone': 'which',
  'nothing-helps': 'which',
  unmended: 'which',
  none: 'considered',
  'no-plan': 'tried',
}

const data = new URL('../../catalog/data/', import.meta.url)
const readAll = <Value>(
  folder: string,
  read: (file: string, text: string) => { readonly value?: Value },
): readonly Value[] =>
  readdirSync(new URL(`${folder}/`, data))
    .filter(name => name.endsWith('.yaml'))
    .flatMap(name => {
      const { value } = read(name, readFileSync(new URL(`${folder}/${name}`, data), 'utf8'))
      return value === undefined ? [] : [value]
    })

const stage = (name: string): string =>
  readFileSync(new URL(`../../core/src/stages/match/${name}`, import.meta.url), 'utf8')

const WHOLE = /[{}]|undefined|NaN|–|\.\.| {2}|-0 |, ,| of ,/u
const ofLoad = { load: 'x', label: 'X', cost: 1 }

const given = (text: string): readonly string[] => text.split(' ').filter(Boolean).sort()

describe('the sentences of changes', () => {
  it.each(Object.keys(CHANGE_EN) as ChangeMessage[])('%s says all that it is given', message =>
    expect([...holesOf(CHANGE_EN[message])].sort()).toEqual(given(GIVEN[message])),
  )

  it.each(Object.keys(CHANGES_EN) as ChangesMessage[])('%s says all that it is given', message =>
    expect([...holesOf(CHANGES_EN[message])].sort()).toEqual(given(GIVEN_OF_SET[message])),
  )

  it('has one for every kind of change and every limit of the stage, and none is left over', () => {
    const artifact = stage('artifact.ts')
    const kinds = [...artifact.matchAll(/readonly kind: '([a-z-]+)'/gu)].map(each => each[1] ?? '')
    expect([...new Set(kinds)].sort()).toEqual(Object.keys(TO_GET_EN).sort())
    const limits = /readonly of: ('sets'[^\n]*)/u.exec(artifact)?.[1]?.match(/[a-z]+/gu)
    expect(limits?.toSorted()).toEqual(Object.keys(STOPPED_EN).sort())
    const kindsOfLoad = Object.keys(ANOTHER_EN)
    expect(kindsOfLoad.length).toBe(10)
  })

  it('names a change of the supply for every shortfall that only the supply mends', () => {
    const messages = [
      ...stage('requirements.ts').matchAll(
        /message: '(not-for-[a-z]+|conductor-missing|high-leg|conductor-too-small|terminal-does-not-hold|breaker-too-large|no-setting-low-enough)'/gu,
      ),
    ].map(each => each[1] ?? '')
    expect([...new Set(messages)].sort()).toEqual(
      (Object.keys(SUPPLY_EN) as SupplyMessage[]).toSorted(),
    )
  })

  it.each<[Change, string]>([
    [
      { kind: 'replace', of: 'ozonator', from: { volts: 120 }, to: { volts: 240 }, ...ofLoad },
      'X: an ozonator of 240 V, for the one of 120 V.',
    ],
    [
      {
        kind: 'replace',
        of: 'light',
        from: { volts: 24, current: 'ac', amps: 3 },
        to: { volts: 12, current: 'dc', amps: 2 },
        ...ofLoad,
      },
      'X: a light of 12 V, at most 2 A, direct current, for the one of 24 V, 3 A, alternating current.',
    ],
    [
      { kind: 'replace', of: 'probe', from: { curve: '30k' }, to: { curve: '10k' }, ...ofLoad },
      'X: a probe of curve 10k, for the one of curve 30k.',
    ],
    [
      { kind: 'replace', of: 'blower', from: { earthed: false }, to: { earthed: true }, ...ofLoad },
      'X: a blower with an earth lead, for the one without.',
    ],
    [
      { kind: 'from-carton', of: 'heater', to: 'Heater of the box', ...ofLoad },
      'X: “Heater of the box” out of the carton in its place.',
    ],
    [{ kind: 'leave-out', ...ofLoad }, 'Leave X out: it stays without supply, its leads capped.'],
    [{ kind: 'adapter', ...ofLoad }, 'X: a plug for its bare leads.'],
  ])('%o', (change, told) => expect(tellChange(change)).toBe(told))

  it('says “new keypad and blanking plate” where both come', () => {
    const keypad: Change = { kind: 'from-carton', of: 'keypad', to: 'Keypad', ...ofLoad }
    const sizes = { width: 0.12, height: 0.06, ownWidth: 0.1, ownHeight: 0.05 }
    const plate: Change = { kind: 'blanking-plate', ...ofLoad, ...sizes }
    expect(tellChanges([keypad, plate])[0]?.told).toContain('new keypad and blanking plate')
    expect(tellChanges([keypad])[0]?.told).not.toContain('plate')
  })

  it('are whole for every tub with every box of the demo', () => {
    const devices = new Map(readAll('devices', readSupplyDevice).map(each => [each.id, each]))
    const boxes = readAll('boxes', readControlBox)
    const outcomes = new Set<string>()
    for (const tub of readAll('tubs', (file, text) => readSurvey(file, text, devices)))
      for (const box of boxes) {
        const changes: BoxChanges = cheapestChanges(tub, box)
        outcomes.add(changes.outcome)
        const lines = [
          ...tellOutcome(changes),
          ...(changes.outcome === 'found'
            ? tellChanges([...changes.changes, ...changes.along]).map(each => each.told)
            : []),
        ]
        expect(lines.length).toBeGreaterThan(0)
        for (const line of lines) expect(line).not.toMatch(WHOLE)
      }
    expect([...outcomes].sort()).toEqual(['found', 'none', 'out-of-reach'])
  })

  it('are whole where a search stopped or no plan holds', () => {
    const search = { considered: 7 }
    const shortfall: Shortfall = {
      requirement: 'room',
      message: 'too-big',
      subjects: [],
      params: { width: 0.1, height: 0.1, depth: 0.1 },
    }
    const all: readonly BoxChanges[] = [
      ...(['sets', 'plans', 'solves'] as const).map(
        of => ({ outcome: 'limit-reached', of, limit: 9, search }) as const,
      ),
      { outcome: 'no-plan', tried: 3, search },
      { outcome: 'none', unmended: [], search },
      { outcome: 'out-of-reach', supply: [], others: [shortfall] },
    ]
    for (const each of all) for (const line of tellOutcome(each)) expect(line).not.toMatch(WHOLE)
    expect(tellOutcome(all[0] as BoxChanges).join()).toContain('proves nothing')
  })
})
