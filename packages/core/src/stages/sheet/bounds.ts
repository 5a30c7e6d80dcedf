import type { DrawBound, Finding } from '../../base/verdict.ts'
import type { Job } from '../../domain/job.ts'
import type { Assumption, Verification } from '../verify/artifact.ts'
import type { SheetParam, SheetText } from './messages.ts'
import { text } from './messages.ts'
import { commandLabel } from './together.ts'

/** What the plan wants of draws that are not one known value: one figure each on the whole sheet. */
export interface Bound {
  readonly load: string
  readonly label: string
  readonly kind: Assumption['kind']
  /** The circuits of the load that share the figure. */
  readonly circuits: readonly string[]
  /** Greatest draw that the plan is shown to bear [A]. */
  readonly atMost: number
  /** Least draw that the plan is shown to bear; absent where none is too small [A]. */
  readonly atLeast: number | undefined
}

const tightest = (assumed: number, all: readonly DrawBound[]) => {
  const least = all.flatMap(each => each.atLeast ?? [])
  return {
    atMost: Math.min(assumed, ...all.flatMap(each => each.atMost ?? [])),
    atLeast: least.length > 0 ? Math.max(...least) : undefined,
  }
}

/** Assumptions that are read off one clamp meter at one motor: whose draw nobody knows, by load. */
const isTogether = (a: Assumption, b: Assumption): boolean =>
  a.load === b.load && (a.circuit === b.circuit || (a.kind === 'unknown' && b.kind === 'unknown'))

/**
 * The bound of each uncertain draw: the tightest of what is assumed and of every finding.
 *
 * Each finding is shown not to arise with all its draws within its own bounds, so all of them are
 * within the tightest. Unknown draws of one load share a figure; of ranged ones each has its own.
 */
export function drawBounds({ assumptions, findings }: Verification): readonly Bound[] {
  const told = findings.flatMap(each => each.provided ?? [])
  return assumptions.flatMap((each, index) => {
    const group = assumptions.filter(other => isTogether(each, other))
    if (assumptions.findIndex(other => isTogether(each, other)) !== index) return []
    const circuits = group.map(({ circuit }) => circuit)
    const own = told.filter(({ load, circuit }) => load === each.load && circuits.includes(circuit))
    const assumed = Math.min(...group.map(({ atMost }) => atMost))
    const { load, label, kind } = each
    return [{ load, label, kind, circuits, ...tightest(assumed, own) }]
  })
}

export const boundFor = (
  bounds: readonly Bound[],
  load: string,
  circuit: string,
): Bound | undefined => bounds.find(each => each.load === load && each.circuits.includes(circuit))

/** A finding that names the sheet's one figure instead of its own, which is never the lower. */
export function withTightest(finding: Finding, bounds: readonly Bound[]): Finding {
  if (!finding.provided) return finding
  return {
    ...finding,
    provided: finding.provided.map(each => {
      const bound = boundFor(bounds, each.load, each.circuit)
      if (!bound) return each
      return {
        ...each,
        ...(each.atMost === undefined ? {} : { atMost: bound.atMost }),
        ...(each.atLeast === undefined || bound.atLeast === undefined
          ? {}
          : { atLeast: bound.atLeast }),
      }
    }),
  }
}

export const boundText = ({ atMost, atLeast }: Bound): SheetText =>
  atLeast === undefined
    ? text('bound.most', { amps: atMost })
    : text('bound.both', { least: atLeast, most: atMost })

/** A load by its label and the outputs that run the circuits in question. */
export function boundLabel(job: Job, { expected }: Verification, bound: Bound): SheetParam {
  const commands = expected
    .filter(each => each.load === bound.load && bound.circuits.includes(each.circuit))
    .flatMap(({ command }) => (command === undefined ? [] : [commandLabel(job.box, command)]))
  return commands.length === 0 ? bound.label : text('bound.load', { load: bound.label, commands })
}

interface Band {
  readonly low: number
  readonly nominal: number
  readonly high: number
}

/** A band that ends at the bound: nobody is to read two greatest figures for one load. */
export function withinBound(band: Band, bound: Bound | undefined): Band {
  if (!bound) return band
  const least = bound.atLeast ?? band.low
  const clip = (amps: number) => Math.min(bound.atMost, Math.max(least, amps))
  return { low: clip(band.low), nominal: clip(band.nominal), high: clip(band.high) }
}
