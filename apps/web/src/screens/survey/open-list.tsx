import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { groupFor, groupsOf } from './groups.ts'
import { useTellLoose } from './loose-ends.tsx'
import { useTellPath } from './tell-path.ts'
import { useDraft } from './use-draft.ts'
import { useDocument } from './use-survey.ts'

/**
 * Everything that a verdict waits for, unknown or never answered, and where it is answered.
 *
 * @param isOfBoxes - says that no box can be judged until then
 */
export function OpenList({ isOfBoxes = true }: { readonly isOfBoxes?: boolean }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { id = '' } = useParams()
  const { open, diagnostics } = useDraft()
  const groups = groupsOf(useDocument())
  const tellPath = useTellPath()
  const tellLoose = useTellLoose()
  const href = (path: readonly string[]) => `/job/${id}/survey/${groupFor(groups, path)?.id ?? ''}`
  return (
    <>
      {isOfBoxes && open.length > 0 && <p>{web['survey.blocks']}</p>}
      <ul className="plain">
        {open.map(({ path, unknown, loose }) => (
          <li key={`${path.join('/')} ${loose?.kind}`}>
            <Link className="card" href={href(path)}>
              <strong>{loose ? tellLoose(loose) : tellPath(path)}</strong>
              {unknown &&
                ` ${say(web['survey.is-unknown'], { reason: web[`survey.reason-${unknown}`] })}`}
            </Link>
          </li>
        ))}
        {diagnostics.map(each => (
          <li key={`${each.path.join('/')}-${each.code}`}>
            <Link className="card" href={href(each.path.map(String))}>
              {words.tellDiagnostic(each)}
            </Link>
          </li>
        ))}
      </ul>
    </>
  )
}
