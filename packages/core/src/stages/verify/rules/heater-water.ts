import { atLeast, atMost } from '../../../base/compare.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Observation } from '../../../domain/wiring/observe.ts'
import type { PlantCircuit } from '../../../domain/wiring/plant.ts'
import type { Evidence, Rule } from '../rule.ts'
import { COMMON_PRACTICE, commandsOf, plateShare, standing } from '../rule.ts'

export const isHeating = (circuit: PlantCircuit, at: Observation): boolean =>
  circuit.load.kind === 'heater' && plateShare(circuit, at) >= LIMITS.energised

/** Whether some circuit that pushes water through the heater really runs. */
export const hasMovingWater = ({ plant }: Evidence, at: Observation): boolean =>
  plant.circuits.some(each => {
    if (!each.movesWater) return false
    const volts = plateShare(each, at)
    return atLeast(volts, LIMITS.leastMotor) && atMost(volts, LIMITS.most)
  })

/** The heater is never energised without moving water. */
export const heaterWater: Rule = {
  id: 'VERIFY-8',
  title: 'Moving water whenever the heater is on',
  source: COMMON_PRACTICE,
  check: evidence => {
    const heaters = evidence.plant.circuits.filter(each => each.load.kind === 'heater')
    const dry = standing(evidence).find(
      at => !hasMovingWater(evidence, at) && heaters.some(each => isHeating(each, at)),
    )
    const heater = heaters[0]
    if (!dry || !heater) return []
    return [
      {
        rule: heaterWater.id,
        message: 'heater-without-water',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [heater.load.id],
        params: { heater: heater.load.label },
        on: commandsOf(dry.state),
      },
    ]
  },
}
