import { withdrawnBelow } from '@tubwright/records'
import { useState } from 'react'
import { useJobView } from '../../app/context.ts'
import type { PhotoItem, Pin } from './photo-record.ts'
import { nextNumber, PHOTOS, pinActs, pinPath } from './photo-record.ts'
import type { Photos } from './use-photos.ts'

/** A photo that is shown, among the photos of its job. */
export interface Shown {
  readonly photo: PhotoItem
  readonly photos: Photos
}

/** The pins of a photo, the one that is looked at, and the one that was taken away last. */
export interface Pins {
  readonly chosen: Pin | undefined
  readonly choose: (id: string | undefined) => void
  readonly next: number
  readonly place: (x: number, y: number) => void
  readonly takeAway: (pin: Pin) => void
  readonly gone: Pin | undefined
  readonly bringBack: () => void
}

const shortId = (): string => crypto.randomUUID().replaceAll('-', '').slice(0, 8)

export function usePins({ photo, photos: { act } }: Shown): Pins {
  const { state } = useJobView()
  const [chosen, choose] = useState<string>()
  const [gone, setGone] = useState<Pin>()
  const taken = withdrawnBelow(state, [...PHOTOS, photo.id, 'pins']).map(({ document }) =>
    Number((document as { readonly number?: unknown }).number ?? 0),
  )
  const next = nextNumber([...photo.pins.map(each => each.number), ...taken])
  const place = (x: number, y: number): void => {
    const id = shortId()
    void act(...pinActs(photo.id, { id, number: next, x, y }))
    choose(id)
  }
  const takeAway = (pin: Pin): void => {
    void act({ do: 'withdraw', path: pinPath(photo.id, pin.id) })
    choose(undefined)
    setGone(pin)
  }
  const bringBack = (): void => {
    if (gone) void act({ do: 'restore', path: pinPath(photo.id, gone.id) })
    setGone(undefined)
  }
  return {
    chosen: photo.pins.find(each => each.id === chosen),
    choose,
    next,
    place,
    takeAway,
    gone,
    bringBack,
  }
}
