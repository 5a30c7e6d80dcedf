import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import { useJob } from '../../app/context.ts'
import type { SurveyPath } from './use-survey.ts'

/** What stands in a field that is judged when it is left. */
export interface Standing {
  /** Absent: what the record says stands there. */
  readonly text: string | undefined
  /** It was refused when the field was left. */
  readonly isRefused: boolean
  /** It stands from an earlier look at this field, and nobody has gone on with it yet. */
  readonly isFromBefore: boolean
  readonly type: (text: string) => void
  readonly leave: () => void
  readonly drop: () => void
}

/**
 * What is typed in a field until it is an answer: on the disk while it is typed, judged once the field
 * is left or the screen goes. What is refused stays.
 *
 * @param take - puts it into the record; false where it is refused
 */
export function useStanding(at: SurveyPath, take: (text: string) => boolean): Standing {
  const { typed } = useJob()
  const field = at.join('/')
  const standing = useSyncExternalStore(typed.subscribe, () => typed.at(field))
  const [isTouched, setIsTouched] = useState(false)
  const leave = (): void => {
    if (standing === undefined) return
    if (take(standing.text)) typed.forget(field)
    else if (!standing.isLeft) typed.note(field, { text: standing.text, isLeft: true })
  }
  const latest = useRef(leave)
  latest.current = isTouched ? leave : () => undefined
  useEffect(() => () => latest.current(), [])
  return {
    text: standing?.text,
    isRefused: standing?.isLeft === true,
    isFromBefore: standing !== undefined && !isTouched,
    type: text => {
      setIsTouched(true)
      typed.note(field, { text, isLeft: false })
    },
    leave,
    drop: () => typed.forget(field),
  }
}

/** Fields with something typed that is no answer yet. */
export function useStandingFields(): readonly SurveyPath[] {
  const { typed } = useJob()
  const texts = useSyncExternalStore(typed.subscribe, () => typed.all)
  return useMemo(() => Object.keys(texts).map(each => each.split('/')), [texts])
}
