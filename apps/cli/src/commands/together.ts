import type { ControlBox, Verification } from '@tubwright/core'
import { commandLabel, togetherRows } from '@tubwright/core'
import type { Talk } from '../talk.ts'

/** What may run together, and when heat waits, by the labels of the box. */
export function showTogether(box: ControlBox, verification: Verification, talk: Talk): void {
  talk.data(talk.bold('\nMay run together, at the most'))
  for (const { commands, lineAmps } of togetherRows(box, verification))
    talk.data(
      `  ${Math.max(...lineAmps)
        .toFixed(1)
        .padStart(5)} A  ${commands.join(', ')}`,
    )
  const waits = verification.heatPausesWith.map(id => commandLabel(box, id))
  talk.data(
    waits.length > 0
      ? `  Heat waits while ${waits.join(' or ')} runs.`
      : '  Heat waits for nothing.',
  )
}
