import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { PlantCircuit } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, isMainsCircuit, plateShare, standing } from '../rule.ts'

const finding = (message: string, { load, name }: PlantCircuit): Finding => ({
  rule: offMeansOff.id,
  message,
  verdict: 'breaks',
  severity: 'danger',
  subjects: [load.id, name],
  params: { load: load.label },
  on: [],
})

function hangsOnLine(evidence: Evidence, circuit: PlantCircuit): boolean {
  const { allOff, legVolts } = evidence
  const half = 0.5 * legVolts
  const live = (node: string) => allOff.solved.potential(node) >= half
  if (!(live(circuit.a) && live(circuit.b)) || plateShare(circuit, allOff) >= LIMITS.energised)
    return false
  const nearNeutral = (at: Observation) =>
    Math.min(at.solved.potential(circuit.a), at.solved.potential(circuit.b)) < 0.1 * legVolts
  return standing(evidence).some(
    at => plateShare(circuit, at) >= LIMITS.energised && nearNeutral(at),
  )
}

/**
 * With nothing commanded no load runs, and no load is switched in its neutral alone.
 *
 * A 240 V load switched in one leg stays at 120 V to earth when off: that is how boxes are built,
 * a note for the lid and no finding here.
 */
export const offMeansOff: Rule = {
  id: 'VERIFY-7',
  title: 'Off means off',
  source: COMMON_PRACTICE,
  check: evidence => {
    if (evidence.allOff.trip) return []
    // Extra-low voltage may stay on: a keypad does by its nature, and nothing is dangerous there.
    // Audio is always on by its nature.
    const circuits = evidence.plant.circuits.filter(
      each => isMainsCircuit(each) && each.load.kind !== 'audio',
    )
    return [
      ...circuits
        .filter(each => plateShare(each, evidence.allOff) >= LIMITS.onWhenOff)
        .map(each => finding('on-when-off', each)),
      ...circuits
        .filter(each => hangsOnLine(evidence, each))
        .map(each => finding('only-neutral-switched', each)),
    ]
  },
}
