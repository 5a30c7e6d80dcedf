import { freeId, survey as surveySchema } from '@tubwright/core'
import type { Growing } from '@tubwright/formats'
import { growingBelow } from '@tubwright/formats'
import { withdrawnBelow } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { useJobView, useWeb } from '../../app/context.ts'
import { useFieldLabel } from './field-label.ts'
import type { SurveyPath } from './use-survey.ts'
import { inRecord, useSurvey } from './use-survey.ts'

/** Names that an entry may have: the id of the schema. */
const NAME = /^[A-Za-z0-9][A-Za-z0-9-]{0,39}$/u

/** What a new entry is before anything is known of it: pins and amps are values, the rest groups. */
const isValueIn = (path: SurveyPath): boolean => ['pins', 'amps'].includes(path.at(-1) ?? '')

/** A way to add to every list and to every set of named entries below some places. */
export function Growth({ below }: { readonly below: readonly SurveyPath[] }): ReactNode {
  const { document } = useSurvey()
  const growing = below.flatMap(path => growingBelow(surveySchema, document, path))
  return growing.map(each => <Grow key={each.path.join('/')} growing={each} />)
}

function Grow({ growing }: { readonly growing: Growing }): ReactNode {
  const { path, takes } = growing
  const web = useWeb()
  const survey = useSurvey()
  const { state } = useJobView()
  const id = useId()
  const [name, setName] = useState('')
  const what = useFieldLabel()(path)
  const ids = ((survey.value(path) ?? []) as readonly { readonly id?: unknown }[]).map?.(each =>
    String(each.id),
  )
  const stem = String(path.at(-1)).replace(/s$/u, '')
  const gone = withdrawnBelow(state, inRecord(path)).map(each => each.id)
  const addItem = (): void =>
    survey.act({ do: 'add', path: inRecord([...path, freeId(stem, [...(ids ?? []), ...gone])]) })
  const addEntry = (): void => {
    const value = isValueIn(path) ? { unknown: 'not measured' } : {}
    survey.act({ do: 'set', path: inRecord([...path, name]), value })
    setName('')
  }
  if (takes === 'items')
    return (
      <p>
        <button type="button" disabled={!survey.canWrite} onClick={addItem}>
          {say(web['survey.add-to'], { what })}
        </button>
      </p>
    )
  return (
    <p>
      <label className="label" htmlFor={id}>
        {say(web['survey.add-to'], { what })}
      </label>
      <span className="row">
        <input
          id={id}
          type="text"
          value={name}
          placeholder={say(web['survey.add-name'], { example: '1' })}
          disabled={!survey.canWrite}
          onChange={event => setName(event.target.value)}
        />
        <button type="button" disabled={!survey.canWrite || !NAME.test(name)} onClick={addEntry}>
          {web['survey.add']}
        </button>
      </span>
    </p>
  )
}
