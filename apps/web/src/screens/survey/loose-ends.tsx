import { BOX } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { addActs, useFreeId } from './items.tsx'
import type { LooseEnd } from './joints.ts'
import { joinTo, labelIn, looseEndsOf } from './joints.ts'
import { useBetween, usePieceName, useWholeRun } from './run.ts'
import { useDeviceLabel } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'

const CABLES = ['supply', 'cables']

/** What of a run is joined to nothing, as a person says it. */
export function useTellLoose(): (loose: LooseEnd) => string {
  const web = useWeb()
  const deviceName = useDeviceLabel()
  const run = useWholeRun()
  return ({ kind, of }) => {
    const isOfDevice = kind === 'nothing-in' || kind === 'nothing-on'
    return say(web[`survey.loose-${kind}`], {
      what: isOfDevice ? deviceName(of) : labelIn(run, of),
    })
  }
}

/** What a device is not joined to, and one tap for each way to join it. */
export function DeviceEnds({ device }: { readonly device: string }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const run = useWholeRun()
  const tell = useTellLoose()
  const between = useBetween()
  const pieceName = usePieceName()
  const freeName = useFreeId()
  const loose = looseEndsOf(run).filter(each => each.path[1] === 'devices' && each.of === device)
  const [first] = loose
  if (!first) return undefined
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
      <p>{tell(first)}</p>
      <div className="chips">
        {first.kind === 'nothing-in' ? (
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
      {first.kind === 'nothing-in' && <p className="hint">{web['survey.loose-own-circuit']}</p>}
    </div>
  )
}
