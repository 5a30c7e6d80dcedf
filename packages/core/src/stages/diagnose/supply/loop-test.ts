import type { Entered } from '../../../base/entered.ts'
import type { Outcome } from '../../../base/outcome.ts'
import { fail, ok } from '../../../base/outcome.ts'
import type { FeedFunction } from '../../../domain/board/board.ts'
import type {
  RunStep,
  SupplyAlone,
  SupplyPlace,
  SupplySite,
} from '../../../domain/wiring/supply-alone.ts'
import { ohmsOf, placeName, supplyAlone } from '../../../domain/wiring/supply-alone.ts'
import { clampAccuracy, VOLT_METER } from '../../../domain/wiring/volt-meter.ts'
import type { StructureFailure } from '../../../engines/circuit/compile-network.ts'
import type { Interval } from './artifact.ts'
import { TOLERANCES } from './tolerances.ts'

/** Volts between two conductors at the tub, without and with a known load on them. */
export interface LoopTestInput {
  readonly tub: SupplySite['tub']
  readonly devices: SupplySite['devices']
  readonly between: readonly [FeedFunction, FeedFunction]
  readonly idle: Entered<'V'>
  readonly loaded: Entered<'V'>
  /** What the load draws in the second reading, without what ran in both. */
  readonly amps: Entered<'A'>
}

export interface LoopTest {
  /** Out and back: as read, and what the meters leave open [Ω]. */
  readonly loopOhms: number
  readonly within: Interval
  /** The cables of the run alone, out and back at 75 °C [Ω]. */
  readonly copperOhms: number
  /** Source, devices and run as described, and how far they may lie from that [Ω]. */
  readonly expectedOhms: number
  readonly expected: Interval
  /** What is too much, whatever the meters and the description leave open; from 0 where it may be nothing [Ω]. */
  readonly excess: Interval
  readonly finding: 'as-described' | 'too-much' | 'too-little'
  /** What would be lost there at the amps of the test [W]. */
  readonly lostWatts: Interval
  /** Where to look: everything that both conductors pass through, from the source to the tub. */
  readonly look: readonly SupplyPlace[]
}

export type LoopTestFailure =
  | StructureFailure
  | { readonly reason: 'not-arriving'; readonly conductor: FeedFunction }
  | { readonly reason: 'no-current'; readonly amps: number }
  /** The volts fall by less than the meter can tell, or not at all [V]. */
  | { readonly reason: 'within-accuracy'; readonly drop: number; readonly accuracy: number }

const sumOf = (alone: SupplyAlone, steps: readonly RunStep[]): number =>
  steps.reduce((sum, each) => sum + ohmsOf(alone, each.element), 0)

/** What the run is described to have, each piece as far off as it may be. */
function describedOhms(alone: SupplyAlone, steps: readonly RunStep[]) {
  const { wiring, source } = TOLERANCES
  const isSource = ({ place }: RunStep): boolean => place.kind === 'source'
  const surveyed = alone.site.tub.supply.sourceImpedance !== undefined
  const own = surveyed ? wiring : source
  const behind = sumOf(alone, steps.filter(isSource))
  const run = sumOf(
    alone,
    steps.filter(each => !isSource(each)),
  )
  return {
    expectedOhms: behind + run,
    expected: {
      from: own.least * behind + wiring.least * run,
      to: own.greatest * behind + wiring.greatest * run,
    },
    copperOhms: sumOf(
      alone,
      steps.filter(({ place }) => place.kind === 'cable'),
    ),
  }
}

const placesOf = (steps: readonly RunStep[]): readonly SupplyPlace[] => [
  ...new Map(steps.map(({ place }) => [placeName(place), place] as const)).values(),
]

/**
 * The ohms of a loop from how far its volts fall under a known load.
 *
 * One meter reads both, so that its scale is out alike in both and only its digits are not: a drop is
 * known to 1 % and twice those. The load is taken as resistive, and the source as the same in both; one
 * that moved between them is told from a joint only by reading again.
 *
 * @returns fails with 'no-current' without a load, with 'within-accuracy' where the meter cannot tell
 *   the drop from nothing
 */
export function loopTest(input: LoopTestInput): Outcome<LoopTest, LoopTestFailure> {
  const { tub, devices, between, idle, loaded, amps } = input
  if (!(amps.si > 0)) return fail({ reason: 'no-current', amps: amps.si })
  const made = supplyAlone({ tub, devices, loads: [] })
  if (!made.ok) return made
  const alone = made.value
  const conductor = between.find(each => !alone.ends.has(each))
  if (conductor) return fail({ reason: 'not-arriving', conductor })
  const drop = idle.si - loaded.si
  const accuracy = VOLT_METER.share * Math.max(0, drop) + 2 * VOLT_METER.volts
  const clamp = clampAccuracy(amps.si)
  if (drop <= accuracy) return fail({ reason: 'within-accuracy', drop, accuracy })
  if (amps.si <= clamp) return fail({ reason: 'no-current', amps: amps.si })
  const within = {
    from: (drop - accuracy) / (amps.si + clamp),
    to: (drop + accuracy) / (amps.si - clamp),
  }
  const steps = between.flatMap(each => alone.runs.get(each) ?? [])
  const described = describedOhms(alone, steps)
  const { expected } = described
  const excess = {
    from: Math.max(0, within.from - expected.to),
    to: Math.max(0, within.to - expected.from),
  }
  const finding =
    within.from > expected.to
      ? 'too-much'
      : within.to < expected.from
        ? 'too-little'
        : 'as-described'
  const square = amps.si * amps.si
  return ok({
    loopOhms: drop / amps.si,
    within,
    ...described,
    excess,
    finding,
    lostWatts: { from: excess.from * square, to: excess.to * square },
    look: finding === 'too-much' ? placesOf(steps) : [],
  })
}
