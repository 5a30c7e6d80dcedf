import { circuitAt } from '../../../../domain/supply/circuits.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, notCovered } from '../../supply/rule.ts'

/** A device or a cable that hangs on nothing is no part of a run: what is said of the rest leaves it out. */
export const joined: SupplyRule = {
  id: 'SUPPLY-21',
  title: 'Every piece joined to the next',
  about: 'circuit',
  source: COMMON_PRACTICE,
  check: ({ survey: { supply }, devices, circuits }) => {
    const [first] = circuits
    const loose = [
      ...supply.devices.flatMap(({ id, label }) =>
        circuitAt(supply, id) ? [] : [{ id, thing: label ?? devices.get(id)?.label ?? id }],
      ),
      ...supply.cables.flatMap(({ id, label, from }) =>
        circuitAt(supply, from) ? [] : [{ id, thing: label }],
      ),
    ]
    return loose.map(({ id, thing }) =>
      conclude(
        {
          rule: joined.id,
          subjects: [first?.circuit.device ?? id],
          topic: id,
          severity: 'danger',
          params: { thing },
        },
        {},
        () => ({ ...notCovered('joined'), params: { thing } }),
      ),
    )
  },
}
