import { BOX } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Conductors } from './conductors.tsx'
import { Field } from './field.tsx'
import { addActs, labelOf, TakeOut, useFreeId } from './items.tsx'
import { PieceFields } from './piece.tsx'
import { useDeviceLabel, useDevices } from './protection-group.tsx'
import type { Piece } from './run.ts'
import { usePieces, useRun, useRunDevices } from './run.ts'
import { useSurvey } from './use-survey.ts'

/** Length, sizes and colours of the wires to the tub, and of what other pieces the run has. */
export function RunGroup(): ReactNode {
  const web = useWeb()
  const run = useRun()
  const others = usePieces().filter(each => each.id !== run?.id)
  if (!run) return <p>{web['shell.no-entry']}</p>
  return (
    <>
      {others.length > 0 && <h2>{labelOf(run)}</h2>}
      <PieceFields piece={run} length={web['survey.length']} />
      {others.map(each => (
        <OtherPiece key={each.id} piece={each} />
      ))}
      <AddPiece />
    </>
  )
}

/** A piece that does not lead to the box: where it begins and ends is asked too. */
function OtherPiece({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const devices = useRunDevices()
  const known = useDevices()
  const nameOf = useDeviceLabel()
  const path = ['supply', 'cables', piece.id]
  const device = devices.find(each => each.id === piece.from)?.device
  const end = (key: 'from' | 'to', options: readonly string[]) => (
    <Chips
      legend={web[`survey.piece-${key}`]}
      options={options.map(each => ({
        value: each,
        label: each === BOX ? web['survey.piece-box'] : nameOf(each),
      }))}
      chosen={piece[key] === undefined ? undefined : String(piece[key])}
      choose={chosen => survey.set([...path, key], chosen)}
      isDisabled={!survey.canWrite}
    />
  )
  const ids = devices.map(each => each.id)
  return (
    <section className="card" aria-label={labelOf(piece)}>
      <h2>{labelOf(piece)}</h2>
      <Field path={[...path, 'label']} label={web['survey.piece-label']} />
      {end('from', ids)}
      {end('to', [...ids.slice(1), BOX])}
      <Conductors
        piece={piece}
        device={known.find(each => each.id === device)}
        question={web['survey.piece-wires']}
      />
      <PieceFields piece={piece} length={web['survey.piece-length']} />
      <TakeOut path={path} />
    </section>
  )
}

function AddPiece(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const freeName = useFreeId()
  const list = ['supply', 'cables']
  const add = (): void =>
    survey.act(
      ...addActs([...list, freeName(list, 'piece')], { label: web['survey.pieces-other'] }),
    )
  return (
    <p>
      <button type="button" className="plain" disabled={!survey.canWrite} onClick={add}>
        {web['survey.piece-add']}
      </button>
    </p>
  )
}
