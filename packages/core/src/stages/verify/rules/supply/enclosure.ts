import { atMost } from '../../../../base/compare.ts'
import { given, numberOf } from '../../../../base/possible.ts'
import { circuitAt } from '../../../../domain/supply/circuits.ts'
import type { SupplyDevice } from '../../../../domain/supply/supply.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, within } from '../../supply/rule.ts'

/** What the file of a device says that its switches and line terminals carry [A]. */
function ownRating(device: SupplyDevice | undefined): number {
  const { terminals = [], parts = [] } = device?.board ?? {}
  return Math.min(
    ...terminals.flatMap(each => (each.class === 'mains' ? (each.rated?.si ?? []) : [])),
    ...parts.flatMap(each => (each.kind === 'switch' ? (each.rated?.si ?? []) : [])),
  )
}

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
        const device = devices.get(id)
        if (circuitAt(supply, id)?.device !== circuit.device) return []
        const own = ownRating(device)
        const told = numberOf(rated, ENCLOSURES, `supply.devices.${id}.enclosure`)
        const least = { ...told, values: told.values.map(each => Math.min(each, own)) }
        // The panel that a circuit starts in is judged by its breaker alone, unless somebody says more.
        const isPanel = id === circuit.device && !rated
        if (isPanel && breaker.values.some(each => atMost(each, own))) return []
        const name = label ?? device?.label ?? id
        return [
          conclude(
            {
              rule: enclosure.id,
              subjects: [id],
              severity: 'danger',
              params: { device: name, unit: 'A' },
            },
            { breaker, rated: isPanel ? given(own) : least },
            point => within(point.breaker, point.rated, { message: 'enclosure' }),
          ),
        ]
      }),
    ),
}
