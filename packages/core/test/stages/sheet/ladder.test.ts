import { describe, expect, test } from 'vitest'
import type { Job, JobSheet, Ladder, Landing, SheetWire } from '../../../src/index.ts'
import { boardOf, isPowered } from '../../../src/index.ts'
import { layOutLadder, materialOf } from '../../../src/stages/sheet/ladder/lay-out-ladder.ts'
import { wireGroups } from '../../../src/stages/sheet/wires.ts'
import { demoIds, demoJob } from '../../support/demo.ts'
import { madeJob } from '../../support/made-job.ts'
import { plansOf } from './sheets.ts'

/** Ends of elements by what joins them: the same circuit gives the same sets, whatever its names. */
type Joined = readonly string[]

function joinedOf(nodes: ReadonlyMap<string, readonly string[]>): Joined {
  return [...nodes.values()].map(ends => ends.toSorted().join(' ')).sort()
}

function add(nodes: Map<string, string[]>, node: string, end: string): void {
  nodes.set(node, [...(nodes.get(node) ?? []), end])
}

/** What the descriptions and the landing say, read afresh: it shares nothing with the ladder. */
function describedNodes(job: Job, landing: Landing): Joined {
  const nodes = new Map<string, string[]>()
  const element = (id: string, a: string, b: string) => {
    add(nodes, a, `${id}/0`)
    add(nodes, b, `${id}/1`)
  }
  const at = (end: string): string => {
    const [board = '', terminal] = (landing.ends[end] ?? '').split('.')
    const node = boardOf(job, board)?.terminals.find(each => each.id === terminal)?.node
    return node === undefined ? `off ${end}` : `${board} ${node}`
  }
  for (const name of ['box', ...job.devices.keys()]) {
    const board = boardOf(job, name)
    for (const part of board?.parts ?? []) {
      const id = `part:${name}.${part.id}`
      const on = (node: string) => `${name} ${node}`
      if (part.kind === 'transformer') {
        element(`${id}#primary`, on(part.primary[0]), on(part.primary[1]))
        element(`${id}#secondary`, on(part.secondary[0]), on(part.secondary[1]))
      } else if (part.kind === 'ground-fault') {
        if (part.poweredFrom) element(id, on(part.poweredFrom[0]), on(part.poweredFrom[1]))
      } else element(id, on(part.across[0]), on(part.across[1]))
    }
    for (const jumper of board?.jumpers ?? []) {
      const position = landing.jumpers[jumper.id] ?? jumper.factory
      const joins = jumper.positions.find(each => each.id === position)?.joins ?? []
      joins.forEach(([a, b], index) => {
        element(`jumper:${name}.${jumper.id}.${index}`, `${name} ${a}`, `${name} ${b}`)
      })
    }
  }
  for (const cable of job.tub.supply.cables)
    for (const { id } of cable.conductors) {
      const name = `${cable.id}.${id}`
      element(`cable:${name}`, at(`${name}@${cable.from}`), at(`${name}@${cable.to}`))
    }
  for (const [name, device] of job.devices)
    for (const { id, node } of device.tails)
      element(`tail:${name}.${id}`, `${name} ${node}`, at(`${name}.${id}`))
  for (const load of job.loads) {
    const lead = (id: string) => `${load.id} lead ${id}`
    for (const { id } of load.leads)
      element(`lead:${load.id}.${id}`, lead(id), at(`${load.id}.${id}`))
    if (isPowered(load))
      for (const { id, across } of load.circuits)
        element(`circuit:${load.id}.${id}`, lead(across[0]), lead(across[1]))
    else
      element(
        `circuit:${load.id}.probe`,
        lead(load.leads[0]?.id ?? ''),
        lead(load.leads[1]?.id ?? ''),
      )
  }
  return joinedOf(nodes)
}

/**
 * What the ladder shows: neighbours on a rung are joined, and rungs only at rails and at the joints
 * that it lists.
 */
function drawnNodes({ sections }: Ladder): Joined {
  const nodes = new Map<string, string[]>()
  for (const { rails, joints, rungs } of sections) {
    const shared = new Set([...rails, ...joints].map(each => each.node))
    for (const { number, from, to, steps, extras } of rungs) {
      for (const each of [from, to]) if (each.kind === 'elsewhere') shared.add(each.node)
      const node = (index: number, name: string) =>
        shared.has(name) || from.node === name || to.node === name ? name : `${number}/${index}`
      steps.forEach((step, index) => {
        const [left, right] = [node(index, step.nodes[0]), node(index + 1, step.nodes[1])]
        if (step.kind === 'spare') return
        add(nodes, left, `${step.id}/${step.isTurned ? 1 : 0}`)
        add(nodes, right, `${step.id}/${step.isTurned ? 0 : 1}`)
      })
      for (const each of extras) {
        add(nodes, `own ${each.id}`, `${each.id}/0`)
        add(nodes, each.node, `${each.id}/1`)
      }
    }
  }
  return joinedOf(nodes)
}

function isInOrder({ sections }: Ladder): void {
  for (const { rungs } of sections)
    for (const { steps } of rungs) {
      const place = ({ zone, column }: (typeof steps)[number]): number =>
        zone === 'left'
          ? column - 1000
          : zone === 'right'
            ? 1000 - column
            : { 'left-lead': -1, main: 0, 'right-lead': 1 }[zone]
      const places = steps.map(place)
      expect(places).toEqual(places.toSorted((a, b) => a - b))
      expect(new Set(places).size).toBe(places.length)
    }
}

function checkLadder(job: Job, landing: Landing, ladder: Ladder): void {
  expect(drawnNodes(ladder)).toEqual(describedNodes(job, landing))
  isInOrder(ladder)
  const steps = ladder.sections.flatMap(each => each.rungs.flatMap(rung => rung.steps))
  const ids = steps.flatMap(each => (each.kind === 'spare' ? [] : [each.id]))
  expect(new Set(ids).size, 'no element on two rungs').toBe(ids.length)
  const circuits = job.loads.flatMap(load =>
    isPowered(load)
      ? load.circuits.map(each => `circuit:${load.id}.${each.id}`)
      : [`circuit:${load.id}.probe`],
  )
  for (const each of circuits) expect(ids.filter(id => id === each)).toHaveLength(1)
  const names = ladder.devices.map(each => each.name)
  expect(new Set(names).size, 'designations are unique').toBe(names.length)
  const printed = [...job.box.board.terminals, ...job.box.board.connectors].map(each => each.id)
  for (const each of names) expect(printed).not.toContain(each)
  for (const step of steps)
    if (step.kind === 'part')
      expect(names.some(name => step.name === name || step.name.startsWith(`${name}.`))).toBe(true)
}

const plans = demoIds('tubs').flatMap(tub => plansOf(tub).map(each => ({ ...each, tub })))

describe.each(plans.map(each => ({ ...each, name: each.sheet.id })))(
  'the ladder of $name',
  ({ tub, sheet, plan }) => {
    const job = demoJob(tub, plan.box)

    test('joins what the boards and the landing join, and nothing else', () =>
      checkLadder(job, plan.landing, sheet.ladder))

    test('has the symbols of its region', () => {
      const isAmerican = ['US', 'CA'].includes(job.tub.region)
      expect(sheet.ladder.style).toBe(isAmerican ? 'american' : 'iec')
    })

    test('shows no load without the contact and the fuse that its load sheet names', () =>
      checkLoadSheet(job, sheet))
  },
)

/** Every switched load of the mains passes a contact, and every motor is held to a motor's figure. */
function checkLoadSheet(job: Job, sheet: JobSheet): void {
  const powered = job.loads.filter(isPowered)
  expect(sheet.loadSheet.map(each => each.load).sort()).toEqual(powered.map(each => each.id).sort())
  for (const row of sheet.loadSheet) {
    if (row.commands.length > 0) expect(row.contacts.length, row.load).toBeGreaterThan(0)
    if (row.volts > 50 && row.commands.length > 0)
      expect(row.fuses.length, row.load).toBeGreaterThan(0)
    expect(row.liveWhenOff).toBe(sheet.liveWhenOff.includes(row.label))
    const own = powered.find(each => each.id === row.load)
    expect(row.leads.length).toBe(own?.leads.length)
  }
}

const wiresOf = (job: Job, landing: Landing): readonly SheetWire[] => {
  const plan = { landing, assignments: [], reidentify: [], moved: [] }
  return wireGroups(job, plan as unknown as Parameters<typeof wireGroups>[1]).flatMap(
    each => each.wires,
  )
}

const SEEDS = Array.from({ length: 200 }, (_, index) => index + 1)

test('any box: changeovers, triacs, taps, auto-transformers, several lines, empty places', () => {
  const seen = new Set<string>()
  for (const seed of SEEDS) {
    const { job, landing } = madeJob(seed)
    const ladder = layOutLadder(materialOf(job, landing, wiresOf(job, landing)))
    checkLadder(job, landing, ladder)
    for (const section of ladder.sections)
      for (const { steps, from, to } of section.rungs) {
        seen.add(from.kind).add(to.kind)
        for (const each of steps) seen.add(each.kind === 'part' ? each.symbol : each.kind)
      }
  }
  for (const each of ['contactor', 'triac', 'limit', 'jumper', 'spare', 'joint', 'open', 'primary'])
    expect([...seen]).toContain(each)
})

test('what an auto-transformer counts from is never called 0 V: it is on the supply', () => {
  const sections = SEEDS.flatMap(seed => {
    const { job, landing } = madeJob(seed)
    return layOutLadder(materialOf(job, landing, wiresOf(job, landing))).sections
  })
  const tapped = sections.filter(each =>
    each.rails.some(rail => rail.name.message === 'rail.behind'),
  )
  expect(tapped.length).toBeGreaterThan(20)
  for (const { rails } of tapped)
    expect(rails.map(each => each.name.message)).not.toContain('rail.zero')
})

test('designations stay what they are when a jumper moves or a load is landed elsewhere', () => {
  const { job, landing } = madeJob(7)
  const namesOf = (other: Landing) => {
    const { devices } = layOutLadder(materialOf(job, other, wiresOf(job, other)))
    return devices.map(each => `${each.name} ${each.own}`).sort()
  }
  const ends = Object.fromEntries(
    Object.entries(landing.ends).map(([end, at]) => [
      end,
      end.startsWith('load-') ? 'insulated' : at,
    ]),
  )
  expect(namesOf({ ...landing, ends, jumpers: {} })).toEqual(namesOf(landing))
})
