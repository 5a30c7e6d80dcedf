import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp } from '../../app/context.ts'
import { Signal } from '../../parts/signal.tsx'
import { labelOf } from '../survey/items.tsx'
import { useDeviceLabel } from '../survey/protection-group.tsx'
import { usePieces, useRunDevices } from '../survey/run.ts'

/** What was found to show heat, in sentences. */
export function useHeatMarks(): readonly string[] {
  const { words } = useApp()
  const nameOf = useDeviceLabel()
  return [
    ...useRunDevices()
      .filter(each => each.heatMark === true)
      .map(({ id }) => say(words.sheet['open.heat-device'], { thing: nameOf(id) })),
    ...usePieces()
      .filter(each => each.heatMark === true)
      .map(each => say(words.sheet['open.heat-cable'], { thing: labelOf(each) })),
  ]
}

/** What shows heat stands before any figure: it was found, not calculated. */
export function HeatMarks(): ReactNode {
  const { words } = useApp()
  return useHeatMarks().map(each => (
    <p key={each} className="card" data-severity="danger" role="alert">
      <Signal severity="danger" />
      {each}
      {words.hasUnreviewed && <em> ({words.unreviewedMark})</em>}
    </p>
  ))
}
