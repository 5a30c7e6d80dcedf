import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { Rule } from '../rule.ts'
import { commandsOf } from '../rule.ts'

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
        message: live ? 'loose-and-live' : 'loose-and-dead',
        verdict: 'breaks',
        severity: live ? 'danger' : 'caution',
        subjects: [end],
        params: { end, amps },
        ...(live ? { on: commandsOf(state) } : {}),
      }
    }),
}
