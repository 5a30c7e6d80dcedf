import { useEffect, useRef, useState } from 'react'
import { useApp } from '../../app/context.ts'
import { NoAnswer } from '../../ask/ask.ts'
import type { Linted } from '../../ask/protocol.ts'

/** What was found, and in which text: the newest that has an answer. */
export interface LintView {
  readonly text?: string
  readonly linted?: Linted
  readonly isWorking: boolean
  /** Why the text could not be checked. */
  readonly fault?: string
}

const PAUSE = 350 // [ms] of not typing before the text is looked at: display only

/** The core is asked one text at a time: while it works, only the newest of the others waits. */
class Asker {
  #isBusy = false
  #next: string | undefined
  readonly #ask: (text: string) => Promise<void>

  constructor(ask: (text: string) => Promise<void>) {
    this.#ask = ask
  }

  async want(text: string): Promise<void> {
    this.#next = text
    if (this.#isBusy) return
    this.#isBusy = true
    while (this.#next !== undefined) {
      const wanted = this.#next
      this.#next = undefined
      await this.#ask(wanted)
    }
    this.#isBusy = false
  }
}

const whyOf = (error: unknown): string =>
  error instanceof NoAnswer ? error.refusal.detail : String(error)

/** What is to be said of a text, asked once typing pauses. The last answer stays until the next. */
export function useLint(text: string | undefined): LintView {
  const { core, language } = useApp()
  const [view, setView] = useState<Omit<LintView, 'isWorking'>>({})
  const [asked, setAsked] = useState<string>()
  const asker = useRef<Asker | undefined>(undefined)
  const isFirst = useRef(true)
  useEffect(() => {
    let isWanted = true
    asker.current = new Asker(async wanted => {
      try {
        const linted = await core.ask('lint', { text: wanted, language })
        if (isWanted) setView({ text: wanted, linted })
      } catch (error) {
        const fault = whyOf(error)
        if (isWanted) setView(before => ({ ...before, fault }))
      }
      if (isWanted) setAsked(wanted)
    })
    return () => {
      isWanted = false
    }
  }, [core, language])
  // biome-ignore lint/correctness/useExhaustiveDependencies: another language is asked for at once
  useEffect(() => {
    if (text === undefined) return
    const wait = isFirst.current ? 0 : PAUSE
    isFirst.current = false
    const timer = setTimeout(() => void asker.current?.want(text), wait)
    return () => clearTimeout(timer)
  }, [text, language])
  return { ...view, isWorking: asked !== text }
}
