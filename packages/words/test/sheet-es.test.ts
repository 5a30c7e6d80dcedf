import { jobOf, layOutSheet, planRefit } from '@tubwright/core'
import { printSheet, SHEET_PARTS, sheetWords } from '@tubwright/documents'
import { describe, expect, it } from 'vitest'
import { demoBoxes, demoDevices, demoTub } from '../../core/test/support/demo.ts'
import { SPANISH } from '../src/es/index.ts'
import { ENGLISH } from '../src/index.ts'
import { textsOf } from './support/tables.ts'

function demoSheet() {
  const survey = demoTub('everyday-240-plain')
  const boxes = demoBoxes()
  const { match, plans } = planRefit(survey, boxes, demoDevices)
  const [proven] = plans
  const box = boxes.find(each => each.id === proven?.plan.box)
  const verdict = match.boxes.find(each => each.box === proven?.plan.box)
  if (!proven || !box || !verdict) throw new Error('the demo has no plan')
  return layOutSheet({ survey, job: jobOf(survey, box, demoDevices), proven, verdict })
}

const sheet = demoSheet()
const words = sheetWords(SPANISH, id => id)

/** A page as a person reads it. */
const read = (page: string): string =>
  page
    .replace(/<style>[\s\S]*?<\/style>/gu, ' ')
    .replace(/<[^>]+>/gu, ' ')
    .replace(/&#39;|&apos;/gu, "'")
    .replace(/&quot;/gu, '"')
    .replace(/&amp;/gu, '&')
    .replace(/\s+/gu, ' ')

/** Stretches of a sentence between its holes that are long enough to be told from data. */
const stretches = (text: string): readonly string[] =>
  text
    .split(/\{[^}]*\}/u)
    .map(each => each.trim())
    .filter(each => each.length > 20)

const page = printSheet(sheet, words)
const text = read(page)

describe('a sheet in Spanish', () => {
  it('says its language', () => {
    expect(page).toContain('<html lang="es">')
  })

  it('says at its head, once, that nobody qualified has read it', () => {
    const head = page.slice(page.indexOf('<header>'), page.indexOf('</header>'))
    expect(head).toContain(SPANISH.unreviewedNotice)
    expect(page.split(SPANISH.unreviewedNotice).length - 1).toBe(1)
  })

  it.each(SHEET_PARTS)('says it on %s printed alone', part => {
    expect(printSheet(sheet, words, { only: part })).toContain(SPANISH.unreviewedNotice)
  })

  it('says nothing of it in English, which is the text that holds', () => {
    const english = printSheet(
      sheet,
      sheetWords(ENGLISH, id => id),
    )
    expect(english).not.toContain(ENGLISH.unreviewedNotice)
    expect(english).not.toContain(SPANISH.unreviewedNotice)
  })

  it('has nothing of the English sheet in it', () => {
    const told = [ENGLISH.sheet, ENGLISH.page, ENGLISH.verify, ENGLISH.match, ENGLISH.change]
    const all = told.flatMap(each => textsOf(each).flatMap(([, one]) => stretches(one)))
    expect(all.length).toBeGreaterThan(300)
    expect(all.filter(each => text.includes(each))).toEqual([])
    const english = read(
      printSheet(
        sheet,
        sheetWords(ENGLISH, id => id),
      ),
    )
    expect(all.filter(each => english.includes(each)).length).toBeGreaterThan(100)
  })

  it('has the Spanish of whatever the English has', () => {
    const english = read(
      printSheet(
        sheet,
        sheetWords(ENGLISH, id => id),
      ),
    )
    const spanish = new Map(textsOf(SPANISH.sheet))
    // Whole sentences only: between holes two of them may be alike.
    const said = textsOf(ENGLISH.sheet).filter(
      ([, one]) => one.length > 20 && !one.includes('{') && english.includes(one),
    )
    expect(said.length).toBeGreaterThan(60)
    expect(said.filter(([id]) => !text.includes(spanish.get(id) ?? '?'))).toEqual([])
  })

  it('puts no article after a preposition that takes it in', () => {
    const wrong = /(?<!\p{L})(?:[Dd]e|a) el(?!\p{L})/gu
    expect(
      [...text.matchAll(wrong)].map(({ index }) => text.slice(index - 40, index + 40)),
    ).toEqual([])
    // These come after “de” in other sentences.
    expect(SPANISH.sheet['device.of-box']).not.toMatch(/^el /u)
  })

  it('has the signal words and colours of the language', () => {
    for (const each of [
      'PELIGRO',
      'ADVERTENCIA',
      'ATENCIÓN',
      'negro',
      'blanco',
      'línea 1',
      'neutro',
    ])
      expect(text).toContain(each)
    for (const each of ['DANGER', 'WARNING', 'CAUTION']) expect(text).not.toContain(each)
  })
})

describe('the rules of the hand, in Spanish as in English', () => {
  const { sheet: told } = SPANISH

  it('no sentence helps round a protection', () => {
    for (const each of Object.values(told)) {
      expect(each).not.toMatch(/anular|inhabilit|desactiv|por esta noche|provisional|temporal/iu)
      if (/puentear|puentead[ao]/iu.test(each)) expect(each).toMatch(/nunca/iu)
    }
  })

  it('flow is proved by less of it, never by stopping the pump or on an empty heater', () => {
    const proofs = ['protect.probe-pair', 'protect.pressure-switch', 'protect.flow-switch'] as const
    for (const each of proofs) {
      expect(told[each]).toMatch(/(?:estrangular|cerrar) despacio/iu)
      expect(told[each]).toMatch(/la calefacción debe parar/iu)
      expect(told[each]).not.toMatch(/parar la bomba/iu)
    }
    expect(told['protect.probe-pair']).toContain('sin cerrarla nunca del todo')
    expect(told['protect.pressure-switch']).toContain('entre bomba y calefactor')
    expect(told['protect.flow-maker']).toMatch(
      /ensayo del fabricante.*Nunca con el calefactor vacío/u,
    )
  })

  it('what the plan holds with is not called proven', () => {
    for (const each of ['head.provided', 'head.not-proven'] as const)
      expect(told[each]).toMatch(/no está demostrado/iu)
  })

  it('a motor outside its band is stopped before its cause is looked for', () => {
    for (const each of ['outside.motor-high', 'outside.motor-low'] as const)
      expect(told[each]).toMatch(/cortar, bloquear, no seguir\. Probable: /u)
  })

  it('what got hot is cut out, never tightened again', () => {
    for (const of of ['load', 'device', 'cable'] as const) {
      expect(told[`open.heat-${of}`]).toMatch(/cobre limpio.*nunca se vuelve a apretar/u)
      expect(told[`cut.heat-${of}`]).toMatch(
        /cobre limpio.*No apretar ningún tornillo recalentado/u,
      )
    }
  })

  it('of two circuits both are off before anything is dead', () => {
    expect(told['caution.lock-circuits']).toMatch(/uno cortado NO es cortado/u)
    expect(told['lock.circuits-mean']).toMatch(
      /“verificar la ausencia de tensión” se refieren a AMBOS/u,
    )
    expect(told['close.owner-circuits']).toMatch(/AMBOS interruptores/u)
  })
})
