import type { UnknownReason } from '@tubwright/core'
import { blocks, UNKNOWN_REASONS } from '@tubwright/core'
import type { FieldView, Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { EditorFor } from './editors.tsx'
import { PartlyKnown } from './partly-known.tsx'
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
export function valueText(value: unknown): string {
  if (typeof value === 'string' || typeof value === 'number') return String(value)
  if (typeof value === 'boolean') return value ? '✓' : '✗'
  const { from, to, oneOf, unknown } = (value ?? {}) as Record<string, unknown>
  if (from !== undefined) return `${String(from)} – ${String(to)}`
  if (Array.isArray(oneOf)) return oneOf.join(' / ')
  if (unknown !== undefined) return `? (${String(unknown)})`
  if (Array.isArray(value)) return value.join(', ')
  return value === undefined || value === null ? '–' : JSON.stringify(value).slice(0, 80)
}

interface FieldProps {
  readonly path: SurveyPath
  readonly label: string
  readonly hint?: string
  readonly usual?: readonly string[]
  readonly unit?: string
  readonly labels?: (option: string) => string
  readonly first?: readonly string[]
  /** What else is set with it, in the same tap. */
  readonly set?: (value: Json) => void
}

/**
 * One field of the survey: its editor by its schema, "don't know" with a reason, and the values of
 * two people side by side where they disagree.
 */
export function Field({ path, label, set, ...rest }: FieldProps): ReactNode {
  const survey = useSurvey()
  const web = useWeb()
  const [mode, setMode] = useState<'one' | 'unknown' | 'partly'>('one')
  const { words } = useApp()
  const told = useDiagnosticsAt(path)
  const state = survey.at(path)
  const value = survey.value(path)
  const form = survey.form(path)?.form
  if (!form) return undefined
  if (state.kind === 'conflict') return <Conflict label={label} path={path} state={state} />
  const reason = unknownOf(value)
  const isUnknown = reason !== undefined
  const take = set ?? ((entered: Json) => survey.set(path, entered))
  const showsPartly = form.kind === 'known' && (mode === 'partly' || isPartly(value)) && !isUnknown
  return (
    <div className={isUnknown ? 'is-unknown' : undefined} data-field={path.join('/')}>
      {showsPartly && form.kind === 'known' ? (
        <PartlyKnown label={label} value={value} unit={form.unit} set={take} />
      ) : (
        !isUnknown && (
          <EditorFor
            {...rest}
            form={form}
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
        {!isUnknown && mode !== 'unknown' && (
          <button
            type="button"
            className="plain"
            aria-label={`${label}: ${web['survey.unknown']}`}
            disabled={!survey.canWrite}
            onClick={() => setMode('unknown')}
          >
            {web['survey.unknown']}
          </button>
        )}
        {form.kind === 'known' && !isUnknown && (
          <button
            type="button"
            className="plain"
            aria-label={`${label}: ${showsPartly ? web['survey.one-value'] : web['survey.range']}`}
            disabled={!survey.canWrite}
            onClick={() => {
              if (showsPartly && isPartly(value)) survey.clear(path)
              setMode(showsPartly ? 'one' : 'partly')
            }}
          >
            {showsPartly ? web['survey.one-value'] : web['survey.range']}
          </button>
        )}
        {(isUnknown || mode === 'unknown') && (
          <button
            type="button"
            className="plain"
            aria-label={`${label}: ${web['survey.clear']}`}
            disabled={!survey.canWrite}
            onClick={() => {
              if (isUnknown) survey.clear(path)
              setMode('one')
            }}
          >
            {web['survey.clear']}
          </button>
        )}
      </p>
    </div>
  )
}

/** Two people said different things: both stay until somebody who saw both decides. */
function Conflict({
  label,
  path,
  state,
}: {
  readonly label: string
  readonly path: SurveyPath
  readonly state: Extract<FieldView, { kind: 'conflict' }>
}): ReactNode {
  const survey = useSurvey()
  const web = useWeb()
  const { language } = useApp()
  return (
    <fieldset className="conflict" aria-label={label}>
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
              value: valueText(value),
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
