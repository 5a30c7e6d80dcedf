import type { PhotoItem } from './photo-record.ts'

/** The photos that every job wants, in the order in which they are taken. Common practice, no source. */
export const WANTED = [
  'nameplate',
  'lid',
  'board',
  'pumps',
  'heater',
  'blower-ozonator',
  'breakers',
  'bay',
] as const
export type Wanted = (typeof WANTED)[number]

export const isWanted = (of: string): of is Wanted => WANTED.some(each => each === of)

/** A load as far as the survey has it. */
export interface LoadKind {
  readonly id: string
  readonly kind?: unknown
}

/** One of the wanted photos, and how far it is. */
export interface Slot {
  readonly of: Wanted
  readonly state: 'missing' | 'waiting' | 'some' | 'done'
  /** How many belong here by the survey; one where it says nothing. */
  readonly wanted: number
  readonly photos: readonly PhotoItem[]
  /** Added before a camera opened, and still without a picture. */
  readonly waiting?: PhotoItem
}

/** Plates that there is one of for each load. */
const PLATES: Readonly<Partial<Record<Wanted, readonly string[]>>> = {
  pumps: ['pump', 'circulation-pump'],
  'blower-ozonator': ['blower', 'ozonator'],
}

const countOf = (of: Wanted, loads: readonly LoadKind[]): number =>
  Math.max(1, loads.filter(({ kind }) => PLATES[of]?.includes(String(kind))).length)

/** How far each of the wanted photos is, by the photos and the loads that there are. */
export const slotsOf = (
  photos: readonly PhotoItem[],
  loads: readonly LoadKind[],
): readonly Slot[] =>
  WANTED.map(of => {
    const own = photos.filter(each => each.of === of)
    const there = own.filter(each => each.hash !== undefined)
    const waiting = own.find(each => each.hash === undefined)
    const wanted = countOf(of, loads)
    return {
      of,
      state: stateOf(there.length, wanted, waiting !== undefined),
      wanted,
      photos: there,
      ...(waiting ? { waiting } : {}),
    }
  })

function stateOf(count: number, wanted: number, isWaiting: boolean): Slot['state'] {
  if (isWaiting) return 'waiting'
  if (count >= wanted) return 'done'
  return count > 0 ? 'some' : 'missing'
}

/** Photos that are none of the wanted ones. */
export const othersOf = (photos: readonly PhotoItem[]): readonly PhotoItem[] =>
  photos.filter(each => !isWanted(each.of) && each.hash !== undefined)
