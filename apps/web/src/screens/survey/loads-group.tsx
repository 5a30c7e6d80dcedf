import type { LoadShape } from '@tubwright/core'
import { draftLoad, freeId, LOAD_SHAPES } from '@tubwright/core'
import { actsBetween, withdrawnBelow } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useLocation, useParams } from 'wouter'
import { useJobView, useWeb } from '../../app/context.ts'
import { groupsOf } from './groups.ts'
import { useStateText } from './use-state-text.ts'
import { inRecord, useSurvey } from './use-survey.ts'

interface Listed {
  readonly id: string
  readonly label?: unknown
}

function labelIn(document: unknown): string | undefined {
  const { label } = document as { readonly label?: unknown }
  return typeof label === 'string' ? label : undefined
}

/** A load of a shape: whether this one has an earth is asked, as another of its kind may have none. */
const newLoad = ({ leads, ...shape }: LoadShape, id: string, label: string) =>
  draftLoad({ ...shape, leads: leads.filter(each => each !== 'earth') }, id, label)

/** Every load, and one tap for each kind to add. */
export function LoadsGroup(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { id: job = '' } = useParams()
  const [, go] = useLocation()
  const { state } = useJobView()
  const loads = (survey.value(['loads']) ?? []) as readonly Listed[]
  const groups = groupsOf(survey.document)
  const textOf = useStateText(groups)
  const stateOf = (id: string): string => {
    const group = groups.find(({ load }) => load === id)
    return group ? textOf(group) : ''
  }
  const gone = withdrawnBelow(state, inRecord(['loads']))
  const add = (shape: LoadShape): void => {
    const taken = [...loads, ...gone].map(each => each.id)
    const devices = (survey.value(['supply', 'devices']) ?? []) as readonly Listed[]
    const cables = (survey.value(['supply', 'cables']) ?? []) as readonly Listed[]
    const stem = shape.kind
    const id = freeId(stem, [...taken, ...[...devices, ...cables].map(each => each.id), 'box'])
    const name = web[`survey.kind-${shape.id}` as keyof typeof web]
    const same = loads.filter(each => String(each.label ?? '').startsWith(name)).length
    const label = same > 0 ? `${name} ${same + 1}` : name
    survey.act(...actsBetween(undefined, [newLoad(shape, id, label)] as never, inRecord(['loads'])))
    go(`/job/${job}/survey/load-${id}`)
  }
  return (
    <>
      {loads.length === 0 && <p>{web['survey.no-loads']}</p>}
      <ul className="plain">
        {loads.map(each => (
          <li key={each.id}>
            <Link className="card" href={`/job/${job}/survey/load-${each.id}`}>
              <span className="title">{String(each.label ?? each.id)}</span>{' '}
              <span className="quiet">{stateOf(each.id)}</span>
            </Link>
          </li>
        ))}
      </ul>
      <h2>{web['survey.add-load']}</h2>
      <div className="chips">
        {LOAD_SHAPES.map(shape => (
          <button
            key={shape.id}
            type="button"
            disabled={!survey.canWrite}
            onClick={() => add(shape)}
          >
            {web[`survey.kind-${shape.id}` as keyof typeof web]}
          </button>
        ))}
      </div>
      {gone.length > 0 && (
        <details>
          <summary>{say(web['survey.withdrawn-count'], { count: String(gone.length) })}</summary>
          {gone.map(({ id, document }) => (
            <p key={id} className="card row">
              <span>{say(web['survey.withdrawn'], { label: labelIn(document) ?? id })}</span>{' '}
              <button
                type="button"
                disabled={!survey.canWrite}
                onClick={() => survey.act({ do: 'restore', path: inRecord(['loads', id]) })}
              >
                {web['survey.bring-back']}
              </button>
            </p>
          ))}
        </details>
      )}
    </>
  )
}
