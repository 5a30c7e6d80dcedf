import type { LadderEnd, LadderPart, LadderRung, LadderSection } from './artifact.ts'

/** Joints passed on one way at most: copper that would run in a ring ends there. */
const MOST_JOINTS = 20

/** Parts from where a rung is joined to another one, on to the rail. */
function beyond(
  rungs: readonly LadderRung[],
  { kind, node }: LadderEnd,
  side: 'left' | 'right',
  joints: number,
): readonly LadderPart[] {
  if (kind !== 'joint' || joints > MOST_JOINTS) return []
  const at = side === 'left' ? 1 : 0
  const rung = rungs.find(({ steps }) => steps.some(each => each.nodes[at] === node))
  const index = rung?.steps.findIndex(each => each.nodes[at] === node) ?? -1
  if (!rung || index < 0) return []
  const steps = side === 'left' ? rung.steps.slice(0, index + 1) : rung.steps.slice(index)
  const end = side === 'left' ? rung.from : rung.to
  const own = steps.flatMap(each => (each.kind === 'part' ? [each] : []))
  const more = beyond(rungs, end, side, joints + 1)
  return side === 'left' ? [...more, ...own] : [...own, ...more]
}

/** Every part that the current of one element passes between the rails; none where it is on no rung. */
export function partsOnWay(
  sections: readonly LadderSection[],
  element: string,
): readonly LadderPart[] {
  for (const { rungs } of sections)
    for (const rung of rungs) {
      if (!rung.steps.some(each => each.kind === 'part' && each.id === element)) continue
      return [
        ...beyond(rungs, rung.from, 'left', 0),
        ...rung.steps.flatMap(each => (each.kind === 'part' ? [each] : [])),
        ...beyond(rungs, rung.to, 'right', 0),
      ]
    }
  return []
}
