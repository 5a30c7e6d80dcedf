import { describe, expect, it } from 'vitest'
import { sampleJob, seededCases } from './sample-job.ts'
import { checkInSimulator } from './spice-check.ts'

describe('the oracle’s networks in a circuit simulator', () => {
  const job = sampleJob()

  it('agree on every node that more than insulation holds', async () => {
    for (const { wrong, state } of seededCases(job, { seed: 2, count: 60 })) {
      const check = await checkInSimulator(job, wrong.landing, state)
      expect(check, wrong.name).not.toHaveProperty('skipped')
      if ('skipped' in check) continue
      expect(check.compared, wrong.name).toBeGreaterThan(20)
      expect(check.worst, wrong.name).toBeLessThan(1e-8) // seen: 2e-9; it does not refine
    }
  }, 60_000) // the simulator's module takes seconds to load on a busy machine
})
