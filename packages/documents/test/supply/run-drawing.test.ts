import { ENGLISH } from '@tubwright/words'
import { SPANISH } from '@tubwright/words/es'
import { describe, expect, test } from 'vitest'
import { demoIds, demoTub } from '../../../core/test/support/demo.ts'
import { drawRun } from '../../src/index.ts'
import type { RunScene } from '../../src/supply/lay-out-run.ts'
import { layOutRun } from '../../src/supply/lay-out-run.ts'
import { isUnder, overlap } from '../support/overlaps.ts'
import { hostile, judge, longRun, surveyed, wrong } from './run-surveys.ts'

const WORDS = [ENGLISH, SPANISH]

/** Tubs of the demo, and runs as long and as wordy as a survey may hold. */
const SURVEYS = [
  ...demoIds('tubs').map(id => [id, demoTub(id)] as const),
  ['everything known', surveyed()] as const,
  ['much wrong', wrong()] as const,
  ...[2, 3, 8].map(pieces => [`${pieces} pieces`, longRun(pieces)] as const),
  ['8 pieces of 80 letters', longRun(8, 80)] as const,
  ['hostile', hostile()] as const,
]

/** Labels that lie on each other, past the edge, or under a wire. */
function faultsOf({ labels, boxes, wires, width, height }: RunScene): readonly string[] {
  const pairs = labels.flatMap((a, index) =>
    labels.slice(index + 1).flatMap(b => (overlap(a, b) ? [`"${a.text}" on "${b.text}"`] : [])),
  )
  const outside = [...labels, ...boxes]
    .filter(each => each.x < 0 || each.y < 0)
    .concat([...labels, ...boxes].filter(each => each.x + each.width > width + 0.01))
    .concat([...labels, ...boxes].filter(each => each.y + each.height > height + 0.01))
  const under = labels.filter(each => wires.some(({ points }) => isUnder(each, points, 1)))
  const onBoxes = labels.filter(label =>
    boxes.some(box => {
      const isIn = label.x >= box.x && label.x + label.width <= box.x + box.width
      return overlap(label, box) && !isIn
    }),
  )
  return [
    ...pairs,
    ...outside.map(each => `outside: ${JSON.stringify(each)}`),
    ...under.map(({ text }) => `"${text}" under a wire`),
    ...onBoxes.map(({ text }) => `"${text}" over the rim of a box`),
  ]
}

describe.each(WORDS.map(words => [words.language, words] as const))('in %s', (_, words) => {
  test.each(SURVEYS)('no label of %s lies on another', (_name, survey) => {
    const scene = layOutRun(judge(survey), survey, words)
    expect(faultsOf(scene)).toEqual([])
    expect(scene.width).toBe(700)
    expect(scene.labels.length).toBeGreaterThan(5)
  })

  test.each(SURVEYS)(
    'every piece of %s has its verdict as a sign and as a word',
    (_name, survey) => {
      const report = judge(survey)
      const { labels, says } = layOutRun(report, survey, words)
      const signed = labels.filter(each => each.verdict)
      for (const { text, verdict } of signed)
        if (verdict)
          expect(text).toMatch(new RegExp(`${words.verdicts[verdict].split(' ')[0]}|,`, 'u'))
      const segments = report.circuits.flatMap(each => each.segments)
      expect(signed.length).toBeGreaterThanOrEqual(segments.length)
      for (const { label } of segments) expect(says.join(' ')).toContain(label)
    },
  )
})

describe('the drawing', () => {
  const survey = longRun(8)
  const report = judge(survey)
  const drawn = drawRun(report, survey, ENGLISH)

  test('tells who does not see it what it is and what it shows', () => {
    expect(drawn).toMatch(/^<svg [^>]*role="img" aria-labelledby="(\S+) (\S+)"/u)
    const [, title, says] = /aria-labelledby="(\S+) (\S+)"/u.exec(drawn) ?? []
    expect(drawn).toContain(`<title id="${title}">The run from the panel to the tub</title>`)
    expect(drawn).toContain(`<desc id="${says}">Circuit 1, breaker 32 A`)
  })

  test('has a box for the panel, for each device and for the tub, and a wire for each piece', () => {
    expect(drawn.match(/<rect/gu)).toHaveLength(1 + 8 + 1)
    const { wires } = layOutRun(report, survey, ENGLISH)
    expect(wires.filter(each => each.verdict)).toHaveLength(8)
  })

  test('says all of a label of 60 letters', () => {
    const words = [...drawn.matchAll(/<text[^>]*>([^<]*)</gu)].map(each => each[1]).join(' ')
    for (const { label } of survey.supply.cables)
      for (const word of label.split(' ')) expect(words).toContain(word)
    expect(words).not.toContain('…')
  })

  test('has no colour of its own: it prints in black, and shows on a dark screen', () => {
    expect(drawn).not.toMatch(/#[0-9a-f]{3,6}|rgb\(|(?:fill|stroke)="(?!none|currentColor)/iu)
  })

  test('breaks the line of what is not shown: no verdict hangs on colour alone', () => {
    expect(drawn.match(/stroke-dasharray/gu)).toHaveLength(8)
    const known = surveyed()
    expect(drawRun(judge(known), known, ENGLISH)).not.toContain('stroke-dasharray')
  })

  test('makes no markup of a label', () => {
    const attacked = hostile()
    const svg = drawRun(judge(attacked), attacked, ENGLISH)
    expect(svg).toContain('&lt;')
    expect(svg).not.toMatch(/<script|<\/style|onload='/iu)
    expect(svg.match(/<svg/gu)).toHaveLength(1)
    expect(svg.match(/<\/title>/gu)).toHaveLength(1)
  })
})
