import { describe, expect, it } from 'vitest'
import { SPANISH } from '../src/es/index.ts'
import { REVIEWED_ES } from '../src/es/reviewed.ts'
import { ENGLISH } from '../src/index.ts'
import { safetyIds } from '../src/safety.ts'
import type { TableName, Tables } from '../src/words.ts'
import { wordsOf } from '../src/words-of.ts'
import { plainOf, sentencesOf } from './support/tables.ts'

const english = sentencesOf(ENGLISH)
const safety = safetyIds(ENGLISH)

/** Tables that safety rests on as a whole. */
const WHOLE: readonly TableName[] = [
  'severities',
  'verdicts',
  'verify',
  'round',
  'match',
  'change',
  'supply',
  'meter',
  'sheet',
]

/** Words that a sentence has when a life hangs on it. */
const GRAVE =
  /\b(?:dead|live|kills?|never|lock(?:ed)?|danger|fault|proven|bridge[ds]?|burn\w*|earth)\b/iu

describe('what nobody qualified has read', () => {
  it.each(WHOLE)('is every sentence of %s', name => {
    const ids = Object.keys(SPANISH[name])
    expect(ids.length).toBeGreaterThan(0)
    for (const id of ids) {
      expect([id, SPANISH.isUnreviewed(`${name}/${id}`)]).toEqual([id, true])
      expect([id, SPANISH.isUnreviewed(id)]).toEqual([id, true])
    }
  })

  it('is every grave sentence of what is told and printed', () => {
    const told =
      /^(?:sheet|page|values|verify|round|match|cannot|change|changes|supply|meter|planChanges|lines)\/|^web\/(?:shell|stop|findings|wiring|match|sheet)\b/u
    const grave = [...english].filter(([id, text]) => told.test(id) && GRAVE.test(plainOf(text)))
    expect(grave.length).toBeGreaterThan(120)
    expect(grave.map(([id]) => id).filter(id => !SPANISH.isUnreviewed(id))).toEqual([])
  })

  it('is every stop of all work', () => {
    const stops = Object.keys(SPANISH.web).filter(each => each.startsWith('stop.'))
    expect(stops.length).toBeGreaterThan(5)
    expect(stops.filter(each => !SPANISH.isUnreviewed(each))).toEqual([])
  })

  it('is no heading and no hint of a field', () => {
    for (const id of [
      'page/title',
      'fields/control-box',
      'lintTalk/clean',
      'web/language',
      'no-such',
    ])
      expect(SPANISH.isUnreviewed(id)).toBe(false)
  })

  it('is nothing of English', () => {
    expect([...english.keys()].filter(ENGLISH.isUnreviewed)).toEqual([])
    expect(ENGLISH.hasUnreviewed).toBe(false)
    expect(SPANISH.hasUnreviewed).toBe(true)
  })

  it('is marked with a word or two, and said once in a whole sentence', () => {
    expect(SPANISH.unreviewedMark).toBe('traducción sin revisar')
    expect(SPANISH.unreviewedNotice).toMatch(/sin revisar.*vale el texto inglés\.$/u)
  })
})

describe('a review', () => {
  const tables: Tables = SPANISH

  it('takes one sentence out, and its namesake of another table stays', () => {
    const read = wordsOf('es', tables, new Set(['verify/dead-short', 'verify/no-earth-lead']))
    expect(read.isUnreviewed('dead-short')).toBe(false)
    expect(read.isUnreviewed('verify/no-earth-lead')).toBe(false)
    expect(read.isUnreviewed('match/no-earth-lead')).toBe(true)
    expect(read.isUnreviewed('no-earth-lead')).toBe(true)
    expect(read.hasUnreviewed).toBe(true)
  })

  it('of all sentences leaves nothing to say', () => {
    const read = wordsOf('es', tables, new Set(safety))
    expect(read.hasUnreviewed).toBe(false)
    expect([...english.keys()].filter(read.isUnreviewed)).toEqual([])
  })

  it('is of sentences that there are', () => {
    expect([...REVIEWED_ES].filter(each => !safety.includes(each))).toEqual([])
  })
})
