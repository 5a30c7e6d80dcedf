import { BOX } from '@tubwright/core'
import { say } from '@tubwright/words'
import { useMemo } from 'react'
import { useWeb } from '../../app/context.ts'
import type { Piece, Run, RunDevice } from './joints.ts'
import { inOrder, runOf } from './joints.ts'
import { useDeviceLabel } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'

/** The run of the survey from the panel to the tub, as far as it was answered. */
export function useWholeRun(): Run {
  const { document } = useSurvey()
  return useMemo(() => inOrder(runOf(document)), [document])
}

/** The first device of the run, as the survey has it. */
export function useFirstDevice(): RunDevice | undefined {
  const { document } = useSurvey()
  return runOf(document).devices[0]
}

/** The piece that leaves the first device, or the one that leads to the tub. */
export function useRun(): Piece | undefined {
  const { pieces } = useWholeRun()
  const first = useFirstDevice()
  return (
    pieces.find(each => each.from === first?.id) ??
    pieces.find(each => each.to === BOX) ??
    pieces[0]
  )
}

/** What an end of a piece is called: a device, or the tub. */
export function useEndName(): (end: string) => string {
  const web = useWeb()
  const nameOf = useDeviceLabel()
  return end => (end === BOX ? web['survey.piece-box'] : nameOf(end))
}

/** A piece as a person tells it from others: by both its ends. */
export function useBetween(): (piece: Piece) => string {
  const web = useWeb()
  const endName = useEndName()
  return ({ from, to }) =>
    say(web['survey.between'], {
      from: from === undefined ? '?' : endName(String(from)),
      to: to === undefined ? '?' : endName(String(to)),
    })
}

const LABEL_MAX = 80

/**
 * What a piece is called before somebody names it, by where it ends.
 *
 * The second is the name of a device there that the survey does not have yet.
 */
export function usePieceName(): (end: string, device?: string) => string {
  const web = useWeb()
  const nameOf = useDeviceLabel()
  return (end, device = nameOf(end)) =>
    end === BOX
      ? web['survey.run-label']
      : say(web['survey.piece-towards'], { device }).slice(0, LABEL_MAX)
}
