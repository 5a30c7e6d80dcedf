import type { ColdPart, ColdReading, InsulationTest } from '@tubwright/core'
import { COLD_LIMITS } from '@tubwright/core'
import { COLD_ASK_EN, METER_EN } from './cold.en.ts'
import { say } from './say.ts'
import { SHEET_EN } from './sheet.en.ts'

/** A part of the cold network as a person calls it. */
export const tellColdPart = ({ kind, of, name }: ColdPart): string =>
  say(SHEET_EN[`named.${kind}`], { of, name })

const listed = (loads: readonly string[], nameOf: (load: string) => string): string =>
  [...new Set(loads)].map(nameOf).join(', ')

function valueLines(reading: ColdReading): readonly string[] {
  switch (reading.kind) {
    case 'open':
      return [METER_EN.open]
    case 'ohms': {
      const { expected, low, high } = reading
      return [say(METER_EN.ohms, { expected, low, high })]
    }
    case 'above': {
      const { expected, low } = reading
      return [say(METER_EN.above, { expected, low })]
    }
    case 'not-shown': {
      const { least, greatest, asks } = reading
      return [
        greatest === undefined
          ? say(METER_EN['not-shown-open'], { least })
          : say(METER_EN['not-shown'], { least, greatest }),
        ...asks.map(({ kind, of, name }) => say(COLD_ASK_EN[kind], { of, name })),
      ]
    }
  }
}

/**
 * What an ohmmeter reads, in English, a line each.
 *
 * @param nameOf - what a person calls a load
 */
export function tellColdReading(
  reading: ColdReading,
  nameOf: (load: string) => string,
): readonly string[] {
  return [
    ...valueLines(reading),
    ...(reading.charges.length > 0
      ? [say(METER_EN.charges, { loads: listed(reading.charges, nameOf) })]
      : []),
  ]
}

/** What an insulation tester reads and what is unplugged for it, in English, a line each. */
export function tellInsulation(
  test: InsulationTest,
  nameOf: (load: string) => string,
): readonly string[] {
  if (test.kind === 'joined') return [METER_EN.joined]
  const { volts, expected, least, unplug, charges } = test
  const { goodInsulation, leastInsulation, suspectInsulation } = COLD_LIMITS
  return [
    expected === undefined || least === undefined
      ? say(METER_EN.apart, { volts })
      : say(METER_EN.insulated, { volts, expected, least }),
    say(METER_EN.limits, {
      good: goodInsulation,
      least: leastInsulation,
      suspect: suspectInsulation,
    }),
    unplug.length > 0 ? METER_EN.unplug : METER_EN.nothing,
    ...unplug.map(({ part, dies, falsifies }) => {
      const both = dies && falsifies
      const why = both ? METER_EN.both : METER_EN[dies ? 'dies' : 'falsifies']
      return say(why, { part: tellColdPart(part) })
    }),
    METER_EN.suppressors,
    ...(charges.length > 0 ? [say(METER_EN.discharge, { loads: listed(charges, nameOf) })] : []),
  ]
}
