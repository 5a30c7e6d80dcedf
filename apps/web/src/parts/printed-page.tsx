import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { useWeb } from '../app/context.ts'
import { saveAs } from '../screens/jobs/job-files.ts'

/**
 * A page as it will be printed, and the ways to print it and to keep it as a file.
 *
 * @param isOld - another page is being made
 */
export function PrintedPage({
  html,
  file,
  name,
  isOld,
}: {
  readonly html: string
  readonly file: string
  readonly name: string
  readonly isOld: boolean
}): ReactNode {
  const web = useWeb()
  const frame = useRef<HTMLIFrameElement>(null)
  const url = usePage(html)
  return (
    <>
      <p className="row">
        <button
          type="button"
          className="main"
          disabled={isOld}
          onClick={() => frame.current?.contentWindow?.print()}
        >
          {web['sheet.print']}
        </button>
        <button type="button" disabled={isOld} onClick={() => saveAs(file, html, 'text/html')}>
          {web['sheet.save']}
        </button>
      </p>
      {url !== undefined && (
        <iframe
          ref={frame}
          className="page"
          title={name}
          src={url}
          onLoad={event => dress(event.currentTarget, html)}
        />
      )}
    </>
  )
}

const STYLE = /<style>([\s\S]*?)<\/style>/u

/**
 * Gives the page in the frame the look that its text brings: the policy of the app lets no page style
 * itself, and a saved file still does.
 */
function dress(frame: HTMLIFrameElement, html: string): void {
  const { contentDocument, contentWindow } = frame
  const style = STYLE.exec(html)?.[1]
  const Sheet = (contentWindow as (Window & typeof globalThis) | null)?.CSSStyleSheet
  if (!contentDocument || !Sheet || style === undefined) return
  const sheet = new Sheet()
  sheet.replaceSync(style)
  contentDocument.adoptedStyleSheets = [sheet]
}

/** An address for a page that was made here; given back when another takes its place. */
function usePage(html: string): string | undefined {
  const [url, setUrl] = useState<string>()
  useEffect(() => {
    const made = URL.createObjectURL(new Blob([html.replace(STYLE, '')], { type: 'text/html' }))
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [html])
  return url
}
