import { BOX } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { addActs, useFreeId } from './items.tsx'
import type { RunGap } from './joints.ts'
import { gapsOf, joinTo, labelIn } from './joints.ts'
import { useBetween, usePieceName, useWholeRun } from './run.ts'
import { useDeviceLabel } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'

const CABLES = ['supply', 'cables']

/** What of a run is joined to nothing, as a person says it. */
export function useTellGap(): (gap: RunGap) => string {
  const web = useWeb()
  const deviceName = useDeviceLabel()
  const run = useWholeRun()
  return ({ kind, of }) => {
    const isOfDevice = kind === 'nothing-in' || kind === 'nothing-on'
    return say(web[`survey.gap-${kind}`], { what: isOfDevice ? deviceName(of) : labelIn(run, of) })
  }
}

/** What a device is not joined to, and one tap for each way to join it. */
export function DeviceGaps({ device }: { readonly device: string }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const run = useWholeRun()
  const tell = useTellGap()
  const between = useBetween()
  const pieceName = usePieceName()
  const freeName = useFreeId()
  const gaps = gapsOf(run).filter(each => each.path[1] === 'devices' && each.of === device)
  const [gap] = gaps
  if (!gap) return undefined
  const pieces = run.pieces.filter(each => each.from !== device && each.to !== device)
  const goOn = (): void =>
    survey.act(
      ...addActs([...CABLES, freeName(CABLES, 'piece')], {
        label: pieceName(BOX),
        from: device,
        to: BOX,
      }),
    )
  return (
    <div className="conflict" role="status">
      <p>{tell(gap)}</p>
      <div className="chips">
        {gap.kind === 'nothing-in' ? (
          pieces.map(piece => (
            <button
              key={piece.id}
              type="button"
              disabled={!survey.canWrite}
              onClick={() =>
                survey.act(...joinTo(run, piece, device, freeName(CABLES, 'piece'), pieceName))
              }
            >
              {between(piece)}
            </button>
          ))
        ) : (
          <button type="button" disabled={!survey.canWrite} onClick={goOn}>
            {web['survey.go-on-to-tub']}
          </button>
        )}
      </div>
      {gap.kind === 'nothing-in' && <p className="hint">{web['survey.gap-own-circuit']}</p>}
    </div>
  )
}
