import type { CircuitReport } from '@tubwright/core'
import { wayText } from '@tubwright/documents'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useApp } from '../../app/context.ts'

/** What can be done so that supply and tub fit, the cheapest first. */
export function Ways({ circuits }: { readonly circuits: readonly CircuitReport[] }): ReactNode {
  const { words } = useApp()
  const all = circuits.filter(each => each.ways.length > 0)
  if (all.length === 0) return undefined
  return (
    <section aria-label={words.supplyPage.ways}>
      <h2>{words.supplyPage.ways}</h2>
      {all.map(({ index, ways }) => (
        <div key={index}>
          {all.length > 1 && <h3>{say(words.supplyPage.circuit, { index: index + 1 })}</h3>}
          <ol className="ways">
            {ways.map(each => (
              <li key={each.kind} data-outcome={each.outcome}>
                {wayText(each, words)}
              </li>
            ))}
          </ol>
        </div>
      ))}
    </section>
  )
}
