import { figure, say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { BoxChoice } from '../../ask/protocol.ts'
import { useReasons } from './box-card.tsx'
import type { BoxLine } from './box-lines.ts'

/** Boxes side by side, a column each. */
export function BoxTable({ lines }: { readonly lines: readonly BoxLine[] }): ReactNode {
  const web = useWeb()
  const { shelf } = useApp()
  const reasons = useReasons()
  const [boxes, setBoxes] = useState<readonly BoxChoice[]>([])
  useEffect(() => void shelf().then(found => setBoxes(found.boxes)), [shelf])
  const rows: readonly (readonly [string, (line: BoxLine) => ReactNode])[] = [
    [web['match.verdict'], ({ verdict }) => web[`match.${verdict}`]],
    [
      web['match.stock'],
      ({ stock }) =>
        stock === undefined
          ? '–'
          : stock > 0
            ? say(web['match.in-stock'], { count: String(stock) })
            : web['match.not-in-stock'],
    ],
    [web['match.maker'], ({ match }) => match.maker],
    [
      web['match.feeds'],
      ({ match }) => boxes.find(each => each.id === match.box)?.feeds.join(', ') ?? '–',
    ],
    [
      web['match.margin'].split('{margin}')[0] ?? '',
      ({ plan }) => (plan ? `${figure(plan.margin * 100)} %` : '–'),
    ],
    [web['match.why'], line => reasons(line).join(' ')],
  ]
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className="scroll" aria-label={web['match.compare-title']} tabIndex={0}>
      <table>
        <caption className="unseen">{web['match.compare-title']}</caption>
        <thead>
          <tr>
            <td />
            {lines.map(each => (
              <th key={each.match.box} scope="col">
                {each.match.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, cell]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {lines.map(each => (
                <td key={each.match.box}>{cell(each)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
