import type { Part } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX, boardOf } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import { boardNode, leadNode, partElement } from '../../../domain/wiring/wire.ts'
import type { SheetWire } from '../artifact.ts'
import type {
  Ladder,
  LadderApparatus,
  LadderEnd,
  LadderExtra,
  LadderRail,
  LadderRung,
  LadderSection,
  LadderStep,
  LadderStyle,
} from './artifact.ts'
import { saysOf } from './captions.ts'
import { drawnOf } from './describe.ts'
import { apparatusKey, designationsOf, partKey } from './designations.ts'
import { devicesOf } from './devices.ts'
import { edgesOf } from './graph.ts'
import type { Row, RowStep } from './rows.ts'
import { rowsOf } from './rows.ts'
import type { Division, Material } from './sections.ts'
import { divisionsOf, isExtra } from './sections.ts'

/** Symbols by region: those of North America, else those of IEC 60617. */
export const styleOf = ({ tub: { region } }: Job): LadderStyle =>
  region === 'US' || region === 'CA' ? 'american' : 'iec'

function stepOf(material: Material, row: Row, step: RowStep): LadderStep {
  const { edge, zone, column, nodes, isTurned } = step
  const placed = { zone, column, nodes, isTurned }
  if (!edge)
    return {
      kind: 'spare',
      ...placed,
      terminals: row.main?.spare?.terminals ?? [undefined, undefined],
    }
  const { id, is } = edge
  if (is.of !== 'wire') return { kind: 'part', id, ...placed, ...drawnOf(material, is) }
  const [a, b] = is.terminals
  const terminals = isTurned ? ([b, a] as const) : ([a, b] as const)
  return { kind: 'wire', id, ...placed, number: is.wire.number, terminals }
}

/** The terminals of a piece of copper. */
function terminalsOn(job: Job, node: string): readonly string[] {
  return [...job.devices.keys(), BOX].flatMap(name =>
    (boardOf(job, name)?.terminals ?? [])
      .filter(each => boardNode(name, each.node) === node)
      .map(each => each.id),
  )
}

/** The conductors of a load that are in none of its circuits: on the first rung that it has. */
function extrasOf(
  { edges, loads }: Material,
  { main }: Row,
  seen: Set<string>,
): readonly LadderExtra[] {
  const is = main?.edge?.is
  if (is?.of !== 'circuit' && is?.of !== 'probe') return []
  if (seen.has(is.load.id)) return []
  seen.add(is.load.id)
  return edges.flatMap(({ id, is: each, nodes }) => {
    if (each.of !== 'wire' || each.wire.owner !== is.load.id) return []
    if (!isExtra({ id, is: each, nodes }, loads)) return []
    const { number, role } = each.wire
    const node = nodes.find(one => !one.startsWith(leadNode(is.load.id, ''))) ?? nodes[1]
    return [{ id, number, terminal: each.terminals[1], node, isEarth: role === 'earth' }]
  })
}

function railsOf({ rails }: Division, rows: readonly Row[]): readonly LadderRail[] {
  return rails.flatMap(({ node, name }) => {
    const isAt = (end: LadderEnd) => end.kind === 'rail' && end.node === node
    const sides = [
      ...(rows.some(each => isAt(each.from)) ? (['left'] as const) : []),
      ...(rows.some(each => isAt(each.to)) ? (['right'] as const) : []),
    ]
    return sides.length > 0 ? [{ node, name, sides }] : []
  })
}

const moves = (part: Part): boolean => part.kind === 'pole' || part.kind === 'switch'

function apparatusOf({ job, names }: Material): readonly LadderApparatus[] {
  return [...job.devices].flatMap(([id, { board }]) => {
    const name = names.get(apparatusKey(id))
    const elements = (ids: readonly string[]) => ids.map(each => partElement(id, each))
    const watches = board.parts.flatMap(part =>
      part.kind === 'ground-fault'
        ? [{ name: names.get(partKey(id, part.id)) ?? part.id, parts: elements(part.sums) }]
        : [],
    )
    const parts = elements(board.parts.filter(moves).map(each => each.id))
    return name === undefined ? [] : [{ name, parts, watches }]
  })
}

/** Numbers rungs on from those before. */
function sectionOf(
  material: Material,
  division: Division,
  before: number,
  seen: Set<string>,
): LadderSection {
  const { rows, gaps } = rowsOf(division)
  const firstWith = (node: string) =>
    rows.findIndex(({ steps }) => steps.some(each => each.nodes.includes(node))) + 1 + before
  const end = (own: Row['from']): LadderEnd => {
    const [terminal] = own.kind === 'open' ? terminalsOn(material.job, own.node) : []
    return {
      ...own,
      ...(own.kind === 'elsewhere' ? { rung: firstWith(own.node) } : {}),
      ...(terminal === undefined ? {} : { terminal }),
    }
  }
  const rungs = rows.map((row, index): LadderRung => {
    const extras = extrasOf(material, row, seen)
    return {
      number: before + index + 1,
      from: end(row.from),
      to: end(row.to),
      steps: row.steps.map(each => stepOf(material, row, each)),
      says: saysOf(material, row),
      extras,
    }
  })
  const joined = new Set(
    rows.flatMap(({ from, to }) =>
      [from, to].flatMap(each => (each.kind === 'joint' ? [each.node] : [])),
    ),
  )
  return {
    id: division.id,
    title: division.title,
    hasRails: division.hasRails,
    rails: railsOf(division, rows),
    rungs,
    joints: [...gaps].flatMap(([node, gap]) => (joined.has(node) ? [{ node, gap }] : [])),
    apparatus: division.id === 'supply' ? apparatusOf(material) : [],
  }
}

const placeRank = ({ box }: Job, landing: Landing) => {
  const switched = box.places.map(({ lands }) =>
    (['hot', 'high', 'low', 'signal'] as const).map(name => `${BOX}.${lands[name]}`),
  )
  return (load: string): number => {
    const ends = Object.entries(landing.ends).flatMap(([end, at]) =>
      end.startsWith(`${load}.`) ? [at] : [],
    )
    const index = switched.findIndex(all => ends.some(each => all.includes(each)))
    return index < 0 ? box.places.length : index
  }
}

/** Everything that the ladder of a landing is made of. */
export function materialOf(job: Job, landing: Landing, wires: readonly SheetWire[]): Material {
  const rank = placeRank(job, landing)
  return {
    job,
    landing,
    edges: edgesOf(job, landing, wires),
    names: designationsOf(job, styleOf(job)),
    loads: job.loads.toSorted((a, b) => rank(a.id) - rank(b.id)),
  }
}

/**
 * Lays out the ladder diagram of a landing: every part, wire and load on one rung, between the rails
 * that the supply and the transformers make. Read from the network that was solved, nothing is listed
 * by hand.
 */
export function layOutLadder(material: Material): Ladder {
  const seen = new Set<string>()
  const sections: LadderSection[] = []
  for (const division of divisionsOf(material)) {
    const before = sections.at(-1)?.rungs.at(-1)?.number ?? 0
    sections.push(sectionOf(material, division, before, seen))
  }
  return { style: styleOf(material.job), sections, devices: devicesOf(material, sections) }
}
