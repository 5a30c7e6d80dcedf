import type { Job } from '../../domain/job.ts'
import { findTerminal } from '../../domain/job.ts'
import { isPowered } from '../../domain/load/load.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Expected, Verification } from '../verify/artifact.ts'
import type { MeterRow } from './artifact.ts'
import type { Bound } from './bounds.ts'
import { boundFor, boundText, withinBound } from './bounds.ts'
import { text } from './messages.ts'
import { commandLabel } from './together.ts'

/** The two terminals that a circuit of a load is measured between. */
export function terminalsOf(
  job: Job,
  plan: WiringPlan,
  load: string,
  circuit: string,
): readonly string[] {
  const powered = job.loads.filter(isPowered).find(each => each.id === load)
  const across = powered?.circuits.find(each => each.id === circuit)?.across ?? []
  return across.flatMap(lead => {
    const terminal = findTerminal(job, plan.landing.ends[`${load}.${lead}`] ?? '')
    return terminal ? [terminal.id] : []
  })
}

function meterRow(job: Job, plan: WiringPlan, each: Expected, bounds: readonly Bound[]): MeterRow {
  const { assumed } = each.draw
  const bound = boundFor(bounds, each.load, each.circuit)
  return {
    load: each.load,
    label: each.label,
    command: each.command === undefined ? undefined : commandLabel(job.box, each.command),
    terminals: terminalsOf(job, plan, each.load, each.circuit).join(' – '),
    volts: each.volts,
    amps: assumed ? undefined : withinBound(each.amps, bound),
    unknown: assumed && bound ? text('meter.unknown-amps', { bound: boundText(bound) }) : undefined,
  }
}

/** What the meter should read, load by load and output by output. */
export const meterRows = (
  job: Job,
  plan: WiringPlan,
  { expected }: Verification,
  bounds: readonly Bound[],
): readonly MeterRow[] => expected.map(each => meterRow(job, plan, each, bounds))
