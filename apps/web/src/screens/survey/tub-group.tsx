import type { Region } from '@tubwright/core'
import { habitsOf } from '@tubwright/core'
import { fieldAt } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useJob, useJobView, useWeb } from '../../app/context.ts'
import type { BoxChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { More } from './more.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

/** Name, region, and where to begin. */
export function TubGroup(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  /** The mains frequency is a fact of the region; it can be said otherwise with the supply. */
  const setRegion = (region: unknown): void => {
    const { frequency } = habitsOf(region as Region)
    survey.act(
      { do: 'set', path: inRecord(['region']), value: String(region) },
      ...(survey.value(['supply', 'frequency']) === undefined
        ? [{ do: 'set' as const, path: inRecord(['supply', 'frequency']), value: frequency }]
        : []),
    )
  }
  return (
    <>
      <Field
        path={['region']}
        label={web['survey.region']}
        labels={each => web[`survey.region-${each}` as keyof typeof web]}
        set={setRegion}
      />
      <Field path={['title']} label={web['survey.name']} />
      <BeginWith />
      <Plate />
      <More below={[['note']]} />
    </>
  )
}

const PLATE = ['draws', 'minimumCircuit', 'maximumProtection'] as const
const PLATE_WORDS = {
  draws: 'survey.plate-draws',
  minimumCircuit: 'survey.plate-minimum',
  maximumProtection: 'survey.plate-maximum',
} as const

/** What the plate asks of its supply, and by which edition of the code that is judged. */
function Plate(): ReactNode {
  const web = useWeb()
  const { region } = useSurvey()
  const { breakers } = habitsOf(region ?? 'US')
  return (
    <Disclosure title={web['survey.plate-more']} below={[['plate'], ['codeEdition']]}>
      <p className="hint">{web['survey.plate-hint-supply']}</p>
      {PLATE.map(each => (
        <Field
          key={each}
          path={['plate', each]}
          label={web[PLATE_WORDS[each]]}
          unit="A"
          usual={each === 'draws' ? [] : breakers.slice(-4)}
        />
      ))}
      {(region ?? 'US') === 'US' && (
        <Field
          path={['codeEdition']}
          label={web['survey.code-edition']}
          hint={web['survey.code-edition-hint']}
        />
      )}
    </Disclosure>
  )
}

/** Tub first, or with a box that lies there: then only that one is judged. */
function BeginWith(): ReactNode {
  const web = useWeb()
  const { shelf } = useApp()
  const job = useJob()
  const { state } = useJobView()
  const { canWrite } = useSurvey()
  const [boxes, setBoxes] = useState<readonly BoxChoice[]>([])
  useEffect(() => void shelf().then(found => setBoxes(found.boxes)), [shelf])
  const chosen = fieldAt(state, ['box'])
  const box = chosen.kind === 'set' ? String(chosen.value) : ''
  if (boxes.length === 0) return undefined
  return (
    <Chips
      legend={web['survey.begin-with']}
      options={[
        { value: '', label: web['survey.tub-first'] },
        ...boxes.map(each => ({
          value: each.id,
          label: `${web['survey.box-first']}: ${each.label}`,
        })),
      ].slice(0, 1)}
      chosen={box}
      choose={() => void job.append({ do: 'clear', path: ['box'] })}
      isDisabled={!canWrite}
    >
      <select
        aria-label={web['survey.box-first']}
        value={box}
        disabled={!canWrite}
        onChange={event =>
          void job.append(
            event.target.value === ''
              ? { do: 'clear', path: ['box'] }
              : { do: 'set', path: ['box'], value: event.target.value },
          )
        }
      >
        <option value="">{web['survey.box-first']}</option>
        {boxes.map(each => (
          <option key={each.id} value={each.id}>
            {each.label}
          </option>
        ))}
      </select>
    </Chips>
  )
}
