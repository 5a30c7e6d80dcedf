import { atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import type { Finding } from '../../../base/verdict.ts'
import { circuitsOf } from '../../../domain/supply/circuits.ts'
import { joinedIn } from '../../../domain/wiring/conduction.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import { openIn } from '../../../domain/wiring/observe.ts'
import { closedIn } from '../../../domain/wiring/plant.ts'
import { allowedAmps } from '../../../domain/wiring/states.ts'
import { boardNode, leadNode } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, standing } from '../rule.ts'

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

/**
 * What is drawn from each line of the supply, in the order of `evidence.lines`, added arithmetically
 * as limits are reckoned; a motor at its plate amps where it has fewer volts.
 *
 * @returns amps by line
 */
export function lineDraw(evidence: Evidence, at: Observation): readonly number[] {
  const { plant, lines } = evidence
  const groupOf = joinedIn(plant, closedIn(plant, at.state, { open: openIn(plant, at) }))
  const groups = lines.map(line => groupOf(line.node))
  const draws = lines.map(() => 0)
  for (const { element, a, b } of consumersOf(evidence)) {
    const amps = Math.max(at.solved.amps(element), at.atPlate.amps(element))
    for (const node of [a, b]) {
      const group = groupOf(node)
      const line = group === undefined ? -1 : groups.indexOf(group)
      if (line >= 0) draws[line] = (draws[line] ?? 0) + amps
    }
  }
  return draws
}

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
    const drawn = standing(evidence).map(at => ({ at, amps: lineDraw(evidence, at) }))
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
