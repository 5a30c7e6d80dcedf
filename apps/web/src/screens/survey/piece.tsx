import type { FeedFunction } from '@tubwright/core'
import { COLOURS, habitsOf, isEarth, usualFeedColour } from '@tubwright/core'
import type { Act, Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { SizeEditor } from './editors.tsx'
import { Field } from './field.tsx'
import type { Piece } from './joints.ts'
import { More } from './more.tsx'
import { MorePiece, ON_PIECE } from './more-piece.tsx'
import { useWireName } from './option-name.ts'
import { inRecord, useSurvey } from './use-survey.ts'

/** Length, sizes and colours of one piece of the run, and what a verdict on the supply asks besides. */
export function PieceFields({
  piece,
  length,
}: {
  readonly piece: Piece
  /** What its length is called. */
  readonly length: string
}): ReactNode {
  const { region } = useSurvey()
  const base = ['supply', 'cables', piece.id]
  const inConductors = piece.conductors.flatMap(({ id }) =>
    ['function', 'size', 'colour', 'taped', 'otherEnd', 'from', 'to'].map(key => [
      ...base,
      'conductors',
      id,
      key,
    ]),
  )
  return (
    <>
      <Field path={[...base, 'length']} label={length} unit={habitsOf(region ?? 'US').lengthUnit} />
      {piece.conductors.length > 0 && (
        <>
          <Sizes piece={piece} />
          <Colours piece={piece} />
        </>
      )}
      <MorePiece piece={piece} />
      <More
        below={[base]}
        asked={[
          ...['length', 'from', 'to', ...ON_PIECE].map(key => [...base, key]),
          ...inConductors,
        ]}
      />
    </>
  )
}

/** What a wire carries, by what was said or by its name. */
const carriesOf = ({ id, function: does }: Piece['conductors'][number]): FeedFunction =>
  String(does ?? id) as FeedFunction

function Sizes({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const list = ['supply', 'cables', piece.id, 'conductors']
  const earths = piece.conductors.filter(each => isEarth(carriesOf(each)))
  const lines = piece.conductors.filter(each => !earths.includes(each))
  const size = (some: Piece['conductors'], label: string): ReactNode => {
    const paths = some.map(({ id }) => [...list, id, 'size'])
    const [first, ...rest] = paths.map(path => survey.value(path))
    const isOne = rest.every(each => JSON.stringify(each) === JSON.stringify(first))
    return (
      <SizeEditor
        label={label}
        value={isOne ? first : undefined}
        set={(value: Json) =>
          survey.act(...paths.map((path): Act => ({ do: 'set', path: inRecord(path), value })))
        }
        clear={() => undefined}
        usual={habitsOf(survey.region ?? 'US').feedSizes}
        isDisabled={!survey.canWrite}
      />
    )
  }
  return (
    <>
      {lines.length > 0 && size(lines, web['survey.line-size'])}
      {earths.length > 0 && size(earths, web['survey.earth-size'])}
    </>
  )
}

function Colours({ piece }: { readonly piece: Piece }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const survey = useSurvey()
  const nameOf = useWireName()
  const [saysEach, setSaysEach] = useState(false)
  const region = survey.region ?? 'US'
  const wires = piece.conductors.map(each => ({
    path: ['supply', 'cables', piece.id, 'conductors', each.id, 'colour'],
    name: nameOf(carriesOf(each)),
    usual: usualFeedColour(region, carriesOf(each)),
  }))
  const isUsual = wires.every(({ path, usual }) => survey.value(path) === usual)
  const isSaid = wires.some(({ path }) => survey.value(path) !== undefined)
  const colourName = (colour: string) =>
    words.values[`colour.${colour}` as keyof typeof words.values]
  const setUsual = (): void =>
    survey.act(
      ...wires.map(({ path, usual }): Act => ({ do: 'set', path: inRecord(path), value: usual })),
    )
  return (
    <>
      <Chips
        legend={web['survey.colours']}
        options={[
          {
            value: 'usual',
            label: say(web['survey.colours-usual'], {
              colours: wires.map(({ name, usual }) => `${name} ${colourName(usual)}`).join(', '),
            }),
          },
          { value: 'each', label: web['survey.colours-each'] },
        ]}
        chosen={saysEach ? 'each' : isUsual ? 'usual' : undefined}
        choose={chosen => {
          setSaysEach(chosen === 'each')
          if (chosen === 'usual') setUsual()
        }}
        isDisabled={!survey.canWrite}
      />
      {(saysEach || (!isUsual && isSaid)) &&
        wires.map(({ path, name }) => (
          <Field
            key={path.join('/')}
            path={path}
            label={say(web['survey.colour-of'], { wire: name })}
            first={COLOURS}
          />
        ))}
    </>
  )
}
