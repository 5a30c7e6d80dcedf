import { freeId, survey as surveySchema } from '@tubwright/core'
import { fieldsBelow } from '@tubwright/formats'
import { withdrawnBelow } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useJobView, useWeb } from '../../app/context.ts'
import { Fields } from './more.tsx'
import type { SurveyPath } from './use-survey.ts'
import { inRecord, useSurvey } from './use-survey.ts'

/** Further items of a list, each with every field that it has: rarer than to be asked for one by one. */
export function Items({
  list,
  from = 0,
}: {
  readonly list: SurveyPath
  readonly from?: number
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { state } = useJobView()
  const items = (survey.value(list) ?? []) as readonly {
    readonly id: string
    readonly label?: unknown
  }[]
  const add = (): void => {
    // Not the name of one that was taken out: that one would come back with all it had.
    const gone = withdrawnBelow(state, inRecord(list))
    const taken = [...items, ...gone].map(each => each.id)
    const id = freeId(list.at(-1)?.replace(/s$/u, '') ?? 'item', taken)
    survey.act({ do: 'add', path: inRecord([...list, id]) })
  }
  return (
    <>
      {items.slice(from).map(item => (
        <section key={item.id} className="card">
          <h2>{String(item.label ?? item.id)}</h2>
          <Fields paths={fieldsBelow(surveySchema, survey.document, [...list, item.id])} />
          <button
            type="button"
            disabled={!survey.canWrite}
            onClick={() => survey.act({ do: 'withdraw', path: inRecord([...list, item.id]) })}
          >
            {web['survey.withdraw']}
          </button>
        </section>
      ))}
      <p>
        <button type="button" className="plain" disabled={!survey.canWrite} onClick={add}>
          {web['survey.add-another']}
        </button>
      </p>
    </>
  )
}
