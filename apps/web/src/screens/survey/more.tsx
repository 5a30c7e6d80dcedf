import { survey as surveySchema } from '@tubwright/core'
import { fieldsBelow } from '@tubwright/formats'
import type { ReactNode } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { useFieldLabel, useOwnerName } from './field-label.ts'
import { fieldName } from './field-name.ts'
import { Growth } from './growth.tsx'
import { isBelow } from './survey-path.ts'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

const sentence = (text: string): string => `${text.charAt(0).toLocaleUpperCase()}${text.slice(1)}`

/** Fields by their names, each with what the files say of it. */
function Fields({ paths }: { readonly paths: readonly SurveyPath[] }): ReactNode {
  const { words } = useApp()
  const { form } = useSurvey()
  const labelOf = useFieldLabel()
  return paths.map(path => {
    const label = labelOf(path)
    const help = words.fieldText(fieldName(path)) ?? ''
    // Options say it themselves, and no name is said twice.
    const kind = form(path)?.form.kind ?? ''
    const isSaid = kind === 'yes-no' || kind.endsWith('choice') || label.endsWith(sentence(help))
    const key = path.join('/')
    return namesAnother(path) ? (
      <AnotherOf key={key} path={path} label={label} />
    ) : (
      <Field
        key={key}
        path={path}
        label={label}
        {...(isSaid ? {} : { hint: `${sentence(help)}.` })}
      />
    )
  })
}

/** Fields of a load that name something else of it. */
const namesAnother = (path: SurveyPath): boolean =>
  path[0] === 'loads' && ['startsOn', 'straps/found'].includes(path.slice(2).join('/'))

/** What another thing of the same load is: one of those that it has. */
function AnotherOf({
  path,
  label,
}: {
  readonly path: SurveyPath
  readonly label: string
}): ReactNode {
  const survey = useSurvey()
  const ownerOf = useOwnerName()
  const load = path.slice(0, 2)
  const list = path.at(-1) === 'found' ? [...load, 'straps', 'positions'] : [...load, 'circuits']
  const there = survey.value(list) ?? {}
  const ids = Array.isArray(there)
    ? there.map((each: { readonly id: string }) => each.id)
    : Object.keys(there)
  const chosen = survey.value(path)
  if (ids.length === 0) return undefined
  return (
    <div data-field={path.join('/')}>
      <Chips
        legend={label}
        options={ids.map(each => ({ value: each, label: ownerOf([...list, each]) ?? each }))}
        chosen={chosen === undefined ? undefined : String(chosen)}
        choose={each => survey.set(path, each)}
        isDisabled={!survey.canWrite}
      />
    </div>
  )
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
