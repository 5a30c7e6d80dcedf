import type { ReactNode } from 'react'
import { useEffect, useRef, useState } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useJob, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import { Chips } from '../../parts/chips.tsx'
import { HeldBack, useHolds } from '../../parts/held-back.tsx'
import { NoAnswerHere } from '../../parts/no-answer.tsx'
import { PlanAge } from '../../parts/plan-age.tsx'
import { fileName, jobFileOf, saveAs } from '../jobs/job-files.ts'
import { useDocument } from '../survey/use-survey.ts'
import { useOfLanding, useTaken } from '../wiring/use-landing.ts'
import { usePhotoPages } from './photo-pages.ts'

const PARTS = ['front', 'bring', 'board', 'ladder', 'wires', 'tables', 'steps'] as const
const WHOLE = 'whole'
const LID = 'load-sheet'

/** The sheet to work from, as it will be printed; and the whole job as one file. */
export function SheetScreen(): ReactNode {
  const web = useWeb()
  const { id = '' } = useParams()
  const of = useOfLanding()
  const holds = useHolds()
  return (
    <Screen heading={web['sheet.title']}>
      {holds.length > 0 && <HeldBack holds={holds} />}
      <PlanAge />
      {!of ? (
        <p>
          {web['sheet.no-plan']}{' '}
          <Link className="button main" href={`/job/${id}/match`}>
            {web['findings.to-match']}
          </Link>
        </p>
      ) : (
        holds.length === 0 && <Printed />
      )}
      <JobFile />
    </Screen>
  )
}

function Printed(): ReactNode {
  const web = useWeb()
  const { language } = useApp()
  const of = useOfLanding()
  const taken = useTaken()
  const title = String(useDocument()['title'] ?? '')
  const photos = usePhotoPages()
  const [part, setPart] = useState<string>(WHOLE)
  const frame = useRef<HTMLIFrameElement>(null)
  const { answer, isWorking, failure, cancel } = useAsk(
    'print',
    of &&
      photos && {
        ...of,
        language,
        isAsBuilt: taken !== undefined && !taken.isAsPlanned,
        ...(taken ? { planned: taken.planned } : {}),
        ...(part === WHOLE ? { photos } : { part }),
      },
    { keepsLast: true },
  )
  const url = usePage(answer?.html)
  return (
    <>
      <Chips
        legend={web['sheet.parts']}
        options={[
          { value: WHOLE, label: web['sheet.whole'] },
          { value: LID, label: web['sheet.lid'] },
          ...PARTS.map(each => ({ value: each, label: web[`sheet.part-${each}`] })),
        ]}
        chosen={part}
        choose={setPart}
      />
      {isWorking && <Working cancel={cancel} />}
      {failure && <NoAnswerHere refusal={failure} />}
      {answer && (
        <p className="row">
          <button
            type="button"
            className="main"
            disabled={isWorking}
            onClick={() => frame.current?.contentWindow?.print()}
          >
            {web['sheet.print']}
          </button>
          <button
            type="button"
            disabled={isWorking}
            onClick={() => saveAs(`${fileName(title)}-${part}.html`, answer.html, 'text/html')}
          >
            {web['sheet.save']}
          </button>
        </p>
      )}
      {url !== undefined && (
        <iframe
          ref={frame}
          className="page"
          title={web['sheet.preview']}
          src={url}
          onLoad={event => dress(event.currentTarget, answer?.html ?? '')}
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
function usePage(html: string | undefined): string | undefined {
  const [url, setUrl] = useState<string>()
  useEffect(() => {
    if (html === undefined) {
      setUrl(undefined)
      return undefined
    }
    const made = URL.createObjectURL(new Blob([html.replace(STYLE, '')], { type: 'text/html' }))
    setUrl(made)
    return () => URL.revokeObjectURL(made)
  }, [html])
  return url
}

/** The job leaves as one file, and the survey as the command line reads it. */
function JobFile(): ReactNode {
  const web = useWeb()
  const { core, space } = useApp()
  const job = useJob()
  const document = useDocument()
  const name = fileName(String(document['title'] ?? ''))
  const saveJob = async (): Promise<void> =>
    saveAs(`${name}.tubjob`, await jobFileOf(job, space, core), 'application/json')
  const saveSurvey = async (): Promise<void> =>
    saveAs(`${name}.yaml`, (await core.ask('yaml', { document })).text, 'text/yaml')
  return (
    <section className="card">
      <h2>{web['sheet.job-file']}</h2>
      <p>{web['sheet.job-file-help']}</p>
      <p className="row">
        <button type="button" onClick={() => void saveJob()}>
          {web['jobs.save-file']}
        </button>
        <button type="button" onClick={() => void saveSurvey()}>
          {web['jobs.save-survey']}
        </button>
      </p>
    </section>
  )
}
