import { useEffect, useRef, useState } from 'react'
import { noteTyped } from '../../store/typed.ts'

const PAUSE = 400 // [ms] after the last key

/**
 * What is typed in a field until it is kept: when the field is left, after a pause, when the screen or
 * the page goes.
 *
 * @param keep - puts it into the record; what cannot be kept as it stands stays in the field
 * @param isPatient - keeps only when the field is left or goes: its format is judged then
 */
export function useTyped(
  keep: (text: string) => void,
  isPatient = false,
): readonly [string | undefined, (text: string | undefined) => void] {
  const [typed, setTyped] = useState<string>()
  const latest = useRef({ typed, keep })
  latest.current = { typed, keep }
  useEffect(() => {
    if (typed === undefined) return undefined
    const flush = (): void => {
      const { typed: text, keep: put } = latest.current
      if (text !== undefined) put(text)
    }
    const done = noteTyped(flush)
    const pause = isPatient
      ? undefined
      : setTimeout(() => {
          flush()
          done()
        }, PAUSE)
    return () => {
      clearTimeout(pause)
      done()
    }
  }, [typed, isPatient])
  useEffect(
    () => () => {
      const { typed: text, keep: put } = latest.current
      if (text !== undefined) put(text)
    },
    [],
  )
  return [typed, setTyped]
}
