import { say } from '@tubwright/words'
import type { ReactNode, RefObject } from 'react'
import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react'
import { flushSync } from 'react-dom'
import { useApp, useWeb } from '../../app/context.ts'
import { Working } from '../../app/frame.tsx'
import { BoardPanel } from './board-panel.tsx'
import type { EditorHandle, EditorWords } from './editor-view.ts'
import type { Tab } from './panel-tabs.tsx'
import { PanelTabs, useIsWide } from './panel-tabs.tsx'
import type { Parts } from './parts.ts'
import { ProblemList } from './problem-list.tsx'
import type { Problem } from './problems.ts'
import { useFollow } from './use-description.ts'
import type { LintView } from './use-lint.ts'

const Editor = lazy(async () => ({ default: (await import('./editor.tsx')).Editor }))

/** The last board that could be drawn, and whether the text has moved on to what cannot be. */
function useBoard({ linted }: LintView): { drawing: string | undefined; isOld: boolean } {
  const [last, setLast] = useState<string>()
  const drawing = linted?.drawing
  useEffect(() => {
    if (drawing !== undefined) setLast(drawing)
  }, [drawing])
  return { drawing: drawing ?? last, isOld: drawing === undefined }
}

/** Text, problems and board: side by side where there is room, else one at a time. */
export function Panels(parts: Parts): ReactNode {
  const web = useWeb()
  const isWide = useIsWide()
  const [tab, setTab] = useState<Tab>('text')
  const handle = useRef<EditorHandle | undefined>(undefined)
  const { lint, problems } = parts
  const { drawing, isOld } = useBoard(lint)
  const goTo = ({ line, column }: Problem): void => {
    // The editor has to be seen before it can go anywhere.
    flushSync(() => setTab('text'))
    handle.current?.goTo(line, column)
  }
  const panel = (name: Tab) => ({
    id: `describe-${name}`,
    className: `panel panel-${name}`,
    hidden: !isWide && tab !== name,
    ...(isWide ? {} : { role: 'tabpanel', 'aria-labelledby': `describe-tab-${name}` }),
  })
  return (
    <>
      {!isWide && <PanelTabs tab={tab} setTab={setTab} problems={problems.length} />}
      <div className="panels">
        <section {...panel('text')}>
          <TextPanel {...parts} handle={handle} />
        </section>
        <section {...panel('problems')}>
          {isWide && <h2>{web['describe.problems']}</h2>}
          <ProblemList problems={problems} lint={lint} goTo={goTo} />
        </section>
        <section {...panel('board')}>
          {isWide && <h2>{web['describe.board']}</h2>}
          <BoardPanel drawing={drawing} isOld={isOld} />
        </section>
      </div>
    </>
  )
}

type Handle = RefObject<EditorHandle | undefined>

/** Keeps what the editor shows in step with what is known: its marks, and whether it may be changed. */
function useInStep(
  { lint: { text }, problems, canWrite }: Parts,
  handle: Handle,
  isOpen: boolean,
): void {
  useEffect(() => {
    if (isOpen && text !== undefined) handle.current?.mark(text, problems)
  }, [handle, isOpen, text, problems])
  useEffect(() => {
    if (isOpen) handle.current?.setReadOnly(!canWrite)
  }, [handle, isOpen, canWrite])
}

function TextPanel({ handle, ...parts }: Parts & { readonly handle: Handle }): ReactNode {
  const { words, language } = useApp()
  const web = useWeb()
  const { stored, writing, canWrite } = parts
  const [isOpen, setIsOpen] = useState(false)
  const [field, setField] = useState<string>()
  const latest = useRef({ canWrite, writing })
  latest.current = { canWrite, writing }
  const show = useRef((text: string) => handle.current?.setText(text))
  useFollow(stored, show)
  useInStep(parts, handle, isOpen)
  const said = useMemo(
    (): EditorWords => ({
      label: say(web[canWrite ? 'describe.text-label' : 'describe.text-label-given'], {
        id: stored.id,
      }),
      completions: web['describe.completions'],
      controlCharacter: web['describe.control-character'],
      fieldText: words.fieldText,
    }),
    [web, words, canWrite, stored],
  )
  const changed = (text: string): void => {
    const { writing: now, canWrite: may } = latest.current
    if (may) now.write(text)
    else now.show(text)
  }
  return (
    <>
      {canWrite && <Tools handle={handle} />}
      {canWrite && <p className="hint leave">{web['describe.leave']}</p>}
      <Suspense fallback={<Working />}>
        <Editor
          key={language}
          text={writing.text}
          isReadOnly={!canWrite}
          words={said}
          changed={changed}
          entered={setField}
          handle={handle}
          opened={() => setIsOpen(true)}
        />
      </Suspense>
      <FieldLine field={field} />
    </>
  )
}

/** What the editor can do, for fingers and for keys alike. */
function Tools({ handle }: { readonly handle: Handle }): ReactNode {
  const web = useWeb()
  const tools = [
    { name: web.undo, act: () => handle.current?.undo() },
    { name: web.redo, act: () => handle.current?.redo() },
    { name: web['describe.suggest'], act: () => handle.current?.suggest() },
    { name: web['describe.next-problem'], act: () => handle.current?.toNextProblem() },
  ]
  return (
    <div className="row tools" role="toolbar" aria-label={web['describe.tools']}>
      {tools.map(({ name, act }) => (
        <button key={name} type="button" onClick={act}>
          {name}
        </button>
      ))}
    </div>
  )
}

/** What the field under the cursor is for. */
function FieldLine({ field }: { readonly field: string | undefined }): ReactNode {
  const { words } = useApp()
  const web = useWeb()
  const text = field === undefined ? undefined : words.fieldText(field)
  const key = field?.slice(field.lastIndexOf('.') + 1) ?? ''
  return (
    <p className="field-line quiet">
      {text === undefined ? web['describe.field-none'] : `${key}: ${text}`}
    </p>
  )
}
