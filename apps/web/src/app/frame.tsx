import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { Link, useLocation } from 'wouter'
import { useApp, useRole, useWeb } from './context.ts'

/** What stands above every screen. */
export function Frame({
  title,
  status,
  stop,
  children,
  hasSteps = false,
}: {
  readonly title?: string
  readonly status?: ReactNode
  readonly stop?: ReactNode
  readonly children: ReactNode
  readonly hasSteps?: boolean
}): ReactNode {
  const web = useWeb()
  return (
    <div className={hasSteps ? 'has-steps' : undefined}>
      <button type="button" className="skip" onClick={skipTo}>
        {web['shell.skip']}
      </button>
      <header className="bar">
        <p className="name">
          <Link href="/">{web.appName}</Link>
        </p>
        <div className="grow">
          {title === undefined ? undefined : <p>{title}</p>}
          {status}
        </div>
        {!hasSteps && (
          <nav className="row" aria-label={web['shell.settings']}>
            <Link className="button" href="/shelf">
              {web['shell.shelf']}
            </Link>
            <Link className="button" href="/settings">
              {web['shell.settings']}
            </Link>
          </nav>
        )}
        {stop}
      </header>
      <Banners isSlim={hasSteps} />
      {children}
    </div>
  )
}

function skipTo(): void {
  document.querySelector<HTMLElement>('main')?.focus()
}

function Banners({ isSlim }: { readonly isSlim: boolean }): ReactNode {
  const { space, goTo } = useApp()
  const web = useWeb()
  const role = useRole()
  return (
    <>
      {space.space === 'demo' && (
        <aside className="banner" aria-label={web['jobs.demo']}>
          <p>{isSlim ? web['jobs.demo'] : web['shell.demo']}</p>
          {!isSlim && (
            <button type="button" onClick={() => goTo('own')}>
              {web['shell.leave-demo']}
            </button>
          )}
        </aside>
      )}
      {role === 'follows' && (
        <aside className="banner" aria-label={web['shell.write-here']}>
          <p role="status">{web['shell.follows']}</p>
          <button type="button" onClick={() => space.writer.ask()}>
            {web['shell.write-here']}
          </button>
        </aside>
      )}
      <Lost />
    </>
  )
}

/** A store that was wiped or evicted is told of, with what is missing or was brought back. */
function Lost(): ReactNode {
  const { space } = useApp()
  const web = useWeb()
  const [, redraw] = useState(0)
  const isBack = space.missing.length === 0
  const titles = isBack ? space.broughtBack : space.missing
  if (titles.length === 0) return undefined
  const title = web[isBack ? 'shell.back-title' : 'shell.lost-title']
  const seen = (): void => {
    space.acknowledgeLoss()
    redraw(count => count + 1)
  }
  return (
    <aside className="banner" aria-label={title}>
      <div className="grow" role="alert">
        <p>
          <strong>{title}</strong>
        </p>
        <p>{web[isBack ? 'shell.back' : 'shell.lost']}</p>
        <ul>
          {titles.map((each, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: titles may repeat, and the list never changes
            <li key={index}>{each || web['jobs.untitled']}</li>
          ))}
        </ul>
      </div>
      <button type="button" onClick={seen}>
        {web['shell.lost-seen']}
      </button>
    </aside>
  )
}

/** The content of a screen: its heading takes the focus when the screen changes. */
export function Screen({
  heading,
  children,
  isWide = false,
}: {
  readonly heading: string
  readonly children: ReactNode
  readonly isWide?: boolean
}): ReactNode {
  const [location] = useLocation()
  const web = useWeb()
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new place is a new screen
  useEffect(() => {
    document.title = `${heading} · ${web.appName}`
    document.querySelector<HTMLElement>('main h1')?.focus({ preventScroll: true })
    window.scrollTo(0, 0)
  }, [location, heading])
  return (
    <main id="content" tabIndex={-1} aria-label={heading} className={isWide ? 'wide' : undefined}>
      <h1 tabIndex={-1}>{heading}</h1>
      {children}
    </main>
  )
}

export function Working({
  detail,
  cancel,
}: {
  readonly detail?: string
  readonly cancel?: () => void
}): ReactNode {
  const web = useWeb()
  return (
    <div className="card" role="status">
      <p>{detail ? say(web['shell.working'], { detail }) : web.loading}</p>
      <progress aria-label={web.loading} />
      {cancel && (
        <p className="foot">
          <button type="button" onClick={cancel}>
            {web.cancel}
          </button>
        </p>
      )}
    </div>
  )
}
