import type { Possible } from '../../../base/possible.ts'
import type { CodeFinding } from './artifact.ts'

/** One input of a thing, with what it alone could make of that thing. */
export interface Deciding {
  readonly at: string
  readonly kind: Possible<unknown>['kind']
  /** The places that this input alone can make the thing serve, or not. */
  readonly decides: (place: string) => boolean
}

/** One of several things, any of which may serve: at which places it may, and what hangs on what. */
export interface Member {
  /** Each way that it may be: the places that it serves then. */
  readonly serves: readonly ReadonlySet<string>[]
  readonly inputs: readonly Deciding[]
}

/** Several things as one input: the places that at least one of them serves. */
export interface Either {
  readonly possible: Possible<ReadonlySet<string>>
  /** What is to be asked for in place of the input: only what can still decide. */
  readonly asks: readonly string[]
}

const keyOf = (places: ReadonlySet<string>): string => [...places].sort().join()

function withMember(
  sets: ReadonlyMap<string, ReadonlySet<string>>,
  { serves }: Member,
): ReadonlyMap<string, ReadonlySet<string>> {
  const all = [...sets.values()].flatMap(set => serves.map(each => new Set([...set, ...each])))
  return new Map(all.map(each => [keyOf(each), each]))
}

const isSure = ({ serves }: Member, place: string): boolean => serves.every(each => each.has(place))

/**
 * Several things of which one is enough, as one input of a rule: as many values as there are sets of
 * places, however many things are listed.
 *
 * @param places - at which a thing may serve; few
 * @param at - where the survey has the list
 */
export function eitherOf(
  members: readonly Member[],
  places: readonly string[],
  at: string,
): Either {
  const open = places.filter(place => !members.some(each => isSure(each, place)))
  const deciding = members.flatMap(({ inputs }) =>
    inputs.filter(({ decides }) => open.some(decides)),
  )
  const sets = members.reduce(withMember, new Map([['', new Set<string>()]]))
  const kind = deciding.some(each => each.kind === 'unknown') ? 'unknown' : 'range'
  return {
    possible: { values: [...sets.values()], kind, at },
    asks: [...new Set(deciding.map(each => each.at))],
  }
}

/** The same finding, which asks for what decides the list and not for the list. */
export function askingFor(
  finding: CodeFinding,
  list: string,
  asks: readonly string[],
): CodeFinding {
  return {
    ...finding,
    asks: [...new Set(finding.asks.flatMap(each => (each === list ? asks : [each])))],
    bounds: finding.bounds.filter(each => each.at !== list),
  }
}
