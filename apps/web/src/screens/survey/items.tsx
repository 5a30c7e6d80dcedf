import { BOX, freeId } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import { withdrawnBelow } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useJobView, useWeb } from '../../app/context.ts'
import type { SurveyPath } from './use-survey.ts'
import { inRecord, useSurvey } from './use-survey.ts'

/** An item of a list, as far as it was answered. */
export interface Item {
  readonly id: string
  readonly label?: unknown
}

/** Boards and loads of one job: no two have one name. */
const NAMED_TOGETHER = [['supply', 'devices'], ['supply', 'cables'], ['loads']]

/**
 * Names a new item of a list: not as one that was taken out, which would come back with all it had.
 *
 * @param stem - what its name begins with
 */
export function useFreeId(): (list: SurveyPath, stem: string) => string {
  const survey = useSurvey()
  const { state } = useJobView()
  return (list, stem) => {
    const there = [list, ...NAMED_TOGETHER].flatMap(each => survey.value(each) ?? []) as Item[]
    const gone = withdrawnBelow(state, inRecord(list))
    return freeId(stem, [...[...there, ...gone].map(each => each.id), BOX])
  }
}

/** What a person calls an item. */
export const labelOf = ({ id, label }: Item): string => (typeof label === 'string' ? label : id)

/** The acts that add an item with what is known of it. */
export const addActs = (
  path: SurveyPath,
  known: Readonly<Record<string, string>> = {},
): readonly Act[] => [
  { do: 'add', path: inRecord(path) },
  ...Object.entries(known).map(
    ([key, value]): Act => ({ do: 'set', path: inRecord([...path, key]), value }),
  ),
]

/** Takes an item out of its list. */
export function TakeOut({
  path,
  children,
}: {
  readonly path: SurveyPath
  readonly children?: ReactNode
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  return (
    <button
      type="button"
      disabled={!survey.canWrite}
      onClick={() => survey.act({ do: 'withdraw', path: inRecord(path) })}
    >
      {children ?? web['survey.withdraw']}
    </button>
  )
}
