import type { CodeFinding, SupplyReport, Survey } from '@tubwright/core'
import { checkSupply } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import { ENGLISH } from '@tubwright/words'
import { SPANISH } from '@tubwright/words/es'
import { describe, expect, test } from 'vitest'
import { demoBox, demoDevices, demoIds, demoTub } from '../../../core/test/support/demo.ts'
import { electricianPage } from '../../src/index.ts'
import { hostile, judge, longLabel, longRun, surveyed, wrong } from './run-surveys.ts'

const printed = (survey: Survey, words: Words = ENGLISH): string =>
  electricianPage(judge(survey), survey, words)

const ENTITIES: Readonly<Record<string, string>> = {
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&amp;': '&',
}

/** Text of a page as a person reads it: drawings left out. */
const read = (page: string): string =>
  page
    .replace(/<(style|title|svg)\b[\s\S]*?<\/\1>/gu, ' ')
    .replace(/<\/?(?:span|strong)\b[^>]*>/gu, '')
    .replace(/<[^>]+>/gu, ' ')
    .replace(/&(?:lt|gt|quot|#39|amp);/gu, each => ENTITIES[each] ?? each)
    .replace(/[\s\u00a0]+/gu, ' ')

/** How often a text stands in another. */
const times = (text: string, part: string): number => text.split(part).length - 1

const LANGUAGES = [
  ['en', ENGLISH],
  ['es', SPANISH],
] as const

const SURVEYS = [
  ...demoIds('tubs').map(id => [id, demoTub(id)] as const),
  ['everything known', surveyed()] as const,
  ['much wrong', wrong()] as const,
  ['a long run', longRun(8)] as const,
]

describe.each(LANGUAGES)('in %s', (language, words) => {
  describe.each(SURVEYS)('%s', (_, survey) => {
    const report = judge(survey)
    const page = electricianPage(report, survey, words)
    const text = read(page)

    test('shows no hole, no number that is none, no id of a message', () => {
      expect(text).not.toMatch(/undefined|NaN|Infinity|\[object|\{\w+(:\w+)?\}/u)
      expect(text).not.toMatch(/\bSUPPLY-\d/u)
      const ids = report.findings.map(each => each.message).filter(each => each !== survey.id)
      for (const id of ids.filter(each => each.includes('-'))) expect(text).not.toContain(` ${id} `)
    })

    test('says every finding once, with its sign and, where it does not hold, its signal word', () => {
      const items = [...page.matchAll(/<li[^>]* data-rule="([^"]+)">([\s\S]*?)<\/li>/gu)]
      const rules = (all: readonly CodeFinding[]) => all.map(each => each.rule).sort()
      expect(items.map(each => each[1]).sort()).toEqual(rules(report.findings))
      for (const [, , item = ''] of items) expect(item.match(/class="sign"/gu)).toHaveLength(1)
      const open = report.findings.filter(each => each.verdict !== 'holds')
      expect(items.filter(each => each[2]?.includes('class="word"'))).toHaveLength(open.length)
    })

    test('says each sentence as the words have it, with the clause', () => {
      const nameOf = (id: string): string => report.names[id] ?? id
      const told = report.findings.filter(each => each.verdict !== 'not-shown')
      for (const each of told) {
        const sentence = read(words.tellCode(each, nameOf))
        const same = told.filter(other => read(words.tellCode(other, nameOf)) === sentence)
        expect([sentence, times(text, sentence)]).toEqual([sentence, same.length])
        if (each.clause) expect(text).toContain(words.tellClause(each.clause))
      }
    })

    test('asks each question once, with a box to write in, and says what it settles', () => {
      expect(page.match(/class="box"/gu)?.length ?? 0).toBe(report.asks.length)
      const numbers = [...page.matchAll(/<span class="no">(\d+)</gu)].map(each => Number(each[1]))
      expect(numbers.toSorted((a, b) => a - b)).toEqual(report.asks.map((__, index) => index + 1))
    })

    test('names who decides, and claims no permission', () => {
      expect(text).toContain(words.electrician.decides)
      expect(text).toContain(words.page.licensed)
      expect(text).toContain(words.sheet[`licence.${survey.region}`])
      expect(text).toContain(words.sheet['licence.ask'])
      expect(text).toContain(words.electrician.footer)
    })
  })

  test('is marked as what it is', () => {
    const page = printed(surveyed(), words)
    expect(page).toMatch(new RegExp(`^<!doctype html>\\n<html lang="${language}">`, 'u'))
    expect(times(page, words.unreviewedNotice)).toBe(words.hasUnreviewed ? 1 : 0)
    const marks = times(read(printed(wrong(), words)), `(${words.unreviewedMark})`)
    expect(marks > 5).toBe(words.hasUnreviewed)
  })
})

describe('the page', () => {
  const page = printed(surveyed())

  test('is one file that fetches and runs nothing', () => {
    expect(page).not.toMatch(/<script|<link|<iframe|@import|url\(|src=|href=/iu)
    expect(page.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/iu)
  })

  test('has headings in order, heads to its table, and no text below 2.5 mm', () => {
    const levels = [...page.matchAll(/<h([1-6])/gu)].map(each => Number(each[1]))
    expect(levels[0]).toBe(1)
    levels.slice(1).forEach((level, index) => {
      expect(level - (levels[index] ?? 0)).toBeLessThanOrEqual(1)
    })
    expect(page).not.toMatch(/<th(?![^>]*scope=)[ >]/u)
    const style = /<style>([\s\S]*)<\/style>/u.exec(page)?.[1] ?? ''
    const [, points = ''] = /html \{ font-size: ([\d.]+)pt; \}/u.exec(style) ?? []
    const rems = [...style.matchAll(/font-size: ([\d.]+)rem/gu)].map(each => Number(each[1]))
    expect(Math.min(...rems) * Number(points) * (25.4 / 72)).toBeGreaterThanOrEqual(2.5)
  })

  test('has tags that are its own, balanced, whatever a label holds', () => {
    const attacked = printed(hostile())
    expect(attacked).toContain('&lt;script&gt;')
    expect(attacked).not.toMatch(/<script|onload='/iu)
    expect(attacked.match(/<\/style>/gu)).toHaveLength(1)
    expect(attacked.match(/<\/title>\s*<style>/gu)).toHaveLength(1)
    const open: string[] = []
    const VOID = ['meta', 'path', 'rect', 'circle', 'line']
    for (const [, slash, name = '', rest = ''] of attacked.matchAll(
      /<(\/?)([a-z0-9]+)([^>]*)>/gu,
    )) {
      if (slash === '/') expect(open.pop()).toBe(name)
      else if (!VOID.includes(name) && !rest.endsWith('/')) open.push(name)
    }
    expect(open).toEqual([])
  })

  test('gives no two things one id', () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/gu)].map(each => each[1])
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('is the same bytes for the same report', () => {
    expect(printed(surveyed())).toBe(page)
  })

  test('says the day only where it is told one', () => {
    const survey = surveyed()
    const dated = electricianPage(judge(survey), survey, ENGLISH, { on: '1 May 2031' })
    expect(read(dated)).toContain('Made on 1 May 2031.')
    expect(read(page)).not.toContain('Made on')
  })

  test('draws the place around the tub where it was surveyed', () => {
    const survey = surveyed()
    const withYard: Survey = {
      ...survey,
      yard: { receptacles: [{ id: 'outlet', label: 'Outlet by the door' }] },
    }
    expect(page).not.toContain('class="yard"')
    expect(times(printed(withYard), 'class="yard"')).toBe(1)
  })
})

describe('what to install', () => {
  /** The row of the table that begins so, as a person reads it. */
  function rowOf(survey: Survey, item: string): string {
    const rows = [...printed(survey).matchAll(/<tr><th scope="row">[\s\S]*?<\/tr>/gu)].map(each =>
      read(each[0]).trim(),
    )
    return rows.find(each => each.startsWith(item)) ?? ''
  }

  test.each([
    // 32 A on the plate, counted 1.25 times, is 40 A: the plate asks for no more.
    ['Minimum circuit', 'breaker of 40 A at least'],
    ['Minimum circuit', 'plate asks 40 A breaker 50 A'],
    ['Maximum protection', 'plate allows 50 A'],
    // Table 310.16: 8 AWG copper carries 50 A at 75 °C; table 250.122: 10 AWG up to 60 A.
    ['Garden wall to tub', 'Conductors: 8 AWG copper at least'],
    ['Garden wall to tub', 'Earth: 10 AWG copper at least'],
    ['Garden wall to tub', 'copper, in conduit, outdoors; carries 65 A'],
    ['Neutral', 'NEEDED by Circulation pump, Ozonator arrives, 6 AWG white'],
    ['Ground-fault device', 'trips by 6 mA at the latest'],
    ['Ground-fault device', 'neutral on breaker load neutral'],
    ['Ground-fault device', 'its own tail (white) on neutral bar'],
    ['Disconnect', '50 A at least'],
    ['Disconnect', 'rated 60 A'],
    // 80 % of 50 A.
    ['Box current limit', '40 A at most, if the feed stays'],
  ])('where all is known: %s, %s', (item, says) => {
    expect(rowOf(surveyed(), item)).toContain(says)
  })

  test('what is not known is a span or a blank, never a guess', () => {
    const tub = demoTub('everyday-240-circulation')
    expect(rowOf(tub, 'Garden wall to tub')).toContain('8 AWG copper or larger, see the questions')
    expect(rowOf(tub, 'Maximum protection')).toContain('plate: A')
    expect(rowOf(tub, 'Garden wall to tub')).toContain('metal, how it is held not known')
  })

  test('a conductor on the wrong bar is to be moved', () => {
    expect(rowOf(wrong(), 'Ground-fault device')).toContain(
      'neutral on breaker load neutral; it is on neutral bar: MOVE IT',
    )
  })

  test('a neutral that no load needs is not asked for, and the box may want one', () => {
    expect(rowOf(demoTub('three-wire-240'), 'Neutral')).toContain('not needed by the loads')
  })

  test('one line has its neutral as the return', () => {
    expect(rowOf(demoTub('everyday-120-plain'), 'Neutral')).toContain('return of the only line')
  })

  test('two circuits have a table each', () => {
    const text = read(printed(demoTub('split-240')))
    expect(text).toContain('What to install: circuit 1')
    expect(text).toContain('What to install: circuit 2')
  })
})

describe('what a person must not overlook', () => {
  const text = read(printed(wrong()))

  test('what breaks stands before everything that was found well, danger first', () => {
    expect(text).toContain('It breaks.')
    const order = ['What breaks', 'DANGER', 'WARNING', 'What to install', 'What holds']
    const places = order.map(each => text.indexOf(each))
    expect(places.every(each => each > 0)).toBe(true)
    expect(places).toEqual(places.toSorted((a, b) => a - b))
  })

  test('what is said of breaker and wire mends nothing else that breaks', () => {
    expect(text).toContain('What breaks above has to be mended besides.')
    expect(read(printed(surveyed()))).not.toContain('besides')
  })

  test('heat breaks whatever the figures say', () => {
    const survey = surveyed()
    const [device, ...devices] = survey.supply.devices
    if (!device) throw new Error('the demo tub has no device')
    const hot: Survey = {
      ...survey,
      supply: { ...survey.supply, devices: [{ ...device, heatMark: true }, ...devices] },
    }
    expect(read(printed(survey))).toContain('It holds.')
    const page = read(printed(hot))
    expect(page).not.toContain('It holds.')
    expect(page).toContain('DANGER Ground-fault breaker on the garden wall shows heat.')
  })

  test('experts who differ have both their readings, and the authority is asked', () => {
    expect(text).toContain('55 A by the stricter reading, 44 A by the other')
    expect(text).toContain('The breaker for everything at once: which reading counts here?')
  })

  test('names of 60 letters are whole', () => {
    const page = read(printed(longRun(8)))
    for (let piece = 0; piece < 8; piece++) expect(page).toContain(`${piece} ${longLabel(58)}`)
  })
})

test('a report of a region without a book asks the authority', () => {
  const survey = surveyed()
  const bookless: SupplyReport = { ...judge(survey), book: undefined }
  expect(read(electricianPage(bookless, survey, ENGLISH))).toContain(ENGLISH.supplyPage['no-book'])
})

test('a box that was chosen is counted, and the page says which; a smaller breaker stands beside the least', () => {
  const survey = demoTub('everyday-240-plain')
  const fitted = { box: demoBox('heron-4'), currentLimit: 40 }
  const text = (report: SupplyReport) => read(electricianPage(report, survey, ENGLISH))
  const counted = text(checkSupply(survey, demoDevices, { box: fitted.box }))
  expect(counted).toContain('Counted with Heron 4, heater and all.')
  // 41.9 A that last hours ask for 60 A; the 50 A that are there do with the box set to 40 A.
  expect(counted).toContain('breaker of 60 A at least')
  expect(counted).toContain('or the breaker of 50 A with the box set to draw 40 A at most')
  const held = text(checkSupply(survey, demoDevices, fitted))
  expect(held).toContain('set to draw 40 A at most.')
  expect(held).toContain('breaker of 50 A at least')
  expect(text(judge(survey))).not.toContain('Counted with')
})
