import { describe, expect, test } from 'vitest'
import type { Tally } from './measure.ts'
import { demoMeasured, lineOf, measure } from './measure.ts'

const SEED = 20_261_125
const SHARE_MAX = 0.05

/**
 * The measure of the verifier, half of the landings in each of two files so that both cores work.
 *
 * `MEASURE=all` tries every wrong landing of every proven plan; without it a seeded half of those of
 * each tub's best plan.
 */
export function measurePart(part: 0 | 1): void {
  const all = process.env['MEASURE'] === 'all'
  describe(`wrong landings, part ${part}, ${all ? 'all' : `a half, seed ${SEED}`}`, () => {
    const tallies: Tally[] = []
    for (const measured of demoMeasured(all ? 'every' : 'best'))
      test(measured.name, { timeout: 1_200_000 }, () => {
        const tally = measure(measured, { seed: SEED, all, part })
        tallies.push(tally)
        console.log(lineOf(tally))
        for (const each of tally.undecidedNames) console.log(`  undecided: ${each}`)
        expect(tally.tried).toBeGreaterThan(0)
        expect(tally.hazardous).toBeGreaterThan(0)
        expect(tally.missed).toEqual([])
        expect(tally.rightFlagged).toEqual([])
      })
    test('harmless landings flagged as danger or warning are at most 5 %', () => {
      const sum = (pick: (tally: Tally) => number) => tallies.reduce((n, t) => n + pick(t), 0)
      const share = sum(t => t.overFlagged.length) / sum(t => t.harmless)
      console.log(
        `part ${part}: ${sum(t => t.tried)} tried, ${sum(t => t.hazardous)} hazardous, ` +
          `${sum(t => t.missed.length)} missed; ${(share * 100).toFixed(2)} % of ` +
          `${sum(t => t.harmless)} harmless flagged`,
      )
      if (share > SHARE_MAX)
        console.log(
          tallies
            .flatMap(t => t.overFlagged)
            .slice(0, 40)
            .join('\n'),
        )
      expect(share).toBeLessThanOrEqual(SHARE_MAX)
    })
  })
}
