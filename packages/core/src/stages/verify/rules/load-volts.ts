import { atLeast, atMost } from '../../../base/compare.ts'
import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { PlantCircuit } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, plateShare, standing, worst } from '../rule.ts'

function finding(
  message: 'load-over-volts' | 'motor-starved',
  circuit: PlantCircuit,
  at: Observation,
  factor: number,
): Finding {
  const plate = circuit.draw.volts
  return {
    rule: loadVolts.id,
    message,
    verdict: 'breaks',
    severity: 'danger',
    subjects: [circuit.load.id],
    params: {
      load: circuit.load.label,
      volts: plateShare(circuit, at) * plate * factor,
      plate,
      share: plateShare(circuit, at) * factor,
    },
    on: commandsOf(at.state),
  }
}

function tooMuch({ plant, band, ...evidence }: Evidence): readonly Finding[] {
  const states = standing({ plant, band, ...evidence })
  return worst(states, plant.circuits, plateShare)
    .filter(({ value }) => !atMost(value * band.high, LIMITS.most))
    .map(({ thing, at }) => finding('load-over-volts', thing, at, band.high))
}

function tooLittle({ plant, band, ...evidence }: Evidence): readonly Finding[] {
  const states = standing({ plant, band, ...evidence })
  const motors = plant.circuits.filter(each => each.isMotor)
  const starved = (circuit: PlantCircuit, at: Observation) => {
    const value = plateShare(circuit, at)
    return value >= LIMITS.energised ? -value : undefined
  }
  return worst(states, motors, starved)
    .filter(({ value }) => !atLeast(-value * band.low, LIMITS.leastMotor))
    .map(({ thing, at }) => finding('motor-starved', thing, at, band.low))
}

/** Each load gets the volts of its plate, in the strap position it has, over the supply band. */
export const loadVolts: Rule = {
  id: 'VERIFY-2',
  title: 'Volts at each load',
  source: COMMON_PRACTICE,
  check: evidence => [...tooMuch(evidence), ...tooLittle(evidence)],
}
