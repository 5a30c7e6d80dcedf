import { COLOURS, habitsOf } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { ManyChips } from '../../parts/chips.tsx'
import { useAsked } from './asked.ts'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { useIsAmerican } from './here.ts'
import type { Piece } from './joints.ts'
import { useWireName } from './option-name.ts'
import { isBelow } from './survey-path.ts'
import { inRecord, useSurvey } from './use-survey.ts'

/** What is asked here of a piece as a whole. */
export const ON_PIECE = [
  'where',
  'method',
  'conduit',
  'material',
  'insulation',
  'ambient',
  'alongside',
  'heatMark',
]

/** Ways of holding that are commonly met; the others stand in a list. */
const METHODS = {
  american: ['conduit', 'flexible-conduit', 'sheathed-cable', 'cord'],
  metric: ['buried-cable', 'armoured-cable', 'sheathed-cable', 'cable-in-conduit', 'cord'],
}

/** Where a piece lies and how it is held: of use to a verdict on the supply alone. */
export function MorePiece({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const isAmerican = useIsAmerican()
  const base = ['supply', 'cables', piece.id]
  const at = (key: string) => [...base, key]
  return (
    <Disclosure title={web['survey.more-piece']} below={[...ON_PIECE.map(at), ...onWires(piece)]}>
      <Field path={at('where')} label={web['survey.piece-where']} />
      <Field
        path={at('method')}
        label={web['survey.piece-method']}
        first={METHODS[isAmerican ? 'american' : 'metric']}
      />
      <Conduit piece={piece} />
      <Field path={at('material')} label={web['survey.piece-material']} />
      <Field
        path={at('insulation')}
        label={web['survey.piece-insulation']}
        hint={web[`survey.piece-insulation-${isAmerican ? 'american' : 'metric'}`]}
        first={isAmerican ? ['60 °C', '75 °C', '90 °C'] : ['70 °C', '90 °C']}
      />
      <Field
        path={at('ambient')}
        label={web['survey.piece-ambient']}
        hint={web['survey.piece-ambient-hint']}
        unit={isAmerican ? '°F' : '°C'}
        usual={isAmerican ? ['86 °F', '104 °F', '122 °F'] : ['30 °C', '40 °C', '50 °C']}
      />
      <Field
        path={at('alongside')}
        label={web['survey.piece-alongside']}
        hint={web['survey.piece-alongside-hint']}
        first={['0', '1', '2', '3', '4']}
      />
      <Field
        path={at('heatMark')}
        label={web['survey.heat-mark']}
        hint={web['survey.heat-mark-hint']}
      />
      <Taped piece={piece} />
      <OtherEnds piece={piece} />
    </Disclosure>
  )
}

/** Every word that a value may be: one, some, or none. */
const mayBe = (value: unknown): readonly string[] => {
  if (typeof value === 'string') return [value]
  const { oneOf } = (value ?? {}) as { readonly oneOf?: unknown }
  return Array.isArray(oneOf) ? oneOf.map(String) : []
}

/** Which conduit: asked where the wires lie in one, and where somebody is sent to say it. */
function Conduit({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const { value } = useSurvey()
  const isAmerican = useIsAmerican()
  const asked = useAsked()
  const base = ['supply', 'cables', piece.id]
  const conduit = [...base, 'conduit']
  const isIn = mayBe(value([...base, 'method'])).some(each => each.includes('conduit'))
  const isSaid = value(conduit) !== undefined
  const isSentTo = asked !== undefined && isBelow(asked, conduit)
  if (!(isAmerican && isIn) && !isSaid && !isSentTo) return undefined
  return (
    <>
      <Field path={[...conduit, 'kind']} label={web['survey.conduit-kind']} />
      <Field
        path={[...conduit, 'size']}
        label={web['survey.conduit-size']}
        labels={each => `${each} in`}
      />
    </>
  )
}

const wirePath = (piece: Piece, wire: string, ...rest: readonly string[]): readonly string[] => [
  'supply',
  'cables',
  piece.id,
  'conductors',
  wire,
  ...rest,
]

/** Where it stands what was found on single wires. */
const onWires = (piece: Piece) =>
  piece.conductors.flatMap(({ id }) => [
    wirePath(piece, id, 'taped'),
    wirePath(piece, id, 'otherEnd'),
  ])

interface OfWires {
  readonly question: string
  readonly hint?: string
  readonly piece: Piece
  /** What is said of a wire that is chosen. */
  readonly keys: readonly (readonly string[])[]
  readonly fields: (wire: string, name: string) => ReactNode
}

/** Which wires something was found on, and what of each. Taken back, it is said of none. */
function OfWires({ question, hint, piece, keys, fields }: OfWires): ReactNode {
  const survey = useSurvey()
  const wireName = useWireName()
  const [opened, setOpened] = useState<readonly string[]>([])
  const pathsOf = (wire: string) => keys.map(key => wirePath(piece, wire, ...key))
  const isSaid = (wire: string) => pathsOf(wire).some(path => survey.value(path) !== undefined)
  const wires = piece.conductors.map(each => ({
    id: each.id,
    name: wireName(String(each.function ?? each.id)),
  }))
  const chosen = wires.map(each => each.id).filter(each => opened.includes(each) || isSaid(each))
  const choose = (some: readonly string[]): void => {
    setOpened(some)
    const gone = chosen.filter(each => !some.includes(each) && isSaid(each))
    survey.act(
      ...gone
        .flatMap(pathsOf)
        .filter(path => survey.value(path) !== undefined)
        .map((path): Act => ({ do: 'clear', path: inRecord(path) })),
    )
  }
  if (wires.length === 0) return undefined
  return (
    <>
      <ManyChips
        legend={question}
        options={wires.map(({ id, name }) => ({ value: id, label: name }))}
        chosen={chosen}
        choose={choose}
        isDisabled={!survey.canWrite}
        {...(hint === undefined ? {} : { hint })}
      />
      {wires.filter(each => chosen.includes(each.id)).map(({ id, name }) => fields(id, name))}
    </>
  )
}

function Taped({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  return (
    <OfWires
      question={web['survey.taped-which']}
      piece={piece}
      keys={[['taped']]}
      fields={(wire, name) => (
        <Field
          key={wire}
          path={wirePath(piece, wire, 'taped')}
          label={say(web['survey.taped-of'], { wire: name })}
          first={['white', 'grey', 'green', 'red', 'blue']}
        />
      )}
    />
  )
}

function OtherEnds({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const { region } = useSurvey()
  const habits = habitsOf(region ?? 'US')
  return (
    <OfWires
      question={web['survey.other-end']}
      hint={web['survey.other-end-hint']}
      piece={piece}
      keys={[
        ['otherEnd', 'size'],
        ['otherEnd', 'colour'],
      ]}
      fields={(wire, name) => (
        <div key={wire}>
          <Field
            path={wirePath(piece, wire, 'otherEnd', 'size')}
            label={say(web['survey.other-end-size'], { wire: name })}
            usual={habits.feedSizes}
          />
          <Field
            path={wirePath(piece, wire, 'otherEnd', 'colour')}
            label={say(web['survey.other-end-colour'], { wire: name })}
            first={COLOURS}
          />
        </div>
      )}
    />
  )
}
