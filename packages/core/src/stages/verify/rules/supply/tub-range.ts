import { atMost } from '../../../../base/compare.ts'
import { COMMON_PRACTICE } from '../../rule.ts'
import { isAmerican } from '../../supply/evidence.ts'
import type { SupplyRule } from '../../supply/rule.ts'
import { conclude, within } from '../../supply/rule.ts'

const LARGEST_USUAL = 60 // [A] breaker of a portable tub in North America; common practice, no source

/**
 * A circuit is one that portable tubs have.
 *
 * Beyond is no fault: ground-fault breakers end there, and each branch then has its own. It is work
 * for an engineer or an electrician.
 */
export const tubRange: SupplyRule = {
  id: 'SUPPLY-53',
  title: 'A circuit such as portable tubs have',
  about: 'circuit',
  source: `NEC 680.5(B); ${COMMON_PRACTICE}`,
  check: ({ survey, circuits }) =>
    isAmerican(survey.region)
      ? circuits.map(({ circuit, breaker }) =>
          conclude(
            {
              rule: tubRange.id,
              subjects: [circuit.device],
              severity: 'caution',
              params: { unit: 'A' },
            },
            { breaker },
            point => {
              const found = within(point.breaker, LARGEST_USUAL, { message: 'tub-range' })
              return atMost(point.breaker, LARGEST_USUAL)
                ? { ...found, margin: Number.POSITIVE_INFINITY }
                : { ...found, verdict: 'not-covered' }
            },
          ),
        )
      : [],
}
