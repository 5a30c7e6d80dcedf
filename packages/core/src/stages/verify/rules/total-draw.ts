import { atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import type { Finding } from '../../../base/verdict.ts'
import { circuitsOf } from '../../../domain/supply/circuits.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import { allowedAmps } from '../../../domain/wiring/states.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing } from '../rule.ts'

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
    const { job, landing, lines } = evidence
    const drawn = standing(evidence).map(at => ({ at, amps: evidence.lineDraw(at) }))
    const allowed = allowedAmps(job.box, landing.settings.currentLimit.si)
    return circuitsOf(job.tub.supply).flatMap((circuit, index) => {
      const own = lines.flatMap((line, place) => (line.circuit === index ? [place] : []))
      const most = drawn.map(({ at, amps }) => ({
        at,
        value: Math.max(0, ...own.map(place => amps[place] ?? 0)),
      }))
      const found = most.reduce<(typeof most)[number] | undefined>(
        (a, b) => (a && a.value >= b.value ? a : b),
        undefined,
      )
      if (!found) return []
      // The box counts what it draws from its first circuit.
      if (index === 0 && !atMost(found.value, allowed))
        return [finding('draw-above-limit', found, allowed)]
      const breaker = boundsOf(circuit.breaker)
      return breaker && !atMost(found.value, LIMITS.continuous * breaker.from)
        ? [finding('draw-above-breaker', found, LIMITS.continuous * breaker.from)]
        : []
    })
  },
}
