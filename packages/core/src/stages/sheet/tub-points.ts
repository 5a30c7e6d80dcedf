import { boundsOf } from '../../base/known.ts'
import type { Job } from '../../domain/job.ts'
import { LIMITS } from '../../domain/wiring/limits.ts'
import type { Change } from '../match/artifact.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { OpenPoint, SheetWire } from './artifact.ts'
import type { SiteCircuit } from './circuits.ts'
import { breakerText, idleCircuits, servingCircuits } from './circuits.ts'
import { heatMarks, heatText } from './heat-marks.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { numbersOf } from './site.ts'

type Point = Omit<OpenPoint, 'number'>

/** Adapters and plates are made or bought as parts; these make another tub of it. */
export const isOfLoad = ({ kind }: Change): boolean =>
  kind === 'replace' || kind === 'from-carton' || kind === 'leave-out'

const warning = (said: SheetText, subjects: readonly string[]): Point => ({
  severity: 'warning',
  says: { kind: 'text', text: said },
  subjects,
})

const wiresOf = (wires: readonly SheetWire[], { cables }: SiteCircuit): readonly SheetWire[] =>
  wires.filter(each => each.kind === 'cable' && cables.includes(each.owner))

/** That a circuit no longer serves, at the tub and at the panel. */
export const idleText = (
  message: 'open.circuit-idle' | 'supply.circuit-idle',
  wires: readonly SheetWire[],
  circuit: SiteCircuit,
): SheetText =>
  text(message, {
    circuit: circuit.name,
    breaker: breakerText(circuit.breaker),
    wires: numbersOf(wiresOf(wires, circuit)),
  })

/** One circuit left of two: what it may carry by itself; nothing where its breaker is not known. */
export function aloneTexts(
  message: 'open.circuit-alone' | 'set.circuit-alone',
  { landing }: WiringPlan,
  circuits: readonly SiteCircuit[],
): readonly SheetText[] {
  if (idleCircuits(circuits).length === 0) return []
  return servingCircuits(circuits).flatMap(({ name, breaker }) => {
    const bounds = boundsOf(breaker)
    if (!bounds) return []
    const setting = landing.settings.currentLimit.text
    const share = LIMITS.continuous * bounds.from
    return [text(message, { circuit: name, breaker: breakerText(breaker), share, setting })]
  })
}

/** Everything about this tub that nobody found by solving it, and that has to be heeded. */
export function tubPoints(
  job: Job,
  plan: WiringPlan,
  circuits: readonly SiteCircuit[],
  wires: readonly SheetWire[],
): readonly Point[] {
  const idle = idleCircuits(circuits)
  return [
    ...plan.changes.filter(isOfLoad).map(
      (change): Point => ({
        severity: 'warning',
        says: { kind: 'change', change },
        subjects: [change.load],
      }),
    ),
    ...heatMarks(job, plan).map(each => warning(heatText(each), [each.id])),
    ...idle.map(each => warning(idleText('open.circuit-idle', wires, each), each.devices)),
    ...aloneTexts('open.circuit-alone', plan, circuits).map(each =>
      warning(each, ['currentLimit']),
    ),
    ...(job.tub.supply.turnable ? [warning(text('open.turnable'), [])] : []),
  ]
}
