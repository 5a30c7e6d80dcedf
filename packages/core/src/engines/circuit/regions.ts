import type { Blocks, Edge } from './blocks.ts'
import { findBlocks } from './blocks.ts'

/** A transformer seen as two edges of the graph and a ratio Vp/Vs. */
export interface Winding {
  readonly primaryEdge: number
  readonly secondaryEdge: number
  readonly ratio: number
}

/**
 * A part of the network that is solved at its own scale and set in its place afterwards.
 *
 * Region 0 holds the reference. The voltages of any other are found times `scale`, and up to a
 * constant that `anchor` fixes: a node that it shares with an earlier region and through which no
 * current can flow.
 */
export interface Region {
  readonly scale: number
  readonly anchor: number
  readonly mirror: Mirror | undefined
}

/** The winding through which a region is seen, which of its sides lies in it, and from where. */
export interface Mirror {
  readonly winding: number
  readonly side: 'primary' | 'secondary'
  readonly across: number
}

export const MAIN_REGION: Region = { scale: 1, anchor: 0, mirror: undefined }

export interface Regions {
  readonly regions: readonly Region[]
  /** Per edge. */
  readonly ofEdge: readonly number[]
  /** Per node: the region that decides its voltage. */
  readonly home: readonly number[]
}

/** A block that hangs from a winding; `across` is the block on its other side. */
interface Hanging extends Mirror {
  readonly block: number
  readonly factor: number
}

/**
 * Cuts a network at its transformers, so that each can be reflected from one side to the other.
 *
 * A block carries no net current through the node it hangs from, so nothing but its windings ties
 * its inner voltages to the rest. When the windings join the blocks as a tree, each block but one
 * can be seen through its winding: that covers the isolated secondary with at most one tie.
 *
 * @param edges - of a connected graph; windings included, one edge a side
 * @returns undefined when windings close a loop (a second tie, windings in parallel, an
 *   autotransformer) or join a node to itself: reflection is not valid then
 */
export function findRegions(
  nodeCount: number,
  root: number,
  edges: readonly Edge[],
  windings: readonly Winding[],
): Regions | undefined {
  const blocks = findBlocks(nodeCount, root, edges)
  const depths = depthsOf(blocks)
  const hanging = hangByWindings(blocks, depths, windings)
  return hanging && placeRegions(blocks, depths, hanging)
}

/** Blocks between the root and each block, itself counted. */
function depthsOf(blocks: Blocks): readonly number[] {
  const depths = new Map<number, number>()
  const depthOf = (block: number): number => {
    const known = depths.get(block)
    if (known !== undefined) return known
    const above = blocks.home[blocks.hangsFrom[block] as number] as number
    const depth = above < 0 ? 1 : depthOf(above) + 1
    depths.set(block, depth)
    return depth
  }
  return blocks.hangsFrom.map((_, block) => depthOf(block))
}

/** Which blocks hang from a winding, found outward from the block nearest to the root. */
function hangByWindings(
  blocks: Blocks,
  depths: readonly number[],
  windings: readonly Winding[],
): readonly Hanging[] | undefined {
  const seen = new Set<number>()
  const used = new Set<number>()
  const hanging: Hanging[] = []
  const blockOf = (edge: number): number => blocks.ofEdge[edge] as number
  const spread = (across: number): boolean => {
    seen.add(across)
    return windings.every(({ primaryEdge, secondaryEdge, ratio }, winding) => {
      const primary = blockOf(primaryEdge)
      const secondary = blockOf(secondaryEdge)
      if (used.has(winding) || (primary !== across && secondary !== across)) return true
      used.add(winding)
      const side = primary === across ? 'secondary' : 'primary'
      const block = side === 'secondary' ? secondary : primary
      if (seen.has(block)) return false
      const factor = side === 'secondary' ? ratio : 1 / ratio
      hanging.push({ block, winding, side, across, factor })
      return spread(block)
    })
  }
  const sides = windings.flatMap(each => [blockOf(each.primaryEdge), blockOf(each.secondaryEdge)])
  if (sides.includes(-1)) return undefined
  const roots = [...sides].sort((a, b) => (depths[a] as number) - (depths[b] as number))
  return roots.every(block => seen.has(block) || spread(block)) ? hanging : undefined
}

function placeRegions(
  blocks: Blocks,
  depths: readonly number[],
  hanging: readonly Hanging[],
): Regions {
  const placed = [...hanging].sort(
    (a, b) => (depths[a.block] as number) - (depths[b.block] as number),
  )
  const regionOfBlock = (block: number): number => {
    if (block < 0) return 0
    const own = placed.findIndex(each => each.block === block)
    return own < 0 ? regionOfNode(blocks.hangsFrom[block] as number) : own + 1
  }
  const regionOfNode = (node: number): number => regionOfBlock(blocks.home[node] as number)
  const scaleOf = (region: number): number => {
    const each = placed[region - 1]
    return each ? scaleOf(regionOfBlock(each.across)) * each.factor : 1
  }
  return {
    regions: [
      MAIN_REGION,
      ...placed.map(({ block, winding, side, across }, index) => ({
        scale: scaleOf(index + 1),
        anchor: blocks.hangsFrom[block] as number,
        mirror: { winding, side, across: regionOfBlock(across) },
      })),
    ],
    ofEdge: blocks.ofEdge.map(regionOfBlock),
    home: blocks.home.map((_, node) => regionOfNode(node)),
  }
}
