import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useWeb } from '../../app/context.ts'
import { groupFor, groupsOf } from './groups.ts'
import { addressOf } from './survey-path.ts'
import { useTellPath } from './tell-path.ts'
import { useStandingFields } from './use-standing.ts'
import { useDocument } from './use-survey.ts'

/** What was typed and is no answer: what is shown here rests on what was said before. */
export function NotUsed(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const groups = groupsOf(useDocument())
  const tellPath = useTellPath()
  const standing = useStandingFields()
  if (standing.length === 0) return undefined
  const href = (path: readonly string[]) =>
    `/job/${id}/survey/${groupFor(groups, path)?.id ?? ''}/${addressOf(path)}`
  return (
    <section className="card" data-not-used={standing.length}>
      <p className="look">{say(web['survey.not-used-here'], { count: String(standing.length) })}</p>
      <ul className="plain">
        {standing.map(path => (
          <li key={path.join('/')}>
            <Link className="button" href={href(path)}>
              {tellPath(path)}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  )
}
