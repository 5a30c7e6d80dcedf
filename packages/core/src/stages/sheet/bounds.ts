import type { Job } from '../../domain/job.ts'
import type { Verification } from '../verify/artifact.ts'
import type { SheetParam, SheetText } from './messages.ts'
import { text } from './messages.ts'
import { commandLabel } from './together.ts'

/** Points whose finding holds only provided some draw is within bounds. */
export type BoundingPoints = readonly number[]

/**
 * The most that a draw which is not known may be. The verifier's own bound may lie lower: the
 * points that say so are named with it, so that nobody stops at the higher figure.
 */
export const boundText = (amps: number, points: BoundingPoints): SheetText =>
  points.length > 0
    ? text('bound.lower', { amps, points: points.map(each => `!${each}`) })
    : text('bound.amps', { amps })

/** A load by its label and the output that runs the circuit in question. */
export function circuitLabel(
  job: Job,
  { expected }: Verification,
  { load, circuit, label }: { load: string; circuit: string; label: string },
): SheetParam {
  const command = expected.find(each => each.load === load && each.circuit === circuit)?.command
  return command === undefined
    ? label
    : text('bound.load', { load: label, command: commandLabel(job.box, command) })
}
