import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import { useCallback, useEffect, useMemo, useState } from 'react'
import { useApp, useJob, useJobView, useRole, useWeb } from '../../app/context.ts'
import type { StoredPhoto } from '../../store/database.ts'
import { useDocument } from '../survey/use-survey.ts'
import type { Lead } from './leads.ts'
import { leadsIn } from './leads.ts'
import type { PhotoItem } from './photo-record.ts'
import { photosIn } from './photo-record.ts'
import type { LoadKind } from './slots.ts'
import { isWanted } from './slots.ts'

/** The photos of the open job, with the names of what is on them. */
export interface Photos {
  readonly photos: readonly PhotoItem[]
  readonly loads: readonly LoadKind[]
  readonly leads: readonly Lead[]
  readonly canWrite: boolean
  /** Resolves once the acts are on the disk; does nothing in a tab that only follows. */
  readonly act: (...acts: readonly Act[]) => Promise<void>
  /** What a photo is of, in words. */
  readonly nameOf: (of: string) => string
  /** A lead in words, by the end that it is. */
  readonly leadName: (end: string) => string
}

interface Named {
  readonly id: string
  readonly label?: unknown
}

export function usePhotos(): Photos {
  const web = useWeb()
  const job = useJob()
  const { state } = useJobView()
  const document = useDocument()
  const canWrite = useRole() === 'writes'
  const photos = useMemo(() => photosIn(state), [state])
  const leads = useMemo(() => leadsIn(document), [document])
  const act = useCallback(
    async (...acts: readonly Act[]) => {
      // What could not be written is told of beside the name of the job, and tried again.
      if (canWrite) await job.append(...acts).catch(() => undefined)
    },
    [job, canWrite],
  )
  const loads = (Array.isArray(document['loads']) ? document['loads'] : []) as readonly Named[]
  const nameOf = (of: string): string => {
    if (isWanted(of)) return web[`photos.${of}`]
    const label = loads.find(each => each.id === of)?.label
    return typeof label === 'string' ? label : of || web['photos.untitled']
  }
  const leadName = (end: string): string => {
    const lead = leads.find(each => each.end === end)
    return lead ? say(web['photos.lead-of'], { owner: lead.owner, lead: carried(web, lead) }) : end
  }
  return { photos, loads, leads, canWrite, act, nameOf, leadName }
}

type Web = ReturnType<typeof useWeb>

/** What a lead carries, as the survey says it. */
export function carried(web: Web, { of, carries }: Lead): string {
  const table: Readonly<Record<string, string>> = web
  return table[`survey.${of === 'load' ? 'lead' : 'wire'}-${carries}`] ?? carries
}

/** The picture of a hash as an address of this page, for as long as it is wanted. */
export function usePicture(hash: string | undefined): {
  readonly url?: string
  readonly isMissing: boolean
} {
  const { space } = useApp()
  const [picture, setPicture] = useState<{ hash: string; url?: string }>()
  useEffect(() => {
    if (hash === undefined) return
    let isWanted = true
    let made: string | undefined
    const show = (stored: StoredPhoto | undefined): void => {
      if (!isWanted) return
      made = stored && URL.createObjectURL(stored.bytes)
      setPicture({ hash, ...(made === undefined ? {} : { url: made }) })
    }
    void space.photo(hash).then(show, () => show(undefined))
    return () => {
      isWanted = false
      if (made !== undefined) URL.revokeObjectURL(made)
      setPicture(undefined)
    }
  }, [space, hash])
  const own = picture?.hash === hash ? picture : undefined
  return {
    ...(own?.url === undefined ? {} : { url: own.url }),
    isMissing: own !== undefined && own.url === undefined,
  }
}
