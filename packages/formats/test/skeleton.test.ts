import { FIELD_EN, fieldText, SKELETON_EN } from '@tubwright/words'
import { describe, expect, it } from 'vitest'
import { isMap, isSeq, parseDocument } from 'yaml'
import type { OutputKind, ProfileKind, SkeletonAnswers } from '../src/index.ts'
import { lintText, OUTPUT_KINDS, PUMP_OF, SKELETON_KINDS, writeSkeleton } from '../src/index.ts'
import { keyText } from '../src/inspect-document.ts'

const write = (answers: SkeletonAnswers) => writeSkeleton(answers, fieldText, SKELETON_EN)
const kinds = Object.entries(SKELETON_KINDS).map(([kind, each]) => ({ kind, ...each }))

const FEEDS = [['two-legs'], ['one-leg'], ['two-legs', 'one-leg'], ['one-phase-230']] as const
const PROFILES: readonly (readonly ProfileKind[])[] = [
  ['circulation'],
  ['low-speed'],
  ['one-speed'],
  ['circulation', 'low-speed'],
  ['low-speed', 'one-speed'],
]

const EVERY = 7

/** The least set of outputs, the greatest, and some between, that have the pumps that the profiles need. */
function outputSets(profiles: readonly ProfileKind[]): readonly (readonly OutputKind[])[] {
  const needed: readonly OutputKind[] = profiles.map(each => PUMP_OF[each])
  const sets = Array.from({ length: 1 << OUTPUT_KINDS.length }, (_, bits) =>
    OUTPUT_KINDS.filter((_, index) => bits & (1 << index)),
  )
  const served = sets.filter(set => needed.every(each => set.includes(each)))
  return served.filter((_, index) => index % EVERY === 0 || index === served.length - 1)
}

describe('a skeleton', () => {
  it.each(kinds)('of $kind is clean as it stands', ({ kind: _, ...answers }) => {
    const { diagnostics, findings } = lintText('a', write({ id: 'a', ...answers }), new Map())
    expect({ diagnostics, findings }).toEqual({ diagnostics: [], findings: [] })
  })

  it.each(FEEDS.flatMap(feeds => PROFILES.map(profiles => ({ feeds, profiles }))))(
    'on $feeds with $profiles can be read, with notices at most, whatever its outputs',
    ({ feeds, profiles }) => {
      for (const [index, outputs] of outputSets(profiles).entries()) {
        const heaterPoles = index % 2 === 0 ? 1 : 2
        const text = write({ id: 'a', feeds, outputs, heaterPoles, profiles })
        const { diagnostics, findings } = lintText('a', text, new Map())
        expect(diagnostics).toEqual([])
        expect(findings.filter(each => each.severity === 'warning')).toEqual([])
      }
    },
  )

  it('with three pumps has each by its own letter', () => {
    const outputs = ['one-speed-pump', 'two-speed-pump', 'one-speed-pump', 'light'] as const
    const text = write({
      id: 'a',
      feeds: ['two-legs'],
      outputs,
      heaterPoles: 2,
      profiles: ['one-speed'],
    })
    const { box, findings } = lintText('a', text, new Map())
    expect(findings.filter(each => each.severity === 'warning')).toEqual([])
    expect(box?.places.map(each => each.id)).toEqual(
      expect.arrayContaining(['pump-a', 'pump-b', 'pump-c']),
    )
  })

  it('has parts whose ids hold no id of a terminal, and no terminal called like a usual contact', () => {
    const outputs = [...OUTPUT_KINDS.filter(each => each !== 'light'), 'light'] as const
    const text = write({ id: 'a', ...SKELETON_KINDS.convertible, outputs })
    const { board } = lintText('a', text, new Map()).box ?? {}
    const terminals = board?.terminals.map(each => each.id) ?? []
    expect(terminals.length).toBeGreaterThan(20)
    for (const { id } of board?.parts ?? [])
      expect(terminals.filter(each => id.toLowerCase().includes(each.toLowerCase()))).toEqual([])
    expect(terminals.filter(each => /^[FKRTU]\d/u.test(each))).toEqual([])
  })

  it('becomes one text, in whatever order its ids are replaced word by word', () => {
    const { box } = lintText('a', write({ id: 'a', ...SKELETON_KINDS['two-legs'] }), new Map())
    const count = { contact: 0, fuse: 0, terminal: 0, other: 0 }
    const parts = (box?.board.parts ?? []).map(({ id, kind }): readonly [string, string] => {
      if (kind === 'contact') return [id, `K${++count.contact}`]
      return kind === 'fuse' ? [id, `F${++count.fuse}`] : [id, `TU${++count.other}`]
    })
    const terminals = (box?.board.terminals ?? []).map(({ id }): readonly [string, string] => [
      id,
      `TB${++count.terminal}`,
    ])
    const inOrder = (pairs: readonly (readonly [string, string])[]) =>
      pairs.reduce(
        (text, [from, to]) => text.replaceAll(new RegExp(`\\b${from}\\b`, 'gu'), to),
        write({ id: 'a', ...SKELETON_KINDS['two-legs'] }),
      )
    const all = [...terminals, ...parts]
    const replaced = inOrder(all)
    expect(lintText('a', replaced, new Map())).toMatchObject({ diagnostics: [], findings: [] })
    expect(inOrder([...parts, ...terminals])).toBe(replaced)
    expect(inOrder(all.toReversed())).toBe(replaced)
  })

  it('explains every field that it has', () => {
    const text = write({ id: 'a', ...SKELETON_KINDS.convertible })
    const names = new Set<string>()
    const walk = (node: unknown, name: string): void => {
      if (isSeq(node)) for (const each of node.items) walk(each, name)
      if (!isMap(node)) return
      for (const { key, value } of node.items) {
        const own = `${name}.${keyText(key)}`
          .replace('control-box.board', 'board')
          .replace('control-box.supplied', 'load')
        const isField = Object.hasOwn(FIELD_EN, own) || own === 'board' || own === 'load'
        if (isField) names.add(own)
        walk(value, isField ? own : name)
      }
    }
    walk(parseDocument(text).contents, 'control-box')
    expect(names.size).toBeGreaterThan(80)
    for (const name of names) {
      const says = fieldText(name)
      if (says !== undefined) expect(text).toContain(says)
    }
  })
})
