import { describe, expect, test } from 'vitest'
import { verifyPlan } from '../../src/index.ts'
import type { WrongLanding } from '../oracle/oracle.ts'
import { judgeAfterReset, judgeLanding, wrongLandings } from '../oracle/oracle.ts'
import type { Measured } from './measure.ts'
import { demoMeasured, landingOf } from './measure.ts'

// The plan itself, and wrong landings that are not hazardous before: every so-and-so-manieth.
const ALL = process.env['MEASURE'] === 'all'
const EVERY = ALL ? 5 : 40

/** Whether the verifier warns of what a reset leaves. */
function isWarned({ job }: Measured, wrong: WrongLanding): boolean {
  const verified = verifyPlan(job, landingOf(wrong, job))
  if (!verified.ok) throw new Error(`no verdict: ${JSON.stringify(verified.failure)}`)
  return verified.value.findings.some(
    each => each.rule === 'VERIFY-22' && each.severity === 'warning',
  )
}

function* tried({ oracle }: Measured): Generator<WrongLanding> {
  yield { name: 'the plan', landing: oracle.plan }
  let index = 0
  for (const wrong of wrongLandings(oracle))
    if (++index % EVERY === 0 && !wrong.overrides) yield wrong
}

describe(`what a reset leaves, every ${EVERY}th landing`, () => {
  let [hazardous, safe] = [0, 0]
  for (const measured of demoMeasured('every'))
    test(measured.name, { timeout: 1_200_000 }, () => {
      const differing: string[] = []
      let counted = 0
      for (const wrong of tried(measured)) {
        const before = judgeLanding(measured.oracle, wrong.landing, {}, { first: true })
        const after = judgeAfterReset(measured.oracle, wrong.landing, {}, { before, first: true })
        if (after.class === 'not counted') continue
        counted++
        const isHazardous = after.class === 'hazardous'
        if (isHazardous) hazardous++
        else safe++
        if (isWarned(measured, wrong) !== isHazardous)
          differing.push(`${wrong.name}: ${after.class} ${after.reasons.join('; ')}`)
      }
      console.log(`${measured.name}: ${counted} judged after a reset`)
      expect(counted).toBeGreaterThan(0)
      expect(differing).toEqual([])
    })
  test('both answers occur', () => {
    expect(hazardous).toBeGreaterThan(3)
    expect(safe).toBeGreaterThan(3)
  })
})
