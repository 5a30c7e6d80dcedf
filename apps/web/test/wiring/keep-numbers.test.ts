import { readFileSync } from 'node:fs'
import type { JobSheet } from '@tubwright/core'
import { readWritten } from '@tubwright/formats'
import { beforeAll, describe, expect, test } from 'vitest'
import { ANSWERS, newDesk } from '../../src/ask/answer.ts'
import type { Document, OfLanding } from '../../src/ask/protocol.ts'
import { planOf } from './taken-job.ts'

const data = (path: string): string =>
  readFileSync(new URL(`../../../../packages/catalog/data/${path}.yaml`, import.meta.url), 'utf8')

const DEVICES = ['devices/ground-fault-breaker-2', 'devices/isolator-3']
const desk = newDesk()
const planned = planOf('large-60', 'bittern-8')
const document = readWritten('tub.yaml', data('tubs/large-60')).value as Document
const plan: OfLanding = { document, box: 'bittern-8', landing: planned }
const withEnds = (ends: Readonly<Record<string, string>>): OfLanding => ({
  ...plan,
  landing: { ...planned, ends: { ...planned.ends, ...ends } },
})

beforeAll(() => {
  void ANSWERS.shelf(
    desk,
    { boxes: [data('boxes/bittern-8')], devices: DEVICES.map(data) },
    () => undefined,
  )
})

const wired = async (of: OfLanding) =>
  ANSWERS.wired(desk, { ...of, planned, language: 'en' }, () => undefined)

const numbersIn = (sheet: JobSheet): ReadonlyMap<string, number> =>
  new Map(sheet.wires.flatMap(({ wires }) => wires.map(each => [each.id, each.number] as const)))

/** A pump whose every lead is off: its load has no place any more. */
const OFF = {
  'pump-a.high': 'loose',
  'pump-a.low': 'insulated',
  'pump-a.common': 'loose',
  'pump-a.earth': 'loose',
}

describe('a wire that was labelled keeps its number', () => {
  test('wherever its end sits', async () => {
    const before = await wired(plan)
    for (const ends of [OFF, { 'pump-a.high': 'box.C4' }, { 'pump-b.high': 'loose' }]) {
      const after = await wired(withEnds(ends))
      expect(numbersIn(after.sheet)).toEqual(numbersIn(before.sheet))
    }
  })

  test('which it would not do by itself', async () => {
    const asks = { ...withEnds(OFF), language: 'en' as const }
    const plain = await ANSWERS.wired(desk, asks, () => undefined)
    expect(numbersIn(plain.sheet)).not.toEqual(numbersIn((await wired(plan)).sheet))
  })

  test('in the drawing as in the table', async () => {
    const { sheet, drawings } = await wired(withEnds(OFF))
    const numbers = numbersIn(sheet)
    const drawn = [...(drawings['box'] ?? '').matchAll(/data-wire="(\d+)" data-end="([^"]+)"/gu)]
    expect(drawn.length).toBeGreaterThan(20)
    for (const [, number, end = ''] of drawn) {
      const id = end.replace(/@.*$/u, '')
      expect(Number(number)).toBe(numbers.get(id))
    }
    const [box] = sheet.panels
    for (const { id, wires } of box?.terminals ?? [])
      for (const number of wires) {
        const wire = sheet.wires.flatMap(each => each.wires).find(each => each.number === number)
        expect(wire?.ends.some(each => each.terminal === id)).toBe(true)
      }
  })
})

describe('the verdict that is said at once', () => {
  test.each([
    ['as planned', {}],
    ['a hot lead on an earth terminal', { 'pump-a.high': 'box.C4' }],
    ['leg and neutral exchanged', { 'last.leg1@box': 'box.A2', 'last.neutral@box': 'box.A1' }],
    ['leg 1 on earth', { 'last.leg1@box': 'box.A4' }],
    ['a load left off', OFF],
  ])('is that of the whole judgement: %s', async (_, ends) => {
    const of = withEnds(ends as Readonly<Record<string, string>>)
    const said = await ANSWERS.verdict(desk, of, () => undefined)
    const judged = await ANSWERS.judge(desk, of, () => undefined)
    expect(said.holds).toBe(judged.holds)
    const told = (all: typeof said.findings) =>
      all.map(each => `${each.severity} ${each.rule} ${each.message} ${each.subjects.join()}`)
    expect(told(said.findings)).toEqual(told(judged.findings))
  })

  test('says what trips the moment it is powered', async () => {
    const said = await ANSWERS.verdict(
      desk,
      withEnds({ 'last.leg1@box': 'box.A4' }),
      () => undefined,
    )
    expect(said.holds).toBe(false)
    expect(said.trip).toBeDefined()
  })
})
