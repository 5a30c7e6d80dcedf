import { checkJson, fits } from './check-json.ts'
import type { Entry, Seen } from './entry.ts'
import { counterOf, seenOf, storeOf } from './entry.ts'
import type { Fault, Outcome } from './fault.ts'
import { fail, ok, told, within } from './fault.ts'
import type { Json } from './json.ts'
import { isObject } from './json.ts'
import {
  AUTHOR_MAX,
  COUNTER_MAX,
  ENTRY_BYTES_MAX,
  ENTRY_DEPTH_MAX,
  STORE_MAX,
  STORES_MAX,
  VALUE_BYTES_MAX,
  VALUE_DEPTH_MAX,
} from './limits.ts'
import { checkPath } from './path.ts'

type Check = (value: unknown) => Fault | undefined

const here = (is: unknown, may: string): Fault => ({ path: [], is: told(is), may })

const STORE = new RegExp(`^[A-Za-z0-9][A-Za-z0-9_.-]{0,${STORE_MAX - 1}}$`, 'u')
const MAY_STORE = `letters, digits, "-", "_" and ".", 1 to ${STORE_MAX} of them`
const ID = /^([^:]{1,64}):([1-9]\d{0,15})$/u
const SCHEMA = /^entry\/[1-9]\d{0,5}$/u
const AT =
  /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d{1,9})?)?(Z|[+-]\d\d:\d\d)$/u
const DIGEST = /^[0-9a-f]{16}$/u

export const checkStore: Check = value =>
  typeof value === 'string' && STORE.test(value) ? undefined : here(value, MAY_STORE)

const isCounter = (value: unknown): boolean =>
  Number.isSafeInteger(value) && (value as number) >= 1 && (value as number) <= COUNTER_MAX

const MAY_COUNTER = `a whole number from 1 to ${COUNTER_MAX}`

const checkId: Check = value => {
  const match = typeof value === 'string' ? ID.exec(value) : null
  return match && STORE.test(match[1] ?? '') && isCounter(Number(match[2]))
    ? undefined
    : here(value, `a store, ":" and a counter: ${MAY_STORE}; ${MAY_COUNTER}`)
}

const checkSchema: Check = value =>
  typeof value === 'string' && SCHEMA.test(value) ? undefined : here(value, '"entry/1" and so on')

export const checkAuthor: Check = value =>
  typeof value === 'string' && value.length >= 1 && value.length <= AUTHOR_MAX
    ? undefined
    : here(value, `a text of 1 to ${AUTHOR_MAX} characters`)

export const checkAt: Check = value =>
  typeof value === 'string' && AT.test(value)
    ? undefined
    : here(value, 'a date and time such as "2031-05-04T10:20:30Z"')

const checkSeen: Check = value => {
  if (!isObject(value)) return here(value, 'an object: how much of each store was held')
  const stores = Object.keys(value)
  if (stores.length > STORES_MAX)
    return here(`${stores.length} stores`, `at most ${STORES_MAX} stores`)
  for (const store of stores) {
    const fault = checkStore(store)
    if (fault) return within([store], fault)
    if (!isCounter(value[store])) return { ...here(value[store], MAY_COUNTER), path: [store] }
  }
  return undefined
}

export const checkValue: Check = value =>
  checkJson(value, VALUE_DEPTH_MAX) ??
  (fits(value as Json, VALUE_BYTES_MAX)
    ? undefined
    : here('a larger value', `at most ${VALUE_BYTES_MAX} bytes`))

const isDigest = (value: unknown): boolean => typeof value === 'string' && DIGEST.test(value)

function checkSettle(act: Readonly<Record<string, unknown>>): Fault | undefined {
  const fork = checkId(act['fork'])
  if (fork) return within(['fork'], fork)
  const { variants } = act
  return Array.isArray(variants) && variants.length > 0 && variants.every(isDigest)
    ? undefined
    : { ...here(variants, 'a list of digests, 16 hex digits each'), path: ['variants'] }
}

const atPath = (act: Readonly<Record<string, unknown>>): Fault | undefined => {
  const fault = checkPath(act['path'])
  return fault && within(['path'], fault)
}

function checkSet(act: Readonly<Record<string, unknown>>): Fault | undefined {
  const path = atPath(act)
  if (path) return path
  const fault = Object.hasOwn(act, 'value')
    ? checkValue(act['value'])
    : here(undefined, 'a JSON value')
  return fault && within(['value'], fault)
}

/** What is wrong with an act of this form; a kind nobody here knows is none of our business. */
export const checkAct: Check = act => {
  if (!isObject(act)) return here(act, 'an object: what the entry does')
  switch (act['do']) {
    case 'set':
      return checkSet(act)
    case 'clear':
    case 'add':
    case 'withdraw':
    case 'restore':
      return atPath(act)
    case 'settle':
      return checkSettle(act)
    default:
      return undefined
  }
}

const FIELDS: Readonly<Record<string, Check>> = {
  schema: checkSchema,
  id: checkId,
  author: checkAuthor,
  at: checkAt,
  seen: checkSeen,
}

function checkFields(value: Readonly<Record<string, unknown>>): Fault | undefined {
  for (const [field, check] of Object.entries(FIELDS)) {
    const fault = check(Object.hasOwn(value, field) ? value[field] : undefined)
    if (fault) return within([field], fault)
  }
  return undefined
}

/** An entry cannot have seen itself, nor what its store wrote later. */
function checkOwn(entry: Entry): Fault | undefined {
  const store = storeOf(entry.id)
  const own = seenOf(entry.seen, store)
  const most = counterOf(entry.id) - 1
  if (own <= most) return undefined
  return { path: ['seen', store], is: `${own}`, may: most === 0 ? 'absent' : `at most ${most}` }
}

/** Forms that this version knows are checked to the end; of newer ones only what never changes. */
const isOwnForm = (entry: Entry, level: number): boolean =>
  Number(entry.schema.slice('entry/'.length)) <= level

function checkEntry(value: unknown, level: number): Fault | undefined {
  if (!isObject(value)) return here(value, 'an object: an entry')
  const fault = checkFields(value)
  if (fault) return fault
  const entry = value as unknown as Entry
  const own = checkOwn(entry)
  if (own) return own
  const act = isOwnForm(entry, level) || !isObject(entry.act) ? checkAct(entry.act) : undefined
  if (act) return within(['act'], act)
  return undefined
}

/**
 * An entry from outside, checked whole.
 *
 * @param level - the newest form that the reader knows: acts of newer ones are not looked into
 * @returns the same value as an entry, its further fields with it; or what is wrong and where
 */
export function readEntry(value: unknown, level: number): Outcome<Entry> {
  const fault = checkJson(value, ENTRY_DEPTH_MAX)
  return fault ? fail(fault) : readParsed(value as Json, level)
}

/** An entry from a value in which `checkJson` found nothing, to the depth of an entry. */
export function readParsed(value: Json, level: number): Outcome<Entry> {
  const fault = checkEntry(value, level)
  if (fault) return fail(fault)
  return fits(value, ENTRY_BYTES_MAX)
    ? ok(value as unknown as Entry)
    : fail(here('a larger entry', `at most ${ENTRY_BYTES_MAX} bytes`))
}

/** What a peer, or a note kept apart, says was held. */
export function readSeen(value: unknown): Outcome<Seen> {
  const fault = checkSeen(value)
  return fault ? fail(fault) : ok(value as Seen)
}
