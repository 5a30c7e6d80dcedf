import type { Language, Words } from '@tubwright/words'
import { createContext, useContext, useSyncExternalStore } from 'react'
import type { Core } from '../ask/ask.ts'
import type { ShelfView } from '../ask/protocol.ts'
import type { Space } from '../store/database.ts'
import type { JobStore, JobView } from '../store/job-store.ts'
import type { JobSpace } from '../store/space.ts'
import type { Role } from '../store/writer.ts'

export type Scheme = 'sun' | 'shade'

/** What every screen has at hand. */
export interface App {
  readonly words: Words
  readonly language: Language
  readonly setLanguage: (language: Language) => void
  readonly scheme: Scheme
  readonly setScheme: (scheme: Scheme) => void
  readonly space: JobSpace
  readonly goTo: (space: Space) => void
  readonly core: Core
  /** Reads the shelf of this space once; the same promise until the shelf changes. */
  readonly shelf: () => Promise<ShelfView>
}

const AppContext = createContext<App | undefined>(undefined)
export const AppProvider = AppContext.Provider

export function useApp(): App {
  const app = useContext(AppContext)
  if (!app) throw new Error('outside of the app')
  return app
}

/** The sentence of a web screen. */
export function useWeb(): App['words']['web'] {
  return useApp().words.web
}

const JobContext = createContext<JobStore | undefined>(undefined)
export const JobProvider = JobContext.Provider

export function useJob(): JobStore {
  const job = useContext(JobContext)
  if (!job) throw new Error('outside of a job')
  return job
}

export function useJobView(): JobView {
  const job = useJob()
  return useSyncExternalStore(job.subscribe, () => job.view)
}

/** Whether this tab writes, or follows another one. */
export function useRole(): Role {
  const { writer } = useApp().space
  return useSyncExternalStore(
    listener => writer.subscribe(listener),
    () => writer.role,
  )
}
