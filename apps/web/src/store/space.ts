import type { Act, Entry } from '@tubwright/records'
import { missingFrom, readCanary, writeCanary } from './canary.ts'
import { Connection } from './connection.ts'
import type { JobCard, ShelfText, Space, StoredPhoto } from './database.ts'
import { nameOf, STRICT } from './database.ts'
import type { JobStore } from './job-store.ts'
import { askToPersist } from './room.ts'
import { SecondCopy } from './second-copy.ts'
import { keepTyped } from './typed.ts'
import { Writer } from './writer.ts'

const byTime = (cards: readonly JobCard[]): readonly JobCard[] =>
  cards.toSorted((a, b) => b.at.localeCompare(a.at))

const shortId = (): string => crypto.randomUUID().replaceAll('-', '').slice(0, 12)

/** Who writes: a name that somebody typed, which nobody has verified. */
export interface Author {
  readonly id: string
  readonly name: string
}

/** One space of jobs in this browser, with its shelf and its photos. */
export class JobSpace {
  readonly space: Space
  readonly connection: Connection
  readonly writer: Writer
  readonly copy: SecondCopy
  /** The id of this browser's copy: a wiped or cloned one takes a new id. */
  store = ''
  author: Author = { id: '', name: '' }
  /** Titles of jobs that this browser had and has no more. */
  missing: readonly string[] = []
  /** Titles of jobs that the database had lost and the second copy had not. */
  broughtBack: readonly string[] = []
  cards: readonly JobCard[] = []
  /** Counts the changes of the shelf, here and in other tabs: what was asked of an older one is old. */
  shelfRevision = 0
  readonly #listeners = new Set<() => void>()
  readonly #open = new Map<string, JobStore>()
  readonly #opening = new Map<string, Promise<JobStore | undefined>>()

  private constructor(space: Space) {
    this.space = space
    this.connection = new Connection(space)
    this.writer = new Writer(space)
    this.copy = new SecondCopy(space)
  }

  static async open(space: Space): Promise<JobSpace> {
    const opened = new JobSpace(space)
    await opened.#start()
    return opened
  }

  subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  /** A new job with its first entries on the disk. */
  async newJob(acts: readonly Act[]): Promise<JobStore> {
    const id = shortId()
    // Refused before anything of it is kept, where it makes no sense.
    const { JobLog, must } = await import('@tubwright/records')
    must(JobLog.empty(this.store).append(acts, { author: '-', at: this.now() }))
    const card: JobCard = { id, title: '', at: this.now(), place: '', entries: 0 }
    await this.connection.use(async database => {
      const transaction = database.transaction('jobs', 'readwrite', STRICT)
      await Promise.all([transaction.store.put(card), transaction.done])
    })
    const isFirst = this.cards.length === 0
    const job = await this.job(id)
    if (!job) throw new Error(`job ${id} is not there after it was made`)
    await job.append(...acts)
    await this.refresh()
    if (isFirst && this.space === 'own') void askToPersist()
    return job
  }

  /** The job of this id, open; undefined where there is none. */
  async job(id: string): Promise<JobStore | undefined> {
    const open = this.#open.get(id) ?? this.#opening.get(id)
    if (open) return open
    // Asked for twice at once it is opened once: two of them would write beside each other.
    const opening = this.#openJob(id).finally(() => this.#opening.delete(id))
    this.#opening.set(id, opening)
    return opening
  }

  async #openJob(id: string): Promise<JobStore | undefined> {
    const { store, connection, writer, copy } = this
    const identity = {
      store,
      author: () => this.author.name || this.author.id,
      now: () => this.now(),
    }
    const wrote = (card: JobCard): void => this.#wrote(card)
    // The list of jobs is there before what opens one.
    const { JobStore } = await import('./job-store.ts')
    const job = await JobStore.open(id, { connection, writer, copy, identity, wrote })
    if (job) this.#open.set(id, job)
    return job
  }

  /** A job from entries that another copy wrote. */
  async takeIn(
    id: string,
    entries: readonly Entry[],
    photos: readonly StoredPhoto[],
  ): Promise<number> {
    for (const photo of photos) if (!(await this.photo(photo.hash))) await this.keepPhoto(photo)
    const card: JobCard = { id, title: '', at: this.now(), place: '', entries: 0 }
    const isNew = !this.cards.some(each => each.id === id)
    if (isNew) await this.connection.use(database => database.put('jobs', card))
    const job = await this.job(id)
    const added = (await job?.merge(entries)) ?? 0
    await this.refresh()
    return added
  }

  /** On the disk before anything points to it. */
  async keepPhoto(photo: StoredPhoto): Promise<void> {
    await this.connection.use(async database => {
      const transaction = database.transaction('photos', 'readwrite', STRICT)
      await Promise.all([transaction.store.put(photo), transaction.done])
    })
    await this.copy.keepPhoto(photo)
  }

  photo(hash: string): Promise<StoredPhoto | undefined> {
    return this.connection.use(database => database.get('photos', hash))
  }

  shelf(): Promise<readonly ShelfText[]> {
    return this.connection.use(database => database.getAll('shelf'))
  }

  async putOnShelf(text: ShelfText): Promise<void> {
    await this.connection.use(async database => {
      const transaction = database.transaction('shelf', 'readwrite', STRICT)
      await Promise.all([transaction.store.put(text), transaction.done])
    })
    this.#shelfChanged()
  }

  async takeOffShelf(kind: ShelfText['kind'], id: string): Promise<void> {
    await this.connection.use(database => database.delete('shelf', [kind, id]))
    this.#shelfChanged()
  }

  async setAuthor(name: string): Promise<void> {
    this.author = { ...this.author, name }
    await this.connection.use(database => database.put('meta', this.author, 'author'))
    this.#changed()
  }

  /** Reads the list of jobs again, and notes apart what it holds. */
  async refresh(): Promise<void> {
    const cards = await this.connection.use(database => database.getAll('jobs'))
    this.cards = byTime(cards)
    if (this.missing.length === 0) writeCanary(this.space, this.store, this.cards)
    this.#changed()
  }

  /** The loss was read by a person: from here on what is there is what should be. */
  acknowledgeLoss(): void {
    this.missing = []
    this.broughtBack = []
    writeCanary(this.space, this.store, this.cards)
    this.#changed()
  }

  /** Throws everything of this space away. */
  async wipe(): Promise<void> {
    await this.copy.wipe()
    await this.close()
    await new Promise<void>((resolve, reject) => {
      const request = indexedDB.deleteDatabase(nameOf(this.space))
      request.onsuccess = () => resolve()
      request.onerror = () => reject(request.error)
    })
    localStorage.removeItem(`tubwright-canary-${this.space}`)
  }

  async close(): Promise<void> {
    for (const job of this.#open.values()) {
      await job.settled()
      job.close()
    }
    this.#open.clear()
    await this.copy.close()
    this.writer.stop()
    await this.connection.close()
  }

  now = (): string => new Date().toISOString()

  async #start(): Promise<void> {
    const canary = readCanary(this.space)
    const isFresh = await this.#identify()
    this.cards = await this.connection.use(database => database.getAll('jobs'))
    this.writer.hear(told => {
      if (told.kind === 'shelf') this.shelfRevision++
      if (told.kind !== 'hand-over' && told.kind !== 'typed') void this.refresh()
    })
    await this.writer.start(async () => {
      keepTyped()
      for (const job of this.#open.values()) await job.settled()
      await this.copy.release()
      return [...this.#open.values()].every(job => job.view.unsaved === 0)
    })
    // A new database may be one that the browser had to begin again; else nobody needs to wait.
    const back = this.#bringBack()
    if (isFresh) await back
    this.missing = missingFrom(canary, this.cards)
    await this.refresh()
  }

  /** Jobs and photos that the second copy holds and the database has lost. */
  async #bringBack(): Promise<void> {
    if (this.writer.role !== 'writes') return
    const here = new Set(this.cards.map(each => each.id))
    const lost = (await this.copy.list('jobs')).filter(id => !here.has(id))
    for (const id of lost) await this.#bringBackJob(id)
    if (lost.length === 0) return
    for (const hash of await this.copy.list('photos')) {
      const photo = (await this.photo(hash)) ? undefined : await this.copy.photo(hash)
      if (photo) await this.connection.use(database => database.put('photos', photo))
    }
    await this.refresh()
  }

  async #bringBackJob(id: string): Promise<void> {
    const rows = await this.copy.entries(id)
    if (rows.length === 0) return
    await this.connection.use(async database => {
      const transaction = database.transaction('entries', 'readwrite', STRICT)
      await Promise.all([
        ...rows.map(row => transaction.store.put({ job: id, ...row })),
        transaction.done,
      ])
    })
    const job = await this.job(id)
    await job?.list()
    this.broughtBack = [...this.broughtBack, this.cards.find(each => each.id === id)?.title ?? '']
  }

  /** True where this database has never been used. */
  async #identify(): Promise<boolean> {
    const [store, author] = await this.connection.use(database =>
      Promise.all([database.get('meta', 'store'), database.get('meta', 'author')]),
    )
    this.store = typeof store === 'string' ? store : shortId()
    this.author = (author as Author | undefined) ?? { id: shortId(), name: '' }
    if (typeof store === 'string') return false
    await this.connection.use(async database => {
      const transaction = database.transaction('meta', 'readwrite', STRICT)
      await Promise.all([
        transaction.store.put(this.store, 'store'),
        transaction.store.put(this.author, 'author'),
        transaction.done,
      ])
    })
    return true
  }

  /** A job was written: the list and what is noted apart follow. */
  #wrote(card: JobCard): void {
    this.cards = byTime([...this.cards.filter(each => each.id !== card.id), card])
    if (this.missing.length === 0) writeCanary(this.space, this.store, this.cards)
    this.#changed()
  }

  #shelfChanged(): void {
    this.shelfRevision++
    this.writer.tell({ kind: 'shelf' })
    this.#changed()
  }

  #changed(): void {
    for (const listener of this.#listeners) listener()
  }
}
