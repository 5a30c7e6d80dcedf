import type { ReactNode } from 'react'
import { useState } from 'react'
import { Link, useParams } from 'wouter'
import { useApp, useJob, useWeb } from '../../app/context.ts'
import { Screen, Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import { Chips } from '../../parts/chips.tsx'
import { HeldBack, useHolds } from '../../parts/held-back.tsx'
import { NoAnswerHere } from '../../parts/no-answer.tsx'
import { PlanAge } from '../../parts/plan-age.tsx'
import { PrintedPage } from '../../parts/printed-page.tsx'
import { SupplyBar } from '../../parts/supply-bar.tsx'
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
      <SupplyBar />
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
        <PrintedPage
          html={answer.html}
          file={`${fileName(title)}-${part}.html`}
          name={web['sheet.preview']}
          isOld={isWorking}
        />
      )}
    </>
  )
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
