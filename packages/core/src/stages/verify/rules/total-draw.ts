import { atMost } from '../../../base/compare.ts'
import type { Complex } from '../../../base/complex.ts'
import { boundsOf } from '../../../base/known.ts'
import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import { allowedAmps } from '../../../domain/wiring/states.ts'
import { boardNode, leadNode } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing, worst } from '../rule.ts'

interface Consumer {
  readonly element: string
  readonly a: string
  readonly b: string
}

function consumersOf({ plant }: Evidence): readonly Consumer[] {
  const loads = plant.circuits.map(({ element, load, circuit }) => ({
    element,
    a: leadNode(load.id, circuit.across[0]),
    b: leadNode(load.id, circuit.across[1]),
  }))
  const boards = plant.parts.flatMap(({ part, board, element }) =>
    part.kind === 'transformer'
      ? [{ element, a: boardNode(board, part.primary[0]), b: boardNode(board, part.primary[1]) }]
      : [],
  )
  return [...loads, ...boards]
}

const isNear = (volts: Complex, leg: number): boolean => {
  const [re, im] = [volts.re - leg, volts.im]
  return Math.sqrt(re * re + im * im) < 0.25 * Math.abs(leg)
}

/**
 * What is drawn from each leg, added arithmetically as limits are reckoned; a motor at its plate amps
 * where it has fewer volts.
 *
 * @returns amps from leg 1 and from leg 2
 */
export function legDraw(evidence: Evidence, at: Observation): readonly [number, number] {
  const { legVolts } = evidence
  let [first, second] = [0, 0]
  for (const { element, a, b } of consumersOf(evidence)) {
    const amps = Math.max(at.solved.amps(element), at.atPlate.amps(element))
    for (const node of [a, b]) {
      const volts = at.solved.volts(node)
      if (isNear(volts, legVolts)) first += amps
      else if (isNear(volts, -legVolts)) second += amps
    }
  }
  return [first, second]
}

export const worstLegDraw = (evidence: Evidence, at: Observation): number =>
  Math.max(...legDraw(evidence, at))

const finding = (
  message: string,
  { value, at }: { value: number; at: Observation },
  limit: number,
): Finding => ({
  rule: totalDraw.id,
  message,
  verdict: 'breaks',
  severity: 'warning',
  subjects: ['currentLimit'],
  params: { amps: value, limit },
  on: commandsOf(at.state),
})

/** What may run together stays within the current limit and within 80 % of the breaker. */
export const totalDraw: Rule = {
  id: 'VERIFY-15',
  title: 'Total draw within the current limit and the breaker',
  source: COMMON_PRACTICE,
  check: evidence => {
    const { job, landing } = evidence
    const [found] = worst(standing(evidence), [0], (_, at) => worstLegDraw(evidence, at))
    if (!found) return []
    const allowed = allowedAmps(job.box, landing.settings.currentLimit.si)
    const breaker = boundsOf(job.tub.supply.breaker)
    if (!atMost(found.value, allowed)) return [finding('draw-above-limit', found, allowed)]
    if (breaker && !atMost(found.value, LIMITS.continuous * breaker.from))
      return [finding('draw-above-breaker', found, LIMITS.continuous * breaker.from)]
    return []
  },
}
