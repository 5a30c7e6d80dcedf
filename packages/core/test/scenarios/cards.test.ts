import { describe, expect, test } from 'vitest'
import type { ControlBox, Job, Survey } from '../../src/index.ts'
import {
  jobOf,
  matchEquipment,
  observe,
  planAndProve,
  plantOf,
  statesOf,
  verifyPlan,
} from '../../src/index.ts'
import { currentLimitFor } from '../../src/stages/plan/candidates.ts'
import { demoBox, demoBoxes, demoDevices, demoTub } from '../support/demo.ts'
import { broken, findingsOf, messages, planned, slipped } from '../support/judged.ts'

// Whole situations as technicians met them; the numbers of the cards stand in the titles.
const everyday = planned('everyday-240-circulation', 'heron-4')

const withLoad = (survey: Survey, id: string, change: object): Survey => ({
  ...survey,
  loads: survey.loads.map(each => (each.id === id ? { ...each, ...change } : each)),
})

const amps = (si: number) => ({ si: si as never, text: `${si} A` })
const known = (si: number) => ({ kind: 'known' as const, value: amps(si) })

describe('C06 two hots and earth, no neutral, and a load of 120 V', () => {
  const survey = demoTub('no-box-120-ozonator-no-neutral')
  const here = demoBoxes().filter(each => each.regions.includes(survey.region))
  const match = matchEquipment(survey, here)

  test('no box may serve', () => {
    expect(match.boxes.filter(each => each.verdict === 'may-serve')).toEqual([])
  })

  test('the conflict is the feed without a neutral and the 120 V ozonator, and no more', () => {
    expect(match.conflict.map(each => each.id).sort()).toEqual(['conductors', 'load ozonator'])
  })

  test('with an ozonator of 240 V a box that needs no neutral may serve', () => {
    const changed = withLoad(survey, 'ozonator', { volts: { si: 240, text: '240 V' } })
    const serving = matchEquipment(changed, demoBoxes()).boxes.filter(
      each => each.verdict === 'may-serve',
    )
    expect(serving.map(each => each.box)).toContain('alder-240')
  })

  test('the earth conductor landed as neutral is found dangerous', () => {
    const { job, landing } = everyday
    const found = findingsOf(
      job,
      slipped(landing, {
        ends: { 'run.neutral@box': 'insulated', 'run.earth@box': 'box.A2' },
      }),
    )
    expect(found.some(each => each.severity === 'danger')).toBe(true)
    expect(messages(found)).toContain('metal-not-on-earth')
  })
})

describe('C22 bare conductor as neutral; where each conductor lands at the breaker', () => {
  test('the five landing points as planned pass', () => {
    const { landing } = everyday
    expect(landing.ends['run.leg1@gf']).toBe('gf.L1')
    expect(landing.ends['run.leg2@gf']).toBe('gf.L2')
    expect(landing.ends['run.neutral@gf']).toBe('gf.N')
    expect(landing.ends['gf.tail']).toBe('gf.NB')
    expect(landing.ends['run.earth@gf']).toBe('gf.EB')
    expect(everyday.proven.verification.holds).toBe(true)
  })

  test('a neutral landed on the earth bar is earth tied to neutral', () => {
    const found = findingsOf(
      everyday.job,
      slipped(everyday.landing, { ends: { 'run.neutral@gf': 'gf.EB' } }),
    )
    expect(messages(found)).toContain('mains-tied-to-earth')
  })
})

describe('C23 trips the instant power is applied, brand-new wiring', () => {
  const onBar = { ends: { 'run.neutral@gf': 'gf.NB' } }

  test('tub neutral on the bar: the ground-fault device trips with everything off', () => {
    const found = findingsOf(everyday.job, slipped(everyday.landing, onBar))
    const trip = found.find(each => each.message === 'ground-fault-trips')
    expect(trip?.on).toEqual([])
    expect(trip?.params['amps']).toBeGreaterThan(0.006)
  })

  test('on a tub without any load to neutral the same slip does not trip', () => {
    const { job, landing } = planned('everyday-240-plain', 'alder-240')
    const found = findingsOf(job, slipped(landing, onBar))
    expect(messages(found)).not.toContain('ground-fault-trips')
  })

  test('a loose tail leaves the device blind', () => {
    const found = findingsOf(
      everyday.job,
      slipped(everyday.landing, { ends: { 'gf.tail': 'insulated' } }),
    )
    expect(messages(found)).toContain('ground-fault-blind')
  })
})

describe('C24 and C33 a leg lost: what hangs on the dead leg is in series with the heater', () => {
  test('240 V loads starve and the 120 V loads on the live leg run on', () => {
    const { job, landing } = everyday
    const found = findingsOf(job, slipped(landing, { ends: { 'run.leg2@box': 'insulated' } }))
    const starved = found.filter(each =>
      ['load-dead', 'load-weak', 'motor-starved'].includes(each.message),
    )
    const loads = new Set(starved.map(each => each.subjects[0]))
    expect(loads).toContain('heater')
    expect(loads).toContain('pump-a')
    expect(loads).not.toContain('ozonator')
  })
})

describe('C34 an open neutral: 120 V loads float and the device goes on living', () => {
  test('the neutral off at the box is dangerous', () => {
    const found = findingsOf(
      everyday.job,
      slipped(everyday.landing, { ends: { 'run.neutral@box': 'insulated' } }),
    )
    expect(broken(found).length).toBeGreaterThan(0)
  })
})

describe('C45 a dual-voltage motor, 15.0 A at 115 V and 7.5 A at 230 V', () => {
  const strapped = planned('strapped-115', 'heron-4')

  test('the plan moves the strap to 230 V', () => {
    expect(strapped.landing.straps['pump-a']).toBe('v230')
    expect(strapped.proven.plan.straps.find(each => each.load === 'pump-a')?.moves).toBe(true)
  })

  test('left at 115 V on 240 V it is a danger, by twice its volts', () => {
    const found = findingsOf(
      strapped.job,
      slipped(strapped.landing, { straps: { 'pump-a': 'v115' } }),
    )
    const over = found.find(
      each => each.message === 'load-over-volts' && each.subjects[0] === 'pump-a',
    )
    expect(over?.severity).toBe('danger')
    expect(Number(over?.params['share'])).toBeGreaterThan(1.9)
  })

  test('it draws about 7.5 A at 230 V', () => {
    const pump = strapped.proven.verification.expected.find(each => each.load === 'pump-a')
    expect(pump?.draw.to).toBeCloseTo(7.5, 6)
  })
})

describe('C53 10 Ω is 24 A on 240 V and 12 A on 120 V: ask which voltage', () => {
  const tenOhms = (tub: string): Job => {
    const box = demoBox('heron-4')
    const supplied = box.supplied.map(each =>
      each.kind === 'heater'
        ? {
            ...each,
            circuits: each.circuits.map(({ power: _, ...circuit }) => ({
              ...circuit,
              amps: known(24),
            })),
          }
        : each,
    )
    return jobOf(demoTub(tub), { ...box, supplied } as ControlBox, demoDevices)
  }

  const heaterIn = (tub: string) => {
    const job = tenOhms(tub)
    const plan = planAndProve(job)
    if (!plan.ok) throw new Error('no plan')
    return plan.value.verification.expected.find(each => each.load === 'heater')
  }

  // Arithmetic of the card: 240²/10 = 5.76 kW; 120²/10 = 1.44 kW. The run's drop is below 2 %.
  test('two legs: 24 A and 5.76 kW, less the drop', () => {
    const heater = heaterIn('everyday-240-circulation')
    expect(heater?.amps.nominal).toBeGreaterThan(24 * 0.975)
    expect(heater?.amps.nominal).toBeLessThanOrEqual(24)
  })

  test('one leg: 12 A and 1.44 kW, less the drop', () => {
    const heater = heaterIn('everyday-120-plain')
    expect(heater?.amps.nominal).toBeGreaterThan(12 * 0.975)
    expect(heater?.amps.nominal).toBeLessThanOrEqual(12)
  })
})

describe('K1 a 120 V circulation pump on a 240 V output', () => {
  test('the jumper that moves its return to the second leg is a danger to it and the ozonator', () => {
    const found = findingsOf(everyday.job, slipped(everyday.landing, { jumpers: { J4: 'v240' } }))
    const over = found.filter(each => each.message === 'load-over-volts')
    expect(over.map(each => each.subjects[0]).sort()).toEqual(['circulation', 'ozonator'])
    expect(over.every(each => each.severity === 'danger')).toBe(true)
  })

  test('a box with 240 V only cannot serve, and says why for each load', () => {
    const match = matchEquipment(demoTub('everyday-240-circulation'), [demoBox('alder-240')])
    const reasons = match.boxes[0]?.shortfalls ?? []
    const volts = reasons.filter(each => each.message === 'wrong-volts')
    expect(volts.map(each => each.subjects[0])).toEqual(['circulation', 'ozonator'])
    expect(volts[0]?.params).toMatchObject({ plate: '120', offers: '240' })
  })
})

describe('K2 a 240 V pump on a 120 V output', () => {
  test('the jumper that moves its return to neutral starves it', () => {
    const found = findingsOf(everyday.job, slipped(everyday.landing, { jumpers: { J2: 'v120' } }))
    const starved = found.find(each => each.message === 'motor-starved')
    expect(starved?.subjects).toEqual(['pump-a'])
    expect(Number(starved?.params['share'])).toBeLessThan(0.5)
  })
})

describe('K4 a 15 A cord: heat waits for high speed', () => {
  const cord = planned('cord-120-15', 'plover-1')

  test('the current limit is 12 A and heat pauses with high speed only', () => {
    expect(cord.landing.settings.currentLimit.si).toBe(12)
    expect(cord.proven.verification.heatPausesWith).toEqual(['pump-high'])
  })

  test('heat with low speed is 8.33 A and 3 A: within 12 A', () => {
    const heating = cord.proven.verification.modes.filter(each => each.heats)
    expect(heating.length).toBeGreaterThan(0)
    for (const mode of heating) expect(mode.lineAmps[0]).toBeLessThanOrEqual(12)
  })
})

describe('K7 a one-speed pump and no circulation pump', () => {
  test('with no pump that moves water through the heater, no box may serve', () => {
    const survey = withLoad(demoTub('everyday-240-plain'), 'pump-a', {
      movesWaterThroughHeater: [],
    })
    const match = matchEquipment(survey, demoBoxes())
    for (const box of match.boxes)
      expect(box.shortfalls.map(each => each.message)).toContain('no-profile-moves-water')
  })
})

describe('K12 exactly 80 %', () => {
  test('40 A on a 50 A breaker passes and is marked without margin', () => {
    const found = everyday.proven.verification.findings.find(each => each.message === 'no-margin')
    expect(found?.verdict).toBe('holds')
    expect(found?.params).toMatchObject({ allowed: 40, share: 40 })
  })

  test('48 A on the same breaker is a warning', () => {
    const found = findingsOf(everyday.job, slipped(everyday.landing, { amps: 48 }))
    expect(messages(found)).toContain('limit-above-breaker')
  })

  // Common practice, no source: the highest offered value not above 80 % of the breaker.
  test.each([
    [15, 12],
    [20, 16],
    [30, 24],
    [40, 32],
    [50, 40],
    [60, 48],
  ])('a breaker of %i A gives a current limit of %i A', (breaker, limit) => {
    const survey = demoTub('everyday-240-plain')
    const supply = { ...survey.supply, breaker: known(breaker) }
    const job = jobOf({ ...survey, supply }, demoBox('heron-4'), demoDevices)
    expect(currentLimitFor(job)?.si).toBe(limit)
  })
})

describe('the everyday tub, converted between one leg and two', () => {
  const oneLeg = planned('everyday-120-circulation', 'heron-4')

  test('on one leg the link from neutral to the second-leg terminal is in', () => {
    expect(oneLeg.landing.jumpers['J1']).toBe('in')
  })

  test('with both legs it is out, and heater and jets run at 240 V', () => {
    expect(everyday.landing.jumpers['J1']).toBe('out')
    for (const id of ['heater', 'pump-a', 'pump-b']) {
      const load = everyday.proven.verification.expected.find(each => each.load === id)
      expect(load?.volts.nominal).toBeGreaterThan(236)
    }
  })

  test('left in with both legs landed it is a dead short in every state', () => {
    const landing = slipped(everyday.landing, { jumpers: { J1: 'in' } })
    const found = findingsOf(everyday.job, landing)
    expect(messages(found)).toContain('dead-short')
    const plant = plantOf(everyday.job, landing)
    const states = statesOf(everyday.job, landing)
    if (!plant.ok || !states.ok) throw new Error('not solved')
    for (const state of states.value)
      expect(observe(plant.value, state).trip?.kind).toBe('overcurrent')
  })

  test('the equipment profile differs with the circulation pump', () => {
    const plain = planned('everyday-240-plain', 'heron-4')
    expect(everyday.landing.settings.profile).not.toBe(plain.landing.settings.profile)
  })

  test('verify says the same of the plan as the plan says of itself', () => {
    const again = verifyPlan(everyday.job, everyday.landing)
    expect(again.ok && again.value.holds).toBe(true)
    expect(again.ok && again.value.proof).toEqual(everyday.proven.verification.proof)
  })
})
