import { describe, expect, it } from 'vitest'
import { errorInManyDigits } from './many-digits.ts'
import { sampleJob, seededCases } from './sample-job.ts'

describe('the oracle’s own solver against 50 digits', () => {
  const job = sampleJob()

  it.each(seededCases(job, { seed: 1, count: 20 }))('$wrong.name in $state', ({ wrong, state }) => {
    expect(errorInManyDigits(job, wrong.landing, state, wrong.overrides)).toBeLessThan(1e-9)
  })
})
