import { survey as surveySchema } from '@tubwright/core'
import { fieldsBelow } from '@tubwright/formats'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { fieldName } from './field-name.ts'
import { Growth } from './growth.tsx'
import { isBelow } from './survey-path.ts'
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
function Fields({ paths }: { readonly paths: readonly SurveyPath[] }): ReactNode {
  const { words } = useApp()
  return paths.map(path => {
    const text = words.fieldText(fieldName(path)) ?? path.at(-1) ?? ''
    const owner = ownerIn(path)
    const key = String(path.at(-1))
    const label = `${owner === undefined || owner === key ? '' : `${owner} · `}${key}: ${text}`
    return <Field key={path.join('/')} path={path} label={label} />
  })
}

/**
 * Fields that a verdict seldom needs, shown when they are asked for.
 *
 * @param below - everything below these places, except what is asked already
 * @param asked - fields, or groups of them
 */
export function More(props: {
  readonly below: readonly SurveyPath[]
  readonly asked?: readonly SurveyPath[]
}): ReactNode {
  const { below, asked = [] } = props
  const web = useWeb()
  return (
    <Disclosure title={web['survey.more']} below={below} except={asked}>
      <Rest below={below} asked={asked} />
    </Disclosure>
  )
}

function Rest({
  below,
  asked,
}: {
  readonly below: readonly SurveyPath[]
  readonly asked: readonly SurveyPath[]
}): ReactNode {
  const { document } = useSurvey()
  const all = below.flatMap(path => fieldsBelow(surveySchema, document, path))
  return (
    <>
      <Fields paths={all.filter(path => !asked.some(each => isBelow(path, each)))} />
      <Growth below={below} />
    </>
  )
}
