import { describe, expect, test } from 'vitest'
import type { Survey } from '../../../../src/index.ts'
import { conductorSize } from '../../../../src/index.ts'
import { demoTub } from '../../../support/demo.ts'
import { known, knownSi, si, withCable, withDevice, withSupply } from '../../../support/surveyed.ts'
import type { Card } from './card-tub.ts'
import { found, GOOD_RUN, number, one, report, tubOf } from './card-tub.ts'

/** What an electrician works out by hand, where a careless sum comes out too well. */
const told = demoTub('told-run-240')
const plate = { minimumCircuit: knownSi('A', 15), maximumProtection: knownSi('A', 60) }
const run = (card: Card) => tubOf({ terminals: '75 °C', cable: GOOD_RUN, plate, ...card })
const size = (text: string) => conductorSize.parse(text)
const warm = (celsius: number) => knownSi('K', 273.15 + celsius)

describe('what a conductor carries', () => {
  test('three lines and a neutral are three loaded conductors: 4 mm² in conduit carries 28 A', () => {
    const tub = demoTub('three-phase-400')
    const cable = tub.supply.cables[0]
    const cables = [
      {
        ...(cable as NonNullable<typeof cable>),
        ...GOOD_RUN,
        insulation: known('70 °C' as const),
        conductors: (cable?.conductors ?? []).map(each => ({ ...each, size: size('4 mm2') })),
      },
    ]
    const laid = withSupply(tub, { cables, breaker: knownSi('A', 32) })
    const [finding] = found(laid, 'SUPPLY-2')
    expect(finding).toMatchObject({ verdict: 'breaks', severity: 'danger' })
    expect(number(finding as NonNullable<typeof finding>, 'carries')).toBe(28)
    expect(found(laid, 'SUPPLY-1')[0]?.clause?.clause).toBe('table B.52.4')
  })

  test('a small conductor in hot company keeps no breaker of 30 A: 30 × 0.58 × 0.5 = 8.7 A', () => {
    const hot = run({
      size: '10 AWG',
      breaker: 30,
      amps: 6,
      cable: {
        ...GOOD_RUN,
        insulation: known('60 °C'),
        ambient: warm(50),
        alongside: known('9'),
      },
      terminals: '60 °C',
    })
    const finding = one(hot, 'SUPPLY-2')
    expect(finding).toMatchObject({ verdict: 'breaks', params: { may: 10 } })
    expect(number(finding, 'carries')).toBeCloseTo(8.7, 9)
  })

  test('in air as hot as it may get itself it carries nothing', () => {
    const cable = { ...GOOD_RUN, insulation: known('60 °C' as const), ambient: warm(60) }
    expect(one(run({ cable, terminals: '60 °C' }), 'SUPPLY-1').verdict).toBe('breaks')
  })

  test('a sleeve of conduit makes no other cable of it: 8 AWG carries 40 A in one', () => {
    const cable = { ...GOOD_RUN, method: known('cable-in-conduit' as const) }
    const finding = one(run({ size: '8 AWG', cable }), 'SUPPLY-2')
    expect(finding).toMatchObject({ verdict: 'breaks', params: { may: 40 } })
  })

  test('thinner at its other end, it is judged by that end', () => {
    const thin = Object.fromEntries(
      ['leg1', 'leg2', 'neutral', 'earth'].map(id => [id, { otherEnd: { size: size('14 AWG') } }]),
    )
    const tub = run({ conductors: thin })
    expect(one(tub, 'SUPPLY-2')).toMatchObject({ verdict: 'breaks', params: { may: 15 } })
    expect(one(tub, 'SUPPLY-6')).toMatchObject({ verdict: 'breaks', params: { least: '10 AWG' } })
  })

  test('at 60 °C insulation is thick: it fills three quarters of an inch', () => {
    const conduit = { kind: known('EMT' as const), size: known('3/4' as const) }
    const cable = { ...GOOD_RUN, conduit }
    expect(one(run({ cable }), 'SUPPLY-15')).toMatchObject({
      verdict: 'holds',
      message: 'conduit-fill-thin',
    })
    const thick = { ...cable, insulation: known('60 °C' as const) }
    expect(one(run({ cable: thick }), 'SUPPLY-15').verdict).toBe('breaks')
  })
})

describe('what a tub takes', () => {
  test('without heater and plate it is not known, whatever the pumps take', () => {
    const pumped = demoTub('everyday-240-plain')
    expect(found(pumped, 'SUPPLY-1')[0]).toMatchObject({ verdict: 'not-shown' })
    expect(report(pumped).asks).toContain('plate.draws')
    expect(report(pumped).circuits[0]?.draws).toBeUndefined()
  })

  test('more than the wire carries by its pumps alone breaks, heater or none', () => {
    const pumped = demoTub('everyday-240-plain')
    const loads = pumped.loads.map(load =>
      'circuits' in load && load.kind === 'pump'
        ? {
            ...load,
            circuits: load.circuits.map(each => ({ ...each, amps: knownSi('A', 40) })),
          }
        : load,
    )
    const cable = withCable({ ...pumped, loads }, 'run', GOOD_RUN)
    const both = withDevice(cable, 'gf', { terminals: known('75 °C') })
    expect(one(both, 'SUPPLY-1').verdict).toBe('breaks')
  })

  test('what is lost of its volts counts where the draw is far beyond the run', () => {
    expect(one(run({ feet: 984, size: '14 AWG', amps: 46 }), 'SUPPLY-9')).toMatchObject({
      verdict: 'breaks',
      params: { volts: 240 },
    })
    // Both lines on one pole lose nothing: they have nothing.
    const onOne = run({ conductors: { leg2: { from: 'L1' } } })
    expect(one(onOne, 'SUPPLY-9')).toMatchObject({ verdict: 'not-shown', isCovered: false })
  })

  test('a house counts 120 V loads at 120 V', () => {
    const { loads } = run({ amps: 2, toNeutral: 16 })
    const listed = told.service?.loads?.filter(each => each.kind !== 'tub')
    const tub = { ...told, loads, plate: {}, service: { ...told.service, loads: listed } } as Survey
    const [finding] = found(tub, 'SUPPLY-60')
    // 2 A at 240 V and 16 A at 120 V.
    expect(number(finding as NonNullable<typeof finding>, 'tubs')).toBeCloseTo(2400, 6)
  })

  test('a motor of 240 V on 208 V is for its maker to allow', () => {
    const [heater] = run({}).loads
    const loads = [{ ...heater, kind: 'pump', id: 'p' }] as Survey['loads']
    const wye = withSupply({ ...told, loads }, { system: 'two-legs-of-wye' })
    expect(one(wye, 'SUPPLY-16')).toMatchObject({
      verdict: 'experts-differ',
      message: 'plate-volts-low',
    })
  })
})

describe('neutral and earth by hand', () => {
  test('the neutral of two legs of a wye carries what a line does', () => {
    const thin = { neutral: { size: size('10 AWG') } }
    const wye = run({ system: 'two-legs-of-wye', volts: 208, conductors: thin })
    expect(found(wye, 'SUPPLY-2').map(each => each.verdict)).toContain('breaks')
    expect(found(run({ conductors: thin }), 'SUPPLY-2').map(each => each.verdict)).toEqual([
      'holds',
    ])
  })

  test('all that hangs on one leg may be more than the neutral carries', () => {
    const thin = { neutral: { size: size('10 AWG') } }
    expect(one(run({ amps: 2, toNeutral: 34, conductors: thin }), 'SUPPLY-18').verdict).toBe(
      'holds',
    )
    expect(one(run({ amps: 2, toNeutral: 36, conductors: thin }), 'SUPPLY-18')).toMatchObject({
      verdict: 'not-shown',
      message: 'not-covered-neutral-load',
    })
  })

  test('the least earth of a tub is no least neutral', () => {
    const thin = { neutral: { size: size('14 AWG') }, earth: { size: size('14 AWG') } }
    const small = run({ breaker: 15, amps: 5, conductors: thin })
    expect(one(small, 'SUPPLY-18').verdict).toBe('holds')
    expect(one(small, 'SUPPLY-6')).toMatchObject({ verdict: 'breaks', params: { least: '12 AWG' } })
  })

  test('a second earth is one path more, a second neutral is not', () => {
    const [cable] = told.supply.cables
    const again = (id: string) => {
      const more = cable?.conductors.filter(each => each.id === id) ?? []
      const conductors = [...(cable?.conductors ?? []), ...more.map(each => ({ ...each, id: 'b' }))]
      return found(withCable(told, 'run', { conductors }), 'SUPPLY-19', 'parallel')
    }
    expect(again('earth')).toEqual([])
    expect(again('neutral')).toMatchObject([{ verdict: 'breaks' }])
  })

  test('without an earth nothing is said of its insulation', () => {
    const bare = run({ conductors: { earth: undefined } })
    expect(found(bare, 'SUPPLY-14', 'earth')).toEqual([])
  })

  test('aluminium is no copper in the loop: 10 mm² over 60 m', () => {
    const garden = demoTub('told-armoured-230')
    const [cable] = garden.supply.cables
    const of = (material: 'copper' | 'aluminium') => {
      const conductors = (cable?.conductors ?? []).map(each => ({ ...each, size: size('10 mm2') }))
      const laid = { material: known(material), length: si('m', 60), conductors }
      return number(one(withCable(garden, cable?.id ?? '', laid), 'SUPPLY-11'), 'run')
    }
    expect(of('aluminium')).toBeGreaterThan(of('copper') * 1.3)
  })

  test('4 and 2.5 mm² over 48 m have 0.692 Ω hot, by the areas as they are made', () => {
    const garden = demoTub('told-armoured-230')
    const [cable] = garden.supply.cables
    const conductors = (cable?.conductors ?? []).map(each => ({
      ...each,
      size: size(each.function === 'earth' ? '2.5 mm2' : '4 mm2'),
    }))
    const laid = {
      length: si('m', 48),
      insulation: known('70 °C' as const),
      material: known('copper' as const),
      conductors,
    }
    const only = withSupply(garden, {
      cables: [{ ...(cable as NonNullable<typeof cable>), ...laid, to: 'box' }],
      devices: garden.supply.devices.slice(0, 1),
    })
    // 48 m × (4.61 + 7.41) mΩ/m × 1.2. @source [IEC-60228]
    expect(number(one(only, 'SUPPLY-11'), 'run')).toBeCloseTo(0.692, 3)
  })

  test('how hot a fault near its start makes a thin earth hangs on what the breaker lets through', () => {
    const garden = demoTub('told-armoured-230')
    const [cable] = garden.supply.cables
    const conductors = (cable?.conductors ?? []).map(each => ({
      ...each,
      size: size(each.function === 'earth' ? '1 mm2' : '10 mm2'),
    }))
    const near = withSupply(
      withCable(garden, cable?.id ?? '', { conductors, length: si('m', 40) }),
      {
        earthLoop: knownSi('Ω', 0.05),
        breaker: knownSi('A', 32),
      },
    )
    // 4600 A at the start for 0.1 s ask for 12.6 mm² by the formula, which is no breaker's curve.
    expect(found(near, 'SUPPLY-6')[0]).toMatchObject({
      verdict: 'not-shown',
      message: 'not-covered-earth-heat',
    })
  })

  test('the edition of 2017 has its disconnect in 680.12, later ones in 680.13', () => {
    const clauseIn = (codeEdition: '2017' | '2020') =>
      one({ ...told, codeEdition: known(codeEdition) }, 'SUPPLY-40', 'near').clause?.clause
    expect(clauseIn('2017')).toBe('680.12')
    expect(clauseIn('2020')).toBe('680.13')
  })

  test('a device is behind a larger breaker than its own file allows', () => {
    const large = withSupply(told, { breaker: knownSi('A', 100) })
    expect(one(large, 'SUPPLY-5')).toMatchObject({ verdict: 'breaks', params: { may: 60 } })
  })

  test('wiring in the colours of before 2006 is right as it lies, a mixture is not', () => {
    const garden = demoTub('told-armoured-230')
    const [cable] = garden.supply.cables
    const earth = 'green-yellow' as const
    const coloured = (neutral: 'black' | 'blue') => {
      const conductors = (cable?.conductors ?? []).map(each => ({
        ...each,
        colour:
          each.function === 'earth'
            ? earth
            : each.function === 'neutral'
              ? neutral
              : ('red' as const),
      }))
      return found(withCable(garden, cable?.id ?? '', { conductors }), 'SUPPLY-13', 'neutral')
    }
    const [finding] = coloured('black')
    expect(finding).toMatchObject({ verdict: 'holds', clause: { clause: 'table 51A' } })
    expect(coloured('blue')[0]?.clause?.standard).toBe('IEC 60445')
  })
})

describe('what can be done', () => {
  test('what no way mends is said beside it', () => {
    const bare = run({ conductors: { earth: { colour: 'bare' } } })
    expect(report(bare).circuits[0]?.ways).toMatchObject([
      { kind: 'keep', outcome: 'holds', besides: ['SUPPLY-14'] },
    ])
  })

  test('a wire is thick enough for what a long run loses, where that is law', () => {
    // 396 m of 3 AWG lose 7.5 V of 240 V at 24 A, of 2 AWG 5.9 V.
    const long = { ...run({ feet: 650, amps: 24 }), region: 'CA' as const }
    const ways = report(long).circuits[0]?.ways ?? []
    expect(ways[0]).toMatchObject({ kind: 'keep', outcome: 'breaks', against: ['SUPPLY-9'] })
    expect(ways.at(-1)).toMatchObject({ kind: 'change-wire', outcome: 'holds', size: '2 AWG' })
  })

  test('what experts read in two ways is no plain no', () => {
    const [way] = report(run({ amps: 48, breaker: 50 })).circuits[0]?.ways ?? []
    expect(way).toMatchObject({ kind: 'keep', outcome: 'breaks', isDisputed: true })
  })

  test('where nothing does, what is installed stands behind the breaker that everything needs', () => {
    const none = run({
      breaker: 20,
      size: '12 AWG',
      amps: 60,
      plate: { maximumProtection: knownSi('A', 50) },
    })
    const { install, ways } = report(none).circuits[0] ?? {}
    expect(ways?.every(each => each.outcome === 'breaks')).toBe(true)
    expect(install?.breaker).toBe(install?.least.breaker)
  })
})
