import { describe, expect, test } from 'vitest'
import type { Survey } from '../../../src/index.ts'
import { changeAndProve, jobOf, planAsLanded, withChanges } from '../../../src/index.ts'
import type { JobSheet, SheetStep } from '../../../src/stages/sheet/artifact.ts'
import { layOutSheet } from '../../../src/stages/sheet/lay-out-sheet.ts'
import { demoBox, demoDevices, demoJob, demoTub } from '../../support/demo.ts'
import { plansOf, sheetOf } from './sheets.ts'

const stepOf = (sheet: JobSheet, name: string): SheetStep => {
  const step = sheet.steps.find(each => each.name === name)
  if (!step) throw new Error(`no step ${name}`)
  return step
}
const said = (sheet: JobSheet, name: string) =>
  stepOf(sheet, name).actions.map(each => each.message)
const read = (sheet: JobSheet, name: string) =>
  stepOf(sheet, name).readings.map(each => each.what.message)
const texts = (sheet: JobSheet) =>
  sheet.open.flatMap(({ severity, says }) =>
    says.kind === 'text' ? [`${severity} ${says.text.message}`] : [],
  )

describe('a tub of two circuits, both of which serve', () => {
  const split = [
    sheetOf('split-240', 'whimbrel-4'),
    sheetOf('split-two-legs', 'whimbrel-2'),
    sheetOf('split-one-leg', 'whimbrel-2'),
  ]

  test.each(split)('$id: off means both off, with both names', sheet => {
    const lock = stepOf(sheet, 'lock')
    expect(lock.caution.text).toMatchObject({ message: 'caution.lock-circuits' })
    expect(lock.caution.text.params['circuits']).toHaveLength(2)
    const offs = lock.actions.filter(each => each.message === 'lock.off')
    expect(new Set(offs.map(each => each.params['device'])).size).toBe(2)
    expect(said(sheet, 'lock')).toContain('lock.circuits-mean')
    expect(said(sheet, 'lock')).not.toContain('lock.idle')
  })

  test.each(split)('$id: the front page names both breakers', sheet => {
    const heads = sheet.head.lines.filter(each => each.message === 'head.circuit')
    expect(heads.map(each => each.params['breaker'])).toMatchObject([
      { params: { amps: 20 } },
      { params: { amps: 30 } },
    ])
  })

  test.each(split)('$id: each circuit has its own limit, 80 % of its own breaker', sheet => {
    const worst = stepOf(sheet, 'loads').readings.filter(
      each => each.what.message === 'read.worst-circuit',
    )
    expect(worst.map(each => each.expected?.params['amps'])).toEqual([16, 24])
    expect(said(sheet, 'loads').filter(each => each === 'loads.worst-circuit')).toHaveLength(2)
    expect(read(sheet, 'loads')).not.toContain('read.worst')
  })

  test.each(split)('$id: power comes on circuit by circuit, and both are handed over', sheet => {
    expect(said(sheet, 'power').filter(each => each === 'power.on-circuit')).toHaveLength(2)
    expect(said(sheet, 'protect')).toContain('protect.button-circuit')
    expect(said(sheet, 'protect')).not.toContain('protect.button')
    expect(said(sheet, 'supply')).toContain('supply.upstream-circuits')
    expect(said(sheet, 'supply')).toContain('supply.circuits-apart')
    expect(said(sheet, 'close')).toEqual(
      expect.arrayContaining(['close.panels-circuits', 'close.owner-circuits']),
    )
  })

  test('the earth of each run is measured to its own terminal', () => {
    const runs = stepOf(sheetOf('split-240', 'whimbrel-4'), 'supply').readings
    expect(runs.map(each => each.what.params['b'])).toEqual(['T3', 'T6'])
  })
})

test('wires that share a terminal are named, and a screw is landed and turned, not plugged', () => {
  const shared = stepOf(sheetOf('wye-208', 'dunlin-208'), 'land').actions.find(
    each => each.message === 'land.shared',
  )
  expect(shared?.params['terminals']).toEqual(['E3'])
  expect(said(sheetOf('split-one-leg', 'sedge-20'), 'loads')).toContain('loads.land')
  expect(said(sheetOf('everyday-240-circulation', 'heron-4'), 'land')).not.toContain('land.shared')
})

describe('a second circuit that no longer serves', () => {
  const sheets = [sheetOf('split-one-leg', 'tern-2'), sheetOf('split-one-leg', 'sedge-20')]

  test.each(sheets)('$id: is an open point, and so is what is left of two', sheet => {
    expect(texts(sheet)).toContain('warning open.circuit-idle')
    expect(texts(sheet)).toContain('warning open.circuit-alone')
    const alone = sheet.open.flatMap(({ says }) =>
      says.kind === 'text' && says.text.message === 'open.circuit-alone' ? [says.text] : [],
    )
    expect(alone[0]?.params['share']).toBe(16)
    expect(sheet.head.lines.map(each => each.message)).toContain('head.circuit-idle')
  })

  test.each(sheets)('$id: is locked off, capped, left off, labelled', sheet => {
    expect(said(sheet, 'lock').filter(each => each === 'lock.off')).toHaveLength(2)
    expect(said(sheet, 'lock')).toContain('lock.idle')
    const idle = stepOf(sheet, 'supply').actions.find(
      each => each.message === 'supply.circuit-idle',
    )
    expect(idle?.params['wires']).toMatchObject([{ params: { from: 4, to: 6 } }])
    expect(said(sheet, 'power').filter(each => each.startsWith('power.'))).toEqual(
      expect.arrayContaining(['power.on-circuit', 'power.idle-stays']),
    )
    expect(said(sheet, 'settings')).toContain('set.circuit-alone')
    expect(said(sheet, 'close')).toContain('close.idle')
  })

  test.each(sheets)('$id: nobody is told to read, test or switch on what stays off', sheet => {
    expect(JSON.stringify(stepOf(sheet, 'power').readings)).not.toContain('function.second-')
    const buttons = stepOf(sheet, 'power').actions.filter(each => each.message === 'power.button')
    expect(buttons).toHaveLength(1)
    expect(sheet.lines).toHaveLength(1)
    for (const each of sheet.together) expect(each.lineAmps).toHaveLength(1)
    expect(said(sheet, 'close')).toContain('close.owner')
    expect(read(sheet, 'loads')).toContain('read.worst')
  })

  test.each(sheets)(
    '$id: its conductors are proved dead like the others before a hand goes in',
    sheet => {
      expect(JSON.stringify(stepOf(sheet, 'lock').readings)).toContain('function.second-leg1')
    },
  )

  test('a tub of one circuit says nothing of circuits', () => {
    const sheet = sheetOf('everyday-240-circulation', 'heron-4')
    expect(JSON.stringify([sheet.head, sheet.open, sheet.steps])).not.toMatch(/circuit-|circuits/u)
  })
})

describe('a ground-fault device in the box', () => {
  const sheet = sheetOf('plain-breaker-230', 'teal-32')

  test('is tested at first power and with everything connected, and its trip is written down', () => {
    expect(said(sheet, 'power')).toContain('power.button-box')
    expect(said(sheet, 'protect')).toContain('protect.button-box')
    expect(read(sheet, 'protect')).toContain('read.trips')
  })

  test('what it leaves live is named: the supply terminals before it, never the earth', () => {
    const button = stepOf(sheet, 'protect').actions.find(
      each => each.message === 'protect.button-box',
    )
    expect(button?.params['terminals']).toEqual(['a', 'b'])
  })

  test('a box without one says nothing of it', () => {
    expect(said(sheetOf('garden-230', 'sorrel-32'), 'protect')).not.toContain('protect.button-box')
  })
})

describe('a plug that goes in both ways round', () => {
  const sheets = [sheetOf('turnable-230', 'tern-2'), sheetOf('turnable-120', 'tern-2')]

  test.each(sheets)('$id: is an open point, and dead is tested with it out', sheet => {
    expect(texts(sheet)).toContain('warning open.turnable')
    expect(said(sheet, 'lock')).toContain('lock.turnable')
    expect(sheet.lidNote?.message).toBe('live.turnable')
  })

  test.each(sheets)('$id: either conductor may be the live one at first power', sheet => {
    const expected = stepOf(sheet, 'power').readings.map(each => each.expected?.message)
    expect(expected).toEqual(['expect.volts', 'expect.turned', 'expect.turned'])
  })

  test('a plug that does not turn has none of it', () => {
    const cord = sheetOf('cord-120-15', 'plover-1')
    expect(JSON.stringify(cord)).not.toMatch(/turnable|turned/u)
  })
})

describe('heat marks', () => {
  const sheet = sheetOf('burnt-plate-240', 'heron-4')

  test('of a device and a cable: a warning, a part, a step', () => {
    expect(texts(sheet)).toEqual(
      expect.arrayContaining(['warning open.heat-device', 'warning open.heat-cable']),
    )
    const parts = sheet.parts.map(each => each.message)
    expect(parts).toEqual(expect.arrayContaining(['part.heat-device', 'part.heat-cable']))
    expect(said(sheet, 'supply')).toEqual(
      expect.arrayContaining(['cut.heat-device', 'cut.heat-cable']),
    )
    const order = said(sheet, 'supply')
    expect(order.indexOf('cut.heat-device')).toBeLessThan(order.indexOf('supply.shut'))
  })

  test('nothing is said of heat where none was found', () => {
    expect(JSON.stringify(sheetOf('garden-230', 'sorrel-32'))).not.toMatch(
      /\.heat-(load|device|cable)/u,
    )
  })
})

describe('changes at the tub', () => {
  const box = demoBox('alder-240')
  const found = demoTub('no-box-120-ozonator-no-neutral')
  const { proven } = changeAndProve(found, box, demoDevices)
  const sheetAfter = (survey: Survey): JobSheet => {
    if (!proven) throw new Error('no plan with changes')
    return layOutSheet({ survey, job: jobOf(survey, box, demoDevices), proven })
  }
  const sheet = sheetAfter(withChanges(found, proven?.plan.changes ?? []))

  test('are to buy, an open point, on top, and done before the box comes out', () => {
    expect(sheet.changes).toMatchObject([{ kind: 'replace', load: 'ozonator', to: { volts: 240 } }])
    const [first] = sheet.open
    expect(first).toMatchObject({ severity: 'warning', says: { kind: 'change' } })
    expect(sheet.head.lines[0]?.message).toBe('head.changed')
    expect(said(sheet, 'remove')).toContain('remove.changes')
  })

  test('heat marks go with the load that is replaced', () => {
    const loads = found.loads.map(each => ({ ...each, heatMark: true }))
    const marked = sheetAfter(withChanges({ ...found, loads }, proven?.plan.changes ?? []))
    const subjects = marked.open.flatMap(({ says, subjects: about }) =>
      says.kind === 'text' && says.text.message === 'open.heat-load' ? about : [],
    )
    expect(subjects).toEqual(['pump', 'light'])
  })
})

describe('the sheet of a landing as it is', () => {
  const job = demoJob('garden-230', 'sorrel-32')
  const landing = plansOf('garden-230').find(each => each.plan.box === 'sorrel-32')?.plan.landing
  const sheetWith = (ends: Readonly<Record<string, string>>): JobSheet => {
    if (!landing) throw new Error('no landing')
    const proven = planAsLanded(job, { ...landing, ends: { ...landing.ends, ...ends } })
    if (!proven.ok) throw new Error('no verdict')
    const survey = demoTub('garden-230')
    return layOutSheet({ survey, job, proven: proven.value, isGiven: true })
  }
  const exchanged = sheetWith({ 'last.line@box': 'box.V2', 'last.neutral@box': 'box.V1' })

  test('that holds is the same sheet as that of the plan, but for its headline', () => {
    const [given, ...lines] = sheetWith({}).head.lines
    const planned = sheetOf('garden-230', 'sorrel-32')
    expect(given?.message).toBe('head.given')
    expect(lines).toEqual(planned.head.lines)
    expect(sheetWith({}).steps).toEqual(planned.steps)
    expect(sheetWith({}).wires).toEqual(planned.wires)
  })

  test('that does not hold is never called proven, and says what is wrong', () => {
    expect(exchanged.head.holds).toBe(false)
    const heads = exchanged.head.lines.map(each => each.message)
    expect(heads).toContain('head.not-proven')
    expect(JSON.stringify(exchanged)).not.toMatch(/"head\.(proven|provided|proof)/u)
    expect(exchanged.stops[0]?.message).toBe('stop.not-shown')
    expect(exchanged.open.some(({ says }) => says.kind === 'finding')).toBe(true)
  })

  test('that does not hold leads nobody to power', () => {
    expect(exchanged.steps.map(each => each.name)).toEqual(['lock', 'photo', 'mend'])
    expect(said(exchanged, 'mend')).toContain('mend.points')
  })
})
