import { describe, expect, test } from 'vitest'
import type { JobSheet, Reading } from '../../../src/stages/sheet/artifact.ts'
import type { SheetMessage, SheetParam, SheetText } from '../../../src/stages/sheet/messages.ts'
import { SHEET_MESSAGES } from '../../../src/stages/sheet/messages.ts'
import { demoIds } from '../../support/demo.ts'
import { freshSheets, sheetOf, sheetsOf } from './sheets.ts'

const messagesOf = (sheet: JobSheet, step: string): readonly SheetMessage[] =>
  sheet.steps.find(each => each.name === step)?.actions.map(each => each.message) ?? []

const find = (readings: readonly Reading[] | undefined, message: SheetMessage) =>
  (readings ?? []).filter(each => each.what.message === message)

const readingsOf = (sheet: JobSheet, step: string) =>
  sheet.steps.find(each => each.name === step)?.readings

/** Every sentence in a sheet, however deep. */
function sentences(value: unknown): readonly SheetText[] {
  if (typeof value !== 'object' || value === null) return []
  const inner = Object.values(value).flatMap(sentences)
  return 'message' in value && 'params' in value && String(value.message) in SHEET_MESSAGES
    ? [value as SheetText, ...inner]
    : inner
}

/** Wire numbers of a sentence, runs written out. */
function numbersIn(param: SheetParam | undefined): readonly number[] {
  if (typeof param === 'number') return [param]
  if (typeof param !== 'object') return []
  if (!('message' in param)) return param.flatMap(numbersIn)
  const [from, to] = [Number(param.params['from']), Number(param.params['to'])]
  return Array.from({ length: to - from + 1 }, (_, index) => from + index)
}

describe('messages', () => {
  test('every sentence of every demo sheet is given what it asks for', () => {
    const given = demoIds('tubs')
      .flatMap(sheetsOf)
      .flatMap(sentences)
      .map(({ message, params }) => [message, Object.keys(params).sort()])
    expect(given.length).toBeGreaterThan(1000)
    for (const [message, params] of given)
      expect([message, params]).toEqual([
        message,
        [...SHEET_MESSAGES[message as SheetMessage]].sort(),
      ])
  })
})

describe('wires', () => {
  const sheet = sheetOf('everyday-240-circulation', 'heron-4')
  const wires = sheet.wires.flatMap(each => each.wires)

  test('numbers run from 1 without a gap, supply first', () => {
    expect(wires.map(each => each.number)).toEqual(wires.map((_, index) => index + 1))
    expect(wires[0]).toMatchObject({ kind: 'cable', function: 'leg1', letters: 'BK' })
  })

  test('a supply wire has both its ends, with what fixes each', () => {
    expect(wires[0]?.ends.map(each => each.terminal)).toEqual(['L1', 'A1'])
    expect(wires[0]?.ends.map(each => each.fixing?.params)).toEqual([
      { torque: '45 in-lb' },
      { torque: '20 in-lb' },
    ])
  })

  test('the white tail of the breaker is a wire of its own', () => {
    expect(wires.find(each => each.kind === 'tail')?.ends[0]?.terminal).toBe('NB')
  })

  test('a white return on 240 V is marked again', () => {
    const marked = wires.filter(each => each.reidentify)
    expect(marked.map(each => each.ends[0]?.terminal)).toEqual(['B3', 'C3'])
    expect(marked.every(each => each.notes[0]?.message === 'note.re-identify')).toBe(true)
  })

  test('every end of the job is in the table', () => {
    for (const id of demoIds('tubs'))
      for (const each of sheetsOf(id)) {
        const ends = each.wires.flatMap(group => group.wires.flatMap(wire => wire.ends))
        expect(new Set(ends.map(end => end.end)).size).toBe(ends.length)
        for (const panel of each.panels)
          for (const terminal of panel.terminals)
            for (const number of terminal.wires)
              expect(
                each.wires
                  .flatMap(group => group.wires)
                  .find(wire => wire.number === number)
                  ?.ends.some(end => end.terminal === terminal.id && end.panel === panel.id),
              ).toBe(true)
      }
  })
})

describe('steps concern this tub alone', () => {
  const fourWire = sheetOf('everyday-240-circulation', 'heron-4')
  const threeWire = sheetOf('three-wire-240', 'alder-240')
  const cord = sheetOf('cord-120-15', 'plover-1')
  const strapped = sheetOf('strapped-115', 'rowan-2')
  const garden = sheetOf('garden-230', 'sorrel-32')

  test('the board is measured before the supply is landed: upstream bonds cannot answer for it', () => {
    for (const sheet of [fourWire, threeWire, cord, garden]) {
      const names = sheet.steps.map(each => each.name)
      expect(names.indexOf('cold')).toBeLessThan(names.indexOf('supply'))
      expect(names.indexOf('supply')).toBeLessThan(names.indexOf('power'))
      expect(messagesOf(sheet, 'land')).not.toContain('land.supply')
      expect(messagesOf(sheet, 'supply')).toContain('land.supply')
    }
    expect(find(readingsOf(fourWire, 'cold'), 'read.terminals')).toHaveLength(5)
    expect(messagesOf(threeWire, 'supply')).toContain('land.no-neutral')
    expect(messagesOf(fourWire, 'supply')).not.toContain('land.no-neutral')
  })

  test('jumpers move before anything is landed', () => {
    const names = fourWire.steps.map(each => each.name)
    expect(names.indexOf('jumpers')).toBeLessThan(names.indexOf('land'))
  })

  test('wires between supply enclosures are not said to land at the box', () => {
    const actions = garden.steps.find(each => each.name === 'supply')?.actions ?? []
    const numbers = (message: string) =>
      numbersIn(actions.find(each => each.message === message)?.params['wires'])
    expect(numbers('land.supply')).toEqual([4, 5, 6])
    expect(numbers('supply.between')).toEqual([1, 2, 3])
  })

  test('every load with an earth lead is proven to its metal before it gets power', () => {
    const loads = find(readingsOf(fourWire, 'loads'), 'read.case').map(
      each => each.what.params['load'],
    )
    expect(loads).toHaveLength(5)
  })

  test('the heater is never called with nothing plugged in', () => {
    const at = (step: string) =>
      find(readingsOf(fourWire, step), 'read.output').map(each => each.what.params['a'])
    expect(at('outputs')).not.toContain('H1')
    expect(at('loads')).toContain('H1')
  })

  test('pairs to prove dead: six of four wires, three of three', () => {
    expect(find(readingsOf(fourWire, 'lock'), 'read.pair')).toHaveLength(6)
    expect(find(readingsOf(threeWire, 'lock'), 'read.pair')).toHaveLength(3)
  })

  test('first power: 240 V between the legs, 120 V to earth, under 2 V from neutral to earth', () => {
    const volts = (readingsOf(fourWire, 'power') ?? []).map(each => each.expected?.params)
    expect(volts[0]).toMatchObject({ volts: 240, low: 220, high: 252 })
    expect(volts[1]).toMatchObject({ volts: 120, low: 110, high: 126 })
    expect(volts[5]).toEqual({ limit: 2 })
    expect(readingsOf(garden, 'power')?.[0]?.expected?.params['volts']).toBe(230)
  })

  test('outputs are called empty at the volts of their jumpers', () => {
    const outputs = (readingsOf(fourWire, 'outputs') ?? []).map(each => [
      each.what.params['a'],
      Math.round(Number(each.expected?.params['volts'])),
    ])
    expect(outputs).toContainEqual(['B1', 240])
    expect(outputs).toContainEqual(['D1', 120])
  })

  test('the element is measured by its plate: 240² over 5500', () => {
    const [heater] = find(readingsOf(fourWire, 'cold'), 'read.heater')
    const ohms = 240 ** 2 / 5500
    // Two leads of 10 AWG, 1 m each: 7 mΩ. Band: ±10 %, and 1 % and 0.2 Ω of the meter.
    expect(heater?.expected?.params['ohms']).toBeCloseTo(ohms + 0.007, 3)
    expect(heater?.expected?.params['low']).toBeCloseTo(0.99 * (0.9 * ohms + 0.006) - 0.2, 2)
    expect(heater?.expected?.params['high']).toBeCloseTo(1.01 * (1.1 * ohms + 0.007) + 0.2, 2)
    expect(heater?.what.params['terminals']).toBe('H1 – H2')
  })

  test('each position of each jumper is told apart by ohms', () => {
    const jumpers = find(readingsOf(fourWire, 'cold'), 'read.jumper').map(each => [
      each.what.params['jumper'],
      each.what.params['b'],
      each.expected?.message,
    ])
    expect(jumpers).toContainEqual(['J1', 'A3', 'expect.open'])
    expect(jumpers).toContainEqual(['J2', 'A2', 'expect.open'])
    expect(jumpers).toContainEqual(['J2', 'A3', 'expect.joined'])
    expect(jumpers).toContainEqual(['J4', 'A2', 'expect.joined'])
  })

  test('a moved jumper is moved, the others are left', () => {
    const [first, second] = messagesOf(fourWire, 'jumpers')
    expect([first, second]).toEqual(['jumper.move', 'jumper.leave'])
    expect(fourWire.jumpers.map(each => each.moves)).toEqual([true, false, false, false])
  })

  test('a strap is told by its volts, where there is one', () => {
    expect(strapped.straps).toMatchObject([{ from: '115 V', to: '230 V', moves: true }])
    expect(messagesOf(strapped, 'jumpers')).toContain('strap.move')
    expect(messagesOf(fourWire, 'jumpers')).not.toContain('strap.move')
  })

  test('a tub with nothing to set has no such step', () => {
    for (const each of [fourWire, threeWire, cord, strapped, garden])
      expect(each.steps.some(step => step.name === 'jumpers')).toBe(
        each.jumpers.length + each.straps.length > 0,
      )
    expect(threeWire.jumpers).toEqual([])
  })

  test('a tail is looked at where there is one', () => {
    expect(messagesOf(fourWire, 'supply')).toContain('land.tail')
    expect(messagesOf(cord, 'supply')).not.toContain('land.tail')
  })

  test('a cord is unplugged, anything else is locked off', () => {
    expect(messagesOf(fourWire, 'lock')[0]).toBe('lock.off')
    expect(messagesOf(cord, 'lock').slice(0, 2)).toEqual(['lock.cord', 'lock.cord-means'])
    expect(messagesOf(cord, 'power')).toContain('power.on-cord')
    // Its plug is sealed: there is no enclosure upstream to open.
    expect(messagesOf(cord, 'supply')).not.toContain('supply.upstream')
    expect(messagesOf(fourWire, 'supply')).toContain('supply.upstream')
  })

  test('flow is proved as the box proves it', () => {
    expect(messagesOf(fourWire, 'protect')).toContain('protect.pressure-switch')
  })

  test('the heater is tried last, after the loads that move water', () => {
    const tried = messagesOf(fourWire, 'loads').filter(
      each => each === 'loads.plug' || each === 'loads.heater',
    )
    expect(tried.at(-1)).toBe('loads.heater')
  })

  test('settings come before the outputs they decide', () => {
    const names = fourWire.steps.map(each => each.name)
    expect(names.indexOf('settings')).toBeLessThan(names.indexOf('outputs'))
    expect(names.indexOf('outputs')).toBeLessThan(names.indexOf('loads'))
  })

  test('every step warns, and live work says whose work it is', () => {
    for (const step of fourWire.steps)
      expect(step.caution.text.message).toBe(`caution.${step.name}`)
    const licensed = fourWire.steps.filter(each => each.licensed).map(each => each.name)
    expect(licensed).toEqual(['land', 'supply', 'power', 'outputs', 'loads', 'protect'])
  })
})

describe('what is open stands on top', () => {
  const sheet = sheetOf('strapped-115', 'rowan-2')

  test('danger first, numbered as marked', () => {
    const rank = ['danger', 'warning', 'caution', 'notice']
    const ranks = sheet.open.map(each => rank.indexOf(each.severity))
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(sheet.open.map(each => each.number)).toEqual(sheet.open.map((_, index) => index + 1))
  })

  test('an unknown draw is never a number in the meter table', () => {
    const said = sheet.open.map(each => (each.says.kind === 'text' ? each.says.text.message : ''))
    expect(said).toContain('open.assumed-unknown')
    const row = sheet.meter.find(each => each.unknown !== undefined)
    expect(row?.amps).toBeUndefined()
  })
})

describe('what may run together', () => {
  test('no row is part of another, and the rows are real modes', () => {
    const { together } = sheetOf('everyday-240-circulation', 'heron-4')
    for (const a of together)
      for (const b of together)
        expect(a !== b && a.commands.every(each => b.commands.includes(each))).toBe(false)
    expect(together.some(each => each.heats)).toBe(true)
  })
})

test('equal input gives an equal sheet', () => {
  const sheets = () => JSON.stringify(freshSheets('everyday-240-circulation'))
  expect(sheets()).toBe(sheets())
})
