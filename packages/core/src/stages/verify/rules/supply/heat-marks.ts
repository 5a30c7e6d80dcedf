import { COMMON_PRACTICE } from '../../rule.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, fact } from '../../supply/rule.ts'

/** What was once too hot is replaced, never tightened and used again. */
export const heatMarks: SupplyRule = {
  id: 'SUPPLY-20',
  title: 'No marks of heat',
  about: 'segment',
  source: COMMON_PRACTICE,
  check: ({ survey: { supply }, devices }) => {
    const looked = [
      ...supply.devices.map(({ id, label, heatMark }) => ({
        id,
        label: label ?? devices.get(id)?.label ?? id,
        heatMark,
        mark: 'heat-mark-device',
      })),
      ...supply.cables.map(each => ({ ...each, mark: 'heat-mark-cable' })),
    ]
    return looked.flatMap(({ id, label: thing, heatMark, mark }) =>
      heatMark === undefined
        ? []
        : [
            conclude(
              { rule: heatMarks.id, subjects: [id], severity: 'danger', params: { thing } },
              {},
              () => fact(!heatMark, { message: heatMark ? mark : 'no-heat-mark' }),
            ),
          ],
    )
  },
}
