import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { useFieldHref, useTellAsk } from './places.ts'

/** What to ask, the most telling first: the first one is a tap away. */
export function Asks({
  asks,
  hasNext,
}: {
  readonly asks: readonly string[]
  /** Whether another reading would tell more. */
  readonly hasNext: boolean
}): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const hrefOf = useFieldHref()
  const tellAsk = useTellAsk()
  const [first, ...others] = asks
  if (first === undefined && hasNext) return undefined
  return (
    <section aria-label={words.supplyPage.ask} className="asks">
      <h2>{words.supplyPage.ask}</h2>
      {first === undefined ? (
        <p>{words.supplyPage['nothing-to-ask']}</p>
      ) : (
        <Link className="button main" href={hrefOf(first)}>
          {say(web['supply.next'], { ask: tellAsk(first) })}
        </Link>
      )}
      {others.length > 0 && (
        <ol start={2}>
          {others.map(at => (
            <li key={at}>
              <Link href={hrefOf(at)}>{tellAsk(at)}</Link>
            </li>
          ))}
        </ol>
      )}
    </section>
  )
}
