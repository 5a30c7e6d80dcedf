import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useRef, useState } from 'react'
import { useLocation } from 'wouter'
import { useApp, useRole, useWeb } from '../../app/context.ts'

const SIZE_MAX = 200e6 // [bytes] a job with many photos

/** Opens a job file, a survey or a description from this device. */
export function OpenFile(): ReactNode {
  const { space, core } = useApp()
  const web = useWeb()
  const role = useRole()
  const [, go] = useLocation()
  const input = useRef<HTMLInputElement>(null)
  const [told, setTold] = useState<string>()
  const open = async (file: File): Promise<void> => {
    const files = await import('./job-files.ts')
    if (file.size > SIZE_MAX) {
      setTold(say(web['jobs.refused'], { why: `${Math.round(file.size / 1e6)} MB` }))
      return
    }
    const opened = await files.openFile(await file.text(), space, core)
    switch (opened.kind) {
      case 'refused':
        return setTold(say(web['jobs.refused'], { why: opened.why }))
      case 'job':
        setTold(say(web['jobs.merged'], { added: String(opened.added) }))
        if (opened.isNew) go(`/job/${opened.id}/survey`)
        return
      case 'survey': {
        const { actsOfSurvey } = await import('../survey/first-acts.ts')
        const job = await space.newJob(actsOfSurvey(opened.document))
        return go(`/job/${job.id}/survey`)
      }
      case 'description': {
        const { of, id, text } = opened
        const kind = of === 'control-box' ? 'control-box' : 'supply-device'
        const { putBeside } = await import('../describe/description.ts')
        return go(`/describe/${kind}/${(await putBeside(space, { kind, id }, text)) ?? id}`)
      }
    }
  }
  return (
    <>
      <button type="button" disabled={role === 'follows'} onClick={() => input.current?.click()}>
        {web['jobs.open-file']}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        aria-label={web['jobs.open-file']}
        accept=".json,.yaml,.yml,.tubjob,application/json,text/yaml"
        onChange={event => {
          const [file] = event.target.files ?? []
          event.target.value = ''
          if (file)
            void open(file).catch((error: unknown) =>
              setTold(say(web['jobs.refused'], { why: String(error) })),
            )
        }}
      />
      {told && <span role="status">{told}</span>}
    </>
  )
}
