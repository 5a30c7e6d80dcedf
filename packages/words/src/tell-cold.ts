import type { ColdPart, ColdReading, InsulationTest } from '@tubwright/core'
import { COLD_LIMITS } from '@tubwright/core'
import { say } from './say.ts'
import type { Tables } from './words.ts'

export const tellColdPart = ({ sheet }: Tables, { kind, of, name }: ColdPart): string =>
  say(sheet[`named.${kind}`], { of, name })

const listed = (loads: readonly string[], nameOf: (load: string) => string): string =>
  [...new Set(loads)].map(nameOf).join(', ')

function valueLines({ meter, coldAsk }: Tables, reading: ColdReading): readonly string[] {
  switch (reading.kind) {
    case 'open':
      return [meter.open]
    case 'ohms': {
      const { expected, low, high } = reading
      return [say(meter.ohms, { expected, low, high })]
    }
    case 'above': {
      const { expected, low } = reading
      return [say(meter.above, { expected, low })]
    }
    case 'not-shown': {
      const { least, greatest, asks } = reading
      return [
        greatest === undefined
          ? say(meter['not-shown-open'], { least })
          : say(meter['not-shown'], { least, greatest }),
        ...asks.map(({ kind, of, name }) => say(coldAsk[kind], { of, name })),
      ]
    }
  }
}

export function tellColdReading(
  tables: Tables,
  reading: ColdReading,
  nameOf: (load: string) => string,
): readonly string[] {
  return [
    ...valueLines(tables, reading),
    ...(reading.charges.length > 0
      ? [say(tables.meter.charges, { loads: listed(reading.charges, nameOf) })]
      : []),
  ]
}

function unplugLines(
  tables: Tables,
  unplug: Extract<InsulationTest, { kind: 'insulated' }>['unplug'],
): readonly string[] {
  const { meter } = tables
  return [
    unplug.length > 0 ? meter.unplug : meter.nothing,
    ...unplug.map(({ part, dies, falsifies }) => {
      const why = dies && falsifies ? meter.both : meter[dies ? 'dies' : 'falsifies']
      return say(why, { part: tellColdPart(tables, part) })
    }),
  ]
}

export function tellInsulation(
  tables: Tables,
  test: InsulationTest,
  nameOf: (load: string) => string,
): readonly string[] {
  const { meter } = tables
  if (test.kind === 'joined') return [meter.joined]
  const { volts, expected, least, unplug, charges } = test
  const { goodInsulation, leastInsulation, suspectInsulation } = COLD_LIMITS
  return [
    expected === undefined || least === undefined
      ? say(meter.apart, { volts })
      : say(meter.insulated, { volts, expected, least }),
    say(meter.limits, {
      good: goodInsulation,
      least: leastInsulation,
      suspect: suspectInsulation,
    }),
    ...unplugLines(tables, unplug),
    meter.suppressors,
    ...(charges.length > 0 ? [say(meter.discharge, { loads: listed(charges, nameOf) })] : []),
  ]
}
