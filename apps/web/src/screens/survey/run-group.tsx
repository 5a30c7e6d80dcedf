import { BOX } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { Link, useParams } from 'wouter'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Conductors, Landed } from './conductors.tsx'
import { addActs, labelOf, TakeOut, useFreeId } from './items.tsx'
import type { Piece } from './joints.ts'
import { endAt, looseEndsOf } from './joints.ts'
import { useTellLoose } from './loose-ends.tsx'
import { PieceFields } from './piece.tsx'
import { useEndName, usePieceName, useWholeRun } from './run.ts'
import { useDevices } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'

/** Length, sizes and colours of the wires to the tub, piece by piece from the panel on. */
export function RunGroup(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const { devices, pieces } = useWholeRun()
  const [only] = pieces
  if (!only)
    return (
      <p>
        {web['survey.run-first']}{' '}
        <Link className="button" href={`/job/${id}/survey/protection`}>
          {web['survey.protection']}
        </Link>
      </p>
    )
  const isPlain = pieces.length === 1 && devices.length === 1 && isWhole(only, devices[0]?.id)
  return (
    <>
      {isPlain ? (
        <OnlyPiece piece={only} />
      ) : (
        pieces.map(each => <OnePiece key={each.id} piece={each} isOnly={pieces.length === 1} />)
      )}
      <AddPiece />
    </>
  )
}

/** From the first device to the tub: there is nothing to choose between. */
const isWhole = (piece: Piece, first: string | undefined): boolean =>
  piece.from === first && piece.to === BOX

/** The piece of an ordinary run: where its wires sit is asked with the device, unless that is open. */
function OnlyPiece({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const [asksLanding] = useState(() => piece.conductors.some(each => each.from === undefined))
  return (
    <>
      {asksLanding && <Landings piece={piece} />}
      <PieceFields piece={piece} length={web['survey.length']} />
    </>
  )
}

/** One of several pieces: where it begins and ends is asked too. */
function OnePiece({
  piece,
  isOnly,
}: {
  readonly piece: Piece
  readonly isOnly: boolean
}): ReactNode {
  const web = useWeb()
  const run = useWholeRun()
  const tell = useTellLoose()
  const path = ['supply', 'cables', piece.id]
  const loose = looseEndsOf(run).filter(each => each.path[1] === 'cables' && each.of === piece.id)
  return (
    <section className="card" aria-label={labelOf(piece)}>
      <h2>{labelOf(piece)}</h2>
      {loose.map(each => (
        <p key={each.kind} className="wrong" role="status">
          {tell(each)}
        </p>
      ))}
      <End piece={piece} end="from" />
      <End piece={piece} end="to" />
      <Conductors piece={piece} question={web['survey.piece-wires']} />
      <Landings piece={piece} />
      <PieceFields piece={piece} length={web['survey.piece-length']} />
      {!isOnly && <TakeOut path={path} />}
    </section>
  )
}

/** Where a piece begins or ends: a device by its name, or the tub. */
function End({ piece, end }: { readonly piece: Piece; readonly end: 'from' | 'to' }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { devices } = useWholeRun()
  const nameOf = useEndName()
  const pieceName = usePieceName()
  const other = piece[end === 'from' ? 'to' : 'from']
  const ids = devices.map(each => each.id).filter(each => each !== other)
  const ends = end === 'from' ? ids : [...ids.filter(each => each !== devices[0]?.id), BOX]
  return (
    <div data-field={['supply', 'cables', piece.id, end].join('/')}>
      <Chips
        legend={web[`survey.piece-${end}`]}
        options={ends.map(each => ({ value: each, label: nameOf(each) }))}
        chosen={piece[end] === undefined ? undefined : String(piece[end])}
        choose={chosen => survey.act(...endAt(piece, end, chosen, pieceName))}
        isDisabled={!survey.canWrite}
      />
    </div>
  )
}

/** Where the wires of a piece sit on the devices at its ends. */
function Landings({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const { devices } = useWholeRun()
  const known = useDevices()
  if (piece.conductors.length === 0) return undefined
  const kindAt = (end: unknown) => {
    const kind = devices.find(each => each.id === end)?.device
    return known.find(each => each.id === kind)
  }
  return (['from', 'to'] as const).map(end => {
    const device = kindAt(piece[end])
    return (
      device && (
        <Landed
          key={end}
          piece={piece}
          end={end}
          device={device}
          question={web[`survey.as-marked-${end}`]}
        />
      )
    )
  })
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
