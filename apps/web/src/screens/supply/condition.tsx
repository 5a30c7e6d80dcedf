import type { ConditionFailure, SupplyCondition } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import type { JudgedSupply } from '../../ask/protocol.ts'
import { Signal } from '../../parts/signal.tsx'
import { useWireName } from '../survey/option-name.ts'
import { useNameOf } from './places.ts'

/** What the readings at the tub say of its supply, or the way to take some. */
export function Condition({ found }: { readonly found: JudgedSupply['condition'] }): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  return (
    <section aria-label={web['supply.condition']}>
      <h2>{web['supply.condition']}</h2>
      {found ? (
        found.ok ? (
          <Named found={found.value} />
        ) : (
          <Unjudged failure={found.failure} />
        )
      ) : (
        <p>{web['supply.no-readings']}</p>
      )}
      <Link className="button" href={`/job/${id}/survey/readings`}>
        {web[found ? 'supply.more-readings' : 'supply.to-readings']}
      </Link>
    </section>
  )
}

/** Whether the readings show by themselves that the supply is a danger. */
export const isShownDanger = (found: JudgedSupply['condition']): boolean =>
  found?.ok === true &&
  found.value.dangers.some(each => each.certainty === 'shown' && each.severity === 'danger')

function Named({ found }: { readonly found: SupplyCondition }): ReactNode {
  const { words } = useApp()
  const nameOf = useNameOf()
  const [first, ...rest] = words.tellCondition(found, nameOf)
  return (
    <div className="card" data-condition={found.named ?? 'several'}>
      <p className="lead">
        <strong>{first}</strong>
        {words.hasUnreviewed && <em> ({words.unreviewedMark})</em>}
      </p>
      <Dangers found={found} />
      {rest.length > 0 && (
        <ul>
          {rest.map(each => (
            <li key={each}>{each}</li>
          ))}
        </ul>
      )}
    </div>
  )
}

/** What is dangerous about it; not everything that fits need be so. */
function Dangers({ found }: { readonly found: SupplyCondition }): ReactNode {
  const { words } = useApp()
  return words.tellDangers(found).map(({ reason, severity, text }) => (
    <p key={reason} data-danger={reason}>
      <Signal severity={severity} />
      {text}
    </p>
  ))
}

function Unjudged({ failure }: { readonly failure: ConditionFailure }): ReactNode {
  const web = useWeb()
  const wireName = useWireName()
  return (
    <p className="card" role="status">
      {failure.reason === 'not-arriving'
        ? say(web['supply.not-arriving'], { conductor: wireName(failure.conductor) })
        : web['supply.no-condition']}
    </p>
  )
}
