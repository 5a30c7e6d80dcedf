import type { Act, Seen } from './entry.ts'
import { seenOf } from './entry.ts'
import type { Clones, Noted } from './noted.ts'
import { hasSeen, isForked } from './noted.ts'

interface Chain {
  readonly noted: Noted
  readonly rest: Chain | undefined
}

interface Cover {
  readonly level: number
  readonly seen: Seen
}

/** Every act on one path, and which of them nobody has replaced. Never changed. */
export interface Register {
  readonly acts: Chain
  /** Not seen by any act that replaces; in no order. */
  readonly heads: readonly Noted[]
  /** What the replacing acts have seen together, by the form they were written in. */
  readonly covers: readonly Cover[]
}

/** Which acts replace what they saw, and which can be replaced. */
export interface Rule {
  readonly replaces: (act: Act) => boolean
  readonly stands: (act: Act) => boolean
}

/** A field: sets and clears replace each other. */
export const FIELD: Rule = { replaces: () => true, stands: () => true }

/** An item: what is left standing are withdrawals that no restore, and no later add, has seen. */
export const ITEM: Rule = {
  replaces: act => act.do === 'restore' || act.do === 'add',
  stands: act => act.do === 'withdraw',
}

function dominates(a: Seen, b: Seen): boolean {
  for (const store in b) if (seenOf(a, store) < seenOf(b, store)) return false
  return true
}

/** The greater of both for every store; one of the two where it is that already. */
export function joined(a: Seen, b: Seen): Seen {
  if (dominates(b, a)) return b
  if (dominates(a, b)) return a
  const all: Record<string, number> = { ...a }
  for (const store in b) all[store] = Math.max(seenOf(a, store), seenOf(b, store))
  return all
}

function covered(covers: readonly Cover[], { level, seen }: Cover): readonly Cover[] {
  const index = covers.findIndex(each => each.level === level)
  const old = covers[index]
  if (old === undefined) return [...covers, { level, seen }]
  return covers.with(index, { level, seen: joined(old.seen, seen) })
}

/** Every act of a register, the one that arrived last first. */
export function* actsOf(register: Register | undefined): Generator<Noted> {
  for (let link = register?.acts; link; link = link.rest) yield link.noted
}

/**
 * Whether any act of the register replaces this one. By the joined vectors where ids are unique: an id
 * is in one of them just when it is in the join. A forked id has to be asked for one by one.
 */
function isReplaced(register: Register, noted: Noted, rule: Rule, clones: Clones): boolean {
  if (isForked(clones, noted.entry.id)) {
    for (const each of actsOf(register))
      if (rule.replaces(each.act) && hasSeen(clones, each, noted)) return true
    return false
  }
  return register.covers.some(
    each => each.level >= noted.level && seenOf(each.seen, noted.store) >= noted.counter,
  )
}

/** The register with one more act; the order in which acts come makes no difference. */
export function noteDown(
  old: Register | undefined,
  noted: Noted,
  rule: Rule,
  clones: Clones,
): Register {
  return old ? noteFurther(old, noted, rule, clones) : noteFirst(noted, rule)
}

const NONE: readonly never[] = []

function noteFirst(noted: Noted, { replaces, stands }: Rule): Register {
  const one = [noted]
  return {
    acts: { noted, rest: undefined },
    heads: stands(noted.act) ? one : NONE,
    covers: replaces(noted.act) ? one : NONE,
  }
}

function noteFurther(old: Register, noted: Noted, rule: Rule, clones: Clones): Register {
  const replaces = rule.replaces(noted.act)
  const left = replaces ? old.heads.filter(each => !hasSeen(clones, noted, each)) : old.heads
  const stands = rule.stands(noted.act) && !isReplaced(old, noted, rule, clones)
  return {
    acts: { noted, rest: old.acts },
    heads: stands ? [...left, noted] : left,
    covers: replaces ? covered(old.covers, noted) : old.covers,
  }
}

/** The register anew from its acts: after an id turned out to be forked, or was settled. */
export function renoted(old: Register, rule: Rule, clones: Clones): Register {
  let register: Register | undefined
  for (const each of actsOf(old)) register = noteDown(register, each, rule, clones)
  return register ?? old
}
