import type { Act, Entry, StrangeAct } from './entry.ts'
import { levelOf } from './entry.ts'

/** One step between two forms of an entry: the act as the next form would have written it. */
export interface Migration {
  readonly from: number
  readonly to: number
  /** Pure: two devices make the same of the same. */
  readonly upcast: (act: Act) => Act
}

/** Every step from the first released form to the newest, without a hole. */
export const MIGRATIONS: readonly Migration[] = []

/** What a version of the program understands. */
export interface Reader {
  /** The form it writes, and the newest it reads. */
  readonly level: number
  readonly migrations: readonly Migration[]
}

/** The first step that does not follow on the one before it, or undefined. */
export const misplaced = (migrations: readonly Migration[]): Migration | undefined =>
  migrations.find((each, index) => each.from !== index + 1 || each.to !== index + 2)

export function readerOf(migrations: readonly Migration[]): Reader {
  const wrong = misplaced(migrations)
  if (wrong) throw new Error(`invariant: migration ${wrong.from} to ${wrong.to} is out of place`)
  return { level: migrations.length + 1, migrations }
}

export const READER: Reader = readerOf(MIGRATIONS)

const KINDS: readonly unknown[] = ['set', 'clear', 'add', 'withdraw', 'restore', 'settle']

/** Whether an act is of a kind of this form; its shape was checked when it was read. */
export const isKnownAct = (act: Act | StrangeAct): act is Act => KINDS.includes(act.do)

/** The act in the reader's own form, or undefined where it does not understand it. */
export function actFor(reader: Reader, entry: Entry): Act | undefined {
  const level = levelOf(entry)
  if (level > reader.level || !isKnownAct(entry.act)) return undefined
  if (level === reader.level) return entry.act
  return reader.migrations.slice(level - 1).reduce((act, each) => each.upcast(act), entry.act)
}
