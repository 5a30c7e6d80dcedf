import { survey as surveySchema } from '@tubwright/core'
import { fieldsBelow } from '@tubwright/formats'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Field } from './field.tsx'
import { fieldName } from './field-name.ts'
import { Growth } from './growth.tsx'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

/** Which of several alike it is of: the item or entry nearest above. */
function ownerIn(path: SurveyPath): string | undefined {
  const index = path.findLastIndex(each =>
    ['conductors', 'leads', 'circuits', 'capacitors', 'positions', 'pins'].includes(each),
  )
  return index < 0 ? undefined : path[index + 1]
}

/** Fields by their paths, each told by what the files say of it. */
export function Fields({ paths }: { readonly paths: readonly SurveyPath[] }): ReactNode {
  const { words } = useApp()
  return paths.map(path => {
    const text = words.fieldText(fieldName(path)) ?? path.at(-1) ?? ''
    const owner = ownerIn(path)
    const key = String(path.at(-1))
    const label = `${owner === undefined || owner === key ? '' : `${owner} · `}${key}: ${text}`
    return <Field key={path.join('/')} path={path} label={label} />
  })
}

const isSame = (a: SurveyPath, b: SurveyPath): boolean => a.join('/') === b.join('/')

/**
 * Fields that a verdict seldom needs, shown when they are asked for.
 *
 * @param below - everything below these places, except what is asked already
 */
export function More({
  below,
  asked = [],
}: {
  readonly below: readonly SurveyPath[]
  readonly asked?: readonly SurveyPath[]
}): ReactNode {
  const web = useWeb()
  const { document } = useSurvey()
  const [isOpen, setIsOpen] = useState(false)
  const all = isOpen ? below.flatMap(path => fieldsBelow(surveySchema, document, path)) : []
  return (
    <details open={isOpen} onToggle={event => setIsOpen(event.currentTarget.open)}>
      <summary>{web['survey.more']}</summary>
      <Fields paths={all.filter(path => !asked.some(each => isSame(each, path)))} />
      {isOpen && <Growth below={below} />}
    </details>
  )
}
