/** A wire that crosses a channel: where it enters at the board and where it leaves at its load. */
export interface Crossing {
  readonly enters: number
  readonly leaves: number
}

const CLEAR = 1.2 // [mm] least distance of two runs that must not touch

const isStraight = ({ enters, leaves }: Crossing): boolean => enters === leaves

const covers = ({ enters, leaves }: Crossing, at: number): boolean =>
  at > Math.min(enters, leaves) - CLEAR && at < Math.max(enters, leaves) + CLEAR

const overlaps = (a: Crossing, b: Crossing): boolean =>
  Math.min(a.enters, a.leaves) - CLEAR < Math.max(b.enters, b.leaves) &&
  Math.min(b.enters, b.leaves) - CLEAR < Math.max(a.enters, a.leaves)

/** Whether a turns nearer the board than b, so that neither crosses the other. */
const turnsFirst = (a: Crossing, b: Crossing): boolean =>
  covers(b, a.enters) || (covers(a, b.leaves) && !covers(a, b.enters))

/** Wires in an order that keeps crossings few; a ring of wishes is cut at its least wanted. */
function orderOf(wires: readonly Crossing[]): readonly number[] {
  const left = new Set(wires.flatMap((each, index) => (isStraight(each) ? [] : [index])))
  const order: number[] = []
  while (left.size > 0) {
    let best: number | undefined
    let fewest = Number.POSITIVE_INFINITY
    for (const index of left) {
      const wire = wires[index]
      if (!wire) continue
      const before = [...left].filter(other => {
        const earlier = wires[other]
        return other !== index && earlier !== undefined && turnsFirst(earlier, wire)
      }).length
      if (before < fewest) [best, fewest] = [index, before]
    }
    if (best === undefined) break
    order.push(best)
    left.delete(best)
  }
  return order
}

/** The lane of each wire, 0 nearest the board; a straight wire needs none. */
export function assignLanes(wires: readonly Crossing[]): readonly (number | undefined)[] {
  const lanes = new Map<number, number>()
  for (const index of orderOf(wires)) {
    const wire = wires[index]
    if (!wire) continue
    let lane = 0
    for (const [other, taken] of lanes) {
      const earlier = wires[other]
      if (earlier && (overlaps(earlier, wire) || turnsFirst(earlier, wire)))
        lane = Math.max(lane, taken + 1)
    }
    lanes.set(index, lane)
  }
  return wires.map((_, index) => lanes.get(index))
}
