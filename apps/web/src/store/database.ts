import type { Seen, StoredEntry } from '@tubwright/records'
import type { DBSchema, IDBPDatabase } from 'idb'
import { openDB } from 'idb'

/** Jobs of one's own, or those of the demo shop: two databases, so that they never mix. */
export type Space = 'own' | 'demo'

/** What a list shows of a job: made from its record, and thrown away without loss. */
export interface JobCard {
  readonly id: string
  readonly title: string
  readonly region?: string
  /** A red stop stands. */
  readonly isStopped?: boolean
  /** When its record last grew, by this device's clock: shown only. */
  readonly at: string
  /** The screen where the job was left. */
  readonly place: string
  readonly entries: number
  /** What the record held: what is missing of it shows as a gap. */
  readonly seen?: Seen
}

/** A photo as it is kept: small, turned right, without a location. */
export interface StoredPhoto {
  readonly hash: string
  readonly type: string
  readonly width: number
  readonly height: number
  readonly bytes: Blob
  /** The file as it came, where that was asked for. */
  readonly original?: Blob
}

/** A description on the shelf, as its author wrote it. */
export interface ShelfText {
  readonly kind: 'control-box' | 'supply-device'
  readonly id: string
  readonly text: string
  /** How many lie in stock; absent where nobody counted. */
  readonly inStock?: number
  /** Came with the program. */
  readonly isGiven?: boolean
  readonly at: string
}

interface Schema extends DBSchema {
  entries: {
    key: [job: string, id: string, digest: string]
    value: StoredEntry & { readonly job: string }
    indexes: { job: string }
  }
  jobs: { key: string; value: JobCard }
  photos: { key: string; value: StoredPhoto }
  shelf: { key: [kind: string, id: string]; value: ShelfText }
  meta: { key: string; value: unknown }
}

export type Database = IDBPDatabase<Schema>

const VERSION = 1
export const nameOf = (space: Space): string => `tubwright-${space}`

/** Opens the database of a space, making it where there is none. */
export const openDatabase = (space: Space, closed: () => void): Promise<Database> =>
  openDB<Schema>(nameOf(space), VERSION, {
    upgrade(database) {
      const entries = database.createObjectStore('entries', {
        keyPath: ['job', 'id', 'digest'],
      })
      entries.createIndex('job', 'job')
      database.createObjectStore('jobs', { keyPath: 'id' })
      database.createObjectStore('photos', { keyPath: 'hash' })
      database.createObjectStore('shelf', { keyPath: ['kind', 'id'] })
      database.createObjectStore('meta')
    },
    // Another tab wants a newer database, or to delete this one: never stand in its way.
    blocking(_current, _blocked, event) {
      ;(event.target as IDBDatabase | null)?.close()
      closed()
    },
    terminated: closed,
  })

/** On the disk before it is acknowledged: browsers relax this unless they are told. */
export const STRICT = { durability: 'strict' } as const
