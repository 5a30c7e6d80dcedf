import { describe, expect, it } from 'vitest'
import { SPANISH } from '../src/es/index.ts'
import { ENGLISH, say } from '../src/index.ts'
import {
  exportsOf,
  filesOf,
  holesWithFormats,
  plainOf,
  sentencesOf,
  TABLES,
  textsOf,
} from './support/tables.ts'

const english = sentencesOf(ENGLISH)
const spanish = sentencesOf(SPANISH)
const inSpanish = (id: string): string => spanish.get(id) ?? ''

/** Sentences for which something does not hold: what a test shows when it fails. */
const failing = (isRight: (en: string, es: string, id: string) => boolean): readonly string[] =>
  [...english].flatMap(([id, en]) => {
    const es = inSpanish(id)
    return isRight(en, es, id) ? [] : [`${id}: ${en} | ${es}`]
  })

/** Only Spanish has a file that says what was read by somebody qualified. */
const OWN_OF_SPANISH = ['reviewed.ts']

describe('the files', () => {
  it('are the same in both languages', () => {
    expect(filesOf('es').filter(each => !OWN_OF_SPANISH.includes(each))).toEqual(filesOf('en'))
    expect(filesOf('en').length).toBeGreaterThanOrEqual(14)
  })

  it.each(filesOf('en'))(
    '%s: every table is in the bundle, and its twin in the other',
    async file => {
      const [ours, theirs] = [await exportsOf('en', file), await exportsOf('es', file)]
      const tables = Object.keys(ours).filter(each => each.endsWith('_EN'))
      if (file !== 'index.ts') expect(tables.length).toBeGreaterThan(0)
      for (const name of tables.filter(() => file !== 'index.ts')) {
        const twin = theirs[name.replace(/_EN$/u, '_ES')]
        const texts = textsOf(ours[name])
        expect(textsOf(twin).map(([id]) => id)).toEqual(texts.map(([id]) => id))
        const at = TABLES.filter(table => {
          const own = new Map(textsOf(ENGLISH[table]))
          return texts.every(([id, text]) => own.get(id) === text)
        })
        expect([name, at.length > 0]).toEqual([name, true])
        const isAtTwin = at.some(table => {
          const own = new Map(textsOf(SPANISH[table]))
          return textsOf(twin).every(([id, text]) => own.get(id) === text)
        })
        expect([name, isAtTwin]).toEqual([name, true])
      }
    },
  )

  it('of the screens share no key: one would take the place of the other', async () => {
    const screens = filesOf('en').filter(each => /^web\/(?!index)/u.test(each))
    const keys = await Promise.all(
      screens.map(async each =>
        Object.values(await exportsOf('en', each)).flatMap(table => Object.keys(table as object)),
      ),
    )
    expect(keys.flat().sort()).toEqual(Object.keys(ENGLISH.web).sort())
  })
})

describe('every sentence', () => {
  it('stands in both languages', () => {
    expect([...spanish.keys()]).toEqual([...english.keys()])
    expect(Object.keys(SPANISH)).toEqual(Object.keys(ENGLISH))
    expect(english.size).toBeGreaterThan(1100)
    expect(failing((_, es) => es.trim() !== '')).toEqual([])
  })

  it('has the same holes with the same formats', () => {
    const wrong = failing(
      (en, es) => holesWithFormats(en).toSorted().join() === holesWithFormats(es).toSorted().join(),
    )
    expect(wrong).toEqual([])
    expect(
      [...english.values()].filter(each => holesWithFormats(each).length > 0).length,
    ).toBeGreaterThan(300)
  })

  it('can be said with what its holes want', () => {
    // Code of a skeleton has brackets of its own.
    const said = [...english.keys(), ...spanish.keys()].filter(
      each => !each.startsWith('skeleton/'),
    )
    for (const id of said)
      for (const text of [english.get(id) ?? '', inSpanish(id)]) {
        const holes = holesWithFormats(text).map(each => each.slice(1, -1).split(':'))
        const params = holes.map(([name = '', format]) => [name, format === undefined ? 'X' : 7])
        expect(say(text, Object.fromEntries(params))).not.toMatch(/[{}]|undefined|NaN/u)
      }
  })

  it('begins and ends alike, for some are put together', () => {
    const edge = (text: string): string =>
      `${/^\s*/u.exec(text)?.[0]}|${/[.:?…]?”?\s*$/u.exec(text)?.[0]}`
    const short = new Set(['N.º', 'mín.', 'máx.'])
    expect(failing((en, es) => short.has(es) || edge(en) === edge(es))).toEqual([])
    expect(failing((_, es) => !/\S {2}|\.\.| [,.;:]/u.test(es))).toEqual([])
  })

  it('has the figures that the English has', () => {
    const figures = (text: string): string =>
      (text.replace(/\{[^}]*\}/gu, ' ').match(/\d+(?:\.\d+)?/gu) ?? []).toSorted().join()
    // A word of the files may have its figures in a language alone: “split-phase” is 120/240 V.
    const wrong = failing((en, es, id) => id.startsWith('values/') || figures(en) === figures(es))
    expect(wrong).toEqual([])
  })

  it('raises its voice where the English does', () => {
    const quiet = /\b(?:AWG|YAML|JSON|CSV|PDF|ID|US|CA|UK|EU|AU|NZ|PE|MΩ|kΩ)\b/gu
    const isLoud = (text: string): boolean =>
      /(?<![\p{L}\d-])\p{Lu}{2,}(?![\p{L}\d-])/u.test(plainOf(text).replace(quiet, ''))
    expect(failing((en, es) => isLoud(en) === isLoud(es))).toEqual([])
  })
})

/** What reads the same in both languages: marks, names, words that are. */
const ALIKE = new Set([
  'Triac',
  'nominal',
  'no',
  'No',
  'conductor',
  'metal',
  'Metal {number}',
  'audio',
  'Tubwright',
  'Plan',
  'Australia',
  'English',
  'Español',
  'control, limit, flow-inlet, flow-outlet',
  'split-phase (120/240 V), single-leg (120 V), single-phase-230, two-lives-230, three-phase-230-400, two-legs-of-wye',
])
const MARKS = /^(?:\d?L\d?|\d?N|\d?PE|[\d.]* ?[A-ZΩ°%]{1,2})$/u

/** Words of English that are no words of Spanish, and that no Spanish sentence needs. */
const ENGLISH_WORDS =
  /(?<![-.\w])(?:the|of|and|is|are|with|that|not|which|its|for|from|by|off|at|to|it|this|your|when|where|if|then|write|read|take|wire|earth|breaker|box|pump|heater)(?![-.\w])/iu

describe('Spanish', () => {
  it('is not the English, but where both say the same', () => {
    const wrong = failing(
      (en, es) => en !== es || ALIKE.has(en) || MARKS.test(en) || !/\p{L}{2}/u.test(plainOf(en)),
    )
    expect(wrong.filter(each => !/^skeleton\/jumpers/u.test(each))).toEqual([])
  })

  it('has no English left in it', () => {
    // Fields name words of the files as they stand there: those are no leftovers.
    const keywords = /^fields\/.*(?:takes|lands|kind|class|function|to)$/u
    const left = [...spanish].filter(
      ([id, text]) => !keywords.test(id) && !ALIKE.has(text) && ENGLISH_WORDS.test(plainOf(text)),
    )
    expect(left).toEqual([])
    expect(ENGLISH_WORDS.test('Take the leads off.')).toBe(true)
  })

  /** One word for one thing, wherever the English says it; a second one where grammar asks it. */
  it.each([
    ['breaker', /\bbreakers?\b/iu, /disyuntor/iu],
    ['ground-fault', /ground-fault/iu, /diferencial/iu],
    ['disconnect', /\bdisconnects?\b/iu, /seccionador/iu],
    ['earth', /\bearth\b/iu, /tierra/iu],
    ['neutral', /\bneutral\b/iu, /neutro/iu],
    ['leg 1', /\bleg 1\b/iu, /línea 1/iu],
    ['leg 2', /\bleg 2\b/iu, /línea 2/iu],
    [
      'terminal',
      /\bterminals?\b(?! block)/iu,
      /borne|terminal(?:es)? de (?:anillo|lengüeta)|terminales/iu,
    ],
    ['jumper', /\bjumpers?\b/iu, /puente/iu],
    ['strap', /\bstraps?\b/iu, /puentes? (?:de motor|en los motores)|mal puesto|sus puentes/iu],
    ['torque', /\btorque\b/iu, /\bpar\b|dinamométric/iu],
    ['fuse', /\bfuses?\b/iu, /fusible/iu],
    ['heater', /\bheaters?\b/iu, /calefactor/iu],
    ['pump', /\bpumps?\b/iu, /bomba/iu],
    ['keypad', /\bkeypad\b/iu, /teclado/iu],
    ['probe', /\bprobes?\b/iu, /sonda|puntas? de prueba/iu],
    ['current limit', /\bcurrent limit\b/iu, /límites? de corriente/iu],
    ['low voltage', /\blow[- ]voltage\b/iu, /muy baja tensión/iu],
    ['never', /\bnever\b/iu, /nunca|jamás/iu],
    [
      'prove dead',
      /\bprove(?: every pair)? dead\b/iu,
      /verifi(?:car|que|cado) (?:de nuevo |también ahí )?la ausencia de tensión/iu,
    ],
    ['lock', /\block(?:ed)?\b/iu, /bloqu|candado/iu],
    ['maker', /\bmaker/iu, /fabric|otra marca/iu],
  ])('says %s with one word', (_, en, es) => {
    const isField = (id: string) => /^(?:fields|skeleton)\//u.test(id)
    const said = [...english].filter(([id, text]) => !isField(id) && en.test(plainOf(text)))
    expect(said.length).toBeGreaterThan(0)
    expect(said.map(([id]) => `${id}: ${inSpanish(id)}`).filter(each => !es.test(each))).toEqual([])
  })

  it('says no word of a product or of one country alone, and no voltage that is two things', () => {
    const wrong =
      /\bspas?\b|jacuzzi|\bpack\b|\btérmica|magnetotérm|\btina\b|\bswitch\b|(?<!muy )\bbaja tensión|\bt[uú] /iu
    expect(
      [...spanish].filter(([id, text]) => !id.startsWith('fields/') && wrong.test(plainOf(text))),
    ).toEqual([])
  })

  it('has the signal words of the trade', () => {
    expect(Object.values(SPANISH.severities)).toEqual([
      'PELIGRO',
      'ADVERTENCIA',
      'ATENCIÓN',
      'AVISO',
    ])
  })

  it('has typographic quotes in pairs', () => {
    const count = (text: string, mark: string) => text.split(mark).length
    expect([...spanish.values()].filter(each => count(each, '“') !== count(each, '”'))).toEqual([])
    expect([...spanish.values()].filter(each => count(each, '¿') !== count(each, '?'))).toEqual([])
  })
})
