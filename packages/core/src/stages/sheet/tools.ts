import type { Job } from '../../domain/job.ts'
import { findTerminal } from '../../domain/job.ts'
import type { PlannedPart, WiringPlan } from '../plan/artifact.ts'
import type { Survey } from '../survey/artifact.ts'
import type { SheetWire } from './artifact.ts'
import { bondSize } from './bonding.ts'
import { heatMarks, heatPart } from './heat-marks.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'

/** The torques that this plan asks for, each once, in the order of the terminals. */
function torquesOf(job: Job, plan: WiringPlan): readonly string[] {
  const torques = job.ends.flatMap(
    end => findTerminal(job, plan.landing.ends[end.id] ?? '')?.torque?.text ?? [],
  )
  return [...new Set(torques)]
}

/** What to bring, besides the box. */
export function toolTexts(job: Job, plan: WiringPlan): readonly SheetText[] {
  const torques = torquesOf(job, plan)
  return [
    text('tool.lock'),
    text('tool.meter'),
    text('tool.clamp'),
    ...(torques.length > 0 ? [text('tool.torque', { torques })] : []),
    text('tool.crimp'),
    text('tool.insulated'),
    text('tool.labels'),
    text('tool.thermometer'),
    text('tool.dry'),
  ]
}

function plannedPart(job: Job, plan: WiringPlan, part: PlannedPart): readonly SheetText[] {
  const count = part.subjects.length
  switch (part.message) {
    case 'adapter': {
      const load = job.loads.find(each => each.id === part.subjects[0])
      const place = job.box.places.find(
        each => each.id === plan.assignments.find(one => one.load === load?.id)?.place,
      )
      const socket = job.box.board.connectors.find(each => each.id === place?.connector)
      const to = socket ? `${socket.id}, ${socket.shape}` : (place?.label ?? '')
      const plug = load?.plug?.shape
      const label = load?.label ?? ''
      return [
        plug === undefined
          ? text('part.plug', { load: label, socket: to })
          : text('part.adapter', { load: label, plug, socket: to }),
      ]
    }
    case 'ferrules':
    case 'ring-terminals':
    case 'tab-terminals':
    case 'caps':
      return [text(`part.${part.message}`, { count })]
    case 'blanking-plate':
      return []
  }
}

/** The hole that the old keypad leaves, against what the new one needs. */
function keypadPart(survey: Survey, { box }: Job): readonly SheetText[] {
  const [hole, own] = [survey.keypadHole, box.keypadHole]
  if (!hole || !own) return []
  const sizes = {
    width: hole.width.si,
    height: hole.height.si,
    ownWidth: own.width.si,
    ownHeight: own.height.si,
  }
  const isSmall = hole.width.si < own.width.si || hole.height.si < own.height.si
  const isLarge = hole.width.si > own.width.si || hole.height.si > own.height.si
  return [
    ...(isLarge ? [text('part.blanking-plate', sizes)] : []),
    ...(isSmall ? [text('part.wider-hole', sizes)] : []),
  ]
}

/** What to make or to buy besides the box. */
export function partTexts(
  survey: Survey,
  job: Job,
  plan: WiringPlan,
  wires: readonly SheetWire[],
): readonly SheetText[] {
  const marked = wires.filter(each => each.reidentify).length
  const hasHeater = job.box.supplied.some(each => each.kind === 'heater')
  return [
    ...plan.parts.flatMap(each => plannedPart(job, plan, each)),
    ...heatMarks(job, plan).map(heatPart),
    ...keypadPart(survey, job),
    ...(marked > 0 ? [text('part.marking', { count: 2 * marked })] : []),
    ...(hasHeater ? [text('part.gaskets')] : []),
    text('part.bond', { size: bondSize(job.tub.region) }),
    text('part.relief'),
  ]
}
