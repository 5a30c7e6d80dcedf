import type { Complex } from '../../base/complex.ts'
import type { Edge } from './blocks.ts'
import type { BranchTable, WindingPair } from './branch-table.ts'
import type { Elimination, MeshBranch } from './elimination.ts'
import { planElimination } from './elimination.ts'
import type { Regions } from './regions.ts'
import { findRegions, MAIN_REGION } from './regions.ts'

/** A branch of the mesh, whose nodes are the network's nodes seen from the region it lies in. */
export interface ScaledBranch extends MeshBranch {
  readonly element: number
  /** The series branch of this winding pair rather than the element itself, or −1. */
  readonly winding: number
  /** The region's voltages are found times this, its impedances times its square. */
  readonly scale: number
}

/** Where to read the voltage of a node that lies in a region of its own. */
export interface Placement {
  readonly node: number
  readonly meshNode: number
  readonly anchor: number
  readonly anchorMeshNode: number
  readonly scale: number
}

/** A network prepared for star–mesh elimination, transformers reflected. */
export interface MeshRoute {
  readonly kind: 'star-mesh'
  readonly elimination: Elimination
  readonly branches: readonly ScaledBranch[]
  /** Admittances and currents before elimination, contacts left out. */
  readonly base: Float64Array
  /** Per contact: offset of its admittance, or −1 where it joins a node to itself. */
  readonly contactAt: Int32Array
  /** Per contact, at the scale of its region [S]. */
  readonly closedSiemens: Float64Array
  readonly openSiemens: Float64Array
  /** Ordered so that every anchor is placed before it is needed. */
  readonly placements: readonly Placement[]
}

/** Prepares the star–mesh route, or returns undefined when some winding cannot be reflected. */
export function planMeshRoute(nodeCount: number, table: BranchTable): MeshRoute | undefined {
  const regions = regionsOf(nodeCount, table)
  if (!regions) return undefined
  const meshNode = meshNodes(nodeCount, table, regions)
  const branches = scaledBranches(table, regions, meshNode)
  const placements = placementsOf(regions, meshNode)
  const last = branches.reduce((most, { from, to }) => Math.max(most, from, to), nodeCount - 1)
  const elimination = planElimination(last + 1, 0, branches)
  return {
    kind: 'star-mesh',
    elimination,
    branches,
    base: baseValues(elimination, branches, table),
    placements,
    ...scaledContacts(elimination, branches, table),
  }
}

const endsOf = (table: BranchTable, element: number): Edge => [
  table.ends[2 * element] as number,
  table.ends[2 * element + 1] as number,
]

/** One edge an element, in their order, then one for each secondary. */
function regionsOf(nodeCount: number, table: BranchTable): Regions | undefined {
  const edges = Array.from(table.contactOf, (_, element) => endsOf(table, element))
  const windings = table.windings.map(({ element, ratio }, index) => ({
    primaryEdge: element,
    secondaryEdge: edges.length + index,
    ratio,
  }))
  return table.windings.length === 0
    ? { regions: [MAIN_REGION], ofEdge: edges.map(() => 0), home: new Array(nodeCount).fill(0) }
    : findRegions(nodeCount, 0, [...edges, ...table.windings.map(w => w.secondary)], windings)
}

/** The mesh's number of a network's node as seen from a region. */
type MeshNode = (region: number, node: number) => number

/**
 * Numbers the mesh's nodes: those of region 0 as in the network, the others from `first` on.
 *
 * A reflected winding shares its second terminal with the winding across.
 */
function meshNodes(first: number, table: BranchTable, { regions }: Regions): MeshNode {
  const numbers = new Map<string, number>()
  const meshNode: MeshNode = (region, node) => {
    const mirror = regions[region]?.mirror
    if (!mirror) return node
    const winding = table.windings[mirror.winding] as WindingPair
    const other = mirror.side === 'primary' ? 'secondary' : 'primary'
    if (node === winding[mirror.side][1]) return meshNode(mirror.across, winding[other][1])
    const key = `${region}:${node}`
    const number = numbers.get(key) ?? first + numbers.size
    numbers.set(key, number)
    return number
  }
  return meshNode
}

const regionOfEdge = (regions: Regions, edge: number): number => regions.ofEdge[edge] as number
const scaleOf = (regions: Regions, region: number): number => regions.regions[region]?.scale ?? 1

function scaledBranches(
  table: BranchTable,
  regions: Regions,
  meshNode: MeshNode,
): readonly ScaledBranch[] {
  const elements = Array.from(table.contactOf, (_, element): ScaledBranch => {
    const [first, second] = endsOf(table, element)
    const region = regionOfEdge(regions, element)
    return {
      element,
      winding: -1,
      from: meshNode(region, second),
      to: meshNode(region, first),
      isDriven: table.emfs[2 * element] !== 0 || table.emfs[2 * element + 1] !== 0,
      scale: scaleOf(regions, region),
    }
  })
  const windings = table.windings.map((pair, winding): ScaledBranch => {
    const primary = regionOfEdge(regions, pair.element)
    const secondary = regionOfEdge(regions, table.contactOf.length + winding)
    return {
      element: pair.element,
      winding,
      from: meshNode(primary, pair.primary[0]),
      to: meshNode(secondary, pair.secondary[0]),
      isDriven: false,
      scale: scaleOf(regions, secondary),
    }
  })
  return [...elements, ...windings].filter(({ from, to }) => from !== to)
}

/** Admittance of a branch at the scale of its region, contacts left out [S]. */
export function scaledAdmittance(branch: ScaledBranch, table: BranchTable): Complex {
  const { element, winding, scale } = branch
  const { admittances, windings } = table
  // No winding is −1, which must not be looked up: that is slow.
  const series = winding < 0 ? undefined : windings[winding]?.series
  const re = series ? series.re : (admittances[2 * element] as number)
  const im = series ? series.im : (admittances[2 * element + 1] as number)
  return { re: re / (scale * scale), im: im / (scale * scale) }
}

function baseValues(
  elimination: Elimination,
  branches: readonly ScaledBranch[],
  table: BranchTable,
): Float64Array {
  const base = new Float64Array(elimination.valueCount)
  const addTo = (at: number, re: number, im: number): void => {
    base[at] = (base[at] as number) + re
    base[at + 1] = (base[at + 1] as number) + im
  }
  branches.forEach((branch, index) => {
    const { re, im } = scaledAdmittance(branch, table)
    addTo(elimination.admittances[index] as number, re, im)
    if (!branch.isDriven) return
    const sign = (elimination.signs[index] as number) * branch.scale
    const eRe = sign * (table.emfs[2 * branch.element] as number)
    const eIm = sign * (table.emfs[2 * branch.element + 1] as number)
    addTo(elimination.currents[index] as number, re * eRe - im * eIm, re * eIm + im * eRe)
  })
  return base
}

/** The route of a network of the same shape whose elements have other values. */
export const withBaseValues = (route: MeshRoute, table: BranchTable): MeshRoute => ({
  ...route,
  base: baseValues(route.elimination, route.branches, table),
})

function scaledContacts(
  elimination: Elimination,
  branches: readonly ScaledBranch[],
  table: BranchTable,
): Pick<MeshRoute, 'contactAt' | 'closedSiemens' | 'openSiemens'> {
  const contactAt = new Int32Array(table.closedSiemens.length).fill(-1)
  const closedSiemens = Float64Array.from(table.closedSiemens)
  const openSiemens = Float64Array.from(table.openSiemens)
  branches.forEach(({ element, winding, scale }, index) => {
    const contact = table.contactOf[element] as number
    if (contact < 0 || winding >= 0) return
    contactAt[contact] = elimination.admittances[index] as number
    closedSiemens[contact] = (table.closedSiemens[contact] as number) / (scale * scale)
    openSiemens[contact] = (table.openSiemens[contact] as number) / (scale * scale)
  })
  return { contactAt, closedSiemens, openSiemens }
}

/** Nodes of region 0 are found where they are read; every other has its place written down. */
function placementsOf(regions: Regions, meshNode: MeshNode): readonly Placement[] {
  return regions.regions.flatMap(({ scale, anchor, mirror }, region) =>
    regions.home.flatMap((home, node): Placement[] => {
      if (!mirror || home !== region) return []
      const anchorMeshNode = meshNode(region, anchor)
      return [{ node, meshNode: meshNode(region, node), anchor, anchorMeshNode, scale }]
    }),
  )
}
