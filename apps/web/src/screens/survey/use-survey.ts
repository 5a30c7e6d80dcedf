import type { Region } from '@tubwright/core'
import { REGIONS, survey } from '@tubwright/core'
import type { Field } from '@tubwright/formats'
import { fieldAt as formAt, valueAt } from '@tubwright/formats'
import type { Act, FieldView, JobState, Json } from '@tubwright/records'
import { documentOf, fieldAt, isSame } from '@tubwright/records'
import { useMemo } from 'react'
import { useJob, useJobView, useRole } from '../../app/context.ts'
import type { Document } from '../../ask/protocol.ts'

/** A place in the survey: items by their ids. */
export type SurveyPath = readonly string[]

/** The survey of the open job, as the form reads and changes it. */
export interface SurveyForm {
  readonly document: Document
  readonly region: Region | undefined
  readonly canWrite: boolean
  /** What stands at a path: nothing, a value, or values that disagree. */
  readonly at: (path: SurveyPath) => FieldView
  /** The value there, where there is one. */
  readonly value: (path: SurveyPath) => unknown
  readonly form: (path: SurveyPath) => Field | undefined
  readonly set: (path: SurveyPath, value: Json) => void
  readonly clear: (path: SurveyPath) => void
  readonly act: (...acts: readonly Act[]) => void
  /** How an item comes to be there: added, or brought back where it was taken out. */
  readonly bring: (path: SurveyPath) => Act
}

/** Every path of a survey stands below this one in the record. */
export const inRecord = (path: SurveyPath): readonly string[] => ['survey', ...path]

/** Every field asks for the document: it is made once a state. */
const documents = new WeakMap<JobState, Document>()

function documentIn(state: JobState): Document {
  const known = documents.get(state)
  if (known) return known
  const made = documentOf(state, ['survey']) as Document
  documents.set(state, made)
  return made
}

/** The survey as the record holds it, unknown fields and all. */
export const useDocument = (): Document => documentIn(useJobView().state)

export function useSurvey(): SurveyForm {
  const job = useJob()
  const { state } = useJobView()
  const document = useDocument()
  const canWrite = useRole() === 'writes'
  return useMemo(() => {
    const act = (...acts: readonly Act[]): void => {
      if (canWrite) void job.append(...acts).catch(() => undefined)
    }
    return {
      document,
      region: REGIONS.find(each => each === document['region']),
      canWrite,
      at: path => fieldAt(state, inRecord(path)),
      value: path => valueAt(document, path),
      form: path => formAt(survey, document, path),
      set: (path, value) => act({ do: 'set', path: inRecord(path), value }),
      clear: path => act({ do: 'clear', path: inRecord(path) }),
      act,
      bring: path => {
        const at = inRecord(path)
        const wasThere = state.withdrawn.some(each => isSame([...each.path], [...at]))
        return wasThere ? { do: 'restore', path: at } : { do: 'add', path: at }
      },
    }
  }, [job, state, document, canWrite])
}
