import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { addActs, useFreeId } from './items.tsx'
import { putBetween, standsBehind, undoOf } from './joints.ts'
import { useBetween, usePieceName, useWholeRun } from './run.ts'
import { useDevices } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'
import { WhichDevice } from './which-device.tsx'

const DEVICES = ['supply', 'devices']
const CABLES = ['supply', 'cables']

/** Puts another device into the run: which one, and between which, where there are several pieces. */
export function AddDevice(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { pieces } = useWholeRun()
  const known = useDevices()
  const freeName = useFreeId()
  const between = useBetween()
  const pieceName = usePieceName()
  const [isOpen, setIsOpen] = useState(false)
  const [at, setAt] = useState<string>()
  const [undo, setUndo] = useState<{ readonly told: string; readonly acts: readonly Act[] }>()
  const whole = pieces.filter(each => each.from !== undefined && each.to !== undefined)
  const [only] = whole
  const piece = whole.length === 1 ? only : whole.find(each => each.id === at)
  const put = (kind: string): void => {
    const id = freeName(DEVICES, 'device')
    const label = known.find(each => each.id === kind)?.label ?? kind
    const acts = [
      ...addActs([...DEVICES, id], { device: kind }),
      ...(piece
        ? putBetween(piece, id, freeName(CABLES, 'piece'), end =>
            pieceName(end, end === id ? label : undefined),
          )
        : []),
    ]
    survey.act(...acts)
    setIsOpen(false)
    setAt(undefined)
    const told = piece
      ? say(web['survey.put-between'], { device: label, piece: between(piece) })
      : ''
    setUndo({ told, acts: undoOf(acts, path => survey.value(path.slice(1))) })
  }
  return (
    <>
      {undo && (
        <div className="card" role="status">
          {undo.told !== '' && <p>{undo.told}</p>}
          <button
            type="button"
            disabled={!survey.canWrite}
            onClick={() => {
              survey.act(...undo.acts)
              setUndo(undefined)
            }}
          >
            {web['survey.undo']}
          </button>
        </div>
      )}
      <p>
        <button
          type="button"
          className="plain"
          aria-expanded={isOpen}
          disabled={!survey.canWrite}
          onClick={() => setIsOpen(!isOpen)}
        >
          {web['survey.device-add']}
        </button>
      </p>
      {isOpen && (
        <section className="card" aria-label={web['survey.device-add']}>
          {whole.length > 1 && (
            <Chips
              legend={web['survey.between-which']}
              options={whole.map(each => ({ value: each.id, label: between(each) }))}
              chosen={at}
              choose={setAt}
              isDisabled={!survey.canWrite}
            />
          )}
          {(whole.length < 2 || piece) && (
            <WhichDevice
              question={web['survey.device-which']}
              chosen={undefined}
              choose={put}
              may={standsBehind}
            />
          )}
        </section>
      )}
    </>
  )
}
