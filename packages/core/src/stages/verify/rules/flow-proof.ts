import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

/** The box's proof of flow is that of the heater it drives; with another heater it is not shown. */
export const flowProof: Rule = {
  id: 'VERIFY-20',
  title: 'Proof of flow',
  source: COMMON_PRACTICE,
  check: ({ job }) =>
    job.tub.loads
      .filter(load => load.kind === 'heater')
      .map(load => ({
        rule: flowProof.id,
        message: 'flow-proof-unproven',
        verdict: 'not-shown',
        severity: 'warning',
        subjects: [load.id],
        params: { heater: load.label, proof: job.box.flowProof },
      })),
}
