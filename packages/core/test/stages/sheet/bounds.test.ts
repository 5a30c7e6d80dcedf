import { describe, expect, test } from 'vitest'
import type { Finding, Survey, Verification } from '../../../src/index.ts'
import { jobOf, judgeLanding, planRefit } from '../../../src/index.ts'
import { drawBounds, withinBound, withTightest } from '../../../src/stages/sheet/bounds.ts'
import type { SheetText } from '../../../src/stages/sheet/messages.ts'
import { demoBoxes, demoDevices, demoTub } from '../../support/demo.ts'
import { sheetOf } from './sheets.ts'

const finding = (message: string, provided: Finding['provided']): Finding => ({
  rule: 'VERIFY-0',
  message,
  verdict: 'provided',
  severity: 'warning',
  subjects: [],
  params: {},
  ...(provided ? { provided } : {}),
})

const unknown = (circuit: string) =>
  ({ load: 'pump', circuit, label: 'Pump', kind: 'unknown', atMost: 16 }) as const

const judged = (assumptions: Verification['assumptions'], findings: readonly Finding[]) =>
  ({ assumptions, findings }) as Verification

describe('one figure a load', () => {
  const pump = (circuit: string, atMost: number) => ({
    load: 'pump',
    circuit,
    label: 'Pump',
    atMost,
  })
  const findings = [
    finding('a', [pump('high', 14.2), pump('low', 14.2)]),
    finding('b', [pump('low', 12.3)]),
    finding('c', undefined),
  ]
  const bounds = drawBounds(judged([unknown('high'), unknown('low')], findings))

  test('is the tightest of all findings, for every circuit nobody knows', () => {
    expect(bounds).toHaveLength(1)
    expect(bounds[0]).toMatchObject({ circuits: ['high', 'low'], atMost: 12.3 })
  })

  test('stands in each finding too, and a finding without one gets none', () => {
    const told = findings.map(each => withTightest(each, bounds).provided?.map(one => one.atMost))
    expect(told).toEqual([[12.3, 12.3], [12.3], undefined])
  })

  test('is what is assumed where no finding asks for less', () => {
    expect(drawBounds(judged([unknown('high')], []))[0]).toMatchObject({ atMost: 16 })
  })

  test('of ranged circuits is one each: a low speed does not bound a high one', () => {
    const ranged = (circuit: string, atMost: number) =>
      ({ load: 'pump', circuit, label: 'Pump', kind: 'range', atMost }) as const
    const both = drawBounds(judged([ranged('high', 10), ranged('low', 3)], []))
    expect(both.map(each => each.atMost)).toEqual([10, 3])
  })

  test('keeps a least draw beside the greatest, the greatest of all leasts', () => {
    const least = (atLeast: number) => finding('d', [{ ...pump('high', 9), atLeast }])
    const [bound] = drawBounds(judged([unknown('high')], [least(2), least(4)]))
    expect(bound).toMatchObject({ atLeast: 4, atMost: 9 })
    expect(withinBound({ low: 1, nominal: 5, high: 12 }, bound)).toEqual({
      low: 4,
      nominal: 5,
      high: 9,
    })
  })
})

/** Every number that stands in a bound of the sheet, by the load that it is said of. */
function figuresIn(value: unknown): readonly number[] {
  if (typeof value !== 'object' || value === null) return []
  const own =
    'message' in value && value.message === 'bound.most'
      ? [Number((value as SheetText).params['amps'])]
      : []
  const provided = 'atMost' in value ? [Number(value.atMost)] : []
  return [...own, ...provided, ...Object.values(value).flatMap(figuresIn)]
}

describe('a plate that is burnt off', () => {
  const sheet = sheetOf('burnt-plate-240', 'rowan-2')

  test('has one greatest draw a load, wherever the sheet says it', () => {
    const figures = figuresIn(sheet)
    expect(figures.length).toBeGreaterThan(6)
    // Pump A, which nobody knows, and pump B, whose photograph bounds it.
    expect(new Set(figures).size).toBe(2)
  })

  test('is measured where the pump is first run', () => {
    const actions = sheet.steps.find(each => each.name === 'loads')?.actions ?? []
    const at = actions.findIndex(each => each.message === 'loads.bound')
    expect(actions[at - 1]?.message).toBe('loads.plug')
    expect(actions[at - 1]?.params['load']).toMatch(/^Jets pump A/u)
  })

  test('no band of a ranged draw ends above its bound', () => {
    const readings = sheet.steps.find(each => each.name === 'loads')?.readings ?? []
    const pumpB = readings.find(each => String(each.what.params['load']).includes('pump B, one'))
    const highs = readings.flatMap(each =>
      String(each.what.params['load']).includes('pump B') &&
      each.expected?.message === 'expect.amps'
        ? [Number(each.expected.params['high'])]
        : [],
    )
    expect(pumpB).toBeDefined()
    expect(highs).toHaveLength(1)
    expect(Math.max(...highs)).toBeLessThanOrEqual(9.9)
  })
})

test('a bound is shown to hold, and one ampere more is not', () => {
  const survey = demoTub('burnt-plate-240')
  const boxes = demoBoxes()
  const proven = planRefit(survey, boxes, demoDevices).plans.find(
    each => each.plan.box === 'rowan-2',
  )
  const box = boxes.find(each => each.id === 'rowan-2')
  const bound = proven?.verification.findings.find(each => each.provided)?.provided?.[0]
  if (!proven || !box || bound?.atMost === undefined) throw new Error('there is no bound to try')
  const at = (amps: number) => {
    const measured: Survey = {
      ...survey,
      loads: survey.loads.map(load =>
        load.id === bound.load && load.kind === 'pump'
          ? {
              ...load,
              circuits: load.circuits.map(each => ({
                ...each,
                amps: { kind: 'known', value: { si: amps as never, text: `${amps} A` } } as const,
              })),
            }
          : load,
      ),
    }
    const verdict = judgeLanding(jobOf(measured, box, demoDevices), proven.plan.landing)
    return verdict.ok ? verdict.value.filter(each => each.message === 'draw-above-limit') : []
  }
  expect(at(bound.atMost)).toEqual([])
  expect(at(bound.atMost + 1)).toHaveLength(1)
})
