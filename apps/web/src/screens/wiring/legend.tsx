import { DASHES } from '@tubwright/documents'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { useWiring } from './wiring-context.ts'

/** What signs and lines mean, none of them by colour. */
export function Legend(): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const { rows } = useWiring()
  const roles = [...new Set(rows.map(each => each.wire.role))]
  return (
    <details className="legend">
      <summary>{web['wiring.legend']}</summary>
      <ul className="plain">
        <li>
          <span className="sign">⚡</span> {web['wiring.legend-live']}
        </li>
        <li>
          <span className="sign">
            <span className="sign-triangle">⚡</span>
          </span>{' '}
          {web['wiring.legend-stays']}
        </li>
        <li>
          <span className="sign">◆</span> {web['wiring.legend-carries']}
        </li>
        <li>{web['wiring.legend-net']}</li>
        <li>{web['wiring.legend-line']}</li>
        {roles.map(role => (
          <li key={role}>
            <svg className="line" viewBox="0 0 30 2" aria-hidden="true">
              <path d="M0 1H30" strokeDasharray={DASHES[role]} />
            </svg>{' '}
            {words.lines[role]}
          </li>
        ))}
      </ul>
    </details>
  )
}
