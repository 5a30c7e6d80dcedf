import { useEffect, useRef, useState } from 'react'
import { NoAnswer } from '../ask/ask.ts'
import type { Question, Questions } from '../ask/protocol.ts'
import { useApp } from './context.ts'

/** How far a question to the core is. */
export interface Asked<Answer> {
  readonly answer?: Answer
  /** What it is at, while it works. */
  readonly progress?: string
  readonly isWorking: boolean
  /** Why there is no answer. */
  readonly failure?: NoAnswer['refusal']
  readonly cancel: () => void
}

interface Held<Answer> {
  readonly key: string
  readonly answer?: Answer
  readonly progress?: string
  readonly failure?: NoAnswer['refusal']
  readonly isDone: boolean
}

/**
 * Asks the core whenever what is asked changes; an answer that came too late is dropped, and the work
 * for it is ended once nobody wants it.
 *
 * @param asks - undefined: nothing is asked
 * @param keepsLast - whether the last answer stays until the next is there
 */
export function useAsk<Asks extends Question>(
  question: Asks,
  asks: Questions[Asks]['asks'] | undefined,
  { keepsLast = false }: { readonly keepsLast?: boolean } = {},
): Asked<Questions[Asks]['answers']> {
  type Answer = Questions[Asks]['answers']
  const { core, shelf } = useApp()
  const key = asks === undefined ? '' : JSON.stringify([question, asks])
  const [held, setHeld] = useState<Held<Answer>>({ key: '', isDone: true })
  const abort = useRef<AbortController | undefined>(undefined)
  useEffect(() => {
    if (key === '') return
    const [, wanted] = JSON.parse(key) as [Question, Questions[Asks]['asks']]
    const controller = new AbortController()
    abort.current = controller
    const { signal } = controller
    const hold = (some: Omit<Held<Answer>, 'key'>): void => {
      if (!signal.aborted)
        setHeld(before => ({
          key,
          ...(keepsLast && before.answer && !some.answer && !some.failure
            ? { answer: before.answer }
            : {}),
          ...some,
        }))
    }
    hold({ isDone: false })
    shelf()
      .then(() =>
        core.ask(question, wanted, {
          signal,
          progress: progress => hold({ progress, isDone: false }),
        }),
      )
      .then(answer => hold({ answer, isDone: true }))
      .catch((error: unknown) => {
        if (error instanceof NoAnswer) hold({ failure: error.refusal, isDone: true })
        else if (!signal.aborted)
          hold({ failure: { reason: 'fault', detail: String(error) }, isDone: true })
      })
    return () => controller.abort()
  }, [core, shelf, question, key, keepsLast])
  const isCurrent = held.key === key
  const { answer, progress, failure } = held
  return {
    ...(answer !== undefined && (isCurrent || keepsLast) ? { answer } : {}),
    ...(isCurrent && progress !== undefined ? { progress } : {}),
    ...(isCurrent && failure !== undefined ? { failure } : {}),
    isWorking: key !== '' && (!isCurrent || !held.isDone),
    cancel: () => {
      abort.current?.abort()
      setHeld({ key, isDone: true, failure: { reason: 'fault', detail: 'cancelled' } })
    },
  }
}
