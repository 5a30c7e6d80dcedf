import { createContext, useContext, useEffect, useMemo, useState } from 'react'
import { useApp } from '../../app/context.ts'
import type { Questions } from '../../ask/protocol.ts'
import type { OpenHere } from './add-open.ts'
import { addOpen } from './add-open.ts'
import { useDocument } from './use-survey.ts'

/** What the core says of the survey as far as it goes. */
export type DraftView = Omit<Questions['draft']['answers'], 'open'> & {
  readonly open: readonly OpenHere[]
  /** Whether the core has read it at all yet. */
  readonly isRead: boolean
}

const NOTHING: DraftView = { isRead: false, isSurvey: false, open: [], diagnostics: [] }

/** Asks the core of the survey, again after every answer. */
export function useAskedDraft(): DraftView {
  const { core, shelf } = useApp()
  const document = useDocument()
  const [draft, setDraft] = useState(NOTHING)
  useEffect(() => {
    let isWanted = true
    void shelf()
      .then(async ({ devices }) =>
        addOpen(await core.ask('draft', { document }), document, devices),
      )
      .then(answers => isWanted && setDraft({ ...answers, isRead: true }))
      .catch(() => undefined)
    return () => {
      isWanted = false
    }
  }, [core, shelf, document])
  return draft
}

const DraftContext = createContext(NOTHING)
export const DraftProvider = DraftContext.Provider

export const useDraft = (): DraftView => useContext(DraftContext)

type Told = DraftView['diagnostics'][number]

/** What is wrong or unlikely at one place, or at something inside it that has no field of its own. */
export function useDiagnosticsAt(path: readonly string[]): readonly Told[] {
  const { diagnostics } = useDraft()
  const at = path.join('/')
  return useMemo(() => diagnostics.filter(each => each.path.join('/') === at), [diagnostics, at])
}
