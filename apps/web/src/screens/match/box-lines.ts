import type { BoxMatch } from '@tubwright/core'
import type { Matched, PlanLine } from '../../ask/protocol.ts'

type Failure = Matched['failures'][number]['failure']

/** One box with all that was found of it. */
export interface BoxLine {
  readonly match: BoxMatch
  readonly plan?: PlanLine
  readonly failure?: Failure
  /** How many lie in stock; absent where nobody counted. */
  readonly stock?: number
  readonly verdict: 'serves' | 'serves-provided' | 'may-serve' | 'cannot'
}

const RANK: Readonly<Record<BoxLine['verdict'], number>> = {
  serves: 0,
  'serves-provided': 0,
  'may-serve': 1,
  cannot: 2,
}

const verdictOf = (match: BoxMatch, plan: PlanLine | undefined): BoxLine['verdict'] => {
  if (plan) return plan.isProvided ? 'serves-provided' : 'serves'
  return match.verdict === 'cannot' ? 'cannot' : 'may-serve'
}

/** Boxes with a plan first, among them what lies in stock, then the better plan; the order is stable. */
export function boxLines(
  { match, plans, failures }: Matched,
  stock: ReadonlyMap<string, number>,
): readonly BoxLine[] {
  const order = new Map(plans.map((each, index) => [each.box, index] as const))
  const lines = match.boxes.map((each): BoxLine => {
    const plan = plans.find(one => one.box === each.box)
    const failure = failures.find(one => one.box === each.box)?.failure
    const count = stock.get(each.box)
    return {
      match: each,
      verdict: verdictOf(each, plan),
      ...(plan ? { plan } : {}),
      ...(failure ? { failure } : {}),
      ...(count === undefined ? {} : { stock: count }),
    }
  })
  const isThere = ({ stock: count }: BoxLine): number => ((count ?? 0) > 0 ? 0 : 1)
  const place = ({ match: { box } }: BoxLine): number => order.get(box) ?? lines.length
  return [...lines].sort(
    (a, b) => RANK[a.verdict] - RANK[b.verdict] || isThere(a) - isThere(b) || place(a) - place(b),
  )
}
