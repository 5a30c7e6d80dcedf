import { invariant } from '../../base/invariant.ts'
import type { Job } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import { allowedAmps, arriving, feedOf, profileOf } from '../../domain/wiring/states.ts'
import type { BoxMatch } from '../match/artifact.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Survey } from '../survey/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { JobSheet, OpenPoint, SheetStep } from './artifact.ts'
import { drawBounds } from './bounds.ts'
import type { SiteCircuit } from './circuits.ts'
import { breakerText, limitText, mostFrom, servingCircuits, siteCircuits } from './circuits.ts'
import {
  coldStep,
  fillStep,
  jumperStep,
  landStep,
  lockStep,
  mountStep,
  photoStep,
  reliefStep,
  removeStep,
  supplyStep,
} from './fit-steps.ts'
import { layOutLadder, materialOf } from './ladder/lay-out-ladder.ts'
import { loadSheetOf } from './load-sheet.ts'
import { mendStep } from './mend-step.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { meterRows } from './meter.ts'
import { conditionsOf, openPoints } from './open-points.ts'
import { panelsOf } from './panels.ts'
import { jumpersOf, settingsOf, strapsOf } from './positions.ts'
import {
  closeStep,
  keypadStep,
  loadsStep,
  outputsStep,
  powerStep,
  protectStep,
  settingsStep,
} from './power-steps.ts'
import type { Site } from './site.ts'
import { commandLabel, togetherRows } from './together.ts'
import { partTexts, toolTexts } from './tools.ts'
import { isOfLoad, tubPoints } from './tub-points.ts'
import { functionText, wireGroups } from './wires.ts'

/** What the sheet is laid out from: one tub on one box, planned and judged. */
export interface SheetInput {
  readonly survey: Survey
  readonly job: Job
  readonly proven: { readonly plan: WiringPlan; readonly verification: Verification }
  /** What the match said of this box: its open questions go on top. */
  readonly verdict?: BoxMatch
  /** A landing that somebody made or found, not one that was planned. */
  readonly isGiven?: boolean
  /** The landing by which wires were numbered when they were labelled; its own where this is left out. */
  readonly numberedBy?: Landing
}

/**
 * Lays out the work sheet of one proven plan: every table, drawing and step, and no sentence.
 *
 * Steps and lines that do not concern this tub are left out. The order differs from habit in one
 * place: settings come before the outputs are called, because they decide which outputs there are.
 */
export function layOutSheet({
  survey,
  job,
  proven,
  verdict,
  isGiven,
  numberedBy,
}: SheetInput): JobSheet {
  const { plan, verification } = proven
  const feed = feedOf(job)
  invariant(feed !== undefined, 'a proven plan has a feed')
  const groups = wireGroups(job, plan, numberedBy)
  const wires = groups.flatMap(each => each.wires)
  const bounds = drawBounds(verification)
  const circuits = siteCircuits(job, plan, verification)
  const ofTub = tubPoints(job, plan, circuits, wires)
  const open = openPoints(job, verification, wires, verdict, bounds, ofTub)
  const settings = settingsOf(job, plan)
  const profile = profileOf(job.box, plan.landing)
  const straps = strapsOf(job, plan)
  const site: Site = {
    job,
    plan,
    verification,
    feed,
    profile,
    wires,
    settings,
    straps,
    bounds,
    circuits,
    open,
  }
  // Columns of a circuit that the box takes nothing from would only be noughts.
  const served = servingCircuits(circuits).flatMap(each => each.lines)
  const material = materialOf(job, plan.landing, wires)
  const ladder = layOutLadder(material)
  const labelOf = (id: string) => job.loads.find(each => each.id === id)?.label ?? id
  return {
    id: `${survey.id}/${job.box.id}`,
    head: {
      tub: survey.title,
      box: job.box.label,
      maker: job.box.maker,
      region: survey.region,
      holds: verification.holds,
      lines: headLines(site, isGiven === true),
    },
    stops: [
      ...(verification.holds ? [] : [text('stop.not-shown')]),
      text('stop.kill'),
      text('stop.signs'),
      text('stop.bypass'),
      text('stop.maker'),
    ],
    licence: [text(`licence.${survey.region}`), text('licence.ask'), text('licence.edition')],
    open,
    remarks: remarksOf(survey, job),
    panels: panelsOf(job, plan, wires, open),
    ladder,
    wires: groups,
    loadSheet: loadSheetOf({ job, plan, verification, wires, ladder }, material.loads),
    jumpers: jumpersOf(job, plan),
    straps,
    settings,
    afterReset:
      job.box.afterReset === undefined
        ? undefined
        : text('setting.after-reset', { text: job.box.afterReset }),
    meter: meterRows(job, plan, verification, bounds),
    lines: verification.lines
      .filter((_, place) => served.includes(place))
      .map(each => lineText(job, each)),
    together: togetherRows(job.box, verification).map(each => ({
      ...each,
      lineAmps: each.lineAmps.filter((_, place) => served.includes(place)),
    })),
    heat: heatTexts(job, plan, verification),
    liveWhenOff: verification.liveWhenOff.map(labelOf),
    lidNote: job.tub.supply.turnable ? text('live.turnable') : undefined,
    tools: toolTexts(job, plan),
    parts: partTexts(survey, job, plan, wires),
    changes: plan.changes.filter(isOfLoad),
    steps: stepsOf(site),
  }
}

/** A line by the function of the conductor that brings it. */
const lineText = (job: Job, { circuit, line }: Verification['lines'][number]): SheetText =>
  functionText(job, circuit === 0 || line === 'leg3' ? line : `second-${line}`)

function stepsOf(site: Site): readonly SheetStep[] {
  // Nobody is led to power by a sheet whose landing is not shown to hold.
  if (!site.verification.holds) return [lockStep(site), photoStep(), mendStep(site)]
  return [
    lockStep(site),
    photoStep(),
    removeStep(site),
    mountStep(site),
    jumperStep(site),
    landStep(site),
    reliefStep(),
    coldStep(site),
    supplyStep(site),
    fillStep(),
    powerStep(site),
    settingsStep(site),
    outputsStep(site),
    loadsStep(site),
    keypadStep(site),
    protectStep(site),
    closeStep(site),
  ].filter(each => each.actions.length > 0)
}

const wiresOf = (job: Job, cables: readonly string[]): readonly SheetText[] =>
  [
    ...new Set(
      job.tub.supply.cables
        .filter(each => cables.includes(each.id))
        .flatMap(each => each.conductors.map(one => one.function)),
    ),
  ].map(each => functionText(job, each))

/** What a circuit brings, bears and has to give; of one that no longer serves, that it does not. */
function circuitText({ job, verification }: Site, circuit: SiteCircuit): SheetText {
  const named = { circuit: circuit.name, breaker: breakerText(circuit.breaker) }
  if (!circuit.serves) return text('head.circuit-idle', named)
  return text('head.circuit', {
    ...named,
    limit: limitText(circuit),
    amps: Math.max(0, ...verification.modes.map(each => mostFrom(circuit, each))),
    wires: wiresOf(job, circuit.cables),
  })
}

function supplyTexts(site: Site): readonly SheetText[] {
  const { job, circuits } = site
  const { supply } = job.tub
  const common = {
    system: text(`system.${supply.system}`),
    frequency: supply.frequency.text,
  }
  if (circuits.length > 1)
    return [text('head.circuits', common), ...circuits.map(each => circuitText(site, each))]
  const wires = [...arriving(job)].map(each => functionText(job, each))
  return [text('head.supply', { ...common, breaker: breakerText(supply.breaker), wires })]
}

function headLines(site: Site, isGiven: boolean): readonly SheetText[] {
  const { job, plan, verification, open } = site
  const { holds, proof, smallestMargin, worstLineAmps, assumptions } = verification
  const { modes, transitions, solves } = proof
  const residual = proof.worstKcl.toExponential(0)
  return [
    ...(isGiven ? [text('head.given')] : []),
    ...(plan.changes.some(isOfLoad) ? [text('head.changed')] : []),
    ...supplyTexts(site),
    settingText(job, plan),
    holds
      ? proofText(verdictText(open), { modes, transitions, solves, residual })
      : text('head.not-proven'),
    text(assumptions.length > 0 ? 'head.margin-greatest' : 'head.margin', {
      margin: smallestMargin,
      amps: worstLineAmps,
    }),
  ]
}

function settingText({ box }: Job, { landing }: WiringPlan): SheetText {
  const { currentLimit } = landing.settings
  const both = { setting: currentLimit.text, factory: box.currentLimit.factory.text }
  return box.currentLimit.names === 'breaker'
    ? text('head.limit-breaker', { ...both, allowed: allowedAmps(box, currentLimit.si) })
    : text('head.limit', both)
}

interface Proof {
  readonly modes: number
  readonly transitions: number
  readonly solves: number
  readonly residual: string
}

/** Proven outright, or provided the points that warn are heeded. */
function verdictText(open: readonly OpenPoint[]): SheetText {
  const points = conditionsOf(open).map(each => `!${each.number}`)
  return points.length > 0 ? text('head.provided', { points }) : text('head.proven')
}

const proofText = (verdict: SheetText, { transitions, ...proof }: Proof): SheetText =>
  transitions > 0
    ? text('head.proof', { verdict, transitions, ...proof })
    : text('head.proof-modes', { verdict, ...proof })

function remarksOf(survey: Survey, job: Job): readonly SheetText[] {
  const conditions = job.loads.flatMap(({ label: load, condition }) =>
    condition === undefined ? [] : [text('open.condition', { load, condition })],
  )
  return [
    ...(survey.note === undefined ? [] : [text('open.tub-note', { note: survey.note })]),
    ...(job.box.note === undefined ? [] : [text('open.box-note', { note: job.box.note })]),
    ...conditions,
  ]
}

function heatTexts(
  { box }: Job,
  { landing }: WiringPlan,
  { heatPausesWith, assumptions }: Verification,
): readonly SheetText[] {
  const commands = heatPausesWith.map(id => commandLabel(box, id))
  return [
    commands.length > 0
      ? text('together.heat-waits', { commands })
      : text('together.heat-with-any'),
    text('together.limit', { setting: landing.settings.currentLimit.text }),
    ...(assumptions.length > 0 ? [text('together.greatest')] : []),
  ]
}
