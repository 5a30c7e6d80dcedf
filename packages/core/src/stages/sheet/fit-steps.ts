import type { Job } from '../../domain/job.ts'
import { BOX, findTerminal, isCord } from '../../domain/job.ts'
import type { Load } from '../../domain/load/load.ts'
import { arriving } from '../../domain/wiring/states.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { SheetStep, SheetWire } from './artifact.ts'
import { bondTexts } from './bonding.ts'
import type { SiteCircuit } from './circuits.ts'
import { idleCircuits, isSplit } from './circuits.ts'
import { coldReadings, insulationTexts, runReadings } from './cold-checks.ts'
import type { HeatMark } from './heat-marks.ts'
import { heatMarks } from './heat-marks.ts'
import { deadReadings } from './live-checks.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { keepsNeutral } from './neutral.ts'
import type { Site } from './site.ts'
import { isLanded, numbersOf } from './site.ts'
import { idleText } from './tub-points.ts'
import { panelLabel } from './wires.ts'

function lockCaution(job: Job, circuits: readonly SiteCircuit[]): SheetText {
  if (circuits.length > 1)
    return text('caution.lock-circuits', { circuits: circuits.map(each => each.name) })
  const device = circuits[0]?.offLabel ?? ''
  return text(isCord(job) ? 'caution.lock-cord' : 'caution.lock', { device })
}

/** Every circuit off: those that no longer serve as well, for their conductors end at the tub too. */
function offTexts(job: Job, circuits: readonly SiteCircuit[]): readonly SheetText[] {
  const offs = circuits.map(({ offLabel: device }) =>
    text(isCord(job) ? 'lock.cord' : 'lock.off', { device }),
  )
  return [
    ...offs,
    ...(isCord(job) ? [text('lock.cord-means')] : []),
    ...(circuits.length > 1 ? [text('lock.circuits-mean')] : []),
  ]
}

export function lockStep({ job, circuits }: Site): SheetStep {
  const neutrals = isCord(job) ? [] : circuits.filter(({ off }) => keepsNeutral(job, off))
  const idle = idleCircuits(circuits)
  return {
    name: 'lock',
    title: text('step.lock'),
    caution: {
      severity: 'danger',
      text: lockCaution(job, circuits),
    },
    licensed: false,
    actions: [
      ...offTexts(job, circuits),
      ...(job.tub.supply.turnable ? [text('lock.turnable')] : []),
      ...idle.map(each => text('lock.idle', { circuit: each.name })),
      text('lock.meter'),
      text('lock.pairs'),
      ...neutrals.map(each => text('lock.neutral-stays', { device: each.offLabel })),
      text('lock.meter-again'),
      text('lock.capacitors'),
    ],
    readings: [...deadReadings(job), { what: text('read.time'), expected: undefined, unit: '' }],
    outside: [text('outside.dead')],
  }
}

export const photoStep = (): SheetStep => ({
  name: 'photo',
  title: text('step.photo'),
  caution: { severity: 'notice', text: text('caution.photo') },
  licensed: false,
  actions: [text('photo.open'), text('photo.label'), text('photo.function')],
  readings: [],
  outside: [],
})

/** The heater that the box brings; undefined where the tub keeps its own. */
const newHeater = ({ box, loads }: Job): Load | undefined =>
  loads.find(
    each => each.kind === 'heater' && box.supplied.some(supplied => supplied.id === each.id),
  )

/** What was changed at the tub is done before the old box comes out; a load left out keeps no live lead. */
const changeTexts = ({ plan, open }: Site): readonly SheetText[] => {
  const points = open.filter(each => each.says.kind === 'change').map(each => `!${each.number}`)
  return [
    ...(points.length > 0 ? [text('remove.changes', { points })] : []),
    ...plan.changes
      .filter(each => each.kind === 'leave-out')
      .map(({ label: load }) => text('remove.left-out', { load })),
  ]
}

export const removeStep = (site: Site): SheetStep => ({
  name: 'remove',
  title: text('step.remove'),
  caution: { severity: 'caution', text: text('caution.remove') },
  licensed: false,
  actions: [
    text('remove.water'),
    text('remove.leads'),
    text('remove.heat-marks'),
    ...heatTexts(site, ['load']),
    ...changeTexts(site),
    ...(site.job.box.supplied.some(each => each.kind === 'probe') ? [text('remove.probes')] : []),
    text(newHeater(site.job) ? 'remove.box' : 'remove.box-alone'),
  ],
  readings: [],
  outside: [],
})

export function mountStep({ job }: Site): SheetStep {
  const heater = job.loads.find(each => each.kind === 'heater')
  const probes = job.loads.flatMap(each =>
    each.kind === 'probe'
      ? [text('mount.probe', { probe: each.label, place: text(`place.${each.place}`) })]
      : [],
  )
  const fitted = newHeater(job) ? 'mount.heater' : 'mount.heater-kept'
  return {
    name: 'mount',
    title: text('step.mount'),
    caution: { severity: 'caution', text: text('caution.mount') },
    licensed: false,
    actions: [
      text('mount.box', { box: job.box.label }),
      ...(heater ? [text(fitted, { heater: heater.label })] : []),
      ...probes,
      ...bondTexts(job),
    ],
    readings: [],
    outside: [],
  }
}

const SMALL = ['low-voltage', 'sensor']

export const isHeater = (job: Job, wire: SheetWire): boolean =>
  job.loads.find(each => each.id === wire.owner)?.kind === 'heater'

/** A lead that is landed by itself, on no plug. */
const isBare = (job: Job, plan: WiringPlan, wire: SheetWire): boolean => {
  const place = plan.assignments.find(each => each.load === wire.owner)?.place
  return job.box.places.find(each => each.id === place)?.connector === undefined
}

/** The heater's earth is landed with the board still cold, so that the earth check reaches its tube. */
export const isEarthedEarly = (job: Job, plan: WiringPlan, wire: SheetWire): boolean =>
  isHeater(job, wire) && wire.function === 'earth' && isBare(job, plan, wire)

/** Load leads of mains volts that wait unplugged until they are tried one by one. */
export const isWaiting = (job: Job, wire: SheetWire): boolean =>
  wire.kind === 'lead' && isLanded(wire) && !isSmall(job, wire)

/** A lead of a probe, the keypad, an extra-low-voltage light: plugged in before the first power. */
function isSmall(job: Job, wire: SheetWire): boolean {
  const terminal = job.box.board.terminals.find(each => each.id === wire.ends[0]?.terminal)
  return terminal !== undefined && SMALL.includes(terminal.class)
}

function tailTexts({ job, wires }: Site): readonly SheetText[] {
  return wires
    .filter(each => each.kind === 'tail')
    .flatMap(wire =>
      wire.ends.map(end =>
        text('land.tail', {
          wire: wire.number,
          device: panelLabel(job, wire.owner),
          terminal: end.terminalLabel || (end.terminal ?? ''),
        }),
      ),
    )
}

function movedTexts({ job, plan, wires }: Site): readonly SheetText[] {
  return plan.moved.flatMap(({ end, from, to }) => {
    const wire = wires.find(each => each.ends.some(one => one.end === end))
    const label = (name: string) => findTerminal(job, name)?.label ?? name
    return wire ? [text('land.move', { wire: wire.number, from: label(from), to: label(to) })] : []
  })
}

/** A sentence about some wires, where there are any. */
const about = (
  message:
    | 'land.supply'
    | 'supply.between'
    | 'supply.low-volts'
    | 'land.re-identify'
    | 'land.low-volts'
    | 'land.heater-earth'
    | 'land.heater'
    | 'land.loads'
    | 'land.caps',
  wires: readonly SheetWire[],
): readonly SheetText[] => (wires.length > 0 ? [text(message, { wires: numbersOf(wires) })] : [])

/** Terminals of the box that more than one wire lands on: the verifier has seen that they may. */
function sharedTexts(wires: readonly SheetWire[]): readonly SheetText[] {
  const used = wires.flatMap(each =>
    each.ends.flatMap(end => (end.panel === BOX && end.terminal ? [end.terminal] : [])),
  )
  const shared = used.filter((each, at) => used.indexOf(each) !== at)
  const terminals = [...new Set(shared)]
  return terminals.length > 0 ? [text('land.shared', { terminals })] : []
}

/** Everything but the supply: the board is checked cold while nothing upstream can answer for it. */
export function landStep(site: Site): SheetStep {
  const { job, plan, wires } = site
  const waiting = wires.filter(each => isWaiting(job, each))
  const heater = waiting.filter(each => isHeater(job, each))
  const leads = wires.filter(each => each.kind === 'lead')
  const capped = leads.filter(wire =>
    wire.ends.some(each => plan.landing.ends[each.end] === 'insulated'),
  )
  return {
    name: 'land',
    title: text('step.land'),
    caution: { severity: 'danger', text: text('caution.land') },
    licensed: true,
    actions: [
      text('land.supply-waits'),
      text('land.workmanship'),
      ...sharedTexts(wires),
      text('land.torque'),
      ...about(
        'land.re-identify',
        leads.filter(each => each.reidentify),
      ),
      ...about(
        'land.low-volts',
        leads.filter(each => isSmall(job, each)),
      ),
      ...about(
        'land.heater-earth',
        heater.filter(each => isEarthedEarly(job, plan, each)),
      ),
      ...about(
        'land.heater',
        heater.filter(each => !isEarthedEarly(job, plan, each)),
      ),
      ...about(
        'land.loads',
        waiting.filter(each => !isHeater(job, each)),
      ),
      ...about('land.caps', capped),
    ],
    readings: [],
    outside: [],
  }
}

/** What got hot is cut out where the hand is anyway. */
const heatTexts = ({ job, plan }: Site, of: readonly HeatMark['of'][]): readonly SheetText[] =>
  heatMarks(job, plan)
    .filter(each => of.includes(each.of))
    .map(({ of: kind, label: thing }) => text(`cut.heat-${kind}`, { thing }))

/** Wires that run between supply devices, upstream of the box. */
const isUpstream = (wire: SheetWire): boolean =>
  wire.kind === 'cable' && !wire.ends.some(each => each.panel === BOX)

/** What is upstream of the tub is opened, seen to and shut again; a cord's plug is sealed. */
function upstreamTexts(site: Site): readonly SheetText[] {
  const { job, wires, circuits } = site
  const heat = heatTexts(site, ['device', 'cable'])
  if (isCord(job)) return [...heat, ...movedTexts(site)]
  return [
    text(circuits.length > 1 ? 'supply.upstream-circuits' : 'supply.upstream'),
    // What feeds the first device is described nowhere, so nothing says that it opens the neutral.
    ...(arriving(job).has('neutral') ? [text('supply.neutral-stays')] : []),
    ...heat,
    ...idleCircuits(circuits).map(each => idleText('supply.circuit-idle', wires, each)),
    ...movedTexts(site),
    ...about('supply.between', wires.filter(isUpstream)),
    ...tailTexts(site),
    text('supply.shut'),
  ]
}

export function supplyStep(site: Site): SheetStep {
  const { job, plan, feed, wires, circuits } = site
  const ofIdle = idleCircuits(circuits).flatMap(each => each.cables)
  const cables = wires.filter(each => each.kind === 'cable' && !ofIdle.includes(each.owner))
  const capped = cables.filter(wire =>
    wire.ends.some(each => plan.landing.ends[each.end] === 'insulated'),
  )
  const runs = runReadings(job, plan.landing, feed, circuits)
  return {
    name: 'supply',
    title: text('step.supply'),
    caution: {
      severity: 'danger',
      text: text(isCord(job) ? 'caution.supply-cord' : 'caution.supply'),
    },
    licensed: true,
    actions: [
      ...upstreamTexts(site),
      ...about(
        'land.re-identify',
        cables.filter(each => each.reidentify),
      ),
      ...about(
        'land.supply',
        cables.filter(each => !isUpstream(each) && !capped.includes(each)),
      ),
      ...(isSplit(circuits) ? [text('supply.circuits-apart')] : []),
      ...(cables.some(each => each.function === 'neutral') ? [] : [text('land.no-neutral')]),
      ...about('land.caps', capped),
      text('land.torque'),
      ...about(
        'supply.low-volts',
        wires.filter(each => each.kind === 'lead' && isSmall(job, each)),
      ),
    ],
    readings: runs,
    outside: runs.length > 0 ? [text('outside.bond')] : [],
  }
}

export function jumperStep({ plan, straps: found }: Site): SheetStep {
  const jumpers = plan.jumpers.map(
    ({ jumper, label: what, fromLabel: from, toLabel: to, moves }) =>
      moves
        ? text('jumper.move', { jumper, what, from, to })
        : text('jumper.leave', { jumper, what, to }),
  )
  const straps = found.map(({ label: load, from, to, moves }) =>
    moves ? text('strap.move', { load, from, to }) : text('strap.leave', { load, to }),
  )
  return {
    name: 'jumpers',
    title: text('step.jumpers'),
    caution: { severity: 'danger', text: text('caution.jumpers') },
    licensed: false,
    actions: [...jumpers, ...straps],
    readings: [],
    outside: [],
  }
}

export const reliefStep = (): SheetStep => ({
  name: 'relief',
  title: text('step.relief'),
  caution: { severity: 'caution', text: text('caution.relief') },
  licensed: false,
  actions: [text('relief.clamp'), text('relief.loop'), text('relief.holes'), text('relief.clear')],
  readings: [],
  outside: [],
})

export const coldStep = ({ job, plan, feed }: Site): SheetStep => ({
  name: 'cold',
  title: text('step.cold'),
  caution: { severity: 'warning', text: text('caution.cold') },
  licensed: false,
  actions: [text('cold.dead'), text('cold.zero'), ...insulationTexts(job, plan.landing, feed)],
  readings: coldReadings(job, plan, feed),
  outside: [text('outside.cold'), text('outside.bond')],
})

export const fillStep = (): SheetStep => ({
  name: 'fill',
  title: text('step.fill'),
  caution: { severity: 'caution', text: text('caution.fill') },
  licensed: false,
  actions: [text('fill.valves'), text('fill.well'), text('fill.air'), text('fill.look')],
  readings: [],
  outside: [],
})
