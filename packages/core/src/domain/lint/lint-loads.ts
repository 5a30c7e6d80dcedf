import type { Diagnostic } from '../../base/diagnostic.ts'
import type { Load } from '../load/load.ts'
import { isPowered } from '../load/load.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

/** Leads that nothing is joined to, and plugs that leave a lead out. */
export function lintLoads(
  loads: readonly Load[],
  path: Diagnostic['path'],
): readonly LintFinding[] {
  return loads.flatMap((load, index) =>
    load.leads.flatMap((lead, at) => {
      const here = [...path, index, 'leads', at]
      const params = { load: load.label, lead: lead.id }
      const isJoined =
        !isPowered(load) ||
        lead.function === 'earth' ||
        lead.function === 'data' ||
        load.circuits.some(each => each.across.includes(lead.id))
      const isPlugged = !load.plug || Object.values(load.plug.pins).includes(lead.id)
      return [
        ...(isJoined ? [] : [finding('lead-in-no-circuit', here, params)]),
        ...(isPlugged ? [] : [finding('plug-misses-lead', here, params)]),
      ]
    }),
  )
}
