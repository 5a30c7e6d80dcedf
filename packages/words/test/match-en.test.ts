import { readdirSync, readFileSync } from 'node:fs'
import { matchEquipment } from '@tubwright/core'
import { readControlBox, readSupplyDevice, readSurvey } from '@tubwright/formats'
import { describe, expect, it } from 'vitest'
import { tellMatch } from '../src/en/index.ts'
import type { MatchMessage } from '../src/en/match.ts'
import { MATCH_EN } from '../src/en/match.ts'
import { holesOf } from '../src/say.ts'

/** What the stage gives with each message; a name in brackets is given and left unsaid. */
const GIVEN: Readonly<Record<MatchMessage, string>> = {
  'not-for-region': 'region offers',
  'not-for-frequency': 'hertz offers',
  'not-for-system': 'system offers',
  'conductor-missing': 'missing here',
  'high-leg': '',
  'conductor-too-small': 'cable conductor size breaker',
  'terminal-does-not-hold': 'conductor size terminal from to',
  'no-earth-lead': 'load',
  'breaker-too-large': 'breaker largest',
  'no-setting-low-enough': 'share least',
  'too-big': 'width height depth',
  'no-place': 'load kind',
  'probe-does-not-suit': 'load curve',
  'too-many-amps': 'load amps rated',
  'wrong-volts': 'load plate offers',
  'too-few-places': 'loads',
  'no-profile-moves-water': '',
  'ask-breaker': '',
  'ask-amps': 'load circuit',
  'narrow-amps': 'load circuit',
  'ask-keypad': 'box',
  'ask-keypad-maker': 'load box',
  'needs-region': 'region',
  'needs-frequency': 'hertz',
  'needs-system': 'system',
  'brings-conductors': 'here',
  'brings-high-leg': '',
  'brings-small-conductor': 'cable conductor size breaker',
  'brings-size': 'conductor size',
  'needs-no-earth': 'load',
  'has-breaker': 'breaker',
  'needs-current-limit': 'share',
  'has-room': 'width height depth',
  'needs-load-served': 'load plate',
  'needs-probe-read': 'load plate',
  'needs-own-places': 'count',
  'needs-moving-water': '',
}

const stage = new URL('../../core/src/stages/match/', import.meta.url)
const used = readdirSync(stage).flatMap(name =>
  [...readFileSync(new URL(name, stage), 'utf8').matchAll(/message:\s*([^{}\n]*)/gu)]
    .flatMap(each => [...(each[1] ?? '').matchAll(/'([a-z]+(?:-[a-z]+)+)'/gu)])
    .map(each => each[1] ?? ''),
)

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

describe('the sentence of every match', () => {
  it('stands for every message of the stage, and none is left over', () => {
    expect([...new Set(used)].sort()).toEqual(Object.keys(MATCH_EN).sort())
  })

  it.each(Object.keys(MATCH_EN) as MatchMessage[])('%s says all that it is given', message => {
    expect([...holesOf(MATCH_EN[message])].sort()).toEqual(
      GIVEN[message].split(' ').filter(Boolean).sort(),
    )
  })

  it('is whole for every tub with every box of the demo', () => {
    const devices = new Map(readAll('devices', readSupplyDevice).map(each => [each.id, each]))
    const boxes = readAll('boxes', readControlBox)
    const tubs = readAll('tubs', (file, text) => readSurvey(file, text, devices))
    const all = tubs.flatMap(tub => {
      // Without the boxes that may serve, something must stand in conflict.
      const { boxes: matches } = matchEquipment(tub, boxes)
      const cannot = matches.filter(each => each.verdict === 'cannot').map(each => each.box)
      const rest = matchEquipment(
        tub,
        boxes.filter(each => cannot.includes(each.id)),
      )
      return [...matches.flatMap(each => [...each.shortfalls, ...each.open]), ...rest.conflict]
    })
    for (const each of all) {
      const given = GIVEN[each.message as MatchMessage].split(' ').filter(Boolean)
      expect([each.message, ...Object.keys(each.params).sort()]).toEqual([
        each.message,
        ...given.toSorted(),
      ])
      expect(tellMatch(each)).not.toMatch(/[{}]|undefined|NaN|–|\.\.| {2}|-0 /u)
    }
    expect(new Set(all.map(each => each.message)).size).toBeGreaterThanOrEqual(15)
  })
})
