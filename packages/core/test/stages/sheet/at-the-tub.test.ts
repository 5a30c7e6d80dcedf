import { describe, expect, test } from 'vitest'
import type { Severity, SupplyDevice, Terminal, Verdict } from '../../../src/index.ts'
import { jobOf } from '../../../src/index.ts'
import type { JobSheet, OpenPoint, SheetStep } from '../../../src/stages/sheet/artifact.ts'
import { bondLug, bondReadings, bondTexts } from '../../../src/stages/sheet/bonding.ts'
import { keepsNeutral } from '../../../src/stages/sheet/neutral.ts'
import { conditionsOf } from '../../../src/stages/sheet/open-points.ts'
import { runsOf } from '../../../src/stages/sheet/site.ts'
import { demoBox, demoDevices, demoIds, demoJob, demoTub } from '../../support/demo.ts'
import { sheetOf, sheetsOf } from './sheets.ts'

const stepOf = (sheet: JobSheet, name: string): SheetStep => {
  const step = sheet.steps.find(each => each.name === name)
  if (!step) throw new Error(`no step ${name}`)
  return step
}
const said = (sheet: JobSheet, name: string) =>
  stepOf(sheet, name).actions.map(each => each.message)
const read = (sheet: JobSheet, name: string) =>
  stepOf(sheet, name).readings.map(each => each.what.message)
const every = (): readonly JobSheet[] => demoIds('tubs').flatMap(sheetsOf)
const everyday = sheetOf('everyday-240-circulation', 'heron-4')
const large = sheetOf('large-60', 'bittern-8')
const garden = sheetOf('garden-230', 'sorrel-32')
const cord = sheetOf('cord-120-15', 'plover-1')

describe('the headline', () => {
  const headOf = (sheet: JobSheet) =>
    sheet.head.lines.find(each => each.message.startsWith('head.proof'))?.params['verdict']

  test('never says proven above a warning, and names the points it holds with', () => {
    for (const sheet of every()) {
      const points = conditionsOf(sheet.open).map(each => `!${each.number}`)
      const verdict = headOf(sheet)
      if (points.length === 0) expect(verdict).toMatchObject({ message: 'head.proven' })
      else expect(verdict).toMatchObject({ message: 'head.provided', params: { points } })
      const warns = sheet.open.some(each => ['danger', 'warning'].includes(each.severity))
      if (warns) expect(verdict).toMatchObject({ message: 'head.provided' })
    }
    expect(headOf(everyday)).toMatchObject({ message: 'head.provided', params: { points: ['!1'] } })
    expect(headOf(garden)).toMatchObject({ message: 'head.proven' })
  })
})

test('a plan holds with all that warns, and with all that is not shown outright', () => {
  const point = (number: number, severity: Severity, verdict: Verdict): OpenPoint => ({
    number,
    severity,
    says: {
      kind: 'finding',
      finding: { rule: 'VERIFY-0', message: 'a', verdict, severity, subjects: [], params: {} },
    },
    subjects: [],
  })
  const open = [
    point(1, 'warning', 'breaks'),
    point(2, 'caution', 'experts-differ'),
    point(3, 'notice', 'provided'),
    point(4, 'notice', 'not-shown'),
    point(5, 'notice', 'breaks'),
  ]
  expect(conditionsOf(open).map(each => each.number)).toEqual([1, 2, 3, 4])
})

describe('flow is proved by less flow, on a full heater', () => {
  const flow = (sheet: JobSheet) =>
    said(sheet, 'protect').filter(each => /flow|pair|switch/u.test(each))

  test('a pair of probes: its order, then a throttled valve', () => {
    expect(flow(large)).toEqual([
      'protect.flow-maker',
      'protect.flow-ready',
      'protect.pair-order',
      'protect.probe-pair',
      'protect.flow-late',
      'protect.flow-back',
    ])
  })

  test('a switch: the same frame, its own valve, and open at rest when cold', () => {
    expect(flow(everyday)).toContain('protect.pressure-switch')
    expect(flow(garden)).toContain('protect.flow-switch')
    expect(flow(garden)).not.toContain('protect.pair-order')
    expect(read(everyday, 'cold')).toContain('read.pressure-switch')
    expect(read(garden, 'cold')).toContain('read.flow-switch')
    expect(read(large, 'cold').some(each => each.endsWith('-switch'))).toBe(false)
  })

  test('every sheet ends the test with open valves, and with a time after which it has failed', () => {
    for (const sheet of every()) {
      expect(read(sheet, 'protect')).toContain('read.valves-open')
      const late = stepOf(sheet, 'protect').actions.find(
        each => each.message === 'protect.flow-late',
      )
      const limit = stepOf(sheet, 'protect').readings.find(
        each => each.what.message === 'read.heat-stops',
      )
      expect(late?.params['seconds']).toBe(limit?.expected?.params['seconds'])
    }
  })

  test('one pump runs, one that the box heats with', () => {
    const ready = stepOf(cord, 'protect').actions.find(
      each => each.message === 'protect.flow-ready',
    )
    expect(ready?.params['command']).toBe('pump low')
  })

  test('what is shut at the heater is opened before it is filled', () => {
    for (const sheet of every()) expect(said(sheet, 'fill')[0]).toBe('fill.valves')
  })
})

describe('bonding', () => {
  const job = demoJob('everyday-240-circulation', 'heron-4')

  test('names the wire, both its lugs, how tight, and each metal part', () => {
    expect(said(everyday, 'mount').slice(-3)).toEqual(['bond.wire', 'bond.join', 'bond.torque'])
    const join = stepOf(everyday, 'mount').actions.find(each => each.message === 'bond.join')
    expect(join?.params['parts']).toHaveLength(4)
    expect(join?.params['lug']).toMatchObject({ message: 'bond.lug-maker' })
  })

  test('the size is a figure where one is known, else the maker’s or the local one', () => {
    const sizeOf = (sheet: JobSheet) =>
      stepOf(sheet, 'mount').actions.find(each => each.message === 'bond.wire')?.params['size']
    expect(sizeOf(everyday)).toMatchObject({ message: 'bond.size-us' })
    expect(sizeOf(garden)).toMatchObject({ message: 'bond.size-local' })
  })

  test('a lug that the box keeps free is named with its torque', () => {
    const stud = job.box.board.terminals.find(each => each.id === 'A4') as Terminal
    const { board } = job.box
    const free = { ...stud, id: 'A9' }
    const withLug = {
      ...job,
      box: { ...job.box, board: { ...board, terminals: [...board.terminals, free] } },
    }
    expect(bondLug(job)).toBeUndefined()
    expect(bondTexts(withLug)[1]?.params['lug']).toMatchObject({
      message: 'bond.lug',
      params: { lug: 'A9', torque: '20 in-lb' },
    })
  })

  test('each part is read to the lug, below 1 Ω, with the leads zeroed', () => {
    const readings = bondReadings(job)
    expect(readings).toHaveLength(5)
    for (const each of readings)
      expect(each.expected).toMatchObject({ message: 'expect.bond', params: { ohms: 1 } })
    expect(read(everyday, 'cold').filter(each => each.startsWith('read.bond'))).toHaveLength(5)
    expect(said(everyday, 'cold')).toContain('cold.zero')
  })
})

describe('a neutral that stays connected', () => {
  const tub = demoTub('everyday-240-circulation')
  const [gf] = tub.supply.devices
  const breaker = demoDevices.get(gf?.device ?? '') as SupplyDevice
  const keeps = (device: SupplyDevice): boolean =>
    keepsNeutral(jobOf(tub, demoBox('heron-4'), new Map([[breaker.id, device]])), gf?.id ?? '')

  test('is told where the device that is locked off passes it through', () => {
    expect(said(large, 'lock')).toContain('lock.neutral-stays')
    expect(said(everyday, 'lock')).not.toContain('lock.neutral-stays')
    expect(said(garden, 'lock')).not.toContain('lock.neutral-stays')
    expect(said(cord, 'lock')).not.toContain('lock.neutral-stays')
  })

  test('follows from the parts of a ground-fault breaker', () => {
    expect(keeps(breaker)).toBe(false)
    const { board } = breaker
    const through = (node: string) => ({
      ...breaker,
      board: {
        ...board,
        terminals: board.terminals.map(each => (each.id === 'N' ? { ...each, node } : each)),
      },
    })
    // The tub's neutral on the bar itself, or on the breaker's own tail.
    expect(keeps(through('N-BAR'))).toBe(true)
    expect(keeps(through('TAIL'))).toBe(true)
  })

  test('follows from where it was found', () => {
    const [run] = tub.supply.cables
    const past = {
      ...tub,
      supply: {
        ...tub.supply,
        cables: run
          ? [
              {
                ...run,
                conductors: run.conductors.map(each =>
                  each.function === 'neutral' ? { ...each, from: 'NB' } : each,
                ),
              },
            ]
          : [],
      },
    }
    expect(keepsNeutral(jobOf(past, demoBox('heron-4'), demoDevices), gf?.id ?? '')).toBe(true)
  })
})

describe('a reading outside its band', () => {
  test('has a line in every step that reads ohms, volts or amps', () => {
    for (const sheet of every())
      for (const step of sheet.steps)
        if (step.readings.some(each => each.unit !== '')) expect(step.outside).not.toEqual([])
  })

  test('of a motor says to stop, above, below and at nothing', () => {
    const lines = stepOf(everyday, 'loads').outside.map(each => each.message)
    for (const each of ['high', 'low', 'none']) expect(lines).toContain(`outside.motor-${each}`)
    expect(lines).toContain('outside.heater')
  })
})

describe('the heater', () => {
  test('has each of its wires landed once', () => {
    for (const sheet of every()) {
      const heater = sheet.wires.flatMap(each => each.wires).filter(each => each.owner === 'heater')
      const earth = heater.find(each => each.function === 'earth')?.number
      const landing = sheet.steps
        .flatMap(each => each.actions)
        .filter(each => ['land.heater-earth', 'loads.heater'].includes(each.message))
      expect(heater.length).toBe(3)
      expect(landing.map(each => each.params['wires'])).toEqual([
        [earth],
        heater.map(each => each.number).filter(each => each !== earth),
      ])
    }
  })
})

describe('a setting that a power cut changes', () => {
  test('stands on the owner’s paper, with whom to call', () => {
    const falls = stepOf(everyday, 'close').actions.filter(each => each.message === 'close.falls')
    expect(falls).toHaveLength(1)
    expect(falls[0]?.params['value']).toBe('a circulation pump filters and heats')
    expect(falls[0]?.params['fallsTo']).toMatch(/^no circulation pump/u)
    for (const sheet of every()) {
      const paper = stepOf(sheet, 'close').actions.find(each => each.message === 'close.paper')
      expect(paper?.params['settings']).toHaveLength(2)
      expect(read(sheet, 'close')).toContain('read.call')
    }
    expect(said(large, 'close')).not.toContain('close.falls')
  })

  test('is entered again wherever power comes back, and read before heat', () => {
    expect(said(everyday, 'settings')).toContain('set.falls')
    expect(said(everyday, 'loads')).toContain('loads.again')
    expect(said(everyday, 'protect')).toContain('set.again')
    expect(said(everyday, 'close')).toContain('set.again')
    expect(read(everyday, 'loads')).toContain('read.setting-heat')
    expect(said(large, 'protect')).not.toContain('set.again')
    // After the last time that power goes off in the step, and before heat is called.
    const steps = said(everyday, 'protect')
    expect(steps.indexOf('set.again')).toBeGreaterThan(steps.indexOf('protect.button'))
    expect(steps.indexOf('set.again')).toBeLessThan(steps.indexOf('protect.flow-ready'))
  })
})

test('the control box has a plain box in the drawing of the supply end', () => {
  for (const sheet of every())
    for (const panel of sheet.panels.filter(each => each.id !== 'box')) {
      const boxes = panel.partners.filter(each => each.label === sheet.head.box)
      for (const each of boxes) expect(each.symbol).toBe('box')
    }
  const partners = everyday.panels.flatMap(each => each.partners)
  expect(partners.filter(each => each.symbol === 'box')).toHaveLength(1)
})

test('small leads are plugged in after the cold check, which reads the probes unplugged', () => {
  const names = everyday.steps.map(each => each.name)
  const plugged = everyday.steps.find(each =>
    each.actions.some(action => action.message === 'supply.low-volts'),
  )
  expect(names.indexOf(plugged?.name ?? 'lock')).toBeGreaterThan(names.indexOf('cold'))
})

test('three numbers in a row and more are said as a run', () => {
  expect(runsOf([7, 3, 1, 2, 9, 10])).toEqual([
    { message: 'wires.run', params: { from: 1, to: 3 } },
    7,
    9,
    10,
  ])
})
