import { describe, expect, test } from 'vitest'
import { errorInManyDigits } from '../oracle/many-digits.ts'
import { seededCases } from '../oracle/sample-job.ts'
import { checkInSimulator } from '../oracle/spice-check.ts'
import { demoMeasured } from './measure.ts'

// The oracle is believed because two others agree with it: many-digit arithmetic on its own
// matrices, and an independent simulator on its own netlists.
const SEED = 20_261_125
const SIMULATED = 2000
const IN_MANY_DIGITS = 20
/** A general simulator does not refine; nothing that floats on insulation is compared. */
const SIMULATOR_TOLERANCE = 1e-8
const OWN_TOLERANCE = 1e-9

const jobs = demoMeasured()
const each = (total: number) => Math.ceil(total / jobs.length)

describe(`the oracle itself, seed ${SEED}`, () => {
  test(`${SIMULATED} seeded wrong landings in an independent simulator`, async () => {
    let [cases, compared, worst] = [0, 0, 0]
    for (const { oracle } of jobs)
      for (const { wrong, state } of seededCases(oracle, { seed: SEED, count: each(SIMULATED) })) {
        const check = await checkInSimulator(oracle, wrong.landing, state)
        if ('skipped' in check) throw new Error(`${wrong.name}: ${check.skipped}`)
        cases++
        compared += check.compared
        worst = Math.max(worst, check.worst)
      }
    console.log(
      `${cases} cases, ${compared} voltages, worst ${worst.toExponential(1)} of the source`,
    )
    expect(cases).toBeGreaterThanOrEqual(SIMULATED)
    expect(compared).toBeGreaterThan(10 * cases)
    expect(worst).toBeLessThan(SIMULATOR_TOLERANCE)
  })

  test(`${IN_MANY_DIGITS} of them in many digits`, () => {
    let worst = 0
    for (const { oracle } of jobs)
      for (const { wrong, state } of seededCases(oracle, {
        seed: SEED + 1,
        count: each(IN_MANY_DIGITS),
      }))
        worst = Math.max(worst, errorInManyDigits(oracle, wrong.landing, state))
    console.log(`many digits: worst ${worst.toExponential(1)} of the source`)
    expect(worst).toBeLessThan(OWN_TOLERANCE)
  })
})
