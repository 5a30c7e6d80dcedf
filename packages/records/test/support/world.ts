import type { Entry, Reader, StoredEntry } from '@tubwright/records'
import {
  actFor,
  fromStored,
  fromWire,
  heldBack,
  JobLog,
  levelOf,
  mergeJobFiles,
  must,
  pathKey,
  readJobFile,
  stateText,
  toStored,
  toWire,
  writeJobFile,
} from '@tubwright/records'
import { chooseAct } from './choose-act.ts'
import { missingOf } from './opinion-of-state.ts'
import { missingFrom } from './oracle.ts'
import type { Random } from './random.ts'
import { randomOf } from './random.ts'
import { NEW, OLD } from './two-versions.ts'

/** What a run met: a law that held where nothing happened says nothing. */
export type Met = Record<
  | 'operations'
  | 'entries'
  | 'refused'
  | 'conflicts'
  | 'shapeConflicts'
  | 'agreements'
  | 'withdrawn'
  | 'withdrawnWithUnseenEdits'
  | 'restored'
  | 'orphans'
  | 'gaps'
  | 'forks'
  | 'settledForks'
  | 'notUnderstood'
  | 'strangeKinds'
  | 'duplicates'
  | 'lost'
  | 'deliveredTwice'
  | 'deliveredInPart'
  | 'partitions'
  | 'restarts'
  | 'wipedButMissed'
  | 'wipedAndForgotten'
  | 'cloned'
  | 'upgrades'
  | 'jobFiles'
  | 'healings'
  | 'bothVersions'
  | 'refolds',
  number
>

export const nothingMet = (): Met => ({
  operations: 0,
  entries: 0,
  refused: 0,
  conflicts: 0,
  shapeConflicts: 0,
  agreements: 0,
  withdrawn: 0,
  withdrawnWithUnseenEdits: 0,
  restored: 0,
  orphans: 0,
  gaps: 0,
  forks: 0,
  settledForks: 0,
  notUnderstood: 0,
  strangeKinds: 0,
  duplicates: 0,
  lost: 0,
  deliveredTwice: 0,
  deliveredInPart: 0,
  partitions: 0,
  restarts: 0,
  wipedButMissed: 0,
  wipedAndForgotten: 0,
  cloned: 0,
  upgrades: 0,
  jobFiles: 0,
  healings: 0,
  bothVersions: 0,
  refolds: 0,
})

interface Replica {
  store: string
  reader: Reader
  log: JobLog
  /** What a restart finds, by id and digest. */
  disk: Map<string, StoredEntry>
  /** Kept apart from the disk: what was once held. */
  kept: Record<string, number>
  /** Its clock is wrong by this [ms]. */
  readonly skew: number
  /** Who is on the same side of the partition. */
  side: number
}

interface Message {
  readonly from: Replica
  readonly to: Replica
  readonly text: string
}

/** A law that did not hold: says which, and where to find it again. */
export class LawBroken extends Error {}

const TEN_YEARS = 10 * 365 * 24 * 3600 * 1000
const BEGIN = Date.UTC(2031, 4, 4)

const joinInto = (all: Record<string, number>, seen: Readonly<Record<string, number>>): void => {
  for (const [store, counter] of Object.entries(seen))
    all[store] = Math.max(all[store] ?? 0, counter)
}

const TEXTS = new WeakMap<Entry, string>()

function textOf(entry: Entry): string {
  const text = TEXTS.get(entry) ?? toStored(entry).text
  TEXTS.set(entry, text)
  return text
}

/** Two to eight copies of one job that write, talk, fail and come back, all from one seed. */
export class World {
  readonly #random: Random
  readonly #seed: number
  readonly #met: Met
  readonly #replicas: Replica[]
  #messages: Message[] = []
  #time = BEGIN
  #stores = 0

  constructor(seed: number, met: Met) {
    this.#seed = seed
    this.#met = met
    this.#random = randomOf(seed)
    const isMixed = this.#random.isTrue(0.7)
    this.#replicas = Array.from({ length: 2 + this.#random.below(7) }, () =>
      this.#newReplica(isMixed && this.#random.isTrue(0.6) ? OLD : NEW),
    )
  }

  run(operations: number): void {
    for (let count = 0; count < operations; count++) this.#step()
    this.#upgradeAll()
    this.#heal()
    this.#met.entries += (this.#replicas[0] as Replica).log.size
  }

  #newStore(): string {
    return `s${this.#stores++}`
  }

  #newReplica(reader: Reader): Replica {
    const store = this.#newStore()
    const skew = (this.#random.below(2001) / 1000 - 1) * TEN_YEARS
    const log = JobLog.empty(store, reader)
    return { store, reader, log, disk: new Map(), kept: {}, skew, side: 0 }
  }

  #step(): void {
    this.#met.operations++
    this.#time += this.#random.below(60_000)
    const kind = this.#random.below(1000)
    if (kind < 500) this.#act(this.#random.of(this.#replicas))
    else if (kind < 700) this.#send()
    else if (kind < 930) this.#deliver()
    else if (kind < 945) this.#lose()
    else if (kind < 955) this.#divide()
    else if (kind < 965) this.#restart(this.#random.of(this.#replicas))
    else if (kind < 969) this.#upgrade(this.#random.of(this.#replicas))
    else if (kind < 972) this.#wipe(this.#random.of(this.#replicas))
    else if (kind < 975) this.#clone()
    else if (kind < 979) this.#exchangeFile()
    else if (kind < 997) this.#writeStrange(this.#random.of(this.#replicas))
    else this.#heal()
  }

  #hand(replica: Replica) {
    const at = new Date(this.#time + replica.skew).toISOString()
    return { author: `author of ${replica.store}`, at }
  }

  #act(replica: Replica): void {
    const act = chooseAct(this.#random, replica.log.state)
    const written = replica.log.append(act, this.#hand(replica))
    if (!written.ok) this.#met.refused++
    else if (act.do === 'restore') this.#met.restored++
    if (written.ok) this.#save(replica, written.value)
    this.#look(replica)
  }

  /** An entry as a version that is still to come might write it. */
  #writeStrange(replica: Replica): void {
    const { log, store } = replica
    const own = log.entries
      .filter(each => each.id.startsWith(`${store}:`))
      .map(each => Number(each.id.slice(store.length + 1)))
    const counter = Math.max(0, replica.kept[store] ?? 0, ...own) + 1
    const entry = {
      schema: `entry/${replica.reader.level}`,
      id: `${store}:${counter}`,
      ...this.#hand(replica),
      seen: log.seen,
      act: { do: 'stamp', ink: ['red', 1.5e-7, null], path: 'elsewhere' },
      weather: { wind: 'north', '10': 1, '9': 'é\ud800' },
    } as unknown as Entry
    this.#met.strangeKinds++
    this.#take(replica, [entry])
  }

  #save(replica: Replica, entries: readonly Entry[]): void {
    for (const entry of entries) {
      const stored = toStored(entry)
      replica.disk.set(`${stored.id} ${stored.digest}`, stored)
    }
    joinInto(replica.kept, replica.log.seen)
  }

  #take(replica: Replica, entries: readonly Entry[]): void {
    const { added, duplicates } = replica.log.merge(entries)
    this.#met.duplicates += duplicates
    this.#save(replica, added)
    this.#look(replica)
  }

  /** Counts what is there to see, and now and then compares what is shown missing with what is. */
  #look({ log, kept }: Replica): void {
    const { state } = log
    if (this.#random.isTrue(0.94)) return
    const { conflicts, withdrawn, gaps, forks, notUnderstood, orphans } = state
    const met = this.#met
    met.conflicts += conflicts.filter(each => each.kind === 'values').length
    met.shapeConflicts += conflicts.filter(each => each.kind === 'shape').length
    met.withdrawn += withdrawn.length
    met.withdrawnWithUnseenEdits += withdrawn.filter(each => each.beside.length > 0).length
    met.gaps += gaps.length
    met.forks += forks.length
    met.settledForks += forks.filter(each => each.isSettled).length
    met.notUnderstood += notUnderstood.length
    met.orphans += orphans.length
    this.#checkMissing(log, kept)
  }

  #checkMissing({ state, entries }: JobLog, kept: Readonly<Record<string, number>>): void {
    const shown = new Set(missingOf(state))
    const held = new Set<string>(entries.map(each => each.id))
    const expected = Object.entries(kept).flatMap(([store, top]) =>
      Array.from({ length: top }, (_, index) => `${store}:${index + 1}`),
    )
    const missing = [...missingFrom(entries), ...expected.filter(id => !held.has(id))]
    this.#law(
      missing.every(id => shown.has(id)),
      'what is missing is shown as a gap',
    )
    this.#law(
      [...shown].every(id => !held.has(id)),
      'nothing held is shown as a gap',
    )
    this.#law(state.isComplete === (shown.size === 0), 'a state is complete just without gaps')
    const isHeld = state.gaps.length + state.notUnderstood.length > 0
    this.#law(!isHeld || heldBack(state).length > 0, 'what is missing or strange holds back')
  }

  #send(): void {
    const from = this.#random.of(this.#replicas)
    const to = this.#random.of(this.#replicas)
    if (from === to || from.log.size === 0) return
    const { entries } = from.log
    const start = this.#random.below(entries.length)
    const some = entries.slice(start, start + 1 + this.#random.below(40))
    const isPart = this.#random.isTrue(0.3)
    if (isPart) this.#met.deliveredInPart++
    const sent = isPart ? some.filter(() => this.#random.isTrue(0.5)) : some
    this.#messages.push({ from, to, text: toWire(this.#random.shuffled(sent)) })
  }

  /** Any message may be next; it may stay on its way and come again. */
  #deliver(): void {
    if (this.#messages.length === 0) return
    const index = this.#random.below(this.#messages.length)
    const { from, to, text } = this.#messages[index] as Message
    if (from.side !== to.side) return
    const comesAgain = this.#random.isTrue(0.15)
    if (comesAgain) this.#met.deliveredTwice++
    else this.#messages.splice(index, 1)
    this.#take(to, must(fromWire(text, to.reader)))
  }

  #lose(): void {
    if (this.#messages.length === 0) return
    this.#met.lost++
    this.#messages.splice(this.#random.below(this.#messages.length), 1)
  }

  #divide(): void {
    this.#met.partitions++
    const sides = 1 + this.#random.below(3)
    for (const each of this.#replicas) each.side = this.#random.below(sides)
  }

  #reload(replica: Replica): void {
    const stored = this.#random.shuffled([...replica.disk.values()])
    const entries = stored.map(each => must(fromStored(each, replica.reader)))
    replica.log = JobLog.open(replica.store, entries, replica.reader)
    replica.log.expect(replica.kept)
  }

  #restart(replica: Replica): void {
    this.#met.restarts++
    const before = stateText(replica.log.state)
    this.#reload(replica)
    this.#law(stateText(replica.log.state) === before, 'a restart changes nothing')
  }

  #upgrade(replica: Replica): void {
    if (replica.reader === NEW) return
    this.#met.upgrades++
    replica.reader = NEW
    this.#reload(replica)
  }

  #upgradeAll(): void {
    for (const each of this.#replicas) this.#upgrade(each)
  }

  #wipe(replica: Replica): void {
    const hadAny = Object.keys(replica.kept).length > 0
    replica.disk.clear()
    if (this.#random.isTrue(0.5)) {
      this.#met.wipedButMissed++
      this.#reload(replica)
      this.#law(!hadAny || !replica.log.state.isComplete, 'a loss is no empty job')
      return
    }
    this.#met.wipedAndForgotten++
    replica.kept = {}
    if (this.#random.isTrue(0.5)) replica.store = this.#newStore()
    this.#reload(replica)
  }

  /** A disk is copied, and both copies go on under one name. */
  #clone(): void {
    const from = this.#random.of(this.#replicas)
    const to = this.#random.of(this.#replicas)
    if (from === to) return
    this.#met.cloned++
    to.store = from.store
    to.disk = new Map(from.disk)
    to.kept = { ...from.kept }
    this.#reload(to)
  }

  #exchangeFile(): void {
    const from = this.#random.of(this.#replicas)
    const to = this.#random.of(this.#replicas)
    this.#met.jobFiles++
    const fileOf = ({ log }: Replica) =>
      writeJobFile({ job: 'j1', entries: log.entries, photos: [], survey: '' })
    const [theirs, own] = [fileOf(from), fileOf(to)]
    const read = must(readJobFile(theirs, to.reader))
    this.#law(writeJobFile(read) === theirs, 'a file read and written is the same bytes')
    const merged = must(mergeJobFiles(must(readJobFile(own, to.reader)), read, () => ''))
    this.#take(to, merged.entries)
    this.#law(fileOf(to) === writeJobFile(merged), 'merging files and merging logs are the same')
  }

  /** Everybody hears everything; then the same entries must be the same state. */
  #heal(): void {
    this.#met.healings++
    this.#messages = []
    const all = new Map(
      this.#replicas.flatMap(each =>
        each.log.entries.map(entry => [textOf(entry), entry] as const),
      ),
    )
    const text = toWire(this.#random.shuffled([...all.values()]))
    const heard = new Map([OLD, NEW].map(reader => [reader, must(fromWire(text, reader))]))
    const kept: Record<string, number> = {}
    for (const each of this.#replicas) joinInto(kept, each.kept)
    for (const each of this.#replicas) {
      each.side = 0
      this.#take(each, heard.get(each.reader) ?? [])
      each.log.expect(kept)
      joinInto(each.kept, kept)
    }
    const versions = [OLD, NEW].filter(reader => this.#compare(reader, kept))
    if (versions.length === 2) this.#met.bothVersions++
  }

  /** Compares those of one version with each other, with a fold from nothing, and with the entries. */
  #compare(reader: Reader, kept: Readonly<Record<string, number>>): boolean {
    const [first, ...others] = this.#replicas.filter(each => each.reader === reader)
    if (first === undefined) return false
    const text = stateText(first.log.state)
    const bytes = first.log.entries.map(textOf).join('\n')
    for (const { log } of others) {
      this.#law(stateText(log.state) === text, 'same entries, same state')
      this.#law(log.entries.map(textOf).join('\n') === bytes, 'same entries, byte for byte')
    }
    this.#met.refolds++
    const { entries } = first.log
    const twice = this.#random.shuffled([...entries, ...entries.slice(0, 20)])
    const anew = JobLog.open('anew', twice, reader)
    anew.expect(kept)
    this.#law(stateText(anew.state) === text, 'little by little, or all at once')
    this.#checkForks(first.log)
    this.#checkHeads(first.log)
    return true
  }

  #checkForks({ state, entries }: JobLog): void {
    const count = new Map<string, number>()
    for (const { id } of entries) count.set(id, (count.get(id) ?? 0) + 1)
    const forked = [...count].filter(([, times]) => times > 1).map(([id]) => id)
    this.#law(
      forked.sort().join() === state.forks.map(each => each.id).join(),
      'two entries under one id are a fork',
    )
  }

  /** Every value is there unless an entry on the same path that had seen it took its place. */
  #checkHeads({ state, entries, reader }: JobLog): void {
    const forked = new Set(state.forks.map(each => each.id))
    const { places } = JSON.parse(stateText(state)) as {
      places: { path: string[]; field: string[][] }[]
    }
    const heads = new Set(places.flatMap(each => each.field.map(([id]) => id)))
    const byPath = new Map<string, Entry[]>()
    for (const entry of entries) {
      const act = actFor(reader, entry)
      if (act?.do !== 'set' && act?.do !== 'clear') continue
      const key = pathKey(act.path)
      byPath.set(key, [...(byPath.get(key) ?? []), entry])
    }
    for (const group of byPath.values())
      for (const each of group) {
        if (forked.has(each.id)) continue
        const isReplaced = group.some(other => knew(other, each))
        this.#law(heads.has(each.id) === !isReplaced, 'no value is dropped unseen')
      }
    for (const { field } of places)
      if (field.length > 1 && new Set(field.map(each => each[3])).size === 1) this.#met.agreements++
  }

  #law(holds: boolean, law: string): void {
    if (!holds) throw new LawBroken(`${law} — seed ${this.#seed}, after ${this.#met.operations}`)
  }
}

function knew(later: Entry, earlier: Entry): boolean {
  const [store = '', counter] = earlier.id.split(':')
  const seen = Object.hasOwn(later.seen, store) ? Number(later.seen[store]) : 0
  return levelOf(later) >= levelOf(earlier) && seen >= Number(counter)
}

const EACH = 500 // operations of one world

/** Runs worlds one after the other until so many operations are done, from a seed on. */
export function simulate(operations: number, seed: number): Met {
  const met = nothingMet()
  for (let world = 0; world * EACH < operations; world++) new World(seed + world, met).run(EACH)
  return met
}
