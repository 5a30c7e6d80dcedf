import type { NodeId, Pair } from '../../engines/circuit/network.ts'
import { BOX } from '../job.ts'
import type { Cold } from './cold.ts'
import { COLD, COLD_LIMITS } from './cold-figures.ts'
import { ohmsWith } from './cold-meter.ts'
import type { ColdElement, ColdPart } from './cold-ohms.ts'
import { reachedFrom } from './reach.ts'
import { boardNode } from './wire.ts'

/** A part that is unplugged or taken off before the test, and why. */
export interface Unplug {
  readonly part: ColdPart
  /** The test voltage reaches it, and it does not stand it. */
  readonly dies: boolean
  /** It passes current between what is tested, so that good insulation reads bad. */
  readonly falsifies: boolean
}

/** What an insulation tester reads, once what has to be is unplugged [Ω]. */
export type InsulationTest =
  /** Copper, fuses or closed contacts join them: there is nothing to test. */
  | { readonly kind: 'joined' }
  | {
      readonly kind: 'insulated'
      readonly volts: number
      /** Of sound insulation, by the model; absent where not even insulation joins them. */
      readonly expected?: number
      readonly least?: number
      readonly unplug: readonly Unplug[]
      /** Loads with a capacitor that the tester charges: it is discharged after. */
      readonly charges: readonly string[]
    }

/** Kinds that 500 V destroys. Common practice, no source. */
const DYING: readonly ColdPart['kind'][] = [
  'probe',
  'load-electronics',
  'electronics',
  'ground-fault',
  'semiconductor',
  'input',
]

const isDying = ({ part }: ColdElement): boolean => part !== undefined && DYING.includes(part.kind)

/** What a direct current passes through, insulation and open contacts aside. */
const passes = ({ role }: ColdElement): boolean => role === 'joint' || role === 'part'

const pairsOf = (elements: readonly ColdElement[]): readonly Pair[] =>
  elements.map(each => each.between)

/** All nodes of a net as its first one. */
function asOne(elements: readonly ColdElement[], nets: readonly (readonly NodeId[])[]) {
  const names = new Map(nets.flatMap(net => net.map(node => [node, net[0] ?? node] as const)))
  const named = (node: NodeId): NodeId => names.get(node) ?? node
  return elements.map(each => ({
    ...each,
    between: [named(each.between[0]), named(each.between[1])] as const,
  }))
}

/**
 * Parts on a path between two nodes that leads through no insulation.
 *
 * A part is on one just where leaving it out changes the ohms, with values that balance no bridge.
 */
function falsifying(
  elements: readonly ColdElement[],
  a: NodeId,
  b: NodeId,
): ReadonlySet<ColdElement> {
  const passing = elements.filter(passes)
  const generic = new Map(passing.map((each, index) => [each, 20 + 3 * index] as const)) // [Ω]
  const without = (left?: ColdElement) =>
    ohmsWith(passing, a, b, each =>
      each === left ? Number.POSITIVE_INFINITY : (generic.get(each) ?? 1),
    )
  const all = without()
  if (all === Number.POSITIVE_INFINITY) return new Set()
  return new Set(passing.filter(each => each.role === 'part' && without(each) > all * (1 + CHANGE)))
}

/** More than rounding leaves. */
const CHANGE = 1e-9

/**
 * Parts with a pole at the test voltage that do not stand it. A net joined to the earth of the box is
 * the tester's cold side. Behind an isolating transformer only isolation keeps the voltage off, so its
 * electronics count as reached.
 */
function dying(
  { job, isolated }: Cold,
  elements: readonly ColdElement[],
  a: NodeId,
  b: NodeId,
): ReadonlySet<ColdElement> {
  const joints = pairsOf(elements.filter(each => each.role === 'joint'))
  const earthed = reachedFrom(boardNode(BOX, job.box.board.earth), joints)
  const pairs = [...pairsOf(elements.filter(passes)), ...isolated]
  const hot = new Set(
    [a, b].filter(net => !earthed.has(net)).flatMap(net => [...reachedFrom(net, pairs)]),
  )
  return new Set(elements.filter(each => isDying(each) && each.between.some(at => hot.has(at))))
}

/** What is left once these parts are off: a load takes its leads and its insulation along. */
function left(elements: readonly ColdElement[], off: readonly ColdElement[]) {
  const loads = new Set(off.flatMap(each => each.load ?? []))
  return elements.filter(
    each => !off.includes(each) && (each.load === undefined || !loads.has(each.load)),
  )
}

/**
 * An insulation test at 500 V direct between two nets, each of one node or several joined.
 *
 * What has to be off first is computed: every part that the voltage reaches and that dies of it, and
 * every part through which it reads anything but insulation. Surge suppressors are described nowhere,
 * so they are in no list.
 */
export function insulationBetween(
  cold: Cold,
  one: readonly NodeId[],
  other: readonly NodeId[],
): InsulationTest {
  const elements = asOne(cold.elements, [one, other])
  const [a = '', b = ''] = [one[0], other[0]]
  const joints = elements.filter(each => each.role === 'joint')
  if (a === b || reachedFrom(a, pairsOf(joints)).has(b)) return { kind: 'joined' }
  const [bad, dead] = [falsifying(elements, a, b), dying(cold, elements, a, b)]
  const off = elements.filter(each => bad.has(each) || dead.has(each))
  const rest = left(elements, off)
  // Windings that are left join what insulates: the model's ohms then lie in parallel.
  const ohms = (which: 'least' | 'expected') =>
    ohmsWith(rest, a, b, each => (each.ohms ? each.ohms[which] : COLD.unknownLeast))
  const expected = ohms('expected')
  const reached = reachedFrom(a, pairsOf(rest.filter(passes)))
  const isTested = ({ between, part }: ColdElement): boolean =>
    part?.charges === true && reached.has(between[0])
  return {
    kind: 'insulated',
    volts: COLD_LIMITS.testVolts,
    ...(expected < Number.POSITIVE_INFINITY ? { expected, least: ohms('least') } : {}),
    unplug: off.flatMap(each =>
      each.part ? [{ part: each.part, dies: dead.has(each), falsifies: bad.has(each) }] : [],
    ),
    charges: [...new Set(rest.filter(isTested).flatMap(each => each.load ?? []))],
  }
}

/** What a reading of an insulation test means. Common practice, no source. */
export function insulationVerdict(ohms: number): 'good' | 'acceptable' | 'doubtful' | 'suspect' {
  if (ohms > COLD_LIMITS.goodInsulation) return 'good'
  if (ohms > COLD_LIMITS.leastInsulation) return 'acceptable'
  return ohms < COLD_LIMITS.suspectInsulation ? 'suspect' : 'doubtful'
}
