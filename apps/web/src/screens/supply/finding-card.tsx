import type { CodeFinding } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { Link } from 'wouter'
import { useApp, useWeb } from '../../app/context.ts'
import { Signal } from '../../parts/signal.tsx'
import { useFieldHref, useNameOf, useTellAsk } from './places.ts'

/** Findings of one kind; nothing where there is none. */
export function FindingGroup({
  title,
  findings,
}: {
  readonly title?: string
  readonly findings: readonly CodeFinding[]
}): ReactNode {
  if (findings.length === 0) return undefined
  return (
    <section aria-label={title}>
      {title !== undefined && <h2>{title}</h2>}
      <ul className="plain">
        {findings.map(each => (
          <li key={`${each.rule} ${each.message} ${each.subjects.join(' ')} ${paramsKey(each)}`}>
            <FindingCard finding={each} />
          </li>
        ))}
      </ul>
    </section>
  )
}

const paramsKey = ({ params }: CodeFinding): string => Object.values(params).join(' ')

/** What each rule is about, as a heading. */
export function useRuleTitle(): (rule: string) => string {
  const titles: Readonly<Record<string, string>> = useApp().words.supplyRules
  return rule => titles[rule] ?? rule
}

function FindingCard({ finding }: { readonly finding: CodeFinding }): ReactNode {
  const web = useWeb()
  const { words } = useApp()
  const titleOf = useRuleTitle()
  const nameOf = useNameOf()
  const { rule, verdict, severity, clause, asks, message } = finding
  // What is open is answered first, and read of afterwards.
  const isBrief = verdict === 'not-shown' && asks.length > 0
  const told = (
    <>
      {words.tellCode(finding, nameOf)}
      {words.isUnreviewed(`supplySays/${message}`) && <em> ({words.unreviewedMark})</em>}
    </>
  )
  return (
    <article className="card finding" data-rule={rule} data-verdict={verdict}>
      <h3>
        {titleOf(rule)}
        {isBrief && <Whose subject={finding.subjects[0]} />}
      </h3>
      {isBrief ? (
        <>
          <Settling asks={asks} />
          {asks.length > 1 && (
            <details>
              <summary>{web['supply.depends']}</summary>
              <p>{told}</p>
            </details>
          )}
        </>
      ) : (
        <>
          <p>
            {verdict !== 'holds' && <Signal severity={severity} />}
            {told}
          </p>
          <Settling asks={asks} />
        </>
      )}
      <p className="quiet">
        {clause && `${words.tellClause(clause)} · `}
        {say(web['supply.rule'], { rule })}
      </p>
    </article>
  )
}

/** What it is said of, where a sentence does not name it. */
function Whose({ subject = '' }: { readonly subject: string | undefined }): ReactNode {
  const nameOf = useNameOf()
  const id = subject.split('.').at(-1) ?? subject
  const name = nameOf(id)
  return name === id ? undefined : <span className="quiet"> {name}</span>
}

/** The way to what settles it: of several answers, to the first that is asked. */
function Settling({ asks }: { readonly asks: readonly string[] }): ReactNode {
  const hrefOf = useFieldHref()
  const tellAsk = useTellAsk()
  const [first] = asks
  if (first === undefined) return undefined
  return (
    <p>
      <Link className="button" href={hrefOf(first)}>
        {tellAsk(first)}
      </Link>
    </p>
  )
}
