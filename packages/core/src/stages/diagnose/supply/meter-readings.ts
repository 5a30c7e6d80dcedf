import type { Entered } from '../../../base/entered.ts'
import type { Known } from '../../../base/known.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type { SupplyReading } from '../../../domain/supply/readings.ts'
import type { MeterReading } from './artifact.ts'

/** Between which conductors each of the six readings is taken. */
const SIX = {
  leg1ToLeg2: ['leg1', 'leg2'],
  leg1ToNeutral: ['leg1', 'neutral'],
  leg2ToNeutral: ['leg2', 'neutral'],
  leg1ToEarth: ['leg1', 'earth'],
  leg2ToEarth: ['leg2', 'earth'],
  neutralToEarth: ['neutral', 'earth'],
} as const satisfies Readonly<Record<string, readonly [FeedFunction, FeedFunction]>>

const known = <U extends string>(value: Entered<U>): Known<Entered<U>> => ({
  kind: 'known',
  value,
})

/**
 * The readings of a survey one by one; what was not read is not there.
 *
 * @param heater - the load whose amps were read, where there is one
 */
export const meterReadings = (
  readings: readonly SupplyReading[],
  heater?: string,
): readonly MeterReading[] =>
  readings.flatMap(({ situation, heaterAmps, ...six }): readonly MeterReading[] => [
    ...(Object.keys(SIX) as (keyof typeof SIX)[]).flatMap((name): readonly MeterReading[] => {
      const volts = six[name]
      const between = SIX[name]
      return volts ? [{ kind: 'volts', situation, between, value: known(volts) }] : []
    }),
    ...(heaterAmps && heater !== undefined
      ? [{ kind: 'amps' as const, situation, load: heater, value: known(heaterAmps) }]
      : []),
  ])
