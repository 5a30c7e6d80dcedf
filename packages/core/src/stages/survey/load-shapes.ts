import type { LeadFunction } from '../../domain/board/board.ts'
import type { LoadKind } from '../../domain/load/load.ts'

/** What loads of a kind have in common before one of them is looked at: leads by function, circuits. */
export interface LoadShape {
  readonly id: string
  readonly kind: LoadKind
  readonly leads: readonly LeadFunction[]
  /** Each circuit, and the leads it lies between. */
  readonly circuits: Readonly<Record<string, readonly [LeadFunction, LeadFunction]>>
  /** Whether its plate says watts and not amps. */
  readonly inWatts?: true
}

const MAINS = ['hot', 'common', 'earth'] as const
const input = { input: ['hot', 'common'] } as const
const run = { run: ['hot', 'common'] } as const

/** The loads that tubs have, in the order in which they are asked for. Common practice, no source. */
export const LOAD_SHAPES: readonly LoadShape[] = [
  {
    id: 'pump-two-speeds',
    kind: 'pump',
    leads: ['high', 'low', 'common', 'earth'],
    circuits: { high: ['high', 'common'], low: ['low', 'common'] },
  },
  { id: 'pump-one-speed', kind: 'pump', leads: MAINS, circuits: run },
  { id: 'pump-variable', kind: 'pump', leads: [...MAINS, 'data'], circuits: run },
  { id: 'circulation-pump', kind: 'circulation-pump', leads: MAINS, circuits: run },
  { id: 'ozonator', kind: 'ozonator', leads: MAINS, circuits: input },
  { id: 'light', kind: 'light', leads: ['hot', 'common'], circuits: input, inWatts: true },
  { id: 'blower', kind: 'blower', leads: MAINS, circuits: run },
  {
    id: 'heater',
    kind: 'heater',
    leads: MAINS,
    circuits: { element: ['hot', 'common'] },
    inWatts: true,
  },
  { id: 'audio', kind: 'audio', leads: MAINS, circuits: input },
  { id: 'sanitiser', kind: 'sanitiser', leads: MAINS, circuits: input },
  { id: 'keypad', kind: 'keypad', leads: ['hot', 'common'], circuits: input, inWatts: true },
  { id: 'probe', kind: 'probe', leads: ['signal', 'common'], circuits: {} },
]

type Raw = Readonly<Record<string, unknown>>

/**
 * A load of this shape with nothing known of it but what its shape says.
 *
 * @param id - free among the loads, cables and devices of the tub
 */
export function draftLoad({ kind, leads, circuits }: LoadShape, id: string, label: string): Raw {
  const drawing = Object.entries(circuits).map(([name, across]) => ({ id: name, across }))
  return {
    id,
    kind,
    label,
    leads: leads.map(each => ({ id: each, function: each })),
    ...(drawing.length > 0 ? { circuits: drawing } : {}),
  }
}

/** The shape that a load found in a survey has, by its kind and its leads; undefined for a rarer one. */
export function shapeOf(load: {
  readonly kind?: unknown
  readonly leads?: readonly { readonly function?: unknown }[]
}): LoadShape | undefined {
  const has = (load.leads ?? []).map(each => each.function).filter(each => each !== 'earth')
  return LOAD_SHAPES.find(({ kind, leads }) => {
    const own = leads.filter(each => each !== 'earth')
    return kind === load.kind && own.length === has.length && own.every(each => has.includes(each))
  })
}

/** The first name not taken: `pump`, then `pump-2`. */
export function freeId(stem: string, taken: readonly string[]): string {
  let id = stem
  for (let next = 2; taken.includes(id); next++) id = `${stem}-${next}`
  return id
}
