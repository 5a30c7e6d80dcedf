import type { QuantityFault, Unit } from '@tubwright/core'
import { AREAS, DIMENSIONS, GAUGES, parseQuantity } from '@tubwright/core'
import type { FieldForm } from '@tubwright/formats'
import type { Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { unitsOf } from './units-of.ts'
import type { Standing } from './use-standing.ts'
import { useStanding } from './use-standing.ts'
import type { SurveyPath } from './use-survey.ts'
import { useTyped } from './use-typed.ts'

export interface EditorProps {
  readonly label: string
  readonly value: unknown
  readonly set: (value: Json) => void
  readonly clear: () => void
  /** Values that are commonly met, offered as one tap. */
  readonly usual?: readonly string[]
  /** The unit that is taken where none is typed. */
  readonly unit?: string
  /** The least amount [SI], where it is not that of what is described: a meter shows 0 V. */
  readonly least?: number
  readonly hint?: string
  readonly isDisabled: boolean
}

const asText = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : ''

/** A text that is kept when its field is left. */
export function TextEditor(
  props: EditorProps & {
    readonly most?: number
    readonly lines?: boolean
    readonly at?: SurveyPath
  },
): ReactNode {
  const { label, value, set, clear, hint, isDisabled, most = 80, lines = false, at } = props
  const id = useId()
  const keep = (entered: string): void => {
    const text = entered.trim()
    if (text === '') {
      if (asText(value) !== '') clear()
    } else if (text !== value) set(text)
  }
  const [typed, setTyped] = useTyped(keep, isDisabled ? undefined : at)
  const leave = (): void => {
    if (typed === undefined) return
    keep(typed)
    setTyped(undefined)
  }
  const common = {
    id,
    value: typed ?? asText(value),
    maxLength: most,
    disabled: isDisabled,
    onBlur: leave,
  }
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      {hint && <p className="hint">{hint}</p>}
      {lines ? (
        <textarea {...common} rows={4} onChange={event => setTyped(event.target.value)} />
      ) : (
        <input {...common} type="text" onChange={event => setTyped(event.target.value)} />
      )}
    </div>
  )
}

const hasNote = (standing: Standing, wrong: string | undefined): boolean =>
  wrong !== undefined || standing.isFromBefore

/** Under a field: why what stands in it is refused, or that it is not used yet. */
function StandingNote({
  standing,
  wrong,
  id,
}: {
  readonly standing: Standing
  readonly wrong: string | undefined
  readonly id: string
}): ReactNode {
  const web = useWeb()
  if (wrong !== undefined)
    return (
      <p className="wrong" id={id} role="alert">
        {wrong}
      </p>
    )
  if (!standing.isFromBefore) return undefined
  return (
    <p className="look" id={id} role="status">
      {web['survey.not-used-yet']}
    </p>
  )
}

/**
 * A line of figures, read when it is left.
 *
 * @param refuse - why nothing of it is taken
 */
export function LineEditor({
  label,
  value,
  set,
  at,
  refuse = () => undefined,
  hint,
  most = 80,
  isDisabled,
}: Omit<EditorProps, 'clear'> & {
  readonly at: SurveyPath
  readonly refuse?: (text: string) => string | undefined
  readonly most?: number
}): ReactNode {
  const id = useId()
  const standing = useStanding(at, entered => {
    const text = entered.trim()
    if (refuse(text) !== undefined) return false
    if (text !== '' && text !== value) set(text)
    return true
  })
  const wrong = standing.isRefused ? refuse(standing.text ?? '') : undefined
  return (
    <div className="field">
      <label className="label" htmlFor={id}>
        {label}
      </label>
      {hint && <p className="hint">{hint}</p>}
      <input
        id={id}
        type="text"
        inputMode="decimal"
        value={standing.text ?? asText(value)}
        maxLength={most}
        disabled={isDisabled}
        aria-invalid={wrong !== undefined}
        aria-describedby={hasNote(standing, wrong) ? `${id}-note` : undefined}
        onChange={event => standing.type(event.target.value)}
        onBlur={standing.leave}
      />
      <StandingNote standing={standing} wrong={wrong} id={`${id}-note`} />
    </div>
  )
}

const FIGURE = /^\s*([+-]?[\d.,]+)\s*(\S.*)?$/u

/** A separator before three figures: thousands to one, a fraction to another. */
function twoReadings(
  typed: string,
): { readonly is: string; readonly large: string; readonly small: string } | undefined {
  const [, whole, part] = /^\s*([1-9]\d{0,2})[.,](\d{3})(?!\d)/u.exec(typed) ?? []
  return whole === undefined || part === undefined
    ? undefined
    : { is: typed.trim(), large: `${whole}${part}`, small: String(Number(`${whole}.${part}`)) }
}

/** What was typed, with its unit: the region's where none was typed. A comma is a decimal point. */
function withUnit(typed: string, unit: string): string {
  const [, figure = '', own] = FIGURE.exec(typed) ?? []
  if (figure === '') return typed.trim()
  return `${figure.replace(',', '.')} ${own?.trim() ?? unit}`
}

/** Why what was typed is no amount of this kind, and what may be. */
function tellFault(
  written: string,
  unit: Unit,
  reason: QuantityFault['reason'],
  least: number | undefined,
  web: ReturnType<typeof useWeb>,
): string {
  const { spellings, from, to, example } = DIMENSIONS[unit]
  switch (reason) {
    case 'no-number':
      return say(web['survey.amount-no-number'], { is: written, example })
    case 'no-unit':
    case 'wrong-unit':
      return say(web['survey.amount-wrong-unit'], {
        is: written,
        units: Object.keys(spellings).join(', '),
      })
    case 'out-of-range':
      return say(web['survey.amount-out-of-range'], {
        is: written,
        least: `${least ?? from} ${unit}`,
        most: `${to} ${unit}`,
      })
  }
}

/** An amount typed with its unit; its format is checked when the field is left. */
export function AmountEditor({
  form,
  at,
  ...props
}: EditorProps & { readonly form: { readonly unit: Unit }; readonly at: SurveyPath }): ReactNode {
  const { label, value, set, clear, usual = [], least, hint, isDisabled } = props
  const web = useWeb()
  const id = useId()
  const text = asText(value)
  const own = FIGURE.exec(text)
  const [unit, setUnit] = useState(
    props.unit ?? Object.keys(DIMENSIONS[form.unit].spellings)[0] ?? '',
  )
  const shownUnit = own?.[2] ?? unit
  const refuse = (entered: string): string | undefined => {
    const two = twoReadings(entered)
    if (two) return say(web['survey.amount-ambiguous'], two)
    const written = withUnit(entered, shownUnit)
    const read = parseQuantity(form.unit, written, least)
    return read.ok ? undefined : tellFault(written, form.unit, read.failure.reason, least, web)
  }
  const take = (entered: string): boolean => {
    if (entered.trim() === '') {
      if (text !== '') clear()
      return true
    }
    if (refuse(entered) !== undefined) return false
    const read = parseQuantity(form.unit, withUnit(entered, shownUnit), least)
    if (read.ok && read.value.text !== text) set(read.value.text)
    return read.ok
  }
  const standing = useStanding(at, take)
  const typed = standing.text
  const wrong = standing.isRefused && typed !== undefined ? refuse(typed) : undefined
  return (
    <fieldset>
      <legend>
        <label htmlFor={id}>{label}</label>
      </legend>
      {hint && <p className="hint">{hint}</p>}
      <div className="amount">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={typed ?? own?.[1] ?? text}
          disabled={isDisabled}
          aria-invalid={wrong !== undefined}
          aria-describedby={hasNote(standing, wrong) ? `${id}-note` : undefined}
          onChange={event => standing.type(event.target.value)}
          onBlur={standing.leave}
          onKeyDown={event => event.key === 'Enter' && standing.leave()}
        />
        <select
          aria-label={say(web['survey.unit'], { field: label })}
          value={shownUnit}
          disabled={isDisabled}
          onChange={event => {
            setUnit(event.target.value)
            const figure = typed ?? own?.[1]
            if (figure) {
              const read = parseQuantity(form.unit, withUnit(figure, event.target.value), least)
              if (read.ok) {
                set(read.value.text)
                standing.drop()
              }
            }
          }}
        >
          {unitsOf(form.unit, shownUnit).map(each => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </div>
      {usual.length > 0 && (
        <div className="chips near">
          {usual.map(each => (
            <label key={each} className="chip">
              <input
                type="radio"
                name={`${id}-usual`}
                checked={each === text}
                disabled={isDisabled}
                onChange={() => {
                  set(each)
                  standing.drop()
                }}
              />
              <span>{each}</span>
            </label>
          ))}
        </div>
      )}
      <StandingNote standing={standing} wrong={wrong} id={`${id}-note`} />
    </fieldset>
  )
}

/** A conductor size: one tap for what is usual, a list for the rest. */
export function SizeEditor({
  label,
  value,
  set,
  usual = [],
  hint,
  isDisabled,
}: EditorProps): ReactNode {
  const all = [...GAUGES, ...AREAS]
  const text = asText(value)
  const near = [...new Set([...usual, ...(text === '' ? [] : [text])])]
  const id = useId()
  return (
    <Chips
      legend={label}
      options={near.map(each => ({ value: each, label: each }))}
      chosen={text || undefined}
      choose={set}
      isDisabled={isDisabled}
      {...(hint === undefined ? {} : { hint })}
    >
      <label className="unseen" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className="narrow"
        value={text}
        disabled={isDisabled}
        onChange={event => event.target.value !== '' && set(event.target.value)}
      >
        <option value="">…</option>
        {all.map(each => (
          <option key={each}>{each}</option>
        ))}
      </select>
    </Chips>
  )
}

/** Yes or no. */
export function YesNoEditor({ label, value, set, hint, isDisabled }: EditorProps): ReactNode {
  const web = useWeb()
  return (
    <Chips
      legend={label}
      options={[
        { value: 'true', label: web['survey.yes'] },
        { value: 'false', label: web['survey.no'] },
      ]}
      chosen={typeof value === 'boolean' ? String(value) : undefined}
      choose={chosen => set(chosen === 'true')}
      isDisabled={isDisabled}
      {...(hint === undefined ? {} : { hint })}
    />
  )
}

/** A plain number. */
export function NumberEditor(props: EditorProps): ReactNode {
  const { set } = props
  const take = (entered: Json): void => {
    const number = Number(String(entered).replace(',', '.'))
    set(Number.isFinite(number) ? number : entered)
  }
  return <TextEditor {...props} value={asText(props.value)} set={take} />
}

/** Names that belong together, such as the pair of leads of a circuit: written with commas. */
export function NamesEditor(props: EditorProps): ReactNode {
  const { value, set } = props
  const text = Array.isArray(value) ? value.map(String).join(', ') : ''
  const take = (entered: Json): void =>
    set(
      String(entered)
        .split(',')
        .map(each => each.trim())
        .filter(each => each !== ''),
    )
  return <TextEditor {...props} value={text} set={take} most={400} />
}

type EditorForProps = EditorProps & {
  readonly form: FieldForm
  readonly at: SurveyPath
  /** What a person calls the options of a choice. */
  readonly labels?: ((option: string) => string) | undefined
  /** The options that are usual here: a tap each; the others stand in a list. */
  readonly first?: readonly string[] | undefined
}

/** One of some: what is usual as chips, the rest in a list. */
function ChoiceEditor({
  options,
  labels = each => each,
  first = options,
  ...props
}: Omit<EditorForProps, 'form' | 'at'> & { readonly options: readonly string[] }): ReactNode {
  const chosen = asText(props.value)
  const near = options.filter(each => first.includes(each) || each === chosen)
  const far = options.filter(each => !near.includes(each))
  const common = props.hint === undefined ? {} : { hint: props.hint }
  return (
    <Chips
      legend={props.label}
      options={near.map(each => ({ value: each, label: labels(each) }))}
      chosen={chosen || undefined}
      choose={props.set}
      isDisabled={props.isDisabled}
      {...common}
    >
      {far.length > 0 && (
        <select
          aria-label={props.label}
          className="narrow"
          value=""
          disabled={props.isDisabled}
          onChange={event => event.target.value !== '' && props.set(event.target.value)}
        >
          <option value="">…</option>
          {far.map(each => (
            <option key={each} value={each}>
              {labels(each)}
            </option>
          ))}
        </select>
      )}
    </Chips>
  )
}

/** The editor for a form; a quantity that may be known only in part is one value here. */
export function EditorFor({ form, at, labels, first, ...props }: EditorForProps): ReactNode {
  switch (form.kind) {
    case 'quantity':
    case 'known':
      return <AmountEditor {...props} form={form} at={at} />
    case 'size':
      return <SizeEditor {...props} />
    case 'choice':
    case 'known-choice':
      return <ChoiceEditor {...props} options={form.options} labels={labels} first={first} />
    case 'yes-no':
      return <YesNoEditor {...props} />
    case 'number':
      return <NumberEditor {...props} />
    case 'names':
      return <NamesEditor {...props} />
    case 'text':
      return <TextEditor {...props} at={at} />
  }
}
