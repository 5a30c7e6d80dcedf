import { placeName } from '../../../src/domain/wiring/supply-alone.ts'
import type { Situation } from '../../../src/index.ts'
import type {
  FittingFault,
  Interval,
  MeterReading,
  SupplyCircumstances,
  SupplyCondition,
} from '../../../src/stages/diagnose/supply/artifact.ts'
import { conditionFrom } from '../../../src/stages/diagnose/supply/name-condition.ts'
import type { Predictor } from '../../../src/stages/diagnose/supply/predict.ts'
import { predictorOf } from '../../../src/stages/diagnose/supply/predict.ts'

export function predictor(circumstances: SupplyCircumstances): Predictor {
  const made = predictorOf(circumstances)
  if (!made.ok) throw new Error(JSON.stringify(made.failure))
  return made.value
}

export function condition(of: Predictor, readings: readonly MeterReading[]): SupplyCondition {
  const found = conditionFrom(of, readings)
  if (!found.ok) throw new Error(JSON.stringify(found.failure))
  return found.value
}

const PAIRS = [
  ['leg1', 'leg2'],
  ['leg1', 'neutral'],
  ['leg2', 'neutral'],
  ['leg1', 'earth'],
  ['leg2', 'earth'],
  ['neutral', 'earth'],
] as const

export const volts = (si: number) => ({ si: si as never, text: `${si} V` })

/** The six readings in the order of the cards; one that is undefined was not taken. */
export const six = (
  situation: Situation,
  ...shown: readonly (number | undefined)[]
): readonly MeterReading[] =>
  PAIRS.flatMap((between, index): readonly MeterReading[] => {
    const value = shown[index]
    return value === undefined
      ? []
      : [{ kind: 'volts', situation, between, value: { kind: 'known', value: volts(value) } }]
  })

/** A fit in one word: `joint leg1`, `high-leg leg2`, `off gf`. */
export function nameOf({ fault }: Pick<FittingFault, 'fault'>): string {
  const of =
    'conductor' in fault
      ? fault.conductor
      : 'line' in fault
        ? fault.line
        : 'device' in fault
          ? fault.device
          : 'ends' in fault
            ? fault.ends[0]
            : ''
  return `${fault.kind} ${of}`.trim()
}

export const names = (fits: readonly Pick<FittingFault, 'fault'>[]): readonly string[] =>
  [...new Set(fits.map(nameOf))].sort()

/** What fits and what is told beside it, each with its places. */
export const keysOf = ({ fits, neverShown }: SupplyCondition): ReadonlyMap<string, FittingFault> =>
  new Map(
    [...fits, ...neverShown].map(each => [
      `${nameOf(each)} ${each.places.map(placeName).join(' ')}`,
      each,
    ]),
  )

export const isWithin = (inner: Interval, outer: Interval): boolean =>
  inner.from >= outer.from * (1 - 1e-9) && inner.to <= outer.to * (1 + 1e-9)
