import { readQuantity } from './quantities.ts'
import type { RawLanding, RawPart } from './raw-files.ts'
import type { Board } from './read-job.ts'

/** Primary plate volts of a transformer: by its tap, where a jumper picks one. */
export function tapVolts(board: Board, part: RawPart, landing: RawLanding): number {
  const { primary } = part.volts as { readonly primary: string }
  const jumper = board.jumpers.find(each => each.id === part.taps?.jumper)
  const position = jumper && (landing.jumpers[jumper.id] ?? jumper.factory)
  return readQuantity(part.taps?.volts[position ?? ''] ?? primary)
}

/** Whether every transformer of a landing stands on the tap that the plan gives it. */
export const hasPlannedTaps = (
  boards: readonly Board[],
  landing: RawLanding,
  plan: RawLanding,
): boolean =>
  boards.every(board =>
    board.parts.every(
      part => !part.taps || tapVolts(board, part, landing) === tapVolts(board, part, plan),
    ),
  )
