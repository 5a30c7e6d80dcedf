import type { Severity } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useApp } from '../app/context.ts'

/** A signal word: the word and its shape say it, colour only besides. */
export function Signal({ severity }: { readonly severity: Severity }): ReactNode {
  const { words } = useApp()
  return (
    <span className="word" data-severity={severity}>
      {words.severities[severity]}
    </span>
  )
}
