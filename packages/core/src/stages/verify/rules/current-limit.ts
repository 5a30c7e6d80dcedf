import { atLeast, atMost } from '../../../base/compare.ts'
import { boundsOf } from '../../../base/known.ts'
import type { Finding, Severity, Verdict } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { allowedAmps } from '../../../domain/wiring/states.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

const finding = (
  message: string,
  verdict: Verdict,
  severity: Severity,
  params: Finding['params'],
): Finding => ({
  rule: currentLimit.id,
  message,
  verdict,
  severity,
  subjects: ['currentLimit'],
  params,
})

/** The current limit is one the box offers, not above 80 % of the breaker. */
export const currentLimit: Rule = {
  id: 'VERIFY-16',
  title: 'Current limit for the breaker',
  source: COMMON_PRACTICE,
  check: ({ job, landing }) => {
    const { box, tub } = job
    const setting = landing.settings.currentLimit.si
    const found: Finding[] = []
    if (!box.currentLimit.offered.some(each => each.si === setting))
      found.push(finding('limit-not-offered', 'breaks', 'caution', { setting }))
    const breaker = boundsOf(tub.supply.breaker)
    if (!breaker) return [...found, finding('breaker-unknown', 'not-shown', 'warning', { setting })]
    if (!atMost(breaker.to, box.largestBreaker.si))
      found.push(
        finding('breaker-too-large', 'breaks', 'warning', {
          breaker: breaker.to,
          largest: box.largestBreaker.si,
        }),
      )
    const share = LIMITS.continuous * breaker.from
    const allowed = allowedAmps(box, setting)
    if (!atMost(allowed, share))
      found.push(finding('limit-above-breaker', 'breaks', 'warning', { allowed, share }))
    else if (atLeast(allowed, share))
      found.push(finding('no-margin', 'holds', 'notice', { allowed, share }))
    return found
  },
}
