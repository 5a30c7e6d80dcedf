import { describe, expect, test } from 'vitest'
import type { BoxChanges, ChangeOptions, ControlBox, Load, Survey } from '../../../../src/index.ts'
import {
  CHANGE_COSTS,
  changeAndProve,
  cheapestChanges,
  matchEquipment,
  matchWithChanges,
  planRefit,
  withChanges,
} from '../../../../src/index.ts'
import {
  amps,
  maySo,
  OLD_KEYPAD,
  probe,
  told,
  volts,
  withLoad,
  withMore,
} from '../../../support/changing.ts'
import { demoBox, demoBoxes, demoDevices, demoTub } from '../../../support/demo.ts'

const plain = demoTub('everyday-240-plain')
const everyday = demoTub('everyday-240-circulation')
const noNeutral = demoTub('no-box-120-ozonator-no-neutral')
const alder = demoBox('alder-240')
const heron = demoBox('heron-4')

function found(survey: Survey, box: ControlBox, options?: ChangeOptions) {
  const changes = cheapestChanges(survey, box, options)
  if (changes.outcome !== 'found') throw new Error(JSON.stringify(changes))
  return changes
}

const setOf = (survey: Survey, box: ControlBox, options?: ChangeOptions) =>
  told(found(survey, box, options).changes)

const [ozonator] = noNeutral.loads.filter(each => each.kind === 'ozonator')
const [light] = everyday.loads.filter(each => each.kind === 'light')
if (!ozonator || !light) throw new Error('no ozonator, no light')

describe('the demo tub that no box serves', () => {
  test('an ozonator of 240 V is the cheapest change, and the plan with it holds', () => {
    const { changes, proven } = changeAndProve(noNeutral, alder, demoDevices)
    if (changes.outcome !== 'found') throw new Error(changes.outcome)
    expect(changes.proof).toBe('holds')
    expect(changes.changes).toEqual([
      {
        kind: 'replace',
        load: 'ozonator',
        label: 'Ozonator',
        of: 'ozonator',
        from: { volts: 120 },
        to: { volts: 240 },
        cost: CHANGE_COSTS.ozonator,
      },
    ])
    expect(proven?.verification.holds).toBe(true)
    expect(proven?.plan.score).toMatchObject({ replaced: 1, leftOut: 0 })
    expect(proven?.plan.changes.map(each => each.kind)).toContain('replace')
  })

  test('where the neutral is missing only the supply would help, and which part of it', () => {
    const match = matchWithChanges(noNeutral, demoBoxes(), demoDevices)
    const of = (id: string) => match.boxes.find(each => each.box === id)?.changes
    expect(of('alder-240')?.outcome).toBe('found')
    for (const id of ['heron-4', 'dunlin-208', 'whimbrel-4']) {
      const changes = of(id)
      if (changes?.outcome !== 'out-of-reach') throw new Error(`${id} ${changes?.outcome}`)
      expect(changes.supply.map(each => each.message)).toEqual(['conductor-missing'])
      expect(changes.others).toEqual([])
    }
    expect(match.boxes.filter(each => each.changes?.outcome === 'found')).toHaveLength(1)
  })

  test('a box that is too big besides says that the supply is not enough', () => {
    expect(cheapestChanges(noNeutral, demoBox('rowan-2'))).toMatchObject({
      outcome: 'out-of-reach',
      supply: [{ message: 'conductor-missing' }],
      others: [{ message: 'too-big' }],
    })
  })
})

describe('each kind of change', () => {
  test('other volts: one for each load that needs it', () =>
    expect(setOf(everyday, alder)).toEqual([
      'circulation replace {"volts":240}',
      'ozonator replace {"volts":240}',
    ]))

  test('fewer amps: at most what the contacts carry', () => {
    const survey = withLoad(plain, 'pump-b', {
      circuits: [{ id: 'run', across: ['hot', 'common'], amps: amps(18), powerFactor: 0.9 }],
    })
    expect(maySo(survey, heron, [])).toBe(false)
    expect(setOf(survey, heron)).toEqual(['pump-b replace {"amps":16}'])
    const [load] = withChanges(survey, found(survey, heron).changes).loads.filter(
      each => each.id === 'pump-b',
    )
    expect(load && 'circuits' in load && load.circuits[0]?.amps).toEqual(amps(16))
  })

  test('another kind of current', () => {
    const survey = withLoad(demoTub('wye-208'), 'light', { current: 'dc' })
    expect(setOf(survey, demoBox('dunlin-208'))).toEqual(['light replace {"current":"ac"}'])
  })

  test('a probe of the curve that the input wants, or the one of the carton: the cheaper', () => {
    const survey = withMore(plain, probe('30k'))
    expect(setOf(survey, heron)).toEqual(['own-probe from-carton "Water probe of the box"'])
    expect(setOf(survey, heron, { costs: { 'from-carton': 9 } })).toEqual([
      'own-probe replace {"curve":"10k"}',
    ])
  })

  test('the heater of the carton in the place of the tub’s own', () => {
    const [heater] = demoBox('heron-4').supplied.filter(each => each.kind === 'heater')
    const own = { ...heater, id: 'own-heater', label: 'Own heater', volts: volts(120) } as Load
    const survey = withMore(plain, own)
    expect(setOf(survey, alder)[0]).toMatch(/^own-heater from-carton /u)
  })

  test('one of two probes at one place is not left out by taking that of the carton', () => {
    const survey = withMore(plain, probe('30k', 'first'), probe('30k', 'second'))
    expect(cheapestChanges(survey, heron).outcome).toBe('none')
  })

  test('a load left out where nothing of its kind has a place', () =>
    expect(setOf(demoTub('everyday-120-plain'), demoBox('plover-1'))).toEqual(['pump-b leave-out']))

  test('a load with an earth lead for one without', () => {
    const leads = everyday.loads
      .find(each => each.id === 'ozonator')
      ?.leads.filter(each => each.function !== 'earth')
    const survey = withLoad(everyday, 'ozonator', {
      leads,
      plug: undefined,
      doubleInsulated: false,
    })
    expect(setOf(survey, heron)).toEqual(['ozonator replace {"earthed":true}'])
  })

  test('a dual-voltage motor is re-strapped for nothing', () => {
    const survey = demoTub('strapped-115')
    expect(setOf(survey, alder).join()).not.toContain('pump-a')
  })

  test('a plug by an adapter, the keypad’s hole by a plate; both counted', () => {
    const { along, cost, changes } = found(noNeutral, alder)
    expect(along.map(each => `${each.load} ${each.kind}`)).toEqual([
      'ozonator adapter',
      'light adapter',
      'keypad blanking-plate',
    ])
    expect(cost).toBe([...changes, ...along].reduce((sum, each) => sum + each.cost, 0))
  })
})

describe('the keypad', () => {
  const survey = withMore(plain, OLD_KEYPAD)
  const without = (box: ControlBox): ControlBox => ({
    ...box,
    supplied: box.supplied.filter(each => each.kind !== 'keypad'),
  })

  test('of another maker is never used again: the one of the box, and a plate', () => {
    const { along, changes } = found(survey, heron)
    expect(changes).toEqual([])
    expect(along.map(each => each.kind)).toEqual(['from-carton', 'blanking-plate'])
    expect(along[0]).toMatchObject({ load: 'old-keypad', of: 'keypad', to: 'Keypad of the box' })
  })

  test('does not count as replaced, and the plan has the new one alone', () => {
    const { plans } = planRefit(survey, [heron], demoDevices, undefined, undefined, {
      withChanges: true,
    })
    expect(plans[0]?.plan.score.replaced).toBe(0)
    const loads = plans[0]?.plan.assignments.map(each => each.load)
    expect(loads).toContain('keypad')
    expect(loads).not.toContain('old-keypad')
  })

  test.each([
    ['neither side has one', plain, 'ask-keypad'],
    [
      'the tub’s own may be another maker’s',
      withLoad(survey, 'old-keypad', { volts: volts(12) }),
      'ask-keypad-maker',
    ],
  ] as const)('%s: the open question', (_, tub, message) => {
    const [box] = matchEquipment(tub, [without(heron)]).boxes
    expect(box?.verdict).toBe('may-serve')
    expect(box?.open.map(each => each.message)).toContain(message)
  })
})

describe('what no change may do', () => {
  test('mains in the place of extra-low volts: the light goes out instead', () => {
    const changes = setOf(demoTub('garden-230'), demoBox('curlew-400'))
    expect(changes).toContain('light leave-out')
    expect(changes.join()).not.toContain('light replace')
  })

  test('leave out the pump that moves water through the heater, a probe, a heater', () => {
    const cheapLoss: ChangeOptions = { costs: { 'leave-out': 0 } }
    const changes = cheapestChanges(everyday, demoBox('dunlin-208'), cheapLoss)
    expect(changes).toMatchObject({ outcome: 'none', unmended: [{ subjects: ['circulation'] }] })
  })

  test.each([
    ['region', { region: 'UK' }, 'not-for-region'],
    ['high-leg', {}, 'high-leg'],
  ] as const)('touch the supply: %s', (_, change, message) => {
    const survey = { ...(message === 'high-leg' ? demoTub('high-leg') : plain), ...change }
    const changes = cheapestChanges(survey as Survey, heron)
    expect(changes.outcome).toBe('out-of-reach')
    expect(JSON.stringify(changes)).toContain(message)
  })

  test('change the survey it was given', () => {
    const before = JSON.stringify(noNeutral)
    const changed = withChanges(noNeutral, found(noNeutral, alder).changes)
    expect(JSON.stringify(noNeutral)).toBe(before)
    expect(changed.supply).toBe(noNeutral.supply)
    expect(changed.loads.filter(each => each.id !== 'ozonator')).toEqual(
      noNeutral.loads.filter(each => each.id !== 'ozonator'),
    )
  })
})

describe('limits and costs', () => {
  test('a search that stops says so, and where', () => {
    expect(cheapestChanges(everyday, alder, { limits: { sets: 1 } })).toEqual({
      outcome: 'limit-reached',
      of: 'sets',
      limit: 1,
      search: { considered: 1 },
    })
    const stopped = (changes: BoxChanges) =>
      changes.outcome === 'limit-reached' ? changes.of : changes.outcome
    const noPlans = changeAndProve(noNeutral, alder, demoDevices, { limits: { plans: 0 } })
    expect(stopped(noPlans.changes)).toBe('plans')
    const noSolves = changeAndProve(noNeutral, alder, demoDevices, {}, { solves: 0 })
    expect(stopped(noSolves.changes)).toBe('solves')
  })

  test('a caller’s costs decide', () =>
    expect(setOf(noNeutral, alder, { costs: { ozonator: 60 } })).toEqual(['ozonator leave-out']))

  test('a cost below nothing is a programmer’s error', () =>
    expect(() => cheapestChanges(noNeutral, alder, { costs: { ozonator: -1 } })).toThrow())

  test('of the same cost the fewest, then by name', () => {
    const set = setOf(withMore(plain, probe('30k')), heron, {
      costs: { 'from-carton': 2, probe: 1, adapter: 1 },
    })
    // A probe of the right curve and a plug for it cost what the one of the carton does, alone.
    expect(set).toEqual(['own-probe from-carton "Water probe of the box"'])
  })

  test('none of the sets leads to a plan that holds: said, with how many were tried', () => {
    const survey: Survey = {
      ...noNeutral,
      loads: noNeutral.loads.map(each =>
        each.kind === 'light'
          ? {
              ...each,
              circuits: each.circuits.map(circuit => ({
                ...circuit,
                power: { kind: 'known' as const, value: { si: 500 as never, text: '500 W' } },
              })),
            }
          : each,
      ),
    }
    const { changes, proven } = changeAndProve(survey, alder, demoDevices)
    expect(changes).toMatchObject({ outcome: 'no-plan', tried: 2 })
    expect(proven).toBeUndefined()
  })

  test('a plan that waits for an answer is no failure of the changes', () => {
    const breaker = { kind: 'unknown', reason: 'not visible' } as const
    const survey = { ...noNeutral, supply: { ...noNeutral.supply, breaker } }
    const { changes } = changeAndProve(survey, alder, demoDevices)
    expect(changes).toMatchObject({ outcome: 'found', proof: 'waits' })
  })
})

describe('a refit with changes', () => {
  test('without being asked nothing is changed and nothing is said of it', () => {
    const { match, plans } = planRefit(noNeutral, [alder], demoDevices)
    expect(plans).toEqual([])
    expect(match.boxes[0]).not.toHaveProperty('changes')
  })

  test('plans that leave out or replace no load come first', () => {
    const boxes = ['alder-240', 'heron-4', 'rowan-2'].map(demoBox)
    const { plans } = planRefit(everyday, boxes, demoDevices, undefined, undefined, {
      withChanges: true,
    })
    const alderAt = plans.findIndex(each => each.plan.box === 'alder-240')
    expect(alderAt).toBeGreaterThan(0)
    expect(plans[alderAt]?.plan.score.replaced).toBe(2)
    const safe = ({ dangers, warnings }: { dangers: number; warnings: number }) =>
      dangers + warnings
    for (const { plan } of plans.slice(alderAt + 1))
      expect(safe(plan.score)).toBeGreaterThan(
        safe(plans[alderAt]?.plan.score ?? { dangers: 0, warnings: 0 }),
      )
  })
})
