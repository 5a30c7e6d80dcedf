import type { UnknownReason } from '@tubwright/core'
import { blocks, UNKNOWN_REASONS } from '@tubwright/core'
import type { FieldForm } from '@tubwright/formats'
import type { FieldView, Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useJob, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { useAsked } from './asked.ts'
import { EditorFor } from './editors.tsx'
import { isAmerican } from './here.ts'
import { useOptionName } from './option-name.ts'
import { OneOfSome, PartlyKnown } from './partly-known.tsx'
import { usualUnit } from './units-of.ts'
import { useDiagnosticsAt } from './use-draft.ts'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

/** Why a value is not known, where it is not. */
export const unknownOf = (value: unknown): UnknownReason | undefined => {
  if (typeof value !== 'object' || value === null) return undefined
  const { unknown } = value as { unknown?: unknown }
  return UNKNOWN_REASONS.find(each => each === unknown)
}

const isPartly = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && ('from' in value || 'oneOf' in value)

/** A value as it is read back to a person. */
export function valueText(value: unknown, nameOf = (option: string): string => option): string {
  if (typeof value === 'string') return nameOf(value)
  if (typeof value === 'number') return String(value)
  if (typeof value === 'boolean') return value ? '✓' : '✗'
  const { from, to, oneOf, unknown } = (value ?? {}) as Record<string, unknown>
  if (from !== undefined) return `${String(from)} – ${String(to)}`
  if (Array.isArray(oneOf)) return oneOf.map(each => nameOf(String(each))).join(' / ')
  if (unknown !== undefined) return `? (${String(unknown)})`
  if (Array.isArray(value)) return value.join(', ')
  return value === undefined || value === null ? '–' : JSON.stringify(value).slice(0, 80)
}

/** A choice between two has no part: either of both is not to know. */
const canBePartly = (form: FieldForm): boolean =>
  form.kind === 'known' || (form.kind === 'known-choice' && form.options.length > 2)

/** Somebody gives a name or writes a note: of neither it can be said that it is not known. */
const canBeUnknown = (path: SurveyPath): boolean =>
  !['title', 'label', 'note'].includes(path.at(-1) ?? '')

/** How one goes from one value to a part of it and back, by its form. */
const partlyWords = ({ kind }: FieldForm) => {
  if (kind === 'known') return { part: 'survey.range', whole: 'survey.one-value' } as const
  if (kind === 'known-choice') return { part: 'survey.one-of', whole: 'survey.one-choice' } as const
  return undefined
}

/** A tap to another way of answering. */
type FieldWay = Extract<
  keyof ReturnType<typeof useWeb>,
  `survey.${'unknown' | 'clear' | 'range' | 'one-value' | 'one-of' | 'one-choice'}`
>

interface FieldProps {
  readonly path: SurveyPath
  readonly label: string
  readonly hint?: string
  readonly usual?: readonly string[]
  readonly unit?: string
  readonly least?: number
  readonly labels?: (option: string) => string
  readonly first?: readonly string[]
  /** What else is set with it, in the same tap. */
  readonly set?: (value: Json) => void
}

/**
 * One field of the survey: its editor by its schema, "don't know" with a reason, and the values of
 * two people side by side where they disagree.
 */
export function Field({ path, label, set, labels, unit, ...rest }: FieldProps): ReactNode {
  const survey = useSurvey()
  const web = useWeb()
  const { typed } = useJob()
  const [mode, setMode] = useState<'one' | 'unknown' | 'partly'>(() =>
    typed.hasBelow(path.join('/')) ? 'partly' : 'one',
  )
  const { words } = useApp()
  const nameOption = useOptionName()
  const sentTo = useAsked()
  const told = useDiagnosticsAt(path)
  const state = survey.at(path)
  const value = survey.value(path)
  const form = survey.form(path)?.form
  if (!form) return undefined
  const usual = 'unit' in form ? usualUnit(form.unit, isAmerican(survey.region)) : undefined
  const shownUnit = unit ?? usual
  const nameOf = labels ?? ((option: string) => nameOption(path, option))
  if (state.kind === 'conflict')
    return <Conflict label={label} path={path} state={state} nameOf={nameOf} />
  const reason = unknownOf(value)
  const isUnknown = reason !== undefined
  const take = set ?? ((entered: Json) => survey.set(path, entered))
  const partly = partlyWords(form)
  const isPart = isPartly(value) || (mode === 'partly' && canBePartly(form))
  const showsPartly = partly !== undefined && isPart && !isUnknown
  const way = (says: FieldWay, act: () => void): ReactNode => (
    <button
      type="button"
      className="plain"
      aria-label={`${label}: ${web[says]}`}
      disabled={!survey.canWrite}
      onClick={act}
    >
      {web[says]}
    </button>
  )
  return (
    <div
      className={isUnknown ? 'is-unknown' : undefined}
      data-field={path.join('/')}
      data-asked={sentTo?.join('/') === path.join('/') ? 'here' : undefined}
    >
      {showsPartly && form.kind === 'known' ? (
        <PartlyKnown at={path} label={label} value={value} unit={form.unit} set={take} />
      ) : showsPartly && form.kind === 'known-choice' ? (
        <OneOfSome
          label={label}
          value={value}
          options={form.options}
          nameOf={nameOf}
          set={take}
          clear={() => {
            setMode('partly')
            survey.clear(path)
          }}
          isDisabled={!survey.canWrite}
        />
      ) : (
        !isUnknown && (
          <EditorFor
            {...rest}
            {...(shownUnit === undefined ? {} : { unit: shownUnit })}
            labels={nameOf}
            form={form}
            at={path}
            label={label}
            value={value}
            set={take}
            clear={() => survey.clear(path)}
            isDisabled={!survey.canWrite}
          />
        )
      )}
      {(mode === 'unknown' || isUnknown) && (
        <Chips
          legend={isUnknown ? `${label}: ${web['survey.unknown']}` : web['survey.why-unknown']}
          options={UNKNOWN_REASONS.map(each => ({
            value: each,
            label: web[`survey.reason-${each}`],
          }))}
          chosen={reason}
          choose={chosen => survey.set(path, { unknown: chosen })}
          isDisabled={!survey.canWrite}
        />
      )}
      {told.map(each => (
        <p key={each.code} className={blocks(each) ? 'wrong' : 'look'} role="status">
          {words.tellDiagnostic({ ...each, path: [label] })}
        </p>
      ))}
      <p className="row under">
        {canBeUnknown(path) &&
          !isUnknown &&
          mode !== 'unknown' &&
          way('survey.unknown', () => setMode('unknown'))}
        {partly &&
          !isUnknown &&
          (canBePartly(form) || isPartly(value)) &&
          way(showsPartly ? partly.whole : partly.part, () => {
            if (showsPartly && isPartly(value)) survey.clear(path)
            setMode(showsPartly ? 'one' : 'partly')
          })}
        {(isUnknown || mode === 'unknown') &&
          way('survey.clear', () => {
            if (isUnknown) survey.clear(path)
            setMode('one')
          })}
      </p>
    </div>
  )
}

/** Two people said different things: both stay until somebody who saw both decides. */
function Conflict({
  label,
  path,
  state,
  nameOf,
}: {
  readonly label: string
  readonly path: SurveyPath
  readonly state: Extract<FieldView, { kind: 'conflict' }>
  readonly nameOf: (option: string) => string
}): ReactNode {
  const survey = useSurvey()
  const web = useWeb()
  const { language } = useApp()
  return (
    <fieldset className="conflict" aria-label={label} data-field={path.join('/')}>
      <p>
        <strong>{label}</strong>: {web['survey.conflict']}
      </p>
      <div className="chips">
        {state.values.map(({ value, by, at, entry }) => (
          <button
            key={entry}
            type="button"
            disabled={!survey.canWrite}
            onClick={() => (value === undefined ? survey.clear(path) : survey.set(path, value))}
          >
            {say(web['survey.conflict-by'], {
              value: valueText(value, nameOf),
              author: by,
              at: new Date(at).toLocaleString(language),
            })}
          </button>
        ))}
      </div>
      <p>{web['survey.conflict-holds-back']}</p>
    </fieldset>
  )
}
