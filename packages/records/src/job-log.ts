import { isSame } from './canonical.ts'
import { ownCopy } from './check-json.ts'
import type { Act, Entry, EntryId, Seen } from './entry.ts'
import { counterOf, idOf, storeOf } from './entry.ts'
import { jsonOf } from './entry-text.ts'
import type { Fault, Outcome } from './fault.ts'
import { fail, ok, told, within } from './fault.ts'
import type { Fold } from './fold.ts'
import { branched, emptyFold, foldIn, foldVariant } from './fold.ts'
import type { JobState } from './job-state.ts'
import { FoldedState } from './job-state.ts'
import type { Json } from './json.ts'
import { COUNTER_MAX } from './limits.ts'
import { checkAct, checkAt, checkAuthor, checkStore } from './read-entry.ts'
import type { Reader } from './reader.ts'
import { isKnownAct, READER } from './reader.ts'
import { refusalOf } from './refusal.ts'
import { sortEntries } from './sort-entries.ts'
import { Tally } from './tally.ts'

/** Who acts, and what his device says the time is. */
export interface Hand {
  readonly author: string
  readonly at: string
}

/** What came of taking in entries. */
export interface Merged {
  /** Those that were new, in the order given. */
  readonly added: readonly Entry[]
  readonly duplicates: number
  /** Ids under which there is now more than one entry, and was not before. */
  readonly forks: readonly EntryId[]
}

/**
 * One store's copy of a job's record: grows, never changes what it holds.
 *
 * Its state is a function of the set of its entries; `state` and `entries` never change once handed out.
 */
export class JobLog {
  readonly store: string
  readonly reader: Reader
  readonly #held = new Map<EntryId, Entry>()
  /** Further entries under an id that is held. */
  readonly #clones = new Map<EntryId, readonly Entry[]>()
  readonly #tally = new Tally()
  #fold: Fold
  #state: JobState | undefined
  #sorted: readonly Entry[] = []
  #unsorted: Entry[] = []

  private constructor(store: string, reader: Reader) {
    this.store = store
    this.reader = reader
    this.#fold = emptyFold(reader)
  }

  /**
   * A log with nothing in it.
   *
   * @param store - names this copy: never used by two copies at once, nor again after a loss
   */
  static empty(store: string, reader: Reader = READER): JobLog {
    const fault = checkStore(store)
    if (fault) throw new Error(`invariant: store is ${fault.is}, may be ${fault.may}`)
    return new JobLog(store, reader)
  }

  static open(store: string, entries: readonly Entry[], reader: Reader = READER): JobLog {
    const log = JobLog.empty(store, reader)
    log.merge(entries)
    return log
  }

  /** How many entries it holds. */
  get size(): number {
    return this.#sorted.length + this.#unsorted.length
  }

  /** What it holds of each store without a hole: the `seen` of its next entry, and what peers compare. */
  get seen(): Seen {
    return this.#tally.seen
  }

  /** All entries: by rank, store, counter; forked ones by their text. */
  get entries(): readonly Entry[] {
    if (this.#unsorted.length > 0) {
      this.#sorted = sortEntries(this.#sorted, this.#unsorted)
      this.#unsorted = []
    }
    return this.#sorted
  }

  get state(): JobState {
    this.#state ??= this.#publish()
    return this.#state
  }

  /** Hands the fold out and goes on with a branch of it. */
  #publish(): JobState {
    const state = new FoldedState(this.#fold, this.#tally.gaps)
    this.#fold = branched(this.#fold)
    return state
  }

  /**
   * Notes that all of this was held once, here or elsewhere: what is missing shows as gaps. To be kept
   * apart from the entries, so that a loss never looks like an empty job.
   */
  expect(seen: Seen): void {
    this.#tally.name(seen)
    this.#state = undefined
  }

  /**
   * Writes acts down, each an entry: all of them or, where one makes no sense here, none.
   *
   * @returns the new entries, to be stored and sent
   */
  append(acts: Act | readonly Act[], hand: Hand): Outcome<readonly Entry[]> {
    const all = Array.isArray(acts) ? (acts as readonly Act[]) : [acts as Act]
    const wrong = checkHand(hand)
    if (wrong) return fail(wrong)
    const fold = branched(this.#fold)
    const entries: Entry[] = []
    for (const act of all) {
      const fault = this.#draft(fold, act, hand, entries)
      if (fault) return fail(all === acts ? within([entries.length], fault) : fault)
    }
    this.#fold = fold
    for (const entry of entries) this.#hold(entry)
    return ok(entries)
  }

  #draft(fold: Fold, act: Act, hand: Hand, entries: Entry[]): Fault | undefined {
    const fault = checkAct(act) ?? checkKind(act) ?? refusalOf(fold, act)
    if (fault) return fault
    const entry = this.#entryOf(act, hand, entries)
    if (counterOf(entry.id) > COUNTER_MAX)
      return { path: [], is: 'a full store', may: 'another store' }
    foldIn(fold, entry)
    entries.push(entry)
    return undefined
  }

  /** The entry that comes after all that is held and after the drafts; never under a used id. */
  #entryOf(act: Act, { author, at }: Hand, drafts: readonly Entry[]): Entry {
    const { seen } = this.#tally
    const top = this.#tally.topOf(this.store)
    const isWhole = (seen[this.store] ?? 0) === top
    const own = top + drafts.length
    return {
      act: ownCopy(act as unknown as Json) as unknown as Act,
      at,
      author,
      id: idOf(this.store, own + 1),
      schema: `entry/${this.reader.level}`,
      seen: isWhole && own > 0 ? { ...seen, [this.store]: own } : seen,
    }
  }

  /** Takes in entries that were read and checked; again and again makes no difference. */
  merge(entries: readonly Entry[]): Merged {
    const added: Entry[] = []
    const forks: EntryId[] = []
    for (const entry of entries) {
      const first = this.#held.get(entry.id)
      if (first === undefined) foldIn(this.#fold, entry)
      else if (!this.#isNew(entry, first)) continue
      else if (this.#foldClone(entry, first)) forks.push(entry.id)
      this.#hold(entry)
      added.push(entry)
    }
    return { added, duplicates: entries.length - added.length, forks }
  }

  #isNew(entry: Entry, first: Entry): boolean {
    return ![first, ...(this.#clones.get(entry.id) ?? [])].some(each => isEqual(each, entry))
  }

  /** Folds an entry whose id another one has; tells whether it is the first such. */
  #foldClone(entry: Entry, first: Entry): boolean {
    const others = this.#clones.get(entry.id) ?? []
    foldVariant(this.#fold, entry, [first, ...others])
    this.#clones.set(entry.id, [...others, entry])
    return others.length === 0
  }

  #hold(entry: Entry): void {
    if (!this.#held.has(entry.id)) this.#held.set(entry.id, entry)
    this.#tally.hold(storeOf(entry.id), counterOf(entry.id))
    this.#tally.name(entry.seen)
    this.#unsorted.push(entry)
    this.#state = undefined
  }
}

const isEqual = (a: Entry, b: Entry): boolean => a === b || isSame(jsonOf(a), jsonOf(b))

const checkKind = (act: Act): Fault | undefined =>
  isKnownAct(act) ? undefined : { path: ['do'], is: told((act as Act).do), may: 'a known kind' }

function checkHand({ author, at }: Hand): Fault | undefined {
  const fault = checkAuthor(author)
  if (fault) return within(['author'], fault)
  const when = checkAt(at)
  return when && within(['at'], when)
}
