import { say } from '@tubwright/words'
import type { KeyboardEvent, ReactNode } from 'react'
import { useRef, useSyncExternalStore } from 'react'
import { useWeb } from '../../app/context.ts'

const TABS = ['text', 'problems', 'board'] as const
export type Tab = (typeof TABS)[number]

const WIDE = '(min-width: 60rem)'

function watchWidth(listener: () => void): () => void {
  const media = matchMedia(WIDE)
  media.addEventListener('change', listener)
  return () => media.removeEventListener('change', listener)
}

/** Whether there is room for all panels side by side. */
export const useIsWide = (): boolean =>
  useSyncExternalStore(watchWidth, () => matchMedia(WIDE).matches)

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 }

/** The panels one at a time; the arrow keys go from one to the next. */
export function PanelTabs({
  tab,
  setTab,
  problems,
}: {
  readonly tab: Tab
  readonly setTab: (tab: Tab) => void
  readonly problems: number
}): ReactNode {
  const web = useWeb()
  const list = useRef<HTMLDivElement>(null)
  const names: Readonly<Record<Tab, string>> = {
    text: web['describe.text'],
    problems: say(web['describe.problems-count'], { count: String(problems) }),
    board: web['describe.board'],
  }
  const step = ({ key }: KeyboardEvent): void => {
    const by = STEPS[key]
    if (by === undefined) return
    const index = (TABS.indexOf(tab) + by + TABS.length) % TABS.length
    setTab(TABS[index] ?? 'text')
    list.current?.querySelectorAll('button')[index]?.focus()
  }
  return (
    <div className="tabs" role="tablist" aria-label={web['describe.panels']} ref={list}>
      {TABS.map(each => (
        <button
          key={each}
          type="button"
          role="tab"
          id={`describe-tab-${each}`}
          aria-controls={`describe-${each}`}
          aria-selected={each === tab}
          tabIndex={each === tab ? 0 : -1}
          onClick={() => setTab(each)}
          onKeyDown={step}
        >
          {names[each]}
        </button>
      ))}
    </div>
  )
}
