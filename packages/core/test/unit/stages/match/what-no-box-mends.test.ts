import { describe, expect, test } from 'vitest'
import type { Survey } from '../../../../src/index.ts'
import { conductorSize, matchEquipment, planRefit } from '../../../../src/index.ts'
import { demoBoxes, demoDevices, demoTub } from '../../../support/demo.ts'

const everyday = demoTub('everyday-240-circulation')

const withRun = (text: string): Survey => ({
  ...everyday,
  supply: {
    ...everyday.supply,
    cables: everyday.supply.cables.map(cable => ({
      ...cable,
      conductors: cable.conductors.map(each =>
        each.function === 'earth' ? each : { ...each, size: conductorSize.parse(text) },
      ),
    })),
  },
})

const reasons = (survey: Survey) =>
  matchEquipment(survey, demoBoxes()).boxes.map(box => box.shortfalls.map(each => each.message))

describe('a run too small for its breaker', () => {
  test('14 AWG behind 50 A: no box, each with that reason, and no plan', () => {
    const survey = withRun('14 AWG')
    for (const each of reasons(survey)) expect(each).toContain('conductor-too-small')
    expect(planRefit(survey, demoBoxes(), demoDevices).plans).toEqual([])
  })
  test('it is the whole conflict', () =>
    expect(matchEquipment(withRun('14 AWG'), demoBoxes()).conflict).toMatchObject([
      { message: 'brings-small-conductor' },
    ]))
  test('8 AWG serves', () =>
    expect(reasons(withRun('8 AWG')).flat()).not.toContain('conductor-too-small'))
})

test('a conductor that the feed terminals do not hold', () => {
  const told = reasons(withRun('1 AWG'))
  expect(told.flat().filter(each => each === 'terminal-does-not-hold').length).toBeGreaterThan(0)
})

describe('a mains load without an earth lead', () => {
  const withOzonator = (doubleInsulated: boolean): Survey => ({
    ...everyday,
    loads: everyday.loads.map(each =>
      each.kind === 'ozonator'
        ? { ...each, doubleInsulated, leads: each.leads.filter(lead => lead.function !== 'earth') }
        : each,
    ),
  })
  test('no box serves it as it is', () => {
    for (const each of reasons(withOzonator(false))) expect(each).toContain('no-earth-lead')
  })
  test('double insulated it needs none', () =>
    expect(reasons(withOzonator(true)).flat()).not.toContain('no-earth-lead'))
})
