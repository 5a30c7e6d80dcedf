import type { Ladder, LadderSection, LadderStep } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import {
  layOutLadder as ladderOf,
  materialOf,
} from '../../core/src/stages/sheet/ladder/lay-out-ladder.ts'
import { wireGroups } from '../../core/src/stages/sheet/wires.ts'
import { sheetOf, sheetsOf } from '../../core/test/stages/sheet/sheets.ts'
import { demoIds } from '../../core/test/support/demo.ts'
import { madeJob } from '../../core/test/support/made-job.ts'
import type { Point } from '../src/board/scene.ts'
import { drawLadder, layOutLadder } from '../src/index.ts'
import type { LadderScene } from '../src/ladder/scene.ts'
import { clashes, isUnder, overlap } from './support/overlaps.ts'
import { WORDS } from './words-en.ts'

const key = ({ x, y }: Point): string => `${x.toFixed(3)} ${y.toFixed(3)}`

/** Points in groups: what lines and dots join on the paper. */
function joinedBy({ lines, dots }: LadderScene) {
  const parents = new Map<string, string>()
  const root = (point: string): string => {
    const up = parents.get(point)
    return up === undefined || up === point ? point : root(up)
  }
  const join = (a: string, b: string) => parents.set(root(a), root(b))
  const isOn = ({ x, y }: Point, { a, b }: LadderScene['lines'][number]): boolean =>
    a.x === b.x
      ? Math.abs(x - a.x) < 1e-6 && y >= Math.min(a.y, b.y) - 1e-6 && y <= Math.max(a.y, b.y) + 1e-6
      : Math.abs(y - a.y) < 1e-6 && x >= Math.min(a.x, b.x) - 1e-6 && x <= Math.max(a.x, b.x) + 1e-6
  for (const { a, b } of lines) join(key(a), key(b))
  for (const dot of dots) for (const line of lines) if (isOn(dot, line)) join(key(dot), key(line.a))
  return { root, join }
}

const sorted = (nodes: ReadonlyMap<string, readonly string[]>): readonly string[] =>
  [...nodes.values()].map(each => each.toSorted().join(' ')).sort()

function gathered(pairs: readonly (readonly [string, string])[]): readonly string[] {
  const nodes = new Map<string, string[]>()
  for (const [node, end] of pairs) nodes.set(node, [...(nodes.get(node) ?? []), end])
  return sorted(nodes)
}

/** An empty place has no element: its terminals tell it apart. */
const nameOf = (step: LadderStep): string =>
  step.kind === 'spare' ? `spare ${step.terminals.join(' ')}` : step.id

/** What the ink joins: a rail that is drawn twice, and a flag, are one by their name. */
function inkNodes(section: LadderSection, scene: LadderScene): readonly string[] {
  const { root, join } = joinedBy(scene)
  section.rungs.forEach(rung => {
    const own = scene.signs.filter(each => rung.steps.includes(each.step))
    const ends = [
      [rung.from, own[0]?.pins[0]],
      [rung.to, own.at(-1)?.pins[1]],
    ] as const
    for (const [end, pin] of ends)
      if (pin && (end.kind === 'rail' || end.kind === 'elsewhere')) join(key(pin), end.node)
    for (const { step, pins } of own)
      for (const side of [0, 1] as const)
        if (rung.from.kind === 'elsewhere' || rung.to.kind === 'elsewhere')
          for (const end of [rung.from, rung.to])
            if (end.kind === 'elsewhere' && step.nodes[side] === end.node)
              join(key(pins[side]), end.node)
  })
  // Where a rung is said to go on elsewhere, its copper there is meant.
  const elsewhere = section.rungs.flatMap(({ from, to }) =>
    [from, to].flatMap(each => (each.kind === 'elsewhere' ? [each.node] : [])),
  )
  for (const { step, pins } of scene.signs)
    for (const side of [0, 1] as const)
      if (elsewhere.includes(step.nodes[side])) join(key(pins[side]), step.nodes[side])
  return gathered(
    scene.signs.flatMap(({ step, pins }) => [
      [root(key(pins[0])), `${nameOf(step)} left`] as const,
      [root(key(pins[1])), `${nameOf(step)} right`] as const,
    ]),
  )
}

const meantNodes = ({ rungs }: LadderSection): readonly string[] =>
  gathered(
    rungs.flatMap(({ steps }) =>
      steps.flatMap(step => [
        [
          step.nodes[0] === '' ? `none ${nameOf(step)}` : step.nodes[0],
          `${nameOf(step)} left`,
        ] as const,
        [
          step.nodes[1] === '' ? `none ${nameOf(step)}` : step.nodes[1],
          `${nameOf(step)} right`,
        ] as const,
      ]),
    ),
  )

const WIDTH = 0.45 // [mm] half of the thickest line

function checkScene(section: LadderSection): void {
  const scene = layOutLadder(section, WORDS)
  const { labels, lines, links, signs, marks, width, height } = scene
  expect(clashes(labels)).toEqual([])
  const wires = signs.filter(each => each.symbol === 'wire').map(each => each.pins)
  const runs = [...lines.map(({ a, b }) => [a, b]), ...links.map(({ a, b }) => [a, b]), ...wires]
  for (const label of labels) {
    const under = runs.filter(each => isUnder(label, each, WIDTH))
    expect(under, `${label.kind} "${label.text}" under a line`).toEqual([])
    const on = signs.filter(({ box }) => box && overlap(label, box))
    expect(
      on.map(each => each.symbol),
      `${label.kind} "${label.text}" on a sign`,
    ).toEqual([])
    const near = marks.filter(({ x, y, kind }) =>
      kind === 'earth'
        ? overlap(label, { x: x - 1.3, y, width: 2.6, height: 2.4 })
        : overlap(label, { x: x - 0.9, y: y - 0.9, width: 1.8, height: 1.8 }),
    )
    expect(near, `${label.kind} "${label.text}" on a mark`).toEqual([])
    expect(label.size).toBeGreaterThanOrEqual(2.5)
    expect(label.x).toBeGreaterThanOrEqual(0)
    expect(label.y).toBeGreaterThanOrEqual(0)
    expect(label.x + label.width, label.text).toBeLessThanOrEqual(width)
    expect(label.y + label.height).toBeLessThanOrEqual(height)
  }
  for (const { pins } of signs) expect(pins[0].x).toBeLessThan(pins[1].x)
  for (const { a, b } of lines)
    for (const { box } of signs)
      if (box)
        expect(isUnder({ ...box, x: box.x + 0.5, width: box.width - 1 }, [a, b], 0.2)).toBe(false)
  expect(inkNodes(section, scene)).toEqual(meantNodes(section))
}

const sheets = demoIds('tubs').flatMap(sheetsOf)

describe.each(sheets.map(sheet => ({ sheet, name: sheet.id })))(
  'the ladder of $name',
  ({ sheet }) => {
    test('no text lies on another, on a line or on a sign, and the ink joins what is joined', () => {
      for (const section of sheet.ladder.sections) checkScene(section)
    })

    test('fits the width of the page', () => {
      for (const section of sheet.ladder.sections)
        expect(layOutLadder(section, WORDS).width).toBeLessThanOrEqual(186)
    })
  },
)

function madeLadder(seed: number): Ladder {
  const { job, landing } = madeJob(seed)
  const plan = { landing, assignments: [], reidentify: [], moved: [] }
  const groups = wireGroups(job, plan as unknown as Parameters<typeof wireGroups>[1])
  return ladderOf(
    materialOf(
      job,
      landing,
      groups.flatMap(each => each.wires),
    ),
  )
}

const SEEDS = Array.from({ length: 150 }, (_, index) => index + 1)

test.each(SEEDS)('any box is drawn so: seed %i', seed => {
  for (const section of madeLadder(seed).sections) checkScene(section)
})

describe('as SVG', () => {
  const sheet = sheetOf('everyday-240-circulation', 'heron-4')
  const svg = drawLadder(sheet, WORDS)

  test('has a title and says in words what it draws', () => {
    expect(svg).toMatch(/^<svg [^>]*role="img" aria-labelledby="ladder-title ladder-desc"/u)
    expect(svg).toMatch(/<title id="ladder-title">Ladder diagram: [^<]+<\/title>/u)
    const says = /<desc id="ladder-desc">([^<]+)<\/desc>/u.exec(svg)?.[1] ?? ''
    for (const { rungs } of sheet.ladder.sections)
      for (const { number, steps } of rungs) {
        expect(says).toContain(`${number}: `)
        for (const each of steps) if (each.kind === 'part') expect(says).toContain(each.name)
      }
  })

  test('draws every part and every wire of it once', () => {
    const steps = sheet.ladder.sections.flatMap(each => each.rungs.flatMap(rung => rung.steps))
    for (const each of steps) {
      if (each.kind === 'part') expect(svg.split(`data-id="${each.id}"`)).toHaveLength(2)
      if (each.kind === 'wire') expect(svg.split(`data-wire="${each.number}"`)).toHaveLength(2)
    }
  })

  test('is black on white, and loads nothing', () => {
    for (const [, colour = ''] of svg.matchAll(/(?:fill|stroke)="(#[0-9a-f]+)"/giu))
      expect(['#000', '#fff']).toContain(colour)
    expect(svg).not.toMatch(/href|url\(|<image|<style|<script/iu)
  })
})
