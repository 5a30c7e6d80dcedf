import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Working } from '../../app/frame.tsx'
import { useAsk } from '../../app/use-ask.ts'
import { NoAnswerHere } from '../../parts/no-answer.tsx'
import { PrintedPage } from '../../parts/printed-page.tsx'
import { fileName } from '../jobs/job-files.ts'
import { useDocument } from '../survey/use-survey.ts'
import { useTakenBox } from './use-taken-box.ts'

/** One page for whoever wires the supply: made when it is asked for. */
export function ElectricianPage(): ReactNode {
  const web = useWeb()
  const { language } = useApp()
  const document = useDocument()
  const taken = useTakenBox()
  // The day on which it was asked for: it stays while the page is open.
  const [on, setOn] = useState<string>()
  const { answer, isWorking, failure, cancel } = useAsk(
    'electrician',
    on === undefined ? undefined : { document, language, on, ...taken },
    { keepsLast: true },
  )
  return (
    <section aria-label={web['supply.page']}>
      <h2>{web['supply.page']}</h2>
      <p>{web['supply.page-help']}</p>
      {on === undefined && (
        <button
          type="button"
          className="main"
          onClick={() => setOn(new Date().toLocaleDateString(language))}
        >
          {web['supply.page-show']}
        </button>
      )}
      {isWorking && <Working cancel={cancel} />}
      {failure && <NoAnswerHere refusal={failure} />}
      {answer && (
        <PrintedPage
          html={answer.html}
          file={`${fileName(String(document['title'] ?? ''))}-${web['supply.page-file']}.html`}
          name={web['supply.page-preview']}
          isOld={isWorking}
        />
      )}
    </section>
  )
}
