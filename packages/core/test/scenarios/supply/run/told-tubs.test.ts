import { describe, expect, test } from 'vitest'
import type { CodeFinding, Survey } from '../../../../src/index.ts'
import { surveyedCondition } from '../../../../src/index.ts'
import { demoDevices, demoTub } from '../../../support/demo.ts'
import { known, withCable } from '../../../support/surveyed.ts'
import { report } from './card-tub.ts'

const byVerdict = (survey: Survey, verdict: CodeFinding['verdict']): readonly string[] => [
  ...new Set(
    report(survey).findings.flatMap(each => (each.verdict === verdict ? [each.rule] : [])),
  ),
]

describe('a tub of which everything is told', () => {
  test('holds in every rule, asks for nothing, and is kept as it is', () => {
    const found = report(demoTub('told-run-240'))
    expect(found.findings.filter(each => each.verdict !== 'holds')).toEqual([])
    expect(found.findings.length).toBeGreaterThan(30)
    expect(found.asks).toEqual([])
    expect(found.circuits[0]?.ways.map(each => [each.kind, each.outcome])).toEqual([
      ['keep', 'holds'],
    ])
  })

  test('its readings name it sound', () => {
    const condition = surveyedCondition(demoTub('told-run-240'), demoDevices)
    expect(condition?.ok && condition.value.named).toBe('sound')
  })

  test('without readings there is nothing to name', () => {
    expect(surveyedCondition(demoTub('everyday-240-plain'), demoDevices)).toBeUndefined()
  })

  test.each([
    ['leg2ToNeutral', 140],
    ['leg1ToEarth', 60],
    ['leg2ToEarth', 60],
  ] as const)('one reading of %s at %d V, alone, is enough to doubt it', (name, volts) => {
    const survey = demoTub('told-run-240')
    const readings = (survey.readings ?? []).map(each =>
      each.id === 'idle' ? { ...each, [name]: { si: volts as never, text: `${volts} V` } } : each,
    )
    const condition = surveyedCondition({ ...survey, readings }, demoDevices)
    expect(condition?.ok).toBe(true)
    expect(condition?.ok && condition.value.named).not.toBe('sound')
  })
})

describe('a tub of which hardly anything is known', () => {
  test('breaks nowhere, and says what it holds provided', () => {
    const survey = demoTub('hardly-told-230')
    expect(byVerdict(survey, 'breaks')).toEqual([])
    expect(byVerdict(survey, 'provided')).toEqual(expect.arrayContaining(['SUPPLY-1', 'SUPPLY-2']))
    const { asks } = report(survey)
    expect(asks).toContain('supply.cables.armoured.method')
    expect(asks).not.toContain('supply.cables.armoured.length')
  })
})

describe('a run patched together from ten pieces', () => {
  const survey = demoTub('ten-pieces-120')
  const { circuits, findings } = report(survey)
  const [circuit] = circuits

  test('is judged piece by piece', () => {
    expect(circuit?.segments.map(each => each.cable)).toEqual(
      survey.supply.cables.map(each => each.id),
    )
    for (const { findings: own } of circuit?.segments ?? []) expect(own.length).toBeGreaterThan(3)
  })

  test('carries less with every conductor that lies beside it', () => {
    const conduit = circuit?.segments.filter(each => ['piece-0', 'piece-8'].includes(each.cable))
    const [alone, crowded] = (conduit ?? []).map(each => each.carries?.to ?? 0)
    expect(alone).toBe(55)
    expect(crowded).toBeLessThan(40)
  })

  const fillsOf = (tub: Survey): readonly CodeFinding[] =>
    report(tub).findings.filter(each => each.rule === 'SUPPLY-15')

  test('each kind and trade size of conduit has its own room; what lies in none has none', () => {
    const alone = survey.supply.cables.reduce(
      (tub, { id }) => withCable(tub, id, { alongside: known('0') }),
      survey,
    )
    const fills = fillsOf(alone)
    expect(fills.map(({ params }) => `${params['conduit']} ${params['trade']}`).sort()).toEqual([
      'EMT 1/2',
      'FMC 1-1/4',
      'PVC 40 3/4',
      'PVC 80 1',
    ])
    const sheathed = survey.supply.cables.filter(each =>
      JSON.stringify(each.conduit).includes('1-1/2'),
    )
    expect(sheathed).toHaveLength(1)
    expect(fills.flatMap(each => each.subjects)).not.toContain(sheathed[0]?.id)
  })

  test('beside wires of other circuits, of which nobody told how thick, its room is not known', () => {
    const fills = fillsOf(survey)
    const crowded = fills.filter(each => !each.isCovered)
    expect(crowded.map(each => each.subjects[0])).toEqual(['piece-1', 'piece-8', 'piece-9'])
    expect(new Set(crowded.map(each => each.verdict))).toEqual(new Set(['not-shown']))
    expect(fills.filter(each => each.isCovered).map(each => each.verdict)).toEqual(['breaks'])
  })

  test('the hidden joint, the taped neutral and the small isolators are found', () => {
    const broken = byVerdict(survey, 'breaks')
    expect(broken).toEqual(
      expect.arrayContaining(['SUPPLY-2', 'SUPPLY-5', 'SUPPLY-8', 'SUPPLY-13']),
    )
  })

  test('somebody felt a shock: that comes first', () => {
    expect(findings.find(each => each.message === 'touch-felt')).toMatchObject({
      severity: 'danger',
      verdict: 'breaks',
    })
  })
})
