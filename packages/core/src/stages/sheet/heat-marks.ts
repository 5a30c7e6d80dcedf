import type { Job } from '../../domain/job.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { panelLabel } from './wires.ts'

/** Something that was found with marks of heat. */
export interface HeatMark {
  readonly of: 'load' | 'device' | 'cable'
  readonly id: string
  readonly label: string
}

/** A load in whose place another one comes takes its marks along. */
const isReplaced = ({ changes }: WiringPlan, load: string): boolean =>
  changes.some(each => each.load === load && each.kind === 'replace')

export const heatMarks = (job: Job, plan: WiringPlan): readonly HeatMark[] => [
  ...job.loads
    .filter(each => each.heatMark === true && !isReplaced(plan, each.id))
    .map(({ id, label }) => ({ of: 'load' as const, id, label })),
  ...job.tub.supply.devices
    .filter(each => each.heatMark === true)
    .map(({ id }) => ({ of: 'device' as const, id, label: panelLabel(job, id) })),
  ...job.tub.supply.cables
    .filter(each => each.heatMark === true)
    .map(({ id, label }) => ({ of: 'cable' as const, id, label })),
]

/**
 * What is done about it. Metal that was hot has lost its spring and its plating: tightened again it
 * loosens again. Common practice, no source.
 */
export const heatText = ({ of, label: thing }: HeatMark): SheetText =>
  text(`open.heat-${of}`, { thing })

/** What to buy for it. */
export const heatPart = ({ of, label: thing }: HeatMark): SheetText =>
  text(`part.heat-${of}`, { thing })
