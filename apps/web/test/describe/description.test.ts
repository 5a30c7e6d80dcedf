import { LINTED_KINDS, lintText, SKELETON_KINDS, writeSkeleton } from '@tubwright/formats'
import { ENGLISH } from '@tubwright/words'
import { describe, expect, it } from 'vitest'
import { kindOf, withId } from '../../src/screens/describe/description.ts'
import { endOfMark, offsetAt, problemsOf } from '../../src/screens/describe/problems.ts'
import type { SkeletonForm } from '../../src/screens/describe/skeleton-form.ts'
import {
  answersOf,
  faultOf,
  formOf,
  servedProfiles,
} from '../../src/screens/describe/skeleton-form.ts'
import { entriesOf, onShelf } from '../../src/screens/describe/use-shelf.ts'
import type { ShelfText } from '../../src/store/database.ts'

const skeleton = (form: SkeletonForm): string =>
  writeSkeleton(answersOf(form), ENGLISH.fieldText, ENGLISH.skeleton)

const KINDS = Object.keys(SKELETON_KINDS) as (keyof typeof SKELETON_KINDS)[]

describe('a new box', () => {
  it.each(KINDS)('of the kind %s can be read and is clean', kind => {
    const form = formOf('heath-1', kind)
    expect(faultOf(form, [])).toBeUndefined()
    const { box, findings, diagnostics } = lintText('x', skeleton(form), new Map())
    expect(box?.id).toBe('heath-1')
    expect([...findings, ...diagnostics].filter(each => each.severity !== 'notice')).toEqual([])
  })

  it('has the pumps and outputs that were asked for', () => {
    const form: SkeletonForm = {
      ...formOf('heath-1', 'two-legs'),
      pumps: { 'two-speed-pump': 2, 'one-speed-pump': 1 },
      outputs: ['blower'],
      profiles: ['circulation', 'one-speed'],
    }
    expect(servedProfiles(form)).toEqual(['low-speed', 'one-speed'])
    expect(answersOf(form)).toMatchObject({
      outputs: ['two-speed-pump', 'two-speed-pump', 'one-speed-pump', 'blower'],
      profiles: ['one-speed'],
    })
    expect(lintText('x', skeleton(form), new Map()).box?.places.map(each => each.id)).toEqual(
      expect.arrayContaining(['pump-a', 'pump-b', 'pump-c', 'blower']),
    )
  })

  it.each([
    [{ id: '' }, 'describe.wrong-id'],
    [{ id: '1st' }, 'describe.wrong-id'],
    [{ id: 'tern-2' }, 'describe.id-taken'],
    [{ feeds: [] }, 'describe.no-feed'],
    [{ feeds: ['one-leg', 'one-phase-230'] }, 'describe.two-families'],
    [{ pumps: { 'two-speed-pump': 2, 'one-speed-pump': 2 } }, 'describe.too-many-pumps'],
    [{ profiles: [] }, 'describe.no-profile'],
    [{ pumps: { 'two-speed-pump': 0, 'one-speed-pump': 0 }, outputs: [] }, 'describe.no-profile'],
  ] as const)('is not written from %o', (change, fault) => {
    const form = { ...formOf('heath-1', 'two-legs'), ...change }
    expect(faultOf(form, ['tern-2'])).toBe(fault)
    expect(ENGLISH.web[fault]).toBeTruthy()
  })
})

describe('the id in a text', () => {
  it('is put in its place, and its comment stays', () => {
    expect(withId('schema: x\nid: old-1   # its name\nlabel: id: y\n', 'new')).toBe(
      'schema: x\nid: new   # its name\nlabel: id: y\n',
    )
    expect(withId('id: "old 1"', 'new')).toBe('id: new')
    expect(withId('board: { id: x }\n  id: y', 'new')).toBeUndefined()
  })

  it('and its kind are those that lint tells', () => {
    expect(LINTED_KINDS.map(kindOf)).toEqual(['control-box', 'supply-device', undefined])
  })
})

describe('problems', () => {
  const whole = skeleton(formOf('heath-1', 'two-legs'))

  it('have the numbers of the board, and stand in the order of the text', () => {
    const text = whole.replace('node: PA-HI, ', 'node: PA-HX, ')
    const linted = lintText('x', text, new Map())
    const problems = problemsOf(linted, ENGLISH)
    linted.findings.forEach((each, index) => {
      const own = problems.find(problem => problem.number === index + 1)
      expect(own).toMatchObject({ line: each.line, told: ENGLISH.tellLint(each) })
    })
    const lines = problems.map(each => each.line)
    expect(lines).toEqual(lines.toSorted((a, b) => a - b))
    expect(new Set(problems.map(each => each.number)).size).toBe(problems.length)
    const first = problems.find(each => each.told.includes('PA-HX'))
    const from = offsetAt(text, first?.line ?? 0, first?.column ?? 0)
    expect(text.slice(from, endOfMark(text, from))).toBe('PA-HX')
  })

  it('that keep a text from being read are errors', () => {
    const linted = lintText('x', whole.replace('label: My box', 'lable: My box'), new Map())
    expect(problemsOf(linted, ENGLISH).map(each => each.severity)).toContain('error')
  })

  it('are inside the text, whatever line and column they name', () => {
    expect(offsetAt('ab\ncd', 2, 2)).toBe(4)
    expect(offsetAt('ab\ncd', 1, 99)).toBe(2)
    expect(offsetAt('ab\ncd', 9, 9)).toBeLessThanOrEqual(5)
    expect(offsetAt('', 1, 1)).toBe(0)
    expect(endOfMark('', 0)).toBe(0)
  })
})

describe('the shelf', () => {
  const row = (id: string, more: Partial<ShelfText> = {}): ShelfText => ({
    kind: 'control-box',
    id,
    text: `label: ${id}`,
    at: '',
    ...more,
  })

  it('shows one’s own before what is given, and leaves the given text as it came', () => {
    const given = [row('a', { isGiven: true, inStock: 1 }), row('b', { isGiven: true, inStock: 2 })]
    const own = [
      row('a', { text: 'label: mine' }),
      row('b', { isGiven: true, text: 'old', inStock: 7 }),
    ]
    expect(onShelf(given, own)).toEqual([
      row('a', { text: 'label: mine' }),
      row('b', { isGiven: true, inStock: 7 }),
    ])
  })

  it('lists own ones first, with what is to be mended', () => {
    const all = [row('z', { isGiven: true }), row('b'), row('a', { kind: 'supply-device' })]
    const box = { id: 'z', label: 'Zed', maker: 'M', feeds: [] }
    const diagnostics = [
      { code: 'yaml-syntax', path: [], is: '', may: '', file: '', line: 1, column: 1 },
    ] as const
    const entries = entriesOf(all, {
      boxes: [box],
      devices: [],
      refused: [{ id: 'b', diagnostics }],
    })
    expect(entries.map(each => [each.id, each.label, each.problems])).toEqual([
      ['b', 'b', 1],
      ['a', 'a', 0],
      ['z', 'Zed', 0],
    ])
  })
})
