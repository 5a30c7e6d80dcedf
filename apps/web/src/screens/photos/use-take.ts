import type { RefObject } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useApp, useJob } from '../../app/context.ts'
import { holdUpdates } from '../../offline/index.ts'
import type { JobStore } from '../../store/job-store.ts'
import type { JobSpace } from '../../store/space.ts'
import { takeIn } from './intake.ts'
import { keepActs, PHOTOS, waitActs } from './photo-record.ts'
import type { NotTaken, Shrunk } from './shrink.ts'

/** What goes on with the photo of a slot. */
export type Taking =
  | { readonly kind: 'working'; readonly number: number; readonly count: number }
  | {
      readonly kind: 'kept'
      readonly size: number
      readonly width: number
      readonly height: number
    }
  | { readonly kind: 'refused'; readonly refused: NotTaken }

export type Source = 'camera' | 'file'

const shortId = (): string => crypto.randomUUID().replaceAll('-', '').slice(0, 10)

interface Pending {
  readonly id: string
  readonly of: string
  readonly release: () => void
}

/** Where photos are kept, and whether the files as they came are kept too. */
interface Keeping {
  readonly space: JobSpace
  readonly job: JobStore
  readonly keepsOriginals: boolean
}

/** The picture first, then the word of it: nothing ever points to what is not there. */
async function keep(
  { space, job, keepsOriginals }: Keeping,
  id: string,
  file: File,
  photo: Shrunk,
): Promise<void> {
  const { hash, width, height, bytes } = photo
  const original = keepsOriginals ? file : (await space.photo(hash))?.original
  await space.keepPhoto({
    hash,
    type: bytes.type,
    width,
    height,
    bytes,
    ...(original ? { original } : {}),
  })
  await job.append(...keepActs(id, photo))
}

const faultOf = (error: unknown): Taking => ({
  kind: 'refused',
  refused: { why: 'fault', size: error instanceof Error ? error.message : String(error) },
})

const NOTHING: Taking = { kind: 'refused', refused: { why: 'kind' } }

/** Takes one file in, for the slot that waits if one still does. */
async function takeOne(keeping: Keeping, file: File, of: string, free: string[]): Promise<Taking> {
  const intake = await takeIn(file)
  if (!intake.ok) return { kind: 'refused', refused: intake.refused }
  const waiting = free.pop()
  const id = waiting ?? shortId()
  if (waiting === undefined) await keeping.job.append(...waitActs(id, of))
  await keep(keeping, id, file, intake.photo)
  const { width, height, bytes } = intake.photo
  return { kind: 'kept', size: bytes.size, width, height }
}

const withdraw = (job: JobStore, id: string): Promise<void> =>
  job.append({ do: 'withdraw', path: [...PHOTOS, id] })

/** Takes files in, one after the other: memory for one large photo is enough. */
async function takeAll(
  keeping: Keeping,
  files: readonly File[],
  { id, of }: Pending,
  tell: (now: Taking) => void,
): Promise<Taking> {
  const free = [id]
  let told: Taking | undefined
  for (const [index, file] of files.entries()) {
    tell({ kind: 'working', number: index + 1, count: files.length })
    const one = await takeOne(keeping, file, of, free)
    // One that was refused among many has to be told of at the end too.
    if (told?.kind !== 'refused') told = one
  }
  if (free.length > 0) await withdraw(keeping.job, id)
  return told ?? NOTHING
}

/** How photos are taken: one slot at a time. */
export interface Take {
  /** What goes on, by what the photo is of. */
  readonly taking: Readonly<Record<string, Taking>>
  readonly begin: (source: Source, of: string, waiting?: string) => Promise<void>
  readonly cameraInput: RefObject<HTMLInputElement | null>
  readonly fileInput: RefObject<HTMLInputElement | null>
  readonly chosen: (files: readonly File[]) => Promise<void>
  readonly cancelled: () => void
}

/** The slot that a camera or a chooser is open for; the page is not replaced meanwhile. */
function usePending(): {
  readonly now: () => Pending | undefined
  readonly start: (id: string, of: string) => void
  readonly end: () => Pending | undefined
} {
  const pending = useRef<Pending | undefined>(undefined)
  useEffect(() => () => pending.current?.release(), [])
  const end = (): Pending | undefined => {
    const own = pending.current
    pending.current = undefined
    own?.release()
    return own
  }
  const start = (id: string, of: string): void => {
    end()
    pending.current = { id, of, release: holdUpdates('a camera') }
  }
  return { now: () => pending.current, start, end }
}

/**
 * Takes photos: before a camera opens everything is on the disk with the slot that waits for it, since
 * a phone may end the page while its camera is open.
 */
export function useTake(keepsOriginals: boolean): Take {
  const { space } = useApp()
  const job = useJob()
  const [taking, setTaking] = useState<Take['taking']>({})
  const pending = usePending()
  const isOpening = useRef(false)
  const cameraInput = useRef<HTMLInputElement>(null)
  const fileInput = useRef<HTMLInputElement>(null)
  const open = async (source: Source, of: string, waiting?: string): Promise<void> => {
    const id = waiting ?? shortId()
    if (waiting === undefined) await job.append(...waitActs(id, of))
    await job.settled()
    pending.start(id, of)
    const input = source === 'camera' ? cameraInput : fileInput
    input.current?.click()
  }
  const begin = async (source: Source, of: string, waiting?: string): Promise<void> => {
    if (isOpening.current) return
    isOpening.current = true
    await open(source, of, waiting).finally(() => {
      isOpening.current = false
    })
  }
  const cancelled = (): void => {
    const own = pending.end()
    if (own) void withdraw(job, own.id).catch(() => undefined)
  }
  const chosen = async (files: readonly File[]): Promise<void> => {
    const own = pending.now()
    if (!own) return
    const tell = (now: Taking) => setTaking(before => ({ ...before, [own.of]: now }))
    tell(await takeAll({ space, job, keepsOriginals }, files, own, tell).catch(faultOf))
    pending.end()
  }
  return { taking, begin, cameraInput, fileInput, chosen, cancelled }
}
