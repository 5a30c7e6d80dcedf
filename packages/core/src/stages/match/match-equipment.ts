import { boundsOf } from '../../base/known.ts'
import type { ControlBox } from '../../domain/box/control-box.ts'
import type { Load } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import { secondLines } from '../../domain/supply/circuits.ts'
import { offersOf } from '../../domain/wiring/offers.ts'
import { fitsPlug } from '../../domain/wiring/plugs.ts'
import type { Survey } from '../survey/artifact.ts'
import type { BoxMatch, MatchSet, OpenQuestion, Requirement, Shortfall } from './artifact.ts'
import type { Candidate, Demand } from './requirements.ts'
import { demandsOf, placesFor } from './requirements.ts'

/** The box on each of its feeds for this system, with what it offers there; else on every feed. */
export function candidatesOf({ supply }: Survey, box: ControlBox): readonly Candidate[] {
  const ofSystem = box.feeds.filter(each => each.system === supply.system)
  return (ofSystem.length > 0 ? ofSystem : box.feeds).map(feed => ({
    box,
    feed,
    offers: offersOf(box, feed, secondLines(supply)),
  }))
}

/** Every way in which a candidate falls short. */
export function shortfallsOf(
  demands: readonly Demand[],
  candidate: Candidate,
): readonly Shortfall[] {
  return demands.flatMap(demand => {
    const lacks = demand.lacks(candidate)
    return lacks ? [{ requirement: demand.id, subjects: demand.subjects, ...lacks }] : []
  })
}

/** A box with a place for a keypad and none in its carton: whose keypad goes on it? */
function keypadQuestions({ loads }: Survey, box: ControlBox): readonly OpenQuestion[] {
  const isKeypad = ({ kind }: Load): boolean => kind === 'keypad'
  const hasPlace = box.places.some(each => each.takes.includes('keypad'))
  if (!hasPlace || box.supplied.some(isKeypad)) return []
  const own = loads.find(isKeypad)
  const params = { box: box.label }
  return own
    ? [{ message: 'ask-keypad-maker', subjects: [own.id], params: { ...params, load: own.label } }]
    : [{ message: 'ask-keypad', subjects: ['keypad'], params }]
}

function openQuestions(survey: Survey, box: ControlBox): readonly OpenQuestion[] {
  const breaker = boundsOf(survey.supply.breaker)
    ? []
    : [{ message: 'ask-breaker', subjects: ['supply'], params: {} }]
  const draws = survey.loads.filter(isPowered).flatMap(load =>
    load.circuits.flatMap(circuit => {
      const draw = circuit.amps ?? circuit.power
      return draw && draw.kind !== 'known'
        ? [
            {
              message: draw.kind === 'unknown' ? 'ask-amps' : 'narrow-amps',
              subjects: [load.id],
              params: { load: load.label, circuit: circuit.id },
            },
          ]
        : []
    }),
  )
  return [...breaker, ...draws, ...keypadQuestions(survey, box)]
}

/** Loads of the tub whose plug fits no place that could take them. */
export function adaptersOf(survey: Survey, candidate: Candidate): readonly string[] {
  return survey.loads
    .filter(load => {
      const places = placesFor(survey, candidate, load)
      return places.length > 0 && !places.some(place => fitsPlug(candidate.box, place, load))
    })
    .map(load => load.id)
}

/** Of the feeds of a box, the one that lacks least speaks for it. */
function matchBox(survey: Survey, demands: readonly Demand[], box: ControlBox): BoxMatch {
  const judged = candidatesOf(survey, box)
    .map(candidate => ({ candidate, shortfalls: shortfallsOf(demands, candidate) }))
    .sort((a, b) => a.shortfalls.length - b.shortfalls.length)
  const best = judged[0]
  const shortfalls = best?.shortfalls ?? []
  const serves = best !== undefined && shortfalls.length === 0
  return {
    box: box.id,
    label: box.label,
    maker: box.maker,
    verdict: serves ? 'may-serve' : 'cannot',
    shortfalls,
    open: serves ? openQuestions(survey, box) : [],
    adapters: serves ? adaptersOf(survey, best.candidate) : [],
  }
}

const told = ({ id, message, subjects, params }: Demand): Requirement => ({
  id,
  message,
  subjects,
  params,
})

/**
 * Requirements that no candidate meets together, none of which can be left out.
 *
 * Drops one requirement after another for as long as the rest still rules every candidate out, those
 * that rule out the fewest first: what no box meets is left alone.
 */
export function irreducible(
  demands: readonly Demand[],
  candidates: readonly Candidate[],
): readonly Demand[] {
  const table = candidates.map(each => new Set(shortfallsOf(demands, each).map(s => s.requirement)))
  const rulesOutAll = (kept: readonly Demand[]) =>
    table.every(lacks => kept.some(demand => lacks.has(demand.id)))
  const reach = ({ id }: Demand) => table.filter(lacks => lacks.has(id)).length
  const fewestFirst = demands.toSorted((a, b) => reach(a) - reach(b))
  return fewestFirst.reduce<readonly Demand[]>((kept, demand) => {
    const without = kept.filter(each => each !== demand)
    return rulesOutAll(without) ? without : kept
  }, demands)
}

/**
 * Which control boxes may serve this tub, and every reason why the others cannot.
 *
 * From requirements alone: that a box serves is known only after a plan for it is proven.
 */
export function matchEquipment(survey: Survey, boxes: readonly ControlBox[]): MatchSet {
  const demands = demandsOf(survey)
  const matches = boxes.map(box => matchBox(survey, demands, box))
  const none = !matches.some(each => each.verdict === 'may-serve')
  const conflict = none
    ? irreducible(
        demands,
        boxes.flatMap(each => candidatesOf(survey, each)),
      ).map(told)
    : []
  return { survey: survey.id, boxes: matches, conflict }
}
