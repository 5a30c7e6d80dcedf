import type { ReactNode } from 'react'
import { useEffect, useRef } from 'react'
import { useWeb } from '../app/context.ts'

/** Asks once more before something is thrown away. */
export function Sure({
  question,
  yes,
  answer,
}: {
  readonly question: string
  readonly yes: string
  readonly answer: (isSure: boolean) => void
}): ReactNode {
  const web = useWeb()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} onClose={() => answer(false)} aria-labelledby="sure-question">
      <p id="sure-question">{question}</p>
      <div className="row">
        <button type="button" className="main" onClick={() => answer(true)}>
          {yes}
        </button>
        <button type="button" onClick={() => answer(false)}>
          {web.cancel}
        </button>
      </div>
    </dialog>
  )
}
