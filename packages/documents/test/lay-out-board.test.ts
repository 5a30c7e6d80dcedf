import type { JobSheet, OpenPoint, SheetPanel, SheetWire, WiringPlan } from '@tubwright/core'
import { describe, expect, test } from 'vitest'
import { panelsOf } from '../../core/src/stages/sheet/panels.ts'
import { wireGroups } from '../../core/src/stages/sheet/wires.ts'
import { sheetOf, sheetsOf } from '../../core/test/stages/sheet/sheets.ts'
import { demoIds } from '../../core/test/support/demo.ts'
import { madeJob, pickerOf } from '../../core/test/support/made-job.ts'
import { textWidth, wrapText } from '../src/board/measure-text.ts'
import type { Point, Scene } from '../src/board/scene.ts'
import { isOver, runsOf } from '../src/board/scene.ts'
import { layOutBoard } from '../src/index.ts'
import { clashes, isUnder, shrunk } from './support/overlaps.ts'
import { WORDS } from './words-en.ts'

const sceneOf = (sheet: JobSheet, panel: SheetPanel): Scene =>
  layOutBoard(
    panel,
    sheet.wires.flatMap(each => each.wires),
    WORDS,
  )

const HALF = 0.45 // [mm] half of a line

const crossed = ({ labels, wires }: Scene): readonly string[] =>
  labels.flatMap(label =>
    wires
      .filter(({ points }) => isUnder(label, points, HALF))
      .map(wire => `${label.kind} "${label.text}" under wire ${wire.number}`),
  )

/** Runs of two wires that lie on each other lengthwise: neither could be followed. */
function together(a: readonly Point[], b: readonly Point[]): boolean {
  return runsOf(a, HALF).some(p =>
    runsOf(b, HALF).some(q => {
      if (!isOver(shrunk(p), shrunk(q))) return false
      const across = Math.min(p.x + p.width, q.x + q.width) - Math.max(p.x, q.x)
      const down = Math.min(p.y + p.height, q.y + q.height) - Math.max(p.y, q.y)
      return Math.max(across, down) > 1.5
    }),
  )
}

const merged = ({ wires }: Scene): readonly string[] =>
  wires.flatMap((a, index) =>
    wires
      .slice(index + 1)
      .filter(b => together(a.points, b.points))
      .map(b => `${a.number} on ${b.number}`),
  )

/** Terminals and jumpers lie on the board, everything on the paper, and no terminal on another. */
function checkInside({ board, terminals, jumpers, labels, partners, width, height }: Scene): void {
  const discs = terminals.map(({ x, y, radius }) => ({
    x: x - radius,
    y: y - radius,
    width: 2 * radius,
    height: 2 * radius,
  }))
  for (const each of [...discs, ...jumpers]) {
    expect(each.x).toBeGreaterThanOrEqual(board.x)
    expect(each.y).toBeGreaterThanOrEqual(board.y)
    expect(each.x + each.width).toBeLessThanOrEqual(board.x + board.width)
    expect(each.y + each.height).toBeLessThanOrEqual(board.y + board.height)
  }
  discs.forEach((a, index) => {
    for (const b of discs.slice(index + 1)) expect(isOver(shrunk(a), shrunk(b))).toBe(false)
  })
  for (const each of [...labels, ...partners, board]) {
    expect(each.x).toBeGreaterThanOrEqual(0)
    expect(each.y).toBeGreaterThanOrEqual(0)
    expect(each.x + each.width).toBeLessThanOrEqual(width)
    expect(each.y + each.height).toBeLessThanOrEqual(height)
  }
}

const every = demoIds('tubs').flatMap(sheetsOf)
const drawn = every.flatMap(sheet => sheet.panels.map(panel => ({ sheet, panel })))

describe.each(drawn.map(each => ({ ...each, name: `${each.sheet.id} ${each.panel.id}` })))(
  'drawing of $name',
  ({ sheet, panel }) => {
    const scene = sceneOf(sheet, panel)

    test('no label lies on another', () => expect(clashes(scene.labels)).toEqual([]))

    test('no label lies under a wire', () => expect(crossed(scene)).toEqual([]))

    test('no two wires run on each other', () => {
      expect(merged(scene)).toEqual([])
    })

    test('every landed wire is drawn, once, with its number and letters', () => {
      const landed = sheet.wires
        .flatMap(each => each.wires)
        .filter(wire => wire.ends.some(end => end.panel === panel.id && end.terminal !== undefined))
      expect(scene.wires.map(each => each.number).sort((a, b) => a - b)).toEqual(
        landed.map(each => each.number).sort((a, b) => a - b),
      )
      for (const wire of landed) {
        const tag = `${wire.number} ${wire.letters}${wire.reidentify ? '*' : ''}`
        expect(scene.labels.filter(each => each.kind === 'tag' && each.text === tag)).toHaveLength(
          1,
        )
      }
    })

    test('everything is on the paper, and no text is below 2.5 mm', () => {
      checkInside(scene)
      for (const each of scene.labels) expect(each.size).toBeGreaterThanOrEqual(2.5)
      expect(scene.width).toBe(186)
      expect(scene.height).toBeLessThanOrEqual(225)
    })
  },
)

test('wires that leave a load side by side differ in number and in line or colour letters', () => {
  for (const { sheet, panel } of drawn)
    for (const partner of panel.partners) {
      const numbers = partner.pins.map(each => each.wire)
      expect(new Set(numbers).size).toBe(numbers.length)
      const styles = sheet.wires
        .flatMap(each => each.wires)
        .filter(each => numbers.includes(each.number))
        .map(each => `${each.role} ${each.letters}`)
      expect(new Set(styles).size).toBe(styles.length)
    }
})

/** A panel of a box that nobody would build, with marks of findings here and there. */
function madePanels(seed: number): {
  readonly wires: readonly SheetWire[]
  readonly panels: readonly SheetPanel[]
} {
  const { job, landing } = madeJob(seed)
  const plan = { landing, assignments: [], reidentify: [], moved: [] } as unknown as WiringPlan
  const wires = wireGroups(job, plan).flatMap(each => each.wires)
  const pick = pickerOf(seed)
  const points = Array.from({ length: pick(6) }, (_, index): OpenPoint => {
    const terminals = job.box.board.terminals
    const jumpers = job.box.board.jumpers
    const subject =
      pick(3) === 0 && jumpers.length > 0
        ? jumpers[pick(jumpers.length)]?.id
        : terminals[pick(terminals.length)]?.id
    return {
      number: index + 1,
      severity: 'warning',
      says: { kind: 'text', text: { message: 'open.none', params: {} } },
      subjects: [`box.${subject}`],
    }
  })
  return { wires, panels: panelsOf(job, plan, wires, points) }
}

const SEEDS = Array.from({ length: 120 }, (_, index) => index + 1)

describe('any board: many loads, long and foreign names', () => {
  test.each(SEEDS)('seed %i', seed => {
    const { wires, panels } = madePanels(seed)
    for (const panel of panels) {
      const scene = layOutBoard(panel, wires, WORDS)
      expect(clashes(scene.labels)).toEqual([])
      expect(crossed(scene)).toEqual([])
      expect(merged(scene)).toEqual([])
      checkInside(scene)
    }
  })
})

const LONG = 'Overwhelmingly long name of a jets pump that someone typed without a pause'
const UNBROKEN = 'W'.repeat(80)

describe.each([LONG, UNBROKEN])('a name of more than sixty letters: %s', name => {
  const sheet = sheetOf('everyday-240-circulation', 'heron-4')
  const [box] = sheet.panels
  if (!box) throw new Error('no panel')
  const partners = box.partners.map(each => ({ ...each, label: name }))
  const jumpers = box.jumpers.map(each => ({
    ...each,
    positions: each.positions.map(one => ({ ...one, label: name })),
  }))
  const scene = sceneOf(sheet, { ...box, label: name, partners, jumpers })

  test('stays in the room of its load, wrapped and cut', () => {
    for (const label of scene.labels.filter(each => each.kind === 'partner'))
      expect(
        scene.partners.some(
          box =>
            label.x >= box.x &&
            label.y >= box.y &&
            label.x + label.width <= box.x + box.width &&
            label.y + label.height <= box.y + box.height,
        ),
      ).toBe(true)
  })

  test('covers nothing', () => {
    expect(clashes(scene.labels.filter(each => each.kind !== 'jumper'))).toEqual([])
    expect(crossed(scene).filter(each => !each.startsWith('jumper'))).toEqual([])
  })
})

test('text is wrapped within its room, whatever it is', () => {
  for (const text of [LONG, UNBROKEN, '', '   ', 'a b c', 'Ω'.repeat(30)])
    for (const line of wrapText(text, { size: 2.7, room: 20, lines: 3 }))
      expect(textWidth(line, 2.7)).toBeLessThanOrEqual(20)
})
