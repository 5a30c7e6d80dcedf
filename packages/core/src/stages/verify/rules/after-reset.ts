import type { Finding } from '../../../base/verdict.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

const messageFor = ({ message, severity }: Finding): string => {
  if (severity !== 'danger') return 'overdrawn-after-reset'
  return message === 'heater-without-water' ? 'dry-after-reset' : 'unsafe-after-reset'
}

/**
 * With the settings that the box falls back to at a reset or power cut, nothing becomes dangerous.
 *
 * Nobody stands at the tub then. What becomes dangerous is told as a warning: the plan holds
 * provided its settings are read back. What breaks before it breaks after, and is told once.
 */
export const afterReset: Rule = {
  id: 'VERIFY-22',
  title: 'Safe after a reset',
  source: COMMON_PRACTICE,
  check: ({ job, reset = [] }) =>
    reset.slice(0, 1).map(worst => ({
      rule: afterReset.id,
      message: messageFor(worst),
      verdict: 'provided',
      severity: worst.severity === 'danger' ? 'warning' : 'caution',
      subjects: ['profile', 'currentLimit'],
      params: { box: job.box.label },
    })),
}
