import { useCallback, useEffect, useState } from 'react'
import { useApp } from '../../app/context.ts'
import { givenTexts } from '../../app/shelf.ts'
import type { ShelfView } from '../../ask/protocol.ts'
import type { ShelfText } from '../../store/database.ts'
import type { DescriptionKind } from './description.ts'
import { isSame } from './description.ts'

/** A description in the list of the shelf. */
export interface ShelfEntry {
  readonly kind: DescriptionKind
  readonly id: string
  readonly text: string
  readonly label: string
  readonly maker: string
  readonly isGiven: boolean
  readonly inStock?: number
  /** How much is to be mended before it can be used. */
  readonly problems: number
}

/** What came with the program stays as it came; only what a person counted stands beside it. */
export function onShelf(
  given: readonly ShelfText[],
  own: readonly ShelfText[],
): readonly ShelfText[] {
  const stockOf = (text: ShelfText) => own.find(each => each.isGiven && isSame(each, text))?.inStock
  const written = own.filter(each => !each.isGiven)
  const untouched = given.filter(text => !written.some(each => isSame(each, text)))
  return [
    ...written,
    ...untouched.map(text => {
      const inStock = stockOf(text) ?? text.inStock
      return { ...text, ...(inStock === undefined ? {} : { inStock }) }
    }),
  ]
}

/** Own ones before given ones, boxes before devices, then by what they are called. */
const inOrder = (a: ShelfEntry, b: ShelfEntry): number =>
  Number(a.isGiven) - Number(b.isGiven) ||
  a.kind.localeCompare(b.kind) ||
  a.label.localeCompare(b.label)

export function entriesOf(
  all: readonly ShelfText[],
  { boxes, devices, refused }: Pick<ShelfView, 'boxes' | 'devices' | 'refused'>,
): readonly ShelfEntry[] {
  return all
    .map(({ kind, id, text, inStock, isGiven = false }): ShelfEntry => {
      const box = kind === 'control-box' ? boxes.find(each => each.id === id) : undefined
      const device = kind === 'supply-device' ? devices.find(each => each.id === id) : undefined
      const problems = refused.find(each => each.id === id)?.diagnostics.length ?? 0
      return {
        kind,
        id,
        text,
        label: (box ?? device)?.label ?? id,
        maker: box?.maker ?? '',
        isGiven,
        ...(inStock === undefined ? {} : { inStock }),
        problems: box || device ? 0 : problems,
      }
    })
    .sort(inOrder)
}

/** Everything on the shelf of this space, read again whenever it changes. */
export function useShelfEntries(): readonly ShelfEntry[] | undefined {
  const { space, shelf } = useApp()
  const [entries, setEntries] = useState<readonly ShelfEntry[]>()
  const read = useCallback(async () => {
    const [given, own] = await Promise.all([givenTexts(space), space.shelf()])
    return entriesOf(onShelf(given, own), await shelf())
  }, [space, shelf])
  useEffect(() => {
    let isWanted = true
    const again = (): void =>
      void read().then(
        found => isWanted && setEntries(found),
        () => {},
      )
    again()
    const stop = space.subscribe(again)
    return () => {
      isWanted = false
      stop()
    }
  }, [space, read])
  return entries
}
