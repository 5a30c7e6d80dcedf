import type { Act, JobState } from '@tubwright/records'
import { documentOf } from '@tubwright/records'
import type { Shrunk } from './shrink.ts'

/** A numbered place on a photo; what it is may be said in three ways, and in all of them. */
export interface Pin {
  readonly id: string
  readonly number: number
  /** Share of the width and of the height, from the upper left corner. */
  readonly x: number
  readonly y: number
  /** The end of a conductor, such as `pump-a.high`. */
  readonly end?: string
  /** As printed on the board. */
  readonly terminal?: string
  readonly note?: string
}

/** One photo as the record has it. */
export interface PhotoItem {
  readonly id: string
  /** Which of those wanted, the id of a load, or anybody's words. */
  readonly of: string
  /** Absent while the picture is waited for. */
  readonly hash?: string
  readonly width: number
  readonly height: number
  readonly note: string
  readonly pins: readonly Pin[]
}

export const PHOTOS = ['photos'] as const
const WAITING = 'waiting'

type Fields = Readonly<Record<string, unknown>>

const textIn = (value: unknown): string => (typeof value === 'string' ? value : '')
const numberIn = (value: unknown, otherwise: number): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : otherwise
const listIn = (value: unknown): readonly Fields[] =>
  Array.isArray(value) ? value.filter(each => typeof each === 'object' && each !== null) : []

const some = <Key extends string>(key: Key, value: unknown) =>
  (textIn(value) === '' ? {} : { [key]: textIn(value) }) as Partial<Record<Key, string>>

const share = (value: unknown): number => Math.min(1, Math.max(0, numberIn(value, 0.5)))

const pinOf = (fields: Fields): Pin => ({
  id: textIn(fields['id']),
  number: numberIn(fields['number'], 0),
  x: share(fields['x']),
  y: share(fields['y']),
  ...some('end', fields['end']),
  ...some('terminal', fields['terminal']),
  ...some('note', fields['note']),
})

/** A photo of a document of the record, whoever wrote it: what is not as it should be is left out. */
export const photoOf = (fields: Fields): PhotoItem => ({
  id: textIn(fields['id']),
  of: textIn(fields['of']),
  ...some('hash', fields['hash']),
  width: numberIn(fields['width'], 4),
  height: numberIn(fields['height'], 3),
  note: textIn(fields['note']),
  pins: listIn(fields['pins'])
    .map(pinOf)
    .toSorted((a, b) => a.number - b.number),
})

/** Every photo of a job, in the order in which they were added. */
export const photosIn = (state: JobState): readonly PhotoItem[] =>
  listIn(documentOf(state, PHOTOS)).map(photoOf)

/** The acts before a camera opens: should the page be lost meanwhile, it is known what was being taken. */
export const waitActs = (id: string, of: string): readonly Act[] => [
  { do: 'add', path: [...PHOTOS, id] },
  { do: 'set', path: [...PHOTOS, id, 'of'], value: of },
  { do: 'set', path: [...PHOTOS, id, 'state'], value: WAITING },
]

/** The acts by which the picture that was waited for is there. */
export function keepActs(id: string, { hash, bytes, width, height }: Shrunk): readonly Act[] {
  const set = (key: string, value: string | number): Act => ({
    do: 'set',
    path: [...PHOTOS, id, key],
    value,
  })
  return [
    set('hash', hash),
    set('type', bytes.type),
    set('width', width),
    set('height', height),
    { do: 'clear', path: [...PHOTOS, id, 'state'] },
  ]
}

export const pinPath = (photo: string, pin: string): readonly string[] => [
  ...PHOTOS,
  photo,
  'pins',
  pin,
]

/** Thousandths are less than a pixel of a screen: more digits would only look exact. */
const rounded = (value: number): number => Math.round(Math.min(1, Math.max(0, value)) * 1000) / 1000

/** The acts that put a new pin on a photo. */
export function pinActs(
  photo: string,
  { id, number, x, y }: Pick<Pin, 'id' | 'number' | 'x' | 'y'>,
): readonly Act[] {
  const path = pinPath(photo, id)
  return [
    { do: 'add', path },
    { do: 'set', path: [...path, 'number'], value: number },
    ...placeActs(photo, id, x, y),
  ]
}

/** The acts that put a pin somewhere else. */
export function placeActs(photo: string, pin: string, x: number, y: number): readonly Act[] {
  const path = pinPath(photo, pin)
  return [
    { do: 'set', path: [...path, 'x'], value: rounded(x) },
    { do: 'set', path: [...path, 'y'], value: rounded(y) },
  ]
}

/** The number of the next pin: that of one which was taken away is not given again. */
export const nextNumber = (numbers: readonly number[]): number => Math.max(0, ...numbers) + 1

/** One photo of the map, with what each number on it is. */
export type MappedPhoto = Omit<PhotoItem, 'hash'> & { readonly hash: string }

/** The photos with pins: what the old wiring was, number by number. */
export const photoMap = (state: JobState): readonly MappedPhoto[] =>
  photosIn(state).flatMap(photo => {
    const { hash, pins } = photo
    return hash === undefined || pins.length === 0 ? [] : [{ ...photo, hash }]
  })
