import type { Act, Entry, JobState, Seen, StoredEntry } from '@tubwright/records'
import {
  counterOf,
  documentOf,
  fromStored,
  JobLog,
  must,
  storeOf,
  toStored,
} from '@tubwright/records'
import type { Connection } from './connection.ts'
import type { JobCard } from './database.ts'
import { STRICT } from './database.ts'
import { noteSave } from './save-times.ts'
import type { SecondCopy } from './second-copy.ts'
import { standingStops } from './stops.ts'
import type { Texts } from './typed-texts.ts'
import { TypedTexts } from './typed-texts.ts'
import type { Writer } from './writer.ts'

/** What a screen sees of an open job. */
export interface JobView {
  readonly state: JobState
  /** Entries that are not on the disk yet. */
  readonly unsaved: number
  /** Why the last save failed; the entries are kept and tried again. */
  readonly failure?: string
  /** Entries on the disk. */
  readonly saved: number
}

interface Identity {
  readonly store: string
  /** Who writes now: a name may be given while a job is open. */
  readonly author: () => string
  readonly now: () => string
}

/** What a job is opened with. */
interface Parts {
  readonly connection: Connection
  readonly writer: Writer
  readonly copy: SecondCopy
  readonly identity: Identity
  /** Told of the card once it is on the disk. */
  readonly wrote: (card: JobCard) => void
}

const titleOf = (state: JobState): string => {
  const { title } = documentOf(state, ['survey']) as { title?: unknown }
  return typeof title === 'string' ? title : ''
}

const regionOf = (state: JobState): string | undefined => {
  const { region } = documentOf(state, ['survey']) as { region?: unknown }
  return typeof region === 'string' ? region : undefined
}

/** Entries whose text is what was stored. One that is not is left out, and its place shows as a gap. */
const readable = (rows: readonly StoredEntry[]): readonly Entry[] =>
  rows.flatMap(({ id, digest, text }) => {
    const read = fromStored({ id, digest, text })
    return read.ok ? [read.value] : []
  })

/** Where the texts that stand in fields of a job are kept. */
const typedKey = (job: string): string => `typed-${job}`
const jotKey = (job: string): string => `tubwright-typed-${job}`

/** Texts that may not have reached the database before the page went. */
function jot(job: string, texts: Texts | undefined): void {
  try {
    if (texts === undefined) localStorage.removeItem(jotKey(job))
    else localStorage.setItem(jotKey(job), JSON.stringify(texts))
  } catch {
    // Full or barred: the database has them, where there was time.
  }
}

function jotted(job: string): Texts | undefined {
  try {
    const text = localStorage.getItem(jotKey(job))
    return text === null ? undefined : (JSON.parse(text) as Texts)
  } catch {
    return undefined
  }
}

const keyOf = ({ id, digest }: StoredEntry): string => `${id} ${digest}`

/** What is held of each store without a hole, where some entries are not. */
function seenWithout(seen: Seen, entries: readonly Entry[]): Seen {
  const left = { ...seen }
  for (const { id } of entries) {
    const store = storeOf(id)
    left[store] = Math.min(left[store] ?? 0, counterOf(id) - 1)
    if (left[store] <= 0) delete left[store]
  }
  return left
}

/** Rows that are not among those that are there. */
function lacking(
  there: readonly StoredEntry[],
  rows: readonly StoredEntry[],
): readonly StoredEntry[] {
  const known = new Set(there.map(keyOf))
  return rows.filter(each => !known.has(keyOf(each)))
}

/**
 * One job, open: its log, and the way of every act to the disk.
 *
 * An act shows at once and counts as saved once its entry is on the disk; what could not be written
 * stays in the log and is written with the next.
 */
export class JobStore {
  readonly id: string
  /** What stands in its fields and is not in its record. */
  readonly typed: TypedTexts
  readonly #connection: Connection
  readonly #writer: Writer
  readonly #copy: SecondCopy
  readonly #identity: Identity
  readonly #wrote: (card: JobCard) => void
  #log: JobLog
  /** Never changed in place: a write goes on with those that it began with. */
  #unsaved: readonly Entry[] = []
  #view: JobView
  #writing: Promise<void> = Promise.resolve()
  #card: JobCard
  readonly #listeners = new Set<() => void>()
  readonly #stopHearing: () => void

  private constructor(id: string, log: JobLog, card: JobCard, typed: Texts, parts: Parts) {
    this.#wrote = parts.wrote
    this.id = id
    this.#log = log
    this.#card = card
    this.#connection = parts.connection
    this.#writer = parts.writer
    this.#copy = parts.copy
    this.#identity = parts.identity
    this.#view = { state: log.state, unsaved: 0, saved: log.size }
    this.typed = new TypedTexts(typed, {
      put: texts => this.#putTyped(texts),
      jot: texts => jot(id, texts),
      settled: () => this.#writing,
    })
    this.#stopHearing = this.#writer.hear(told => {
      if (told.kind === 'grew' && told.job === id) void this.#follow()
      if (told.kind === 'typed' && told.job === id) void this.#followTyped()
    })
  }

  static async open(id: string, parts: Parts): Promise<JobStore | undefined> {
    const [rows, card, typed] = await parts.connection.use(database =>
      Promise.all([
        database.getAllFromIndex('entries', 'job', id),
        database.get('jobs', id),
        database.get('meta', typedKey(id)),
      ]),
    )
    if (rows.length === 0 && !card) return undefined
    const log = JobLog.open(parts.identity.store, readable(rows))
    if (card?.seen) log.expect(card.seen)
    const own = card ?? { id, title: '', at: '', place: '', entries: rows.length }
    const job = new JobStore(id, log, own, jotted(id) ?? ((typed ?? {}) as Texts), parts)
    if (parts.writer.role === 'writes') void job.#level(rows)
    return job
  }

  get view(): JobView {
    return this.#view
  }

  get entries(): readonly Entry[] {
    return this.#log.entries
  }

  /** Adds entries; resolves once they are on the disk. Only the tab that writes may. */
  append(...acts: readonly Act[]): Promise<void> {
    if (acts.length === 0) return this.#writing
    const began = performance.now()
    const { author, now } = this.#identity
    const entries = must(this.#log.append(acts, { author: author(), at: now() }))
    this.#unsaved = [...this.#unsaved, ...entries]
    this.#publish()
    const written = this.#write(began)
    for (const act of acts)
      if ('path' in act && act.path[0] === 'survey') this.typed.forget(act.path.slice(1).join('/'))
    return written
  }

  /** Takes in entries of another copy of this job; says how many were new. */
  async merge(entries: readonly Entry[]): Promise<number> {
    const { added } = this.#log.merge(entries)
    this.#unsaved = [...this.#unsaved, ...added]
    this.#publish()
    await this.#write(performance.now())
    return added.length
  }

  /** Tries again what could not be written. */
  retry(): Promise<void> {
    return this.#write(performance.now())
  }

  /** Writes the card again from what the record says. */
  async list(): Promise<void> {
    await this.#connection.use(database => this.#put(database, [], this.#unsaved))
    this.#wrote(this.#card)
  }

  /** Where the job was left: not part of its record. */
  async leaveAt(place: string): Promise<void> {
    if (this.#card.place === place || this.#writer.role !== 'writes') return
    await this.#connection.use(async database => {
      const transaction = database.transaction('jobs', 'readwrite')
      const stored = (await transaction.store.get(this.id)) ?? this.#card
      this.#card = { ...stored, place }
      await Promise.all([transaction.store.put(this.#card), transaction.done])
    })
    this.#wrote(this.#card)
  }

  /** Waits until everything is on the disk. */
  async settled(): Promise<void> {
    await this.#writing
    await this.typed.written()
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  close(): void {
    this.#stopHearing()
    this.#listeners.clear()
  }

  #publish(failure: string | undefined = undefined): void {
    this.#view = {
      state: this.#log.state,
      unsaved: this.#unsaved.length,
      saved: this.#log.size - this.#unsaved.length,
      ...(failure === undefined ? {} : { failure }),
    }
    for (const listener of this.#listeners) listener()
  }

  #write(began: number): Promise<void> {
    const written = this.#writing.then(() => this.#flush(began))
    this.#writing = written.catch(() => undefined)
    return written
  }

  async #flush(began: number): Promise<void> {
    const entries = this.#unsaved
    if (entries.length === 0) return
    try {
      const rows = entries.map(toStored)
      await this.#connection.use(database => this.#put(database, rows, this.#without(entries)))
      await this.#copy.append(this.id, rows)
      this.#unsaved = this.#without(entries)
      noteSave(performance.now() - began)
      this.#publish()
      this.#wrote(this.#card)
      this.#writer.tell({ kind: 'grew', job: this.id })
    } catch (error) {
      this.#publish(error instanceof Error ? error.message : String(error))
      throw error
    }
  }

  /** What came while those were written. */
  #without(entries: readonly Entry[]): readonly Entry[] {
    return this.#unsaved.filter(each => !entries.includes(each))
  }

  /**
   * Puts rows on the disk together with the card, which counts on nothing that is not there yet.
   *
   * @param later - entries of the log that go with another write
   */
  async #put(
    database: Parameters<Parameters<Connection['use']>[0]>[0],
    rows: readonly StoredEntry[],
    later: readonly Entry[],
  ): Promise<void> {
    const state = this.#log.state
    const region = regionOf(state)
    this.#card = {
      ...this.#card,
      title: titleOf(state),
      ...(region === undefined ? {} : { region }),
      isStopped: standingStops(state).length > 0,
      at: this.#identity.now(),
      entries: this.#log.size - later.length,
      seen: seenWithout(this.#log.seen, later),
    }
    const transaction = database.transaction(['entries', 'jobs'], 'readwrite', STRICT)
    await Promise.all([
      ...rows.map(row => transaction.objectStore('entries').put({ job: this.id, ...row })),
      transaction.objectStore('jobs').put(this.#card),
      transaction.done,
    ])
  }

  /** What one of database and copy holds and the other has lost goes there again. */
  async #level(rows: readonly StoredEntry[]): Promise<void> {
    const copied = await this.#copy.entries(this.id)
    const lost = lacking(rows, copied)
    if (lost.length > 0) await this.merge(readable(lost))
    await this.#copy.append(this.id, lacking(copied, rows))
  }

  async #putTyped(texts: Texts): Promise<void> {
    await this.#connection.use(async database => {
      const transaction = database.transaction('meta', 'readwrite', STRICT)
      const put = transaction.store.put(texts, typedKey(this.id))
      // A page that goes waits for nothing.
      transaction.commit()
      await Promise.all([put, transaction.done])
    })
    this.#writer.tell({ kind: 'typed', job: this.id })
  }

  async #followTyped(): Promise<void> {
    const texts = await this.#connection.use(database => database.get('meta', typedKey(this.id)))
    this.typed.replace((texts ?? {}) as Texts)
  }

  /** Another tab wrote: takes in what it has. */
  async #follow(): Promise<void> {
    const [rows, card] = await this.#connection.use(database =>
      Promise.all([
        database.getAllFromIndex('entries', 'job', this.id),
        database.get('jobs', this.id),
      ]),
    )
    if (card) this.#card = card
    this.#log.merge(readable(rows))
    // What could not be written here is still not written.
    this.#publish(this.#unsaved.length > 0 ? this.#view.failure : undefined)
  }
}
