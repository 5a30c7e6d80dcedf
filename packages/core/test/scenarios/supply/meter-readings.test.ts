import { describe, expect, test } from 'vitest'
import { supplyReading } from '../../../src/domain/supply/readings.ts'
import { meterReadings } from '../../../src/stages/diagnose/supply/meter-readings.ts'
import { condition, predictor, six } from './named.ts'
import { circumstancesOf } from './supply-jobs.ts'

describe('readings as a survey has them', () => {
  const surveyed = supplyReading.parse({
    id: 'first',
    situation: 'heating',
    leg1ToLeg2: '238 V',
    leg1ToNeutral: '119 V',
    neutralToEarth: '0 V',
    heaterAmps: '16.5 A',
  })

  test('come one by one, those that were not taken left out', () => {
    const all = meterReadings([surveyed], 'heater')
    expect(all.map(each => (each.kind === 'volts' ? each.between.join(' ') : each.load))).toEqual([
      'leg1 leg2',
      'leg1 neutral',
      'neutral earth',
      'heater',
    ])
    expect(meterReadings([surveyed])).toHaveLength(3)
  })

  test('name the same as the six readings do', () => {
    const of = predictor(circumstancesOf('everyday-240-circulation'))
    const told = condition(of, meterReadings([surveyed]))
    const plain = condition(of, six('heating', 238, 119, undefined, undefined, undefined, 0))
    expect(told.fits).toEqual(plain.fits)
  })

  test('a heater that draws nothing while it should contradicts a sound supply', () => {
    const of = predictor(circumstancesOf('everyday-240-circulation'))
    const cold = supplyReading.parse({ id: 'cold', situation: 'heating', heaterAmps: '0 A' })
    const found = condition(of, meterReadings([cold], 'heater'))
    const kinds = found.fits.map(each => each.fault.kind)
    expect(kinds).not.toContain('sound')
    expect(kinds).toContain('same-leg')
  })
})
