import type { Survey } from '../survey/artifact.ts'
import { alongWith, newKeypads } from './along.ts'
import type { Change, ChangeSet } from './artifact.ts'
import type { ChangeCosts } from './change-costs.ts'
import { shortfallsOf } from './match-equipment.ts'
import { possibleChanges } from './possible-changes.ts'
import type { Candidate } from './requirements.ts'
import { demandsOf } from './requirements.ts'
import { withChanges } from './with-changes.ts'

/** One load with what could become of it, and whether it cannot stay as it is. */
interface Choice {
  readonly load: string
  readonly changes: readonly Change[]
  readonly mustChange: boolean
}

/** A set still to be looked at: what is chosen of the choices before `next`. */
interface Open {
  readonly kind: 'open'
  readonly chosen: readonly Change[]
  readonly next: number
  /** The least that it costs once every load that must change has [relative]. */
  readonly least: number
}

interface Found {
  readonly kind: 'found'
  readonly set: ChangeSet
  readonly least: number
}

type Waiting = Open | Found

export const costOf = (changes: readonly Change[]): number =>
  changes.reduce((sum, each) => sum + each.cost, 0)

/** What a change is called where nothing else tells two sets apart. */
const nameOf = (change: Change): string =>
  `${change.load} ${change.kind} ${'to' in change ? JSON.stringify(change.to) : ''}`

const namesOf = (changes: readonly Change[]): string =>
  changes
    .map(nameOf)
    .sort((a, b) => (a < b ? -1 : 1))
    .join('\n')

const partsOf = (each: Waiting): readonly Change[] =>
  each.kind === 'open' ? each.chosen : [...each.set.changes, ...each.set.along]

/** Cheapest first; of the same cost what is still open, then the fewest changes, then the names. */
function comesBefore(a: Waiting, b: Waiting): boolean {
  if (a.least !== b.least) return a.least < b.least
  if (a.kind !== b.kind) return a.kind === 'open'
  const [own, other] = [partsOf(a), partsOf(b)]
  if (own.length !== other.length) return own.length < other.length
  return namesOf(own) < namesOf(other)
}

/** Puts one where it belongs in a queue that is in order. */
function enqueue(queue: Waiting[], one: Waiting): void {
  let [from, to] = [0, queue.length]
  while (from < to) {
    const middle = (from + to) >> 1
    const there = queue[middle]
    if (there && comesBefore(there, one)) from = middle + 1
    else to = middle
  }
  queue.splice(from, 0, one)
}

const cheapest = ({ changes }: Choice): number => Math.min(...changes.map(each => each.cost))

/** Loads that no feed serves as they are come first: every set has a change of each of them. */
function choicesFor(
  survey: Survey,
  candidates: readonly Candidate[],
  costs: ChangeCosts,
): readonly Choice[] {
  const demands = demandsOf(survey)
  const lacking = candidates.map(
    candidate =>
      new Set(shortfallsOf(demands, candidate).flatMap(each => loadOf(each.requirement) ?? [])),
  )
  return survey.loads
    .map(load => ({
      load: load.id,
      changes: possibleChanges(survey, candidates, load, costs),
      mustChange: lacking.every(each => each.has(load.id)),
    }))
    .filter(each => each.mustChange || each.changes.length > 0)
    .sort((a, b) => Number(b.mustChange) - Number(a.mustChange))
}

/** The load that a requirement is about, where it is about one alone. */
export const loadOf = (requirement: string): string | undefined =>
  /^(?:load|earth) (.*)$/u.exec(requirement)?.[1]

/** What is still to be spent at the least on the loads that must change. */
const owed = (choices: readonly Choice[], next: number): number =>
  choices.slice(next).reduce((sum, each) => sum + (each.mustChange ? cheapest(each) : 0), 0)

function* widened(choices: readonly Choice[], { chosen, next }: Open): Generator<Open> {
  for (let index = next; index < choices.length; index++) {
    const choice = choices[index]
    if (!choice) continue
    for (const change of choice.changes) {
      const more = [...chosen, change]
      const least = costOf(more) + owed(choices, index + 1)
      yield { kind: 'open', chosen: more, next: index + 1, least }
    }
    // Past a load that must change and does not, no set serves.
    if (choice.mustChange) return
  }
}

const isPartOf = (part: readonly Change[], whole: readonly Change[]): boolean =>
  part.every(each => whole.includes(each))

/** How a search ended: with nothing left, or at its limit. */
export interface SearchEnd {
  readonly stopped: boolean
  readonly considered: number
}

/** A set with which the box would serve, and how many were looked at until it was sure. */
export interface ServingSet {
  readonly set: ChangeSet
  readonly considered: number
}

/**
 * Sets of changes with which the box would serve, the cheapest first: none holds another.
 *
 * Uniform-cost search: a set is handed out once nothing that is still open can cost less. Each set is
 * tried by changing the survey and matching it. The bound on what is open is what its changes cost
 * and the cheapest change of each load that must still change: never more than it will cost.
 *
 * @param candidates - the box on each feed that the supply answers to
 * @param most - sets looked at, at most
 */
export function* servingSets(
  survey: Survey,
  candidates: readonly Candidate[],
  costs: ChangeCosts,
  most: number,
): Generator<ServingSet, SearchEnd> {
  const box = candidates[0]?.box
  const keypads = box ? newKeypads(survey, box, costs) : []
  const kept = withChanges(survey, keypads)
  const choices = choicesFor(kept, candidates, costs)
  const queue: Waiting[] = []
  const serving: (readonly Change[])[] = []
  let considered = 0
  const owing = owed(choices, 0)
  if (Number.isFinite(owing)) enqueue(queue, { kind: 'open', chosen: [], next: 0, least: owing })
  for (let one = queue.shift(); one; one = queue.shift()) {
    if (one.kind === 'found') {
      yield { set: one.set, considered }
      continue
    }
    if (considered >= most) return { stopped: true, considered }
    considered++
    const { chosen, next } = one
    if (serving.some(each => isPartOf(each, chosen))) continue
    const demands = demandsOf(withChanges(kept, chosen))
    const isWhole = choices.slice(next).every(each => !each.mustChange)
    const on = isWhole ? candidates.filter(each => shortfallsOf(demands, each).length === 0) : []
    if (on.length === 0) {
      for (const wider of widened(choices, one)) enqueue(queue, wider)
      continue
    }
    serving.push(chosen)
    const along = alongWith(survey, chosen, on, costs)
    const cost = costOf(chosen) + costOf(along)
    enqueue(queue, { kind: 'found', set: { changes: chosen, along, cost }, least: cost })
  }
  return { stopped: false, considered }
}
