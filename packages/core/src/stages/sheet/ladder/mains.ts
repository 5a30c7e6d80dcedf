import type { LeadFunction } from '../../../domain/board/board.ts'
import type { Place } from '../../../domain/box/control-box.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import type { Load } from '../../../domain/load/load.ts'
import { boardNode } from '../../../domain/wiring/wire.ts'
import type { Edge } from './graph.ts'

/** What a rung is drawn for: a load, a winding, a place left empty. */
export interface Main {
  /** Absent for a place that nothing is on. */
  readonly edge?: Edge
  /** The node at its left and the node at its right; absent where it has no such terminal. */
  readonly nodes: readonly [string | undefined, string | undefined]
  readonly spare?: Omit<SparePlace, 'nodes'>
}

/** A place of the box that nothing is on, one of its switched leads. */
export interface SparePlace {
  readonly place: Place
  readonly lead: LeadFunction
  readonly isOnly: boolean
  readonly nodes: readonly [string | undefined, string | undefined]
  readonly terminals: readonly [string | undefined, string | undefined]
}

export const isReturn = (name: LeadFunction): boolean => name === 'common'

const functionOf = (load: Load, lead: string): LeadFunction | undefined =>
  load.leads.find(each => each.id === lead)?.function

/** Ends of a load as they are drawn: where current is switched at the left, where it returns at the right. */
export function loadMain(edge: Edge): Main {
  const { is, nodes } = edge
  const across =
    is.of === 'circuit' ? is.circuit.across : is.of === 'probe' ? is.load.leads.map(l => l.id) : []
  const load = is.of === 'circuit' || is.of === 'probe' ? is.load : undefined
  const first = load && functionOf(load, across[0] ?? '')
  return first !== undefined && isReturn(first)
    ? { edge, nodes: [nodes[1], nodes[0]] }
    : { edge, nodes }
}

/** Leads of a load that some circuit of it ends at. */
export const leadsInCircuits = (load: Load): ReadonlySet<string> =>
  new Set(
    load.kind === 'probe'
      ? load.leads.slice(0, 2).map(each => each.id)
      : load.circuits.flatMap(each => each.across),
  )

const PASSIVE: readonly LeadFunction[] = ['common', 'earth', 'signal', 'data']

/** Every switched lead of the places that no load is on. */
export function sparesOf({ box }: Job, landing: Landing): readonly SparePlace[] {
  const used = new Set(Object.values(landing.ends))
  const nodeOf = (terminal: string | undefined) => {
    const node = box.board.terminals.find(each => each.id === terminal)?.node
    return node === undefined ? undefined : boardNode(BOX, node)
  }
  return box.places.flatMap(place => {
    const switched = (Object.keys(place.lands) as LeadFunction[]).filter(
      each => !PASSIVE.includes(each),
    )
    const isUsed = switched.some(each => used.has(`${BOX}.${place.lands[each]}`))
    return isUsed
      ? []
      : switched.map(lead => ({
          place,
          lead,
          isOnly: switched.length === 1,
          nodes: [nodeOf(place.lands[lead]), nodeOf(place.lands.common)] as const,
          terminals: [place.lands[lead], place.lands.common] as const,
        }))
  })
}
