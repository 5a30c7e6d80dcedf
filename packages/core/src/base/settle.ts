import { invariant } from './invariant.ts'
import type { Possible } from './possible.ts'

/** What a rule says where everything it asks has one value. */
export type PointVerdict = 'holds' | 'breaks' | 'experts-differ' | 'not-covered'

export interface PointJudgement {
  readonly verdict: PointVerdict
  /** How far inside its limit it is; the least of all points stands for those that hold. */
  readonly margin: number
}

export type Inputs = Readonly<Record<string, Possible<unknown>>>
export type PointOf<Asked extends Inputs> = {
  readonly [Name in keyof Asked]: Asked[Name] extends Possible<infer Value> ? Value : never
}

/** A range of an input, or some of its values, for which the rule holds whatever the others are. */
export interface InputBound {
  readonly at: string
  readonly holdsFor: readonly unknown[]
}

/** What a rule comes to over everything that its inputs may be. */
export interface Settled<Judged extends PointJudgement> {
  readonly verdict: PointVerdict | 'provided' | 'not-shown'
  /** The judgement that speaks for all: the worst where one breaks, else the tightest. */
  readonly judged: Judged
  /** Where the survey has what would settle it; empty where it is settled. */
  readonly asks: readonly string[]
  readonly bounds: readonly InputBound[]
}

const POINTS_MAX = 20_000

const RANK: Readonly<Record<PointVerdict, number>> = {
  breaks: 0,
  'experts-differ': 1,
  'not-covered': 2,
  holds: 3,
}

const isWorse = (a: PointJudgement, b: PointJudgement): boolean =>
  RANK[a.verdict] < RANK[b.verdict] || (a.verdict === b.verdict && a.margin < b.margin)

/** Which value each input has at a point, the last input turning fastest. */
function stridesOf(sizes: readonly number[]): readonly number[] {
  const strides = sizes.map(() => 1)
  for (let at = sizes.length - 2; at >= 0; at--)
    strides[at] = (strides[at + 1] ?? 1) * (sizes[at + 1] ?? 1)
  return strides
}

/** Calls back with every point that the inputs allow. */
export function settlePoints<const Asked extends Inputs, Value>(
  asked: Asked,
  at: (point: PointOf<Asked>) => Value,
): readonly Value[] {
  const names = Object.keys(asked)
  const inputs = Object.values(asked)
  const sizes = inputs.map(each => each.values.length)
  const strides = stridesOf(sizes)
  const count = sizes.reduce((product, size) => product * size, 1)
  invariant(count > 0 && count <= POINTS_MAX, `a rule asks for ${count} points`)
  const values: Value[] = []
  for (let index = 0; index < count; index++) {
    const point: Record<string, unknown> = {}
    for (const [place, name] of names.entries())
      point[name] =
        inputs[place]?.values[Math.floor(index / (strides[place] ?? 1)) % (sizes[place] ?? 1)]
    values.push(at(point as PointOf<Asked>))
  }
  return values
}

interface Grid<Judged> {
  readonly inputs: readonly Possible<unknown>[]
  readonly sizes: readonly number[]
  readonly strides: readonly number[]
  readonly judged: readonly Judged[]
}

function judgeAll<Asked extends Inputs, Judged extends PointJudgement>(
  asked: Asked,
  judge: (point: PointOf<Asked>) => Judged,
): Grid<Judged> {
  const inputs = Object.values(asked)
  const sizes = inputs.map(each => each.values.length)
  return { inputs, sizes, strides: stridesOf(sizes), judged: settlePoints(asked, judge) }
}

/** Whether any two points that differ in this input alone are judged differently. */
function decides({ sizes, strides, judged }: Grid<PointJudgement>, index: number): boolean {
  const [size, stride] = [sizes[index] ?? 1, strides[index] ?? 1]
  if (size < 2) return false
  return judged.some((each, at) => {
    const place = Math.floor(at / stride) % size
    return place > 0 && judged[at - stride]?.verdict !== each.verdict
  })
}

function boundOf(grid: Grid<PointJudgement>, index: number): InputBound | undefined {
  const { inputs, sizes, strides, judged } = grid
  const input = inputs[index]
  const [size, stride] = [sizes[index] ?? 1, strides[index] ?? 1]
  const holdsFor = input?.values.filter((_, place) =>
    judged.every(
      (each, at) => Math.floor(at / stride) % size !== place || each.verdict === 'holds',
    ),
  )
  return input && holdsFor && holdsFor.length > 0 ? { at: input.at, holdsFor } : undefined
}

const NOTHING: readonly never[] = []

/** The point where everything is known, which is the ordinary case; undefined where something is not. */
function onlyPoint<Asked extends Inputs>(asked: Asked): PointOf<Asked> | undefined {
  const point: Record<string, unknown> = {}
  for (const name in asked) {
    const values = asked[name]?.values
    if (values?.length !== 1) return undefined
    point[name] = values[0]
  }
  return point as PointOf<Asked>
}

/**
 * Judges a rule at every point that its inputs allow.
 *
 * Where all points agree, that is the verdict, whatever is unknown, and nothing is asked. Where they
 * do not, it is `provided` if ranges and sets alone decide, `not-shown` if something unknown does;
 * asked is only what decides: an input that never changes the judgement by itself is not.
 *
 * @param judge - pure; called once where everything is known
 */
export function settle<const Asked extends Inputs, Judged extends PointJudgement>(
  asked: Asked,
  judge: (point: PointOf<Asked>) => Judged,
): Settled<Judged> {
  const point = onlyPoint(asked)
  if (point) {
    const judged = judge(point)
    return { verdict: judged.verdict, judged, asks: NOTHING, bounds: NOTHING }
  }
  const grid = judgeAll(asked, judge)
  const [first] = grid.judged
  invariant(first !== undefined, 'a grid has a point')
  const judged = grid.judged.reduce((a, b) => (isWorse(b, a) ? b : a), first)
  if (grid.judged.every(each => each.verdict === first.verdict))
    return { verdict: first.verdict, judged, asks: [], bounds: [] }
  const deciding = grid.inputs.flatMap((input, index) =>
    decides(grid, index) ? [{ input, index }] : [],
  )
  const isUnknown = deciding.some(({ input }) => input.kind === 'unknown')
  return {
    verdict: isUnknown ? 'not-shown' : 'provided',
    judged,
    asks: [...new Set(deciding.map(({ input }) => input.at))],
    bounds: deciding.flatMap(({ index }) => boundOf(grid, index) ?? []),
  }
}
