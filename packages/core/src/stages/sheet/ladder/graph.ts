import { invariant } from '../../../base/invariant.ts'
import type { Jumper, Part } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX, boardOf } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import type { Circuit, PoweredLoad, Probe } from '../../../domain/load/load.ts'
import { isPowered } from '../../../domain/load/load.ts'
import { circuitElement, jumperElement, partElement, wire } from '../../../domain/wiring/wire.ts'
import type { Pair } from '../../../engines/circuit/network.ts'
import { pairsOf } from '../../../engines/circuit/network.ts'
import type { SheetWire } from '../artifact.ts'

/** What a line of the ladder is made of. */
export type EdgeIs =
  | { readonly of: 'part'; readonly board: string; readonly part: Part }
  | {
      readonly of: 'winding'
      readonly board: string
      readonly part: Extract<Part, { kind: 'transformer' }>
      readonly which: 'primary' | 'secondary'
    }
  | {
      readonly of: 'jumper'
      readonly board: string
      readonly jumper: Jumper
      readonly position: string
    }
  | {
      readonly of: 'wire'
      readonly wire: SheetWire
      readonly terminals: readonly [string | undefined, string | undefined]
    }
  | { readonly of: 'circuit'; readonly load: PoweredLoad; readonly circuit: Circuit }
  | { readonly of: 'probe'; readonly load: Probe }

/** Something with two ends in the proven network. */
export interface Edge {
  readonly id: string
  readonly nodes: Pair
  readonly is: EdgeIs
}

export const windingId = (id: string, which: 'primary' | 'secondary'): string => `${id}#${which}`

type NodesOf = (id: string) => readonly Pair[]

function partEdges(nodesOf: NodesOf, board: string, part: Part): readonly Edge[] {
  const id = partElement(board, part.id)
  const [first, second] = nodesOf(id)
  if (!first) return []
  if (part.kind !== 'transformer') return [{ id, nodes: first, is: { of: 'part', board, part } }]
  invariant(second !== undefined, 'a transformer has two windings')
  return (['primary', 'secondary'] as const).map(which => ({
    id: windingId(id, which),
    nodes: which === 'primary' ? first : second,
    is: { of: 'winding', board, part, which },
  }))
}

function jumperEdges(
  nodesOf: NodesOf,
  board: string,
  jumper: Jumper,
  { jumpers }: Landing,
): readonly Edge[] {
  const position = jumpers[jumper.id] ?? jumper.factory
  const joins = jumper.positions.find(each => each.id === position)?.joins ?? []
  return joins.flatMap((_, index) => {
    const id = jumperElement(board, jumper.id, index)
    return nodesOf(id).map(nodes => ({ id, nodes, is: { of: 'jumper', board, jumper, position } }))
  })
}

function wireEdges(nodesOf: NodesOf, each: SheetWire): readonly Edge[] {
  const [near, far] = each.ends
  const terminals =
    each.kind === 'cable'
      ? ([near?.terminal, far?.terminal] as const)
      : ([undefined, near?.terminal] as const)
  const id = `${each.kind}:${each.id}`
  return nodesOf(id).map(nodes => ({ id, nodes, is: { of: 'wire', wire: each, terminals } }))
}

function loadEdges(nodesOf: NodesOf, { loads }: Job): readonly Edge[] {
  return loads.flatMap((load): readonly Edge[] => {
    if (!isPowered(load)) {
      const id = circuitElement(load.id, 'probe')
      return nodesOf(id).map(nodes => ({ id, nodes, is: { of: 'probe', load } }))
    }
    return load.circuits.flatMap(circuit => {
      const id = circuitElement(load.id, circuit.id)
      return nodesOf(id).map(nodes => ({ id, nodes, is: { of: 'circuit', load, circuit } }))
    })
  })
}

/**
 * Everything drawable of a landing, with the nodes of the very network that is solved: the drawing
 * cannot show another circuit than the one that was proven.
 */
export function edgesOf(job: Job, landing: Landing, wires: readonly SheetWire[]): readonly Edge[] {
  const elements = new Map(wire(job, landing).all.map(each => [each.id, pairsOf(each)] as const))
  const nodesOf: NodesOf = id => elements.get(id) ?? []
  const boards = [...job.devices.keys(), BOX].flatMap(name => {
    const board = boardOf(job, name)
    if (!board) return []
    return [
      ...board.parts.flatMap(part => partEdges(nodesOf, name, part)),
      ...board.jumpers.flatMap(jumper => jumperEdges(nodesOf, name, jumper, landing)),
    ]
  })
  return [...boards, ...wires.flatMap(each => wireEdges(nodesOf, each)), ...loadEdges(nodesOf, job)]
}

/** Nodes in groups: the two of every pair are in one. */
export function groupsOf(pairs: readonly Pair[]): (node: string) => string {
  const parents = new Map<string, string>()
  const root = (node: string): string => {
    let at = node
    for (let up = parents.get(at); up !== undefined && up !== at; up = parents.get(at)) at = up
    return at
  }
  for (const [a, b] of pairs) parents.set(root(a), root(b))
  return root
}
