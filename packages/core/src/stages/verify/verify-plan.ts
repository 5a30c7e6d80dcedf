import { invariant } from '../../base/invariant.ts'
import type { Outcome } from '../../base/outcome.ts'
import { ok } from '../../base/outcome.ts'
import type { DrawBound, Finding } from '../../base/verdict.ts'
import { bySeverity } from '../../base/verdict.ts'
import type { Job } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { uncertainDraws } from '../../domain/wiring/draw.ts'
import type { Observation } from '../../domain/wiring/observe.ts'
import type { PlantPart } from '../../domain/wiring/plant.ts'
import { ratedOf } from '../../domain/wiring/plant.ts'
import type { Shares } from '../../domain/wiring/wire.ts'
import { GREATEST } from '../../domain/wiring/wire.ts'
import type {
  Assumption,
  Expected,
  PlanWeight,
  RunningMode,
  Verification,
  VerifyFailure,
} from './artifact.ts'
import { gather } from './gather.ts'
import type { Evidence } from './rule.ts'
import { commandsOf, plateShare, standing, worst } from './rule.ts'
import { afterReset } from './rules/after-reset.ts'
import { liveWhenOffLoads } from './rules/live-when-off.ts'
import { commandFor } from './rules/load-served.ts'
import { RULES } from './rules.ts'

const check = (evidence: Evidence): readonly Finding[] =>
  RULES.flatMap(rule => rule.check(evidence))

const keyOf = ({ rule, message, subjects }: Finding): string =>
  `${rule} ${message} ${subjects.join(' ')}`

/** Between the least and the greatest draw, ends first: a bound may fall inside a range. */
const SHARES: readonly Shares[] = [1, 0, 0.5, 0.25, 0.75].map(at => ({ ranged: at, unknown: at }))
const HALVINGS = 12

const isFound = (job: Job, landing: Landing, key: string, shares: Shares): boolean =>
  waysRound(job).some(turned => {
    const evidence = gather(job, landing, shares, turned)
    return evidence.ok && check(evidence.value).some(each => keyOf(each) === key)
  })

/** Up to which share, from 0 or down from 1, a finding does not arise. */
function boundOf(found: (share: number) => boolean): { at: number; sign: '≤' | '≥' } {
  let [holds, breaks] = found(0) ? [1, 0] : [0, 1]
  const sign = holds < breaks ? '≤' : '≥'
  for (let step = 0; step < HALVINGS; step++) {
    const middle = (holds + breaks) / 2
    if (found(middle)) breaks = middle
    else holds = middle
  }
  return { at: holds, sign }
}

/** A bound in the tenths that a meter shows, rounded to the side that is shown to hold [A]. */
const boundAt = (amps: number, sign: '≤' | '≥'): Pick<DrawBound, 'atMost' | 'atLeast'> =>
  sign === '≤' ? { atMost: Math.floor(amps * 10) / 10 } : { atLeast: Math.ceil(amps * 10) / 10 }

/**
 * Names what has to hold for a finding not to arise, by halving.
 *
 * Draws that nobody knows are bounded first, with the ranged ones at their greatest; only where
 * that never helps are the ranged ones bounded too.
 */
function provided(job: Job, landing: Landing, finding: Finding): Finding {
  const key = keyOf(finding)
  const draws = uncertainDraws(job, landing)
  // A finding that no draw decides, such as one about a reset, has no bound to name.
  if (draws.length === 0) return finding
  if (!SHARES.some(shares => isFound(job, landing, key, shares))) return finding
  const onlyUnknown =
    draws.some(each => each.draw.assumed) && !isFound(job, landing, key, { ranged: 1, unknown: 0 })
  const { at, sign } = boundOf(share =>
    isFound(job, landing, key, { ranged: onlyUnknown ? 1 : share, unknown: share }),
  )
  const bounds = draws
    .filter(({ draw }) => draw.assumed || !onlyUnknown)
    .map(({ load, circuit, draw }) => ({
      load: load.id,
      circuit: circuit.id,
      label: load.label,
      ...boundAt(draw.from + at * (draw.to - draw.from), sign),
    }))
  return { ...finding, provided: bounds }
}

/** A plug that can be turned is judged both ways round. */
const waysRound = ({ tub }: Job): readonly boolean[] =>
  tub.supply.turnable ? [false, true] : [false]

/** What breaks one way round breaks: nobody knows how the plug will be put in. */
function judge(variants: readonly Evidence[]): readonly Finding[] {
  const ways = [false, true].map(turned => variants.filter(each => each.turned === turned))
  const found = new Map<string, Finding>()
  for (const finding of ways.flatMap(judgeOneWay)) {
    const known = found.get(keyOf(finding))
    if (!known || (known.verdict !== 'breaks' && finding.verdict === 'breaks'))
      found.set(keyOf(finding), finding)
  }
  return [...found.values()]
}

/** All variants' findings: what breaks in every one breaks, what breaks in some holds provided. */
function judgeOneWay(variants: readonly Evidence[]): readonly Finding[] {
  const all = variants.map(
    each => new Map(check(each).map(found => [keyOf(found), found] as const)),
  )
  const keys = new Set(all.flatMap(each => [...each.keys()]))
  return [...keys].flatMap(key => {
    const found = all.flatMap(each => each.get(key) ?? [])
    const first = found[0]
    if (!first) return []
    const isAlways = found.length === variants.length || first.verdict !== 'breaks'
    return [isAlways ? first : { ...first, verdict: 'provided' }]
  })
}

/** Where a figure is greatest. */
const worstOf = (
  observations: readonly Observation[],
  measure: (at: Observation) => number,
): readonly { readonly at: Observation; readonly value: number }[] =>
  worst(observations, [0], (_, at) => measure(at))

const marginOf = (evidence: Evidence, each: PlantPart): readonly number[] => {
  const { part, element } = each
  const rated =
    part.kind === 'contact'
      ? Math.min(part.rated.resistive.si, part.rated.motor?.si ?? part.rated.resistive.si)
      : part.kind === 'fuse'
        ? ratedOf(evidence.job, each)
        : undefined
  if (rated === undefined) return []
  const [worst] = worstOf(standing(evidence), at => at.solved.amps(element))
  if (!worst) return []
  return [1 - Math.max(worst.value, worst.at.atPlate.amps(element)) / rated]
}

function modesOf(evidence: Evidence): readonly RunningMode[] {
  return standing(evidence)
    .filter(at => at.state.kind === 'mode')
    .map(at => ({
      commands: commandsOf(at.state),
      heats: at.state.commands.has(evidence.job.box.heat),
      lineAmps: evidence.lineDraw(at),
    }))
}

const jumperAmps = (evidence: Evidence): number =>
  evidence.plant.jumpers.reduce(
    (sum, { element }) =>
      sum + Math.max(0, ...standing(evidence).map(at => at.solved.amps(element))),
    0,
  )

/** Greatest difference of two lines in any mode; of a single line, none. */
const imbalanceOf = (modes: readonly RunningMode[]): number =>
  Math.max(
    0,
    ...modes.map(({ lineAmps }) =>
      lineAmps.length > 1 ? Math.max(...lineAmps) - Math.min(...lineAmps) : 0,
    ),
  )

function heatPauses(evidence: Evidence, modes: readonly RunningMode[]): readonly string[] {
  const { heat } = evidence.job.box
  return (evidence.profile?.commands ?? []).filter(
    command =>
      command !== heat &&
      modes.some(mode => mode.commands.includes(command)) &&
      !modes.some(mode => mode.heats && mode.commands.includes(command)),
  )
}

function expectedOf(evidence: Evidence): readonly Expected[] {
  const { low, high } = evidence.band
  return evidence.plant.circuits.map(each => {
    const running = standing(evidence)
      .filter(at => at.state.kind === 'mode')
      .map(at => plateShare(each, at) * each.draw.volts)
    const nominal = Math.max(0, ...running)
    const ratio = nominal / each.draw.volts
    // A motor lies between constant impedance and constant power; the rest draws by its volts.
    const spread = each.isMotor ? 1 / (ratio * low || 1) : 0
    const least = each.isMotor ? Math.min(ratio * low, 1) : ratio * low
    return {
      load: each.load.id,
      circuit: each.circuit.id,
      label: each.load.label,
      command: commandFor(evidence, each),
      volts: { low: nominal * low, nominal, high: nominal * high },
      amps: {
        low: each.draw.from * least,
        nominal: each.draw.to * ratio,
        high: each.draw.to * Math.max(ratio * high, spread),
      },
      draw: each.draw,
    }
  })
}

const assumptionsOf = (job: Job, landing: Landing): readonly Assumption[] =>
  uncertainDraws(job, landing).map(({ load, circuit, draw }) => ({
    load: load.id,
    circuit: circuit.id,
    label: load.label,
    kind: draw.assumed ? 'unknown' : 'range',
    atMost: draw.to,
  }))

function proofOf(variants: readonly Evidence[]): Verification['proof'] {
  const solved = variants.flatMap(each => [
    ...each.running.map(at => at.solved.solution),
    ...each.limitOpen.map(at => at.solved.solution),
    ...each.devicesOpen.map(at => at.observation.solved.solution),
  ])
  const states = variants[0]?.running ?? []
  const most = (pick: (solution: (typeof solved)[number]) => number) =>
    solved.reduce((worst, each) => Math.max(worst, pick(each)), 0)
  return {
    modes: states.filter(each => each.state.kind === 'mode').length,
    transitions: states.filter(each => each.state.kind === 'transition').length,
    solves: solved.length,
    worstKcl: most(each => each.kclResidual),
    worstPower: most(each => each.powerBalance),
  }
}

/** What a search compares: the part of a verification that costs no more than its findings. */
function weigh(
  job: Job,
  landing: Landing,
  variants: readonly Evidence[],
  first: Evidence,
  whole = true,
): PlanWeight {
  const own = judge(variants)
  const holds = !own.some(each => each.verdict === 'breaks' && each.severity !== 'notice')
  // A search has no use for what a reset leaves of a landing that breaks without it.
  const reset = whole || holds ? findingsAfterReset(job, landing, own) : []
  const findings = [...own, ...afterReset.check({ ...first, reset })].sort(bySeverity)
  const modes = modesOf(first)
  return {
    findings,
    holds,
    modes,
    smallestMargin: Math.min(1, ...first.plant.parts.flatMap(each => marginOf(first, each))),
    imbalance: imbalanceOf(modes),
    jumperAmps: jumperAmps(first),
  }
}

function complete(
  job: Job,
  landing: Landing,
  variants: readonly Evidence[],
  first: Evidence,
  weight: PlanWeight,
): Verification {
  const { modes } = weight
  return {
    ...weight,
    assumptions: assumptionsOf(job, landing),
    proof: proofOf(variants),
    heatPausesWith: heatPauses(first, modes),
    expected: expectedOf(first),
    liveWhenOff: liveWhenOffLoads(first),
    lines: first.lines.map(({ circuit, line }) => ({ circuit, line })),
    worstLineAmps: Math.max(0, ...modes.flatMap(({ lineAmps }) => lineAmps)),
  }
}

function variantsOf(job: Job, landing: Landing): Outcome<readonly Evidence[], VerifyFailure> {
  const shares = uncertainDraws(job, landing).length > 0 ? SHARES : SHARES.slice(0, 1)
  const variants: Evidence[] = []
  for (const turned of waysRound(job))
    for (const at of shares) {
      const evidence = gather(job, landing, at, turned)
      if (!evidence.ok) return evidence
      variants.push(evidence.value)
    }
  return ok(variants)
}

/** The landing with the settings that the box falls back to; undefined where none of them changes. */
function resetLanding({ box }: Job, landing: Landing): Landing | undefined {
  const { profile, currentLimit } = box.resetsTo ?? {}
  const settings = {
    profile: profile ?? landing.settings.profile,
    currentLimit: currentLimit ?? landing.settings.currentLimit,
  }
  const isSame =
    settings.profile === landing.settings.profile &&
    settings.currentLimit.si === landing.settings.currentLimit.si
  return isSame ? undefined : { ...landing, settings }
}

/** What breaks, danger or warning, with the settings that a reset leaves and not before it. */
function findingsAfterReset(
  job: Job,
  landing: Landing,
  own: readonly Finding[],
): readonly Finding[] {
  const reset = resetLanding(job, landing)
  const evidence = reset && gather(job, reset, GREATEST)
  if (!evidence?.ok) return []
  const known = new Set(own.map(keyOf))
  const isDanger = own.some(each => each.severity === 'danger')
  return check(evidence.value)
    .filter(
      each =>
        each.verdict === 'breaks' &&
        !known.has(keyOf(each)) &&
        (each.severity === 'warning' || (each.severity === 'danger' && !isDanger)),
    )
    .sort(bySeverity)
}

/** The findings alone, danger first: what `verifyPlan` says without its summary. */
export function judgeLanding(
  job: Job,
  landing: Landing,
): Outcome<readonly Finding[], VerifyFailure> {
  const variants = variantsOf(job, landing)
  return variants.ok ? ok([...judge(variants.value)].sort(bySeverity)) : variants
}

/**
 * Judges one landing by solving the circuit it makes, in every state the box can reach.
 *
 * Trusts nothing that planned it: an as-built landing is judged by the same call.
 *
 * @returns fails when the states are too many to enumerate or the network has no meaning: no
 *   verdict is given then
 */
export const verifyPlan = (job: Job, landing: Landing): Outcome<Verification, VerifyFailure> =>
  asPlan(job, landing, (variants, first) =>
    complete(job, landing, variants, first, weigh(job, landing, variants, first)),
  )

/** A landing weighed, from which the whole verification can be had without solving anything again. */
export interface Weighed extends PlanWeight {
  readonly verification: () => Verification
}

/** The same judgement for a search among landings, its proof and readings only when they are asked for. */
export const weighPlan = (job: Job, landing: Landing): Outcome<Weighed, VerifyFailure> =>
  asPlan(job, landing, (variants, first) => {
    const weight = weigh(job, landing, variants, first, false)
    return { ...weight, verification: () => complete(job, landing, variants, first, weight) }
  })

/** Judges a landing as a plan: with what a reset leaves of it. */
function asPlan<Value>(
  job: Job,
  landing: Landing,
  make: (variants: readonly Evidence[], first: Evidence) => Value,
): Outcome<Value, VerifyFailure> {
  const variants = variantsOf(job, landing)
  if (!variants.ok) return variants
  const [greatest] = variants.value
  invariant(greatest !== undefined, 'draws are judged at one share at least')
  return ok(make(variants.value, greatest))
}

/**
 * Says, for each finding that holds only provided some draw is within bounds, what the bounds are.
 *
 * Solves the landing some dozen times a finding: for the plan that is shown, not for a search.
 */
export const withBounds = (
  job: Job,
  landing: Landing,
  verification: Verification,
): Verification => ({
  ...verification,
  findings: verification.findings.map(each =>
    each.verdict === 'provided' ? provided(job, landing, each) : each,
  ),
})
