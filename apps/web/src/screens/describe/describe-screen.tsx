import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useMemo, useRef, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'
import { Frame, Screen, Working } from '../../app/frame.tsx'
import type { ShelfText } from '../../store/database.ts'
import '../../style/describe.css'
import { copyOnShelf, kindOf } from './description.ts'
import { Panels } from './panels.tsx'
import type { Parts } from './parts.ts'
import type { Problem } from './problems.ts'
import { problemsOf } from './problems.ts'
import type { Kept } from './text-keeper.ts'
import type { Opened, Writing } from './use-description.ts'
import { useHold, useOpened, useWriting } from './use-description.ts'
import type { LintView } from './use-lint.ts'
import { useLint } from './use-lint.ts'

/** One description: its text, what is to be looked at in it, and its board. */
export function DescribeScreen({
  kind,
  id,
}: {
  readonly kind: string
  readonly id: string
}): ReactNode {
  const web = useWeb()
  const { stored, moved } = useOpened(kind, id)
  if (stored)
    return <Description key={`${stored.kind}/${stored.id}`} stored={stored} moved={moved} />
  return (
    <Frame>
      <Screen heading={stored === null ? web['describe.none'] : web.loading}>
        {stored === undefined ? <Working /> : <BackToShelf />}
      </Screen>
    </Frame>
  )
}

function BackToShelf(): ReactNode {
  const web = useWeb()
  return (
    <Link className="button" href="/shelf">
      {web['shell.shelf']}
    </Link>
  )
}

/** What is found in a text, each thing with its number. */
function useProblems(lint: LintView): readonly Problem[] {
  const { words } = useApp()
  const { linted } = lint
  return useMemo(() => (linted ? problemsOf(linted, words) : []), [linted, words])
}

/** The name of what is described, once there is one. */
function useName({ id, text }: ShelfText): string {
  const { shelf } = useApp()
  const [name, setName] = useState(id)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another text may have another name
  useEffect(() => {
    void shelf().then(({ boxes, devices }) =>
      setName([...boxes, ...devices].find(each => each.id === id)?.label ?? id),
    )
  }, [shelf, id, text])
  return name
}

/** The shelf follows the name in the text, as soon as the text can be read. */
function useRenaming({ linted }: LintView, { rename }: Writing, canWrite: boolean): void {
  const kind = kindOf(linted?.kind)
  const id = linted?.id
  useEffect(() => {
    if (canWrite && kind && id !== undefined) rename({ kind, id })
  }, [canWrite, kind, id, rename])
}

function Description({
  stored,
  moved,
}: {
  readonly stored: ShelfText
  readonly moved: Opened['moved']
}): ReactNode {
  const writing = useWriting(stored, moved)
  const lint = useLint(writing.text)
  const problems = useProblems(lint)
  const canWrite = useRole() === 'writes' && stored.isGiven !== true
  useHold(canWrite)
  useRenaming(lint, writing, canWrite)
  const name = useName(stored)
  const parts: Parts = { stored, writing, lint, problems, canWrite }
  return (
    <Frame status={canWrite ? <SavedMark kept={writing.kept} retry={writing.retry} /> : undefined}>
      <Main name={name}>
        <Head {...parts} />
        <Panels {...parts} />
        <Foot {...parts} />
      </Main>
    </Frame>
  )
}

/**
 * The content, whose heading takes the focus once: when the description gets another name while it is
 * written, its address changes, and the cursor stays where it is.
 */
function Main({
  name,
  children,
}: {
  readonly name: string
  readonly children: ReactNode
}): ReactNode {
  const web = useWeb()
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => {
    document.title = `${name} · ${web.appName}`
  }, [name, web])
  useEffect(() => heading.current?.focus({ preventScroll: true }), [])
  return (
    <main id="content" tabIndex={-1} className="wide describe">
      <h1 tabIndex={-1} ref={heading}>
        {name}
      </h1>
      {children}
    </main>
  )
}

/** Whether everything that was typed is on the disk. */
function SavedMark({
  kept,
  retry,
}: {
  readonly kept: Kept
  readonly retry: () => void
}): ReactNode {
  const web = useWeb()
  if (kept.state === 'failed')
    return (
      <p className="saved" data-state="failed" role="alert">
        {say(web['shell.not-saved'], { why: kept.why ?? '' })}{' '}
        <button type="button" onClick={retry}>
          {web['shell.retry']}
        </button>
      </p>
    )
  return (
    <p className="saved" data-state={kept.state}>
      {web[kept.state === 'saved' ? 'shell.saved' : 'shell.saving']}
    </p>
  )
}

async function saveText(id: string, text: string): Promise<void> {
  const { saveAs } = await import('../jobs/job-files.ts')
  saveAs(`${id}.yaml`, text, 'text/yaml')
}

/** What has to be known before the text is read. */
function Head({ stored, writing }: Parts): ReactNode {
  const web = useWeb()
  const { kind, id, isGiven } = stored
  const { text, taken } = writing
  return (
    <>
      {isGiven && (
        <div className="row">
          <p className="grow">{web['describe.given-help']}</p>
          <OwnCopy kind={kind} id={id} text={text} />
        </div>
      )}
      {taken !== undefined && (
        <p className="wrong" role="alert">
          {say(web['describe.taken'], { id: taken })}
        </p>
      )}
    </>
  )
}

function Foot({ stored, writing, lint }: Parts): ReactNode {
  const web = useWeb()
  return (
    <div className="foot">
      <BackToShelf />
      <button
        type="button"
        onClick={() => void saveText(lint.linted?.id ?? stored.id, writing.text)}
      >
        {web['describe.save-file']}
      </button>
    </div>
  )
}

/** A given description is never changed: what is changed is a copy of it under a name of its own. */
function OwnCopy({ kind, id, text }: Pick<ShelfText, 'kind' | 'id' | 'text'>): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const role = useRole()
  const [, go] = useLocation()
  const copy = async (): Promise<void> => {
    const at = await copyOnShelf(space, { kind, id }, text)
    if (at !== undefined) go(`/describe/${kind}/${at}`)
  }
  return (
    <button type="button" className="main" disabled={role !== 'writes'} onClick={() => void copy()}>
      {web['describe.own-copy']}
    </button>
  )
}
