import type { RefObject } from 'react'
import { useCallback, useEffect, useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { useApp, useRole } from '../../app/context.ts'
import { holdUpdates } from '../../offline/index.ts'
import type { ShelfText } from '../../store/database.ts'
import type { JobSpace } from '../../store/space.ts'
import type { DescriptionKey } from './description.ts'
import { findOnShelf, KINDS } from './description.ts'
import type { RowShelf } from './shelf-row.ts'
import { ShelfRow } from './shelf-row.ts'
import type { Kept } from './text-keeper.ts'

const placeOf = ({ kind, id }: { readonly kind: string; readonly id: string }): string =>
  `/describe/${kind}/${id}`

/** A description as it lay on the shelf when it was opened. */
export interface Opened {
  /** Null where there is none; undefined while it is looked for. */
  readonly stored: ShelfText | null | undefined
  /** Says that it is under another name now: it stays open. */
  readonly moved: (to: DescriptionKey) => void
}

export function useOpened(kind: string, id: string): Opened {
  const { space } = useApp()
  const [, go] = useLocation()
  const [stored, setStored] = useState<ShelfText | null>()
  const at = useRef('')
  useEffect(() => {
    const place = placeOf({ kind, id })
    if (at.current === place) return
    at.current = place
    setStored(undefined)
    const known = KINDS.find(each => each === kind)
    const look = known ? findOnShelf(space, { kind: known, id }) : Promise.resolve(undefined)
    void look.then(found => {
      if (at.current === place) setStored(found ?? null)
    })
  }, [space, kind, id])
  const moved = useCallback(
    (to: DescriptionKey) => {
      at.current = placeOf(to)
      go(at.current, { replace: true })
    },
    [go],
  )
  return { stored, moved }
}

const shelfOf = (space: JobSpace): RowShelf => ({
  put: text => space.putOnShelf(text),
  takeOff: ({ kind, id }) => space.takeOffShelf(kind, id),
  find: key => findOnShelf(space, key),
  now: space.now,
})

/** Line ends as the editor has them. */
const unixLines = (text: string): string => text.replace(/\r\n?/gu, '\n')

/** A description while it is written: its text, how far that is on the disk, and its name. */
export interface Writing {
  readonly text: string
  readonly kept: Kept
  readonly write: (text: string) => void
  /** Shows what another tab wrote. */
  readonly show: (text: string) => void
  readonly retry: () => void
  /** The name in the text that another description has: this one keeps its own until then. */
  readonly taken: string | undefined
  /** Follows the kind and the id that the text says. */
  readonly rename: (to: DescriptionKey) => void
}

/** Keeps a description at every change, and moves it when the id in its text changes. */
export function useWriting(stored: ShelfText, moved: Opened['moved']): Writing {
  const { space } = useApp()
  const [text, setText] = useState(() => unixLines(stored.text))
  const [kept, setKept] = useState<Kept>({ state: 'saved' })
  const [taken, setTaken] = useState<string>()
  const [row] = useState(() => new ShelfRow(shelfOf(space), stored, setKept))
  const write = useCallback(
    (written: string) => {
      setText(written)
      row.write(written)
    },
    [row],
  )
  const rename = useCallback(
    (to: DescriptionKey) => {
      void row.move(to).then(outcome => {
        setTaken(outcome === 'taken' ? to.id : undefined)
        if (outcome === 'moved') moved(to)
      })
    },
    [row, moved],
  )
  const retry = useCallback(() => row.keeper.retry(), [row])
  return { text, kept, write, show: setText, retry, taken, rename }
}

/** Holds updates back while a description can be written: its undoing would be lost. */
export function useHold(isOpen: boolean): void {
  useEffect(() => (isOpen ? holdUpdates('a description is open') : undefined), [isOpen])
}

/** What another tab writes, shown here for as long as that one writes. */
export function useFollow(
  { kind, id }: DescriptionKey,
  show: RefObject<(text: string) => void>,
): void {
  const { space } = useApp()
  const follows = useRole() === 'follows'
  useEffect(() => {
    if (!follows) return
    return space.subscribe(() => {
      void findOnShelf(space, { kind, id }).then(found => {
        if (found) show.current(unixLines(found.text))
      })
    })
  }, [space, follows, kind, id, show])
}
