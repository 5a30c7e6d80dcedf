import type { FeedFunction, LeadFunction, Terminal } from '../../domain/board/board.ts'
import { COLOUR_LETTERS } from '../../domain/described.ts'
import type { End, Job } from '../../domain/job.ts'
import { boardLabel, findTerminal, placeOf } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { Load } from '../../domain/load/load.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { SheetWire, WireEnd, WireGroup, WireRole } from './artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'

const ROLES: Readonly<Record<LeadFunction | FeedFunction, WireRole>> = {
  leg1: 'leg1',
  leg2: 'leg2',
  leg3: 'leg3',
  neutral: 'neutral',
  earth: 'earth',
  'second-leg1': 'leg1',
  'second-leg2': 'leg2',
  'second-neutral': 'neutral',
  'second-earth': 'earth',
  hot: 'hot',
  high: 'hot',
  low: 'low',
  common: 'return',
  signal: 'signal',
  data: 'signal',
}

/** What a conductor is called: the one line of a 230 V supply is no leg. */
export const functionText = (job: Job, name: LeadFunction | FeedFunction): SheetText =>
  name === 'leg1' && job.tub.supply.system === 'single-phase-230'
    ? text('function.line')
    : text(`function.${name}`)

/** What a person calls a panel. */
export const panelLabel = boardLabel

function fixingOf({ kind, torque }: Terminal): SheetText {
  switch (kind) {
    case 'screw':
      return torque ? text('fix.screw', { torque: torque.text }) : text('fix.screw-maker')
    case 'stud':
      return torque ? text('fix.stud', { torque: torque.text }) : text('fix.stud-maker')
    case 'tab':
      return text('fix.tab')
    case 'pin':
      return text('fix.pin')
  }
}

function wireEnd(job: Job, landing: Landing, end: End): WireEnd {
  const terminal = findTerminal(job, landing.ends[end.id] ?? '')
  return {
    end: end.id,
    panel: end.board,
    panelLabel: panelLabel(job, end.board),
    ...(terminal
      ? {
          terminal: terminal.id,
          terminalLabel: terminal.label ?? '',
          fixing: fixingOf(terminal),
        }
      : {}),
  }
}

function notesOf(job: Job, plan: WiringPlan, ends: readonly End[]): readonly SheetText[] {
  return ends.flatMap(end => {
    const at = plan.landing.ends[end.id]
    const moved = plan.moved.find(each => each.end === end.id)
    const from = moved && findTerminal(job, moved.from)
    return [
      ...(plan.reidentify.includes(end.id) ? [text('note.re-identify')] : []),
      ...(at === 'insulated' ? [text('note.insulated')] : []),
      ...(at === 'loose' ? [text('note.loose')] : []),
      ...(moved ? [text('note.moved', { from: from?.label ?? moved.from })] : []),
    ]
  })
}

const unique = (notes: readonly SheetText[]): readonly SheetText[] =>
  notes.filter((note, at) => notes.findIndex(each => each.message === note.message) === at)

function sheetWire(job: Job, plan: WiringPlan, ends: readonly End[], number: number): SheetWire[] {
  const first = ends[0]
  if (!first) return []
  return [
    {
      number,
      id: first.of === 'cable' ? `${first.owner}.${first.part}` : first.id,
      kind: first.of,
      owner: first.owner,
      function: first.function,
      functionText: first.of === 'tail' ? text('function.tail') : functionText(job, first.function),
      role: ROLES[first.function],
      colour: first.colour,
      letters: COLOUR_LETTERS[first.colour],
      size: first.size.text,
      ends: ends.map(end => wireEnd(job, plan.landing, end)),
      reidentify: ends.some(end => plan.reidentify.includes(end.id)),
      notes: unique(notesOf(job, plan, ends)),
    },
  ]
}

const placeOrder = (job: Job, numberedBy: Landing, load: Load): number => {
  const place = placeOf(job, numberedBy, load)?.id
  const index = job.box.places.findIndex(each => each.id === place)
  return index < 0 ? job.box.places.length : index
}

/** Ends that belong to one conductor, conductors in the order in which they are numbered. */
function conductorsOf(job: Job, numberedBy: Landing): readonly (readonly End[])[] {
  const endsOf = (of: End['of'], owner: string) =>
    job.ends.filter(each => each.of === of && each.owner === owner)
  const cables = job.tub.supply.cables.flatMap(cable =>
    cable.conductors.map(conductor =>
      endsOf('cable', cable.id).filter(each => each.part === conductor.id),
    ),
  )
  const tails = job.tub.supply.devices.flatMap(({ id }) => endsOf('tail', id).map(end => [end]))
  const loads = [...job.loads].sort(
    (a, b) => placeOrder(job, numberedBy, a) - placeOrder(job, numberedBy, b),
  )
  return [...cables, ...tails, ...loads.flatMap(load => endsOf('lead', load.id).map(end => [end]))]
}

function plugOf(job: Job, plan: WiringPlan, load: Load): SheetText | undefined {
  const place = job.box.places.find(
    each => each.id === plan.assignments.find(assigned => assigned.load === load.id)?.place,
  )
  const socket = job.box.board.connectors.find(each => each.id === place?.connector)
  if (!socket) return load.plug && text('plug.none')
  if (!(load.id in plan.landing.adapters))
    return text('plug.own', { shape: socket.shape, socket: socket.id })
  const to = { socket: socket.id, socketShape: socket.shape }
  return load.plug
    ? text('plug.adapter', { shape: load.plug.shape, ...to })
    : text('plug.adapter-bare', to)
}

function titleOf(job: Job, plan: WiringPlan, wire: SheetWire): SheetText {
  if (wire.kind === 'tail') return text('tail.white', { device: panelLabel(job, wire.owner) })
  const cable = job.tub.supply.cables.find(each => each.id === wire.owner)
  if (wire.kind === 'cable' && cable)
    return text('owner.cable', {
      cable: cable.label,
      from: panelLabel(job, cable.from),
      to: panelLabel(job, cable.to),
    })
  const load = job.loads.find(each => each.id === wire.owner)
  const assigned = plan.assignments.find(each => each.load === wire.owner)?.place
  const place = job.box.places.find(each => each.id === assigned)
  const label = load?.label ?? wire.owner
  return place
    ? text('owner.load', { load: label, place: place.label })
    : text('owner.load-unplaced', { load: label })
}

/**
 * Every conductor of the job, numbered: the supply first, then load by load as the box has them.
 *
 * @param numberedBy - the landing whose places decide the order: once wires carry labels, no label may
 *   come to mean another wire, wherever an end is found
 */
export function wireGroups(
  job: Job,
  plan: WiringPlan,
  numberedBy: Landing = plan.landing,
): readonly WireGroup[] {
  const wires = conductorsOf(job, numberedBy)
    .filter(ends => ends.length > 0)
    .flatMap((ends, index) => sheetWire(job, plan, ends, index + 1))
  const groups: WireGroup[] = []
  for (const wire of wires) {
    const last = groups.at(-1)
    const isSame = last?.owner === wire.owner && last.wires[0]?.kind === wire.kind
    if (last && isSame) groups[groups.length - 1] = { ...last, wires: [...last.wires, wire] }
    else {
      const load = job.loads.find(each => each.id === wire.owner)
      groups.push({
        owner: wire.owner,
        title: titleOf(job, plan, wire),
        plug: wire.kind === 'lead' && load ? plugOf(job, plan, load) : undefined,
        wires: [wire],
      })
    }
  }
  return groups
}
