import type { LadderEnd, LadderGap, LadderZone } from './artifact.ts'
import type { Edge } from './graph.ts'
import type { Main } from './mains.ts'

export type Side = 'left' | 'right'

export interface RowStep {
  /** Absent for the gap of an empty place. */
  readonly edge?: Edge
  readonly zone: LadderZone
  readonly column: number
  readonly nodes: readonly [string, string]
  readonly isTurned: boolean
}

export interface Row {
  readonly main: Main | undefined
  readonly from: Omit<LadderEnd, 'rung' | 'terminal'>
  readonly to: Omit<LadderEnd, 'rung' | 'terminal'>
  readonly steps: readonly RowStep[]
}

export interface Rows {
  readonly rows: readonly Row[]
  readonly gaps: ReadonlyMap<string, LadderGap>
}

interface Problem {
  /** What lies between rails and mains. */
  readonly edges: readonly Edge[]
  readonly mains: readonly Main[]
  /** The nodes of the rails, each with the side where what has no load begins. */
  readonly rails: readonly { readonly node: string; readonly side: Side }[]
  /** Edges that move together: they stand under each other. */
  readonly together: readonly (readonly Edge[])[]
}

type Rails = ReadonlyMap<string, Side>

/** Edges from one node to another, and the nodes on the way, both ends included. */
interface Chain {
  readonly edges: readonly Edge[]
  readonly nodes: readonly string[]
}

interface Draft {
  readonly main: Main | undefined
  /** From the left: chain, then the main, then chain. */
  readonly left: Chain
  readonly right: Chain
  /** Where copper shared with other rungs stands, at its beginning and at its end. */
  readonly sides: readonly [Side, Side]
}

const other = ({ nodes: [a, b] }: Edge, node: string): string => (a === node ? b : a)

const reversed = ({ edges, nodes }: Chain): Chain => ({
  edges: edges.toReversed(),
  nodes: nodes.toReversed(),
})

/** The side of every node that some rung has taken up, in the order in which they were. */
type Taken = Map<string, Side>

function take(taken: Taken, { nodes }: Chain, side: Side, rails: Rails): void {
  for (const node of nodes) if (!rails.has(node) && !taken.has(node)) taken.set(node, side)
}

/** The wire of a load begins its own way, and is no way for another's. */
const isLoadWire = ({ is }: Edge): boolean => is.of === 'wire' && is.wire.kind === 'lead'

/** What uses current stands on a rung of its own: no way leads through it. */
const isCopper = ({ is }: Edge): boolean =>
  !(is.of === 'part' && (is.part.kind === 'ground-fault' || is.part.kind === 'electronics'))

/** Shortest way from a node to a rail or to copper already drawn; where none is, the longest one out. */
function wayOut(from: string, unused: ReadonlySet<Edge>, isStop: (node: string) => boolean): Chain {
  const ways: Chain[] = [{ edges: [], nodes: [from] }]
  const seen = new Set([from])
  let last = ways[0] as Chain
  for (let index = 0; index < ways.length; index++) {
    const way = ways[index] as Chain
    const node = way.nodes.at(-1) ?? from
    last = way
    if (isStop(node)) return way
    for (const edge of unused) {
      if (!isCopper(edge) || !edge.nodes.includes(node)) continue
      if (isLoadWire(edge) && node !== from) continue
      const next = other(edge, node)
      if (seen.has(next)) continue
      seen.add(next)
      ways.push({ edges: [...way.edges, edge], nodes: [...way.nodes, next] })
    }
  }
  return last
}

/** A chain onward from a node, until a rail, copper already drawn, or nothing more. */
function onward(
  from: string,
  first: Edge,
  unused: Set<Edge>,
  isStop: (node: string) => boolean,
): Chain {
  const edges: Edge[] = []
  const nodes = [from]
  for (let edge: Edge | undefined = first; edge; ) {
    unused.delete(edge)
    const node: string = other(edge, nodes.at(-1) ?? from)
    edges.push(edge)
    nodes.push(node)
    if (isStop(node) || nodes.indexOf(node) < nodes.length - 1) break
    edge = [...unused].find(each => isCopper(each) && each.nodes.includes(node))
  }
  return { edges, nodes }
}

const nothing = (node: string | undefined): Chain => ({
  edges: [],
  nodes: node === undefined ? [] : [node],
})

function mainDraft(main: Main, unused: Set<Edge>, taken: Taken, rails: Rails): Draft {
  const chainTo = (node: string | undefined, side: Side): Chain => {
    if (node === undefined) return nothing(undefined)
    const way = wayOut(node, unused, each => rails.has(each) || taken.has(each))
    for (const edge of way.edges) unused.delete(edge)
    take(taken, reversed(way), side, rails)
    return way
  }
  const left = reversed(chainTo(main.nodes[0], 'left'))
  return { main, left, right: chainTo(main.nodes[1], 'right'), sides: ['left', 'right'] }
}

/** What is left of the copper: each chain from where it hangs, or across to where it is led. */
function spurDraft(first: Edge, unused: Set<Edge>, taken: Taken, rails: Rails): Draft {
  const isStop = (node: string) => rails.has(node) || taken.has(node)
  const order = [...taken.keys()]
  // Rails come before everything; among the rest, what was drawn first is nearer to them.
  const rank = (node: string) => (rails.has(node) ? -1 : order.indexOf(node))
  const [a, b] = first.nodes
  const start = !isStop(a) || (isStop(b) && rank(b) < rank(a)) ? b : a
  const chain = onward(start, first, unused, isStop)
  const end = chain.nodes.at(-1) ?? start
  const ends = [start, end].map(node => taken.get(node))
  const own = ends[0] ?? ends[1] ?? rails.get(start) ?? 'left'
  take(taken, chain, own, rails)
  const isAcross = ends[0] !== undefined && ends[1] !== undefined && ends[0] !== ends[1]
  const drawn = own === 'right' ? reversed(chain) : chain
  const sides = isAcross ? (['left', 'right'] as const) : ([own, own] as const)
  return own === 'left'
    ? { main: undefined, left: drawn, right: nothing(drawn.nodes.at(-1)), sides }
    : { main: undefined, left: nothing(drawn.nodes[0]), right: drawn, sides }
}

/** A piece that hangs on nothing: a load that is off, a part of its own. */
function islandDraft(first: Edge, unused: Set<Edge>, taken: Taken, rails: Rails): Draft {
  const chain = onward(first.nodes[0], first, unused, node => taken.has(node))
  take(taken, chain, 'left', rails)
  const right = nothing(chain.nodes.at(-1))
  return { main: undefined, left: chain, right, sides: ['left', 'left'] }
}

/** The wire of a load has a column of its own, next to it. */
function hasLead({ main }: Draft, { edges }: Chain): boolean {
  const of = main?.edge?.is.of
  return (of === 'circuit' || of === 'probe') && edges.at(-1)?.is.of === 'wire'
}

/** The chain of a side, counted from its rail. */
const fromRail = ({ left, right }: Draft, side: Side): Chain =>
  side === 'left' ? left : reversed(right)

/** What of it stands in columns. */
function columned(draft: Draft, side: Side): Chain {
  const chain = fromRail(draft, side)
  if (!hasLead(draft, chain)) return chain
  return { edges: chain.edges.slice(0, -1), nodes: chain.nodes.slice(0, -1) }
}

/** Columns of a side: of each edge, and how many lie between each node and the rail. */
interface Columns {
  readonly edges: ReadonlyMap<Edge, number>
  readonly nodes: ReadonlyMap<string, number>
}

/** The least columns with which every chain goes outward and what moves together stands in one. */
function columnsOf(
  drafts: readonly Draft[],
  side: Side,
  taken: Taken,
  together: readonly (readonly Edge[])[],
): Columns {
  const steps = drafts
    .map(each => columned(each, side))
    .flatMap(chain =>
      chain.edges.map((edge, index) => ({
        edge,
        before: chain.nodes[index] ?? '',
        after: chain.nodes[index + 1] ?? '',
      })),
    )
  const columns = { edges: new Map<Edge, number>(), nodes: new Map<string, number>() }
  let grew = true
  const raise = <Key>(all: Map<Key, number>, key: Key, least: number) => {
    if ((all.get(key) ?? 0) >= least) return
    all.set(key, least)
    grew = true
  }
  // A round for each edge at most: copper that would run in a ring stops there.
  for (let round = 0; grew && round <= steps.length; round++) {
    grew = false
    for (const { edge, before, after } of steps) {
      raise(columns.edges, edge, (columns.nodes.get(before) ?? 0) + 1)
      if (taken.get(after) === side) raise(columns.nodes, after, columns.edges.get(edge) ?? 0)
    }
    for (const set of together) {
      const own = set.filter(each => columns.edges.has(each))
      const most = Math.max(0, ...own.map(each => columns.edges.get(each) ?? 0))
      for (const each of own) raise(columns.edges, each, most)
    }
  }
  return columns
}

function stepsOf(draft: Draft, columns: Readonly<Record<Side, Columns>>): readonly RowStep[] {
  const { main, left, right } = draft
  const sideSteps = (side: Side): readonly RowStep[] => {
    const chain = fromRail(draft, side)
    const isLed = hasLead(draft, chain)
    let column = 0
    const steps = chain.edges.map((edge, index): RowStep => {
      const [near, far] = [chain.nodes[index] ?? '', chain.nodes[index + 1] ?? '']
      const isOwn = isLed && index === chain.edges.length - 1
      column = Math.max(column + 1, columns[side].edges.get(edge) ?? 0)
      const nodes = side === 'left' ? ([near, far] as const) : ([far, near] as const)
      return {
        edge,
        zone: isOwn ? `${side}-lead` : side,
        column: isOwn ? 0 : column,
        nodes,
        isTurned: edge.nodes[0] !== nodes[0],
      }
    })
    return side === 'left' ? steps : steps.toReversed()
  }
  if (!main) return [...sideSteps('left'), ...sideSteps('right')]
  const nodes = [left.nodes.at(-1) ?? '', right.nodes[0] ?? ''] as const
  const middle: RowStep = {
    ...(main.edge ? { edge: main.edge } : {}),
    zone: 'main',
    column: 0,
    nodes,
    isTurned: main.edge !== undefined && main.edge.nodes[0] !== nodes[0],
  }
  return [...sideSteps('left'), middle, ...sideSteps('right')]
}

/** Copper that an earlier rung has drawn is joined to; on the other side it is only named. */
function endOf(
  node: string | undefined,
  side: Side,
  drawn: ReadonlySet<string>,
  taken: Taken,
  rails: Rails,
): Row['from'] {
  if (node === undefined) return { kind: 'open', node: '' }
  if (rails.has(node)) return { kind: 'rail', node }
  if (!drawn.has(node)) return { kind: 'open', node }
  return { kind: taken.get(node) === side ? 'joint' : 'elsewhere', node }
}

/**
 * Rungs of a circuit between its rails.
 *
 * First a rung for each load: the shortest way from either of its ends to a rail or to copper that
 * an earlier rung has drawn. Then every chain that is left, from where it hangs. So every edge is on
 * exactly one rung, and whatever two rungs share is drawn once.
 */
export function rowsOf(problem: Problem): Rows {
  const rails: Rails = new Map(problem.rails.map(each => [each.node, each.side]))
  const taken: Taken = new Map()
  const unused = new Set(problem.edges)
  const drafts: Draft[] = problem.mains.map(main => mainDraft(main, unused, taken, rails))
  const hangs = (node: string) => rails.has(node) || taken.has(node)
  while (unused.size > 0) {
    const all = [...unused].filter(each => each.nodes.some(hangs))
    const hanging = all.find(isCopper) ?? all[0]
    const first = hanging ?? [...unused][0]
    if (!first) break
    drafts.push((hanging ? spurDraft : islandDraft)(first, unused, taken, rails))
  }
  const columns = {
    left: columnsOf(drafts, 'left', taken, problem.together),
    right: columnsOf(drafts, 'right', taken, problem.together),
  }
  const gaps = new Map<string, LadderGap>()
  for (const [node, side] of taken)
    gaps.set(node, { side, depth: columns[side].nodes.get(node) ?? 0 })
  for (const draft of drafts)
    for (const side of ['left', 'right'] as const) {
      const chain = fromRail(draft, side)
      const node = chain.nodes.at(-1)
      // The load's own end of its wire: a second circuit of it may be joined there.
      if (node !== undefined && hasLead(draft, chain)) gaps.set(node, { side, depth: 'lead' })
    }
  const drawn = new Set<string>()
  const rows = drafts.map((draft): Row => {
    const { main, left, right, sides } = draft
    const from = endOf(left.nodes[0], sides[0], drawn, taken, rails)
    const to = endOf(right.nodes.at(-1), sides[1], drawn, taken, rails)
    const steps = stepsOf(draft, columns)
    for (const step of steps) for (const node of step.nodes) drawn.add(node)
    return { main, from, to, steps }
  })
  return { rows, gaps }
}
