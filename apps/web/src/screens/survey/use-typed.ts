import { useEffect, useRef, useState } from 'react'
import { useJob } from '../../app/context.ts'
import { noteTyped } from '../../store/typed.ts'
import type { SurveyPath } from './use-survey.ts'

const PAUSE = 400 // [ms] after the last key

/**
 * What is typed in a field until it is kept: when the field is left, after a pause, when the screen or
 * the page goes.
 *
 * @param keep - puts it into the record
 * @param at - where it is held when the page goes, which has no time for an entry
 */
export function useTyped(
  keep: (text: string) => void,
  at?: SurveyPath,
): readonly [string | undefined, (text: string | undefined) => void] {
  const { typed: held } = useJob()
  const field = at?.join('/')
  const [typed, setTyped] = useState(() => (field === undefined ? undefined : held.at(field)?.text))
  const latest = useRef({ typed, keep })
  latest.current = { typed, keep }
  useEffect(() => {
    if (typed === undefined) return undefined
    const flush = (): void => {
      const { typed: text, keep: put } = latest.current
      if (text === undefined) return
      put(text)
      if (field !== undefined) held.forget(field)
    }
    const hold = (): void => {
      if (field === undefined) flush()
      else {
        held.note(field, { text: typed, isLeft: false })
        held.flush()
      }
    }
    const done = noteTyped(flush, hold)
    const pause = setTimeout(() => {
      flush()
      done()
    }, PAUSE)
    return () => {
      clearTimeout(pause)
      done()
    }
  }, [typed, field, held])
  useEffect(
    () => () => {
      const { typed: text, keep: put } = latest.current
      if (text !== undefined) put(text)
    },
    [],
  )
  return [typed, setTyped]
}
