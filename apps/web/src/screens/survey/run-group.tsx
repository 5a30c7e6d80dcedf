import type { FeedFunction } from '@tubwright/core'
import { COLOURS, habitsOf, isEarth, usualFeedColour } from '@tubwright/core'
import type { Act, Json } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { SizeEditor } from './editors.tsx'
import { Field } from './field.tsx'
import { Items } from './items.tsx'
import { More } from './more.tsx'
import { useRun } from './protection-group.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** Length, sizes and colours of the wires to the tub. */
export function RunGroup(): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const survey = useSurvey()
  const run = useRun()
  const [saysEach, setSaysEach] = useState(false)
  if (!run) return <p>{web['shell.no-entry']}</p>
  const region = survey.region ?? 'US'
  const habits = habitsOf(region)
  const base = ['supply', 'cables', run.id]
  const at = (id: string, key: string) => inRecord([...base, 'conductors', id, key])
  const sayingOf = (id: string, key: string) => survey.value([...base, 'conductors', id, key])
  const carries = (id: string) => String(sayingOf(id, 'function') ?? id) as FeedFunction
  const ids = run.conductors.map(each => each.id)
  const earths = ids.filter(id => isEarth(carries(id)))
  const lines = ids.filter(id => !earths.includes(id))
  const setSizes = (some: readonly string[]) => (value: Json) =>
    survey.act(...some.map((id): Act => ({ do: 'set', path: at(id, 'size'), value })))
  const sizeOf = (some: readonly string[]): unknown => {
    const sizes = new Set(some.map(id => JSON.stringify(sayingOf(id, 'size'))))
    return sizes.size === 1 && some[0] !== undefined ? sayingOf(some[0], 'size') : undefined
  }
  const usual = (id: string) => usualFeedColour(region, carries(id))
  const isUsual = ids.length > 0 && ids.every(id => sayingOf(id, 'colour') === usual(id))
  const nameOf = (id: string) => web[`survey.wire-${carries(id)}` as keyof typeof web]
  const colourName = (colour: string) =>
    words.values[`colour.${colour}` as keyof typeof words.values]
  const size = (some: readonly string[], label: string) => (
    <SizeEditor
      label={label}
      value={sizeOf(some)}
      set={setSizes(some)}
      clear={() => undefined}
      usual={habits.feedSizes}
      isDisabled={!survey.canWrite}
    />
  )
  return (
    <>
      <Field path={[...base, 'length']} label={web['survey.length']} unit={habits.lengthUnit} />
      {lines.length > 0 && size(lines, web['survey.line-size'])}
      {earths.length > 0 && size(earths, web['survey.earth-size'])}
      {ids.length > 0 && (
        <Chips
          legend={web['survey.colours']}
          options={[
            {
              value: 'usual',
              label: web['survey.colours-usual'].replace(
                '{colours}',
                ids.map(id => `${nameOf(id)} ${colourName(usual(id))}`).join(', '),
              ),
            },
            { value: 'each', label: web['survey.colours-each'] },
          ]}
          chosen={saysEach ? 'each' : isUsual ? 'usual' : undefined}
          choose={chosen => {
            setSaysEach(chosen === 'each')
            if (chosen === 'usual')
              survey.act(
                ...ids.map((id): Act => ({ do: 'set', path: at(id, 'colour'), value: usual(id) })),
              )
          }}
          isDisabled={!survey.canWrite}
        />
      )}
      {(saysEach || (!isUsual && ids.some(id => sayingOf(id, 'colour') !== undefined))) &&
        ids.map(id => (
          <Field
            key={id}
            path={[...base, 'conductors', id, 'colour']}
            label={web['survey.colour-of'].replace('{wire}', nameOf(id))}
            labels={colourName}
            first={COLOURS}
          />
        ))}
      <More below={[base]} asked={[[...base, 'length']]} />
      <Items list={['supply', 'cables']} from={1} />
    </>
  )
}
