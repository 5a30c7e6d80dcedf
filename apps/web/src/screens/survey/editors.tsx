import type { QuantityFault, Unit } from '@tubwright/core'
import { AREAS, DIMENSIONS, GAUGES, parseQuantity } from '@tubwright/core'
import type { FieldForm } from '@tubwright/formats'
import type { Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useRef, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { unitsOf } from './units-of.ts'
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
    readonly isNumeric?: boolean
  },
): ReactNode {
  const {
    label,
    value,
    set,
    clear,
    hint,
    isDisabled,
    most = 80,
    lines = false,
    isNumeric = false,
  } = props
  const id = useId()
  const keep = (entered: string): void => {
    const text = entered.trim()
    if (text === '') {
      if (asText(value) !== '') clear()
    } else if (text !== value) set(text)
  }
  const [typed, setTyped] = useTyped(keep, isNumeric)
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
        <input
          {...common}
          type="text"
          inputMode={isNumeric ? 'decimal' : 'text'}
          onChange={event => setTyped(event.target.value)}
        />
      )}
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
  ...props
}: EditorProps & { readonly form: { readonly unit: Unit } }): ReactNode {
  const { label, value, set, clear, usual = [], least, hint, isDisabled } = props
  const web = useWeb()
  const id = useId()
  const text = asText(value)
  const own = FIGURE.exec(text)
  const [unit, setUnit] = useState(
    props.unit ?? Object.keys(DIMENSIONS[form.unit].spellings)[0] ?? '',
  )
  const shownUnit = own?.[2] ?? unit
  const [wrong, setWrong] = useState<string>()
  const setTyped = useRef<(text: string | undefined) => void>(undefined)
  const take = (entered: string): void => {
    if (entered.trim() === '') {
      setWrong(undefined)
      setTyped.current?.(undefined)
      if (text !== '') clear()
      return
    }
    const written = withUnit(entered, shownUnit)
    const two = twoReadings(entered)
    if (two) {
      setWrong(say(web['survey.amount-ambiguous'], two))
      return
    }
    const read = parseQuantity(form.unit, written, least)
    if (!read.ok) {
      setWrong(tellFault(written, form.unit, read.failure.reason, least, web))
      return
    }
    setWrong(undefined)
    setTyped.current?.(undefined)
    if (read.value.text !== text) set(read.value.text)
  }
  const [typed, type] = useTyped(take, true)
  setTyped.current = type
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
          aria-describedby={wrong ? `${id}-wrong` : undefined}
          onChange={event => type(event.target.value)}
          onBlur={() => typed !== undefined && take(typed)}
          onKeyDown={event => event.key === 'Enter' && typed !== undefined && take(typed)}
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
              if (read.ok) set(read.value.text)
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
                  type(undefined)
                  setWrong(undefined)
                  set(each)
                }}
              />
              <span>{each}</span>
            </label>
          ))}
        </div>
      )}
      {wrong && (
        <p className="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
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
}: Omit<EditorForProps, 'form'> & { readonly options: readonly string[] }): ReactNode {
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
export function EditorFor({ form, labels, first, ...props }: EditorForProps): ReactNode {
  switch (form.kind) {
    case 'quantity':
    case 'known':
      return <AmountEditor {...props} form={form} />
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
      return <TextEditor {...props} />
  }
}
