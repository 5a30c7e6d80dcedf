import type { Finding } from '../../../base/verdict.ts'
import { isMotor, isPowered } from '../../../domain/load/load.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Evidence, Rule } from '../rule.ts'
import { commandsOf } from '../rule.ts'

/** A lead of a motor with several windings: one that runs induces volts in the others. */
const isCoupled = ({ job }: Evidence, end: string): boolean =>
  job.loads.some(
    load =>
      isPowered(load) &&
      isMotor(load) &&
      load.circuits.length > 1 &&
      load.leads.some(lead => lead.function !== 'earth' && `${load.id}.${lead.id}` === end),
  )

const messageOf = (live: boolean, coupled: boolean): string => {
  if (live) return 'loose-and-live'
  return coupled ? 'loose-not-shown-dead' : 'loose-and-dead'
}

/** No end hangs off its terminal bare; one that is live is a danger. */
export const looseEnds: Rule = {
  id: 'VERIFY-12',
  title: 'No bare end',
  source: 'IEC 60990, touch current 0.5 mA through 2 kΩ (from memory)',
  check: evidence =>
    [...evidence.touched].map(([end, { amps, state }]): Finding => {
      const live = amps > LIMITS.touchAmps
      return {
        rule: looseEnds.id,
        message: messageOf(live, isCoupled(evidence, end)),
        verdict: 'breaks',
        severity: live ? 'danger' : 'caution',
        subjects: [end],
        params: { end, amps },
        ...(live ? { on: commandsOf(state) } : {}),
      }
    }),
}
