import { describe, expect, test } from 'vitest'
import type { Survey } from '../../../../src/index.ts'
import {
  checkSupply,
  conductorSize,
  supplyOutcome,
  surveyedCondition,
} from '../../../../src/index.ts'
import { demoBox, demoDevices, demoTub } from '../../../support/demo.ts'
import { known, knownSi, si, withCable, withDevice, withSupply } from '../../../support/surveyed.ts'
import { found, GOOD_RUN, one, report, tubOf } from './card-tub.ts'

type Conductor = Survey['supply']['cables'][number]['conductors'][number]

const told = demoTub('told-run-240')

/** The told tub with some conductors of its run changed, by their ids; undefined leaves one out. */
function withConductors(
  changes: Readonly<Record<string, Partial<Conductor> | undefined>>,
  tub: Survey = told,
): Survey {
  const [run] = tub.supply.cables
  const conductors = (run?.conductors ?? []).flatMap(each =>
    each.id in changes && changes[each.id] === undefined ? [] : [{ ...each, ...changes[each.id] }],
  )
  return withCable(tub, run?.id ?? '', { conductors })
}

const broken = (survey: Survey): readonly string[] =>
  report(survey).findings.flatMap(each =>
    each.verdict === 'breaks' ? [`${each.rule} ${each.message}`] : [],
  )

describe('what sits elsewhere than it belongs', () => {
  test('right as it is: every conductor has its own terminal', () => {
    expect(one(told, 'SUPPLY-19')).toMatchObject({ verdict: 'holds', message: 'landed-right' })
  })

  test.each([
    ['the neutral on the bar', { neutral: { from: 'NB' } }],
    ['the neutral on a pole', { neutral: { from: 'L2' }, leg2: { from: 'N' } }],
    ['both lines on one pole', { leg2: { from: 'L1' } }],
    ['the earth on the neutral', { earth: { from: 'N' } }],
    ['a line on the earth bar', { leg1: { from: 'EB' } }],
  ])('%s', (_, changes) => {
    const findings = found(withConductors(changes), 'SUPPLY-19')
    expect(findings.length).toBeGreaterThan(0)
    for (const each of findings)
      expect(each).toMatchObject({
        verdict: 'breaks',
        severity: 'danger',
        message: 'landed-elsewhere',
      })
  })

  test('lines that are exchanged do no harm', () => {
    const exchanged = withConductors({ leg1: { from: 'L2' }, leg2: { from: 'L1' } })
    expect(broken(exchanged)).toEqual([])
  })

  test('two conductors that do the work of one', () => {
    const [run] = told.supply.cables
    const second = { ...(run?.conductors[0] as Conductor), id: 'again' }
    const twice = withCable(told, 'run', { conductors: [...(run?.conductors ?? []), second] })
    expect(found(twice, 'SUPPLY-19', 'parallel')).toMatchObject([{ verdict: 'breaks' }])
  })
})

describe('what a tub needs and does not get', () => {
  test('pumps for 240 V where one leg arrives', () => {
    expect(broken(withConductors({ leg2: undefined }))).toContain('SUPPLY-16 plate-volts')
  })

  test('a pump for 240 V on a supply of 120 V', () => {
    const pumps = told.loads.filter(each => each.kind === 'pump')
    const small = demoTub('everyday-120-plain')
    expect(broken({ ...small, loads: pumps })).toContain('SUPPLY-16 plate-volts')
    expect(broken(small).filter(each => each.startsWith('SUPPLY-16'))).toEqual([])
  })

  test('a pump of another frequency', () => {
    const loads = told.loads.map(each =>
      each.kind === 'pump' ? { ...each, frequency: si('Hz', 50) } : each,
    )
    expect(broken({ ...told, loads })).toContain('SUPPLY-16 plate-frequency')
  })

  test('an earth of aluminium, and a line in the colour of the earth', () => {
    const aluminium = withCable(told, 'run', { material: known('aluminium') })
    expect(broken(aluminium)).toContain('SUPPLY-6 earth-aluminium')
    expect(broken(withConductors({ leg1: { colour: 'green' } }))).toContain(
      'SUPPLY-13 line-as-earth',
    )
    expect(broken(withConductors({ leg2: { colour: 'white' } }))).toContain(
      'SUPPLY-13 line-as-neutral',
    )
    // A mark at its ends says that it is a line.
    expect(broken(withConductors({ leg2: { colour: 'white', taped: 'red' } }))).toEqual([])
  })
})

describe('a load of which nobody agrees that it lasts', () => {
  const run = { size: '8 AWG', amps: 38, cable: GOOD_RUN, terminals: '60 °C' } as const
  const heated = tubOf(run)
  const [load] = heated.loads
  const pumped = { ...heated, loads: [{ ...load, kind: 'pump' }] } as Survey

  test('counts as it is where it heats, with a quarter more where it is a motor', () => {
    expect(one(heated, 'SUPPLY-1')).toMatchObject({
      verdict: 'experts-differ',
      readings: { strict: 47.5, lenient: 38 },
    })
    // NEC 430.24: 47.5 A by the milder reading too, and 8 AWG carries 40 A.
    expect(one(pumped, 'SUPPLY-1').verdict).toBe('breaks')
    expect(one({ ...pumped, region: 'CA' }, 'SUPPLY-1').verdict).toBe('breaks')
  })

  test('a motor whose amps nobody knows is asked for where it decides', () => {
    const silent = {
      ...heated,
      plate: { draws: knownSi('A', 38) },
      loads: [
        {
          ...load,
          kind: 'pump',
          circuits: [
            {
              id: 'heat',
              across: ['a', 'b'],
              amps: { kind: 'unknown', reason: 'not visible' },
              powerFactor: 1,
            },
          ],
        },
      ],
    } as Survey
    expect(one(silent, 'SUPPLY-1').asks).toEqual(['loads.everything.circuits'])
  })
})

describe('marks of heat', () => {
  test('break on a device and on a cable, whatever the figures say', () => {
    expect(broken(withDevice(told, 'gf', { heatMark: true }))).toEqual([
      'SUPPLY-20 heat-mark-device',
    ])
    expect(broken(withCable(told, 'run', { heatMark: true }))).toEqual([
      'SUPPLY-20 heat-mark-cable',
    ])
  })

  test('hold where somebody looked and saw none; are not spoken of where nobody did', () => {
    const looked = withDevice(told, 'gf', { heatMark: false })
    expect(one(looked, 'SUPPLY-20')).toMatchObject({ verdict: 'holds', message: 'no-heat-mark' })
    expect(found(told, 'SUPPLY-20')).toEqual([])
  })

  test('come before what was calculated', () => {
    const thin = withConductors({ leg1: { size: conductorSize.parse('14 AWG') } })
    const [first] = report(withDevice(thin, 'gf', { heatMark: true })).findings
    expect(first?.rule).toBe('SUPPLY-20')
  })
})

describe('a cord that came with the tub', () => {
  const corded = { ...demoTub('cord-120-15'), plate: { draws: knownSi('A', 12) } }
  const cord = corded.supply.cables[0]?.id ?? ''

  test('is judged by the table of cords, its earth as large as its lines', () => {
    expect(one(corded, 'SUPPLY-1')).toMatchObject({ verdict: 'holds' })
    const thin = withConductors(
      Object.fromEntries(
        (corded.supply.cables[0]?.conductors ?? []).map(each => [
          each.id,
          { size: conductorSize.parse('18 AWG') },
        ]),
      ),
      corded,
    )
    expect(broken(thin)).toContain('SUPPLY-1 conductor-carries')
    const { length } = found(withConductors({ earth: undefined }, corded), 'SUPPLY-6')
    expect(length).toBe(1)
    expect(broken(withConductors({ earth: undefined }, corded))).toContain('SUPPLY-6 no-earth')
  })

  test('is 15 ft long at most', () => {
    const long = withCable(corded, cord, { length: si('m', 8) })
    expect(broken(long).some(each => each.startsWith('SUPPLY-14'))).toBe(true)
  })
})

const outcomeOf = (survey: Survey): string =>
  supplyOutcome(checkSupply(survey, demoDevices), surveyedCondition(survey, demoDevices))

describe('readings that show a fault', () => {
  type Readings = NonNullable<Survey['readings']>[number]
  const readAs = (volts: Partial<Record<keyof Readings, number>>): Survey => ({
    ...told,
    readings: (told.readings ?? []).map(each => ({
      ...each,
      ...Object.fromEntries(Object.entries(volts).map(([name, value]) => [name, si('V', value)])),
    })),
  })

  test('outweigh a survey in which all holds', () => {
    expect(outcomeOf(told)).toBe('holds')
    const open = readAs({ leg1ToNeutral: 140, leg2ToNeutral: 100 })
    expect(report(open).findings.every(each => each.verdict === 'holds')).toBe(true)
    expect(outcomeOf(open)).toBe('breaks')
  })

  test.each([
    [140, 100],
    [100, 140],
  ])('%d V to one leg and %d V to the other are a neutral that does not hold', (first, second) => {
    const idle = {
      id: 'idle',
      situation: 'idle',
      leg1ToLeg2: si('V', 240),
      leg1ToNeutral: si('V', first),
      leg2ToNeutral: si('V', second),
    } as const
    const condition = surveyedCondition({ ...told, readings: [idle] }, demoDevices)
    expect(condition?.ok).toBe(true)
    const kinds = condition?.ok ? condition.value.fits.map(each => each.fault.kind) : []
    expect(kinds.length).toBeGreaterThan(0)
    expect(kinds.every(each => each.startsWith('neutral'))).toBe(true)
  })
})

describe('readings of a leg that is lost or hangs on a joint', () => {
  type Reading = NonNullable<Survey['readings']>[number]
  const readIn = (situation: Reading['situation'], volts: Partial<Record<string, number>>) => {
    const values = Object.entries(volts).map(([name, value]) => [name, si('V', value ?? 0)])
    const reading = { id: 'r', situation, ...Object.fromEntries(values) } as Reading
    const condition = surveyedCondition({ ...told, readings: [reading] }, demoDevices)
    if (!condition?.ok) throw new Error('the readings cannot be judged')
    return condition.value
  }

  test('a lost leg shows the volts of the other through whatever hangs on both', () => {
    const lost = { leg1ToLeg2: 2, leg1ToNeutral: 120, leg2ToNeutral: 118, leg1ToEarth: 120 }
    const found = readIn('idle', { ...lost, leg2ToEarth: 118, neutralToEarth: 0 })
    expect(found.named).toBe('leg-open')
  })

  test('a joint that turns a kilowatt into heat stops everything', () => {
    const heater = tubOf({ amps: 23 }).loads
    const [reading] = told.readings ?? []
    const at = (leg1ToLeg2: number) => {
      const readings = [
        { ...reading, id: 'r', situation: 'idle', leg1ToLeg2: si('V', 240) },
        {
          id: 'h',
          situation: 'heating',
          leg1ToLeg2: si('V', leg1ToLeg2),
          leg1ToNeutral: si('V', 120),
          leg2ToNeutral: si('V', leg1ToLeg2 - 120),
        },
      ] as NonNullable<Survey['readings']>
      const condition = surveyedCondition({ ...told, loads: heater, readings }, demoDevices)
      if (!condition?.ok) throw new Error('the readings cannot be judged')
      return condition.value.dangers.filter(each => each.reason === 'joint')
    }
    // 50 V over the joint at some 20 A.
    expect(at(190).length).toBeGreaterThan(0)
    expect(at(190).every(each => each.severity === 'danger')).toBe(true)
    expect(at(238.5).every(each => each.severity === 'warning')).toBe(true)
  })
})

describe('what hangs on nothing', () => {
  test('a device that no wire goes to, and a cable from it, are no part of the run', () => {
    const loose = withSupply(told, {
      devices: [
        ...told.supply.devices,
        { id: 'spare', device: 'isolator-3', label: 'Local disconnect' },
      ],
    })
    expect(found(loose, 'SUPPLY-21')).toMatchObject([
      {
        verdict: 'not-shown',
        message: 'not-covered-joined',
        params: { thing: 'Local disconnect' },
      },
    ])
    expect(found(told, 'SUPPLY-21')).toEqual([])
    expect(outcomeOf(loose)).toBe('open')
  })
})

describe('a box that was chosen', () => {
  const plain = demoTub('everyday-240-plain')
  const box = demoBox('heron-4')

  test('counts with its heater, and with what it is set to', () => {
    const judge = (currentLimit?: number) =>
      checkSupply(plain, demoDevices, { box, ...(currentLimit ? { currentLimit } : {}) })
    expect(checkSupply(plain, demoDevices).circuits[0]?.draws).toBeUndefined()
    // 19 A of pumps and 5.5 kW at 240 V.
    expect(judge().circuits[0]?.draws?.to).toBeCloseTo(19 + 5500 / 240, 9)
    expect(judge(40).circuits[0]?.draws).toEqual({ from: 40, to: 40 })
    expect(judge(40).fitted).toEqual({ box: box.label, limit: 40 })
    const load = judge(40).findings.find(each => each.rule === 'SUPPLY-3')
    expect(load).toMatchObject({ verdict: 'holds', params: { is: 50, may: 50 } })
  })

  test('brings no second heater to a tub that keeps its own', () => {
    const own = tubOf({ amps: 30 })
    expect(checkSupply(own, demoDevices, { box }).circuits[0]?.draws).toEqual({ from: 30, to: 30 })
  })
})

describe('ways to make supply and tub fit', () => {
  test('offer a breaker that can be bought, and that the wire bears', () => {
    const small = tubOf({
      breaker: 20,
      amps: 20,
      cable: GOOD_RUN,
      terminals: '75 °C',
      // Set lower, the box would still ask for more than there is.
      plate: { minimumCircuit: knownSi('A', 25), maximumProtection: knownSi('A', 50) },
    })
    const whole = withDevice(small, 'gf', { enclosure: knownSi('A', 60) })
    const ways = report(whole).circuits[0]?.ways ?? []
    const other = ways.find(each => each.kind === 'change-breaker')
    expect(other).toMatchObject({ breaker: 25, outcome: 'holds' })
  })

  test('offer nothing where something breaks that none of them mends', () => {
    const marked = withDevice(told, 'gf', { heatMark: true })
    expect(report(marked).circuits[0]?.ways.map(each => each.kind)).toEqual(['keep'])
  })

  test('offer nothing where nobody knows what the tub takes', () => {
    const [load] = told.loads
    const unknown = { kind: 'unknown', reason: 'not visible' } as const
    const silent = {
      ...load,
      circuits: [{ id: 'run', across: ['high', 'common'], amps: unknown, powerFactor: 0.9 }],
    } as Survey['loads'][number]
    const { plate: _, ...rest } = told
    const survey: Survey = { ...rest, loads: [silent, ...told.loads.slice(1)] }
    const thin = withSupply(survey, { breaker: knownSi('A', 60) })
    expect(report(thin).circuits[0]?.ways.map(each => each.kind)).toEqual(['keep'])
  })
})
