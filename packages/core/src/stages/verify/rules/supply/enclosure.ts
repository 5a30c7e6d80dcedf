import { numberOf } from '../../../../base/possible.ts'
import { circuitAt } from '../../../../domain/supply/circuits.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, within } from '../../supply/rule.ts'

const ENCLOSURES = { from: 10, to: 200 } // [A] of disconnects as they are sold; common practice, no source

/** A disconnect or its enclosure carries what the breaker before it lets through. */
export const enclosure: SupplyRule = {
  id: 'SUPPLY-5',
  title: 'The disconnect carries what its breaker lets through',
  about: 'circuit',
  source: COMMON_PRACTICE,
  check: ({ survey: { supply }, devices, circuits }) =>
    circuits.flatMap(({ circuit, breaker }) =>
      supply.devices.flatMap(({ id, label, enclosure: rated }) => {
        // The panel that a circuit starts in is not this circuit's to judge, unless somebody says.
        const isOwn = circuitAt(supply, id)?.device === circuit.device
        if (!isOwn || (id === circuit.device && !rated)) return []
        const name = label ?? devices.get(id)?.label ?? id
        return [
          conclude(
            {
              rule: enclosure.id,
              subjects: [id],
              severity: 'danger',
              params: { device: name, unit: 'A' },
            },
            { breaker, rated: numberOf(rated, ENCLOSURES, `supply.devices.${id}.enclosure`) },
            point => within(point.breaker, point.rated, { message: 'enclosure' }),
          ),
        ]
      }),
    ),
}
