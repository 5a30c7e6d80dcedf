import { settlePoints } from '../../../base/settle.ts'
import type { SegmentReport } from './artifact.ts'
import type { Segment, SupplyEvidence } from './evidence.ts'
import { laidInputs, laidOf } from './laid.ts'

/** The least and the most that the thinnest line of a segment may carry, over what is open [A]. */
export function carriesOf({ book }: SupplyEvidence, segment: Segment): SegmentReport['carries'] {
  const [line] = segment.lines.toSorted((a, b) => a.size.mm2 - b.size.mm2)
  if (!line || !book) return undefined
  const amps = settlePoints(
    laidInputs(segment),
    point => book.ampacity(laidOf(segment, line.size, point))?.amps,
  )
  const known = amps.flatMap(each => each ?? [])
  return known.length > 0 ? { from: Math.min(...known), to: Math.max(...known) } : undefined
}
