import { describe, expect, test } from 'vitest'
import type { SituatedLoad } from '../../../src/stages/diagnose/supply/artifact.ts'
import { nameCondition } from '../../../src/stages/diagnose/supply/name-condition.ts'
import { condition, names, predictor, six } from './named.ts'
import { circumstancesOf } from './supply-jobs.ts'

// The patterns of a missing leg and of a dangerous neutral as technicians tell them; none is a table of ours.

const EVERYDAY = circumstancesOf('everyday-240-circulation')
/** The heater, and a control transformer on one leg alone. */
const ONE_LEG = circumstancesOf('everyday-240-plain')

const withLoads = (...loads: readonly SituatedLoad[]) => ({ ...EVERYDAY, loads })
const on = (leg: 'leg1' | 'leg2', watts: number): SituatedLoad => ({
  id: `lamp-${leg}`,
  between: [leg, 'neutral'],
  volts: 120,
  amps: watts / 120,
  powerFactor: 1,
  on: ['idle', 'heating'],
})

describe('C33 six readings at the tub', () => {
  const of = predictor(EVERYDAY)

  test('240/120/120/120/120/0 idle and heating is sound', () => {
    const found = condition(of, [
      ...six('idle', 240, 120, 120, 120, 120, 0),
      ...six('heating', 239, 119.5, 119.5, 119.5, 119.5, 0),
    ])
    expect(found.named).toBe('sound')
    expect(found.dangers).toEqual([])
    expect(found.next).toBeUndefined()
  })

  test('the same with the loads off shows no more than that both legs are there', () => {
    const found = condition(of, six('loads-off', 240, 120, 120, 120, 120, 0))
    expect(found.named).toBeUndefined()
    expect(names(found.fits)).toEqual([
      'joint leg1',
      'joint leg2',
      'neutral-earth-swapped neutral',
      'neutral-open neutral',
      'neutral-poor neutral',
      'sound',
    ])
    expect(found.next?.of.situation).toBe('idle')
    expect(found.dangers.map(each => `${each.reason} ${each.certainty}`)).toContain(
      'neutral possible',
    )
  })

  test('0/120/120 heating: every hot on one leg, or a leg lost and fed back by the heater', () => {
    const back = predictor(ONE_LEG)
    const heating = six('heating', 0, 120, 120, 120, 120, 0)
    const found = condition(back, heating)
    expect(found.named).toBeUndefined()
    expect(names(found.fits)).toEqual(expect.arrayContaining(['leg-open leg2', 'same-leg']))
    expect(names(found.fits)).not.toContain('sound')
    expect(found.next?.of.situation).toBe('loads-off')

    const same = condition(back, [...heating, ...six('loads-off', 0, 120, 120, 120, 120, 0)])
    expect(same.named).toBe('same-leg')
    const open = condition(back, [...heating, ...six('loads-off', 119, 120, 2, 120, 2, 0)])
    expect(open.named).toBe('leg-open')
    expect(names(open.fits)).toEqual(expect.arrayContaining(['leg-open leg2']))
  })

  test('two readings of 120 V to neutral prove nothing', () => {
    const found = condition(predictor(ONE_LEG), six('heating', undefined, 120, 120))
    expect(names(found.fits)).toEqual(
      expect.arrayContaining(['leg-open leg2', 'same-leg', 'sound', 'wye']),
    )
    expect(found.next?.of).toMatchObject({ kind: 'volts', between: ['leg1', 'leg2'] })
  })

  test('120/120/0 is leg 2 open', () => {
    const found = condition(of, six('idle', 120, 120, 0, 120, 0, 0))
    expect(found.named).toBe('leg-open')
    expect(names(found.fits)).toEqual(['leg-open leg2'])
    expect(found.fits[0]?.places).toHaveLength(3)
  })

  test('208/120/120 is two legs of a wye', () => {
    const found = condition(of, six('idle', 208, 120, 120, 120, 120, 0))
    expect(found.named).toBe('wye')
  })

  test('208 V to neutral is a high leg, never a wye', () => {
    const found = condition(of, six('loads-off', 240, 120, 208, 120, 208, 0))
    expect(found.named).toBe('high-leg')
    expect(found.fits.map(each => each.fault)).toEqual([{ kind: 'high-leg', line: 'leg2' }])
    expect(found.dangers.map(each => each.reason)).toEqual(['over-volts', 'high-leg'])
    const wye = found.excluded.find(each => each.fault.kind === 'wye')
    expect(wye?.by[0]?.reading).toMatchObject({ between: ['leg2', 'earth'] })
    expect(wye?.by[0]?.predicted.to).toBeLessThan(127)
    const other = condition(of, six('loads-off', 240, 208, 120, 208, 120, 0))
    expect(other.fits.map(each => each.fault)).toEqual([{ kind: 'high-leg', line: 'leg1' }])
    const pair = condition(of, six('idle', undefined, 120, 208))
    expect(names(pair.fits)).not.toContain('wye')
  })

  test('240 with 140/100 is an open or a poor neutral', () => {
    // 100 W and 140 W: in series they share 240 V as 140 and 100.
    const lamps = predictor(withLoads(on('leg1', 100), on('leg2', 140)))
    const found = condition(lamps, six('idle', 240, 140, 100, 120, 120, 20))
    expect(names(found.fits)).toEqual(['neutral-open neutral', 'neutral-poor neutral'])
    expect(found.dangers).toContainEqual(
      expect.objectContaining({ reason: 'over-volts', severity: 'danger', certainty: 'shown' }),
    )
    expect(found.dangers).toContainEqual(
      expect.objectContaining({ reason: 'neutral', severity: 'danger', certainty: 'shown' }),
    )
  })

  test('more than 2 V from neutral to earth under load is a poor neutral', () => {
    const [leg, amps] = [120, 5]
    const blower = { ...on('leg1', leg * amps), id: 'blower' }
    const loaded = predictor(withLoads(blower))
    // 5 A through 0.6 Ω too much: 3 V.
    const found = condition(loaded, six('heating', 240, 117, 123, 120, 120, 3))
    expect(found.named).toBe('neutral-poor')
    const ohms = found.fits[0]?.ohms
    expect(ohms?.from).toBeGreaterThan(0.3)
    expect(ohms?.to).toBeLessThan(0.9)
    expect(ohms?.from).toBeLessThan(0.6)
    expect(ohms?.to).toBeGreaterThan(0.6)
    expect(found.dangers).toContainEqual(
      expect.objectContaining({ reason: 'neutral-to-earth', severity: 'caution' }),
    )
  })
})

describe('C34 a dangerous neutral', () => {
  test('1500 W and 60 W in series: 9.2 V and 230.8 V', () => {
    const lamps = predictor(withLoads(on('leg1', 1500), on('leg2', 60)))
    const found = condition(lamps, six('idle', 240, 9.2, 230.8, 120, 120, 110.8))
    expect(found.named).toBe('neutral-open')
    expect(found.dangers.map(each => each.reason)).toContain('over-volts')
  })

  test('132 V at a load of 120 V is not yet too much, 133 V is', () => {
    const of = predictor(EVERYDAY)
    const reasons = (volts: number) =>
      condition(of, six('idle', 240, volts)).dangers.map(each => each.reason)
    expect(reasons(132)).not.toContain('over-volts')
    expect(reasons(133)).toContain('over-volts')
  })
})

describe('C23 neutral and earth exchanged behind a ground-fault breaker', () => {
  test('all is well with the loads off, and dead as soon as anything runs', () => {
    const found = condition(predictor(EVERYDAY), [
      ...six('loads-off', 240, 120, 120, 120, 120, 0),
      ...six('idle', 0, 0, 0, 0, 0, 0),
    ])
    expect(found.named).toBe('neutral-earth-swapped')
    expect(found.dangers.map(each => each.reason)).toEqual(['earth-carries-current'])
  })
})

describe('a poor joint', () => {
  const of = predictor(EVERYDAY)

  test('half an ohm in leg 1 shows where it is under load, and how much', () => {
    // 16.7 A through 0.5 Ω, heater and all: 8 V less on that leg alone.
    const found = condition(of, [
      ...six('idle', 240, 119.4, 120, 119.4, 120, 0),
      ...six('heating', 230.5, 111, 119.5, 111, 119.5, 0),
    ])
    expect(found.named).toBe('joint')
    expect(names(found.fits)).toEqual(['joint leg1'])
    expect(found.fits[0]?.ohms?.from).toBeLessThan(0.5)
    expect(found.fits[0]?.ohms?.to).toBeGreaterThan(0.5)
    expect(found.fits[0]?.places.map(each => each.kind)).toEqual(['source', 'device', 'cable'])
    // 140 W in one spot.
    expect(found.dangers).toEqual([{ reason: 'joint', severity: 'danger', certainty: 'shown' }])
  })

  test('unloaded it cannot be seen, and the next reading is under load', () => {
    const found = condition(of, six('idle', 240, 120, 120, 120, 120, 0))
    expect(found.named).toBeUndefined()
    expect(found.next?.of.situation).toBe('heating')
  })
})

describe('the source', () => {
  const of = predictor(EVERYDAY)

  test('10 % low everywhere is no fault of the run: nothing fits, and why is told', () => {
    const found = condition(of, [...six('idle', 212, 106, 106, 106, 106, 0)])
    expect(found.fits).toEqual([])
    expect(found.offBand?.from).toBeCloseTo(0.87, 2)
    expect(found.offBand?.to).toBeCloseTo(0.89, 1)
    const sound = found.excluded.find(each => each.fault.kind === 'sound')
    expect(sound?.by).toHaveLength(1)
    expect(sound?.by[0]?.predicted.from).toBeGreaterThan(sound?.by[0]?.measured.to ?? 999)
  })

  test('what excludes a fault lies outside what it predicts', () => {
    const found = condition(of, six('idle', 208, 120, 120, 120, 120, 0))
    expect(found.excluded.length).toBeGreaterThan(8)
    for (const { by } of found.excluded) {
      expect(by.length).toBeGreaterThan(0)
      for (const { predicted, measured } of by)
        expect(predicted.to < measured.from || measured.to < predicted.from).toBe(true)
    }
  })
})

describe('what is asked for', () => {
  test('with nothing read, everything fits and something safe is read first', () => {
    const of = predictor(EVERYDAY)
    const found = condition(of, [])
    expect(found.fits.length + found.neverShown.length).toBe(of.candidates.length)
    expect(found.excluded).toEqual([])
    expect(found.next).toBeDefined()
    expect(found.next?.of.situation).not.toBe('heating')
  })

  test('reading what is asked for next names a fault in a few steps', () => {
    const of = predictor(EVERYDAY)
    const shown = six('idle', 208, 120, 120, 120, 120, 0)
    const taken = [shown[1]].filter(each => each !== undefined)
    for (let step = 0; step < 6; step++) {
      const { next } = condition(of, taken)
      if (next?.of.kind !== 'volts') break
      const { situation, between } = next.of
      const read = six(situation, 208, 120, 120, 120, 120, 0).find(
        each => each.kind === 'volts' && each.between.join() === between.join(),
      )
      if (read) taken.push(read)
    }
    expect(condition(of, taken).named).toBe('wye')
    expect(taken.length).toBeLessThanOrEqual(5)
  })

  test('a reading of what does not arrive, a load that is not there, too many loads', () => {
    const three = circumstancesOf('three-wire-240')
    const neutral = six('idle', undefined, 120)
    expect(nameCondition({ ...three, readings: neutral })).toEqual({
      ok: false,
      failure: { reason: 'not-arriving', conductor: 'neutral' },
    })
    expect(
      nameCondition({
        ...three,
        readings: [
          {
            kind: 'amps',
            situation: 'heating',
            load: 'sauna',
            value: { kind: 'unknown', reason: 'not measured' },
          },
        ],
      }),
    ).toEqual({ ok: false, failure: { reason: 'no-load', load: 'sauna' } })
    const many = Array.from({ length: 7 }, (_, index) => ({ ...on('leg1', 60), id: `${index}` }))
    expect(nameCondition({ ...withLoads(...many), readings: [] })).toEqual({
      ok: false,
      failure: { reason: 'limit-reached', of: 'loads', limit: 6 },
    })
    expect(nameCondition({ ...three, loads: [on('leg1', 60)], readings: [] })).toEqual({
      ok: false,
      failure: { reason: 'not-arriving', conductor: 'neutral' },
    })
  })
})
