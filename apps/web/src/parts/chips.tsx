import type { ReactNode } from 'react'
import { useId } from 'react'

export interface Option {
  readonly value: string
  readonly label: string
}

interface ChipsProps {
  readonly legend: string
  readonly options: readonly Option[]
  readonly hint?: string
  readonly isDisabled?: boolean
  readonly children?: ReactNode
}

/** One of some, each a target of its own. */
export function Chips({
  legend,
  options,
  chosen,
  choose,
  hint,
  isDisabled = false,
  children,
}: ChipsProps & {
  readonly chosen: string | undefined
  readonly choose: (value: string) => void
}): ReactNode {
  const name = useId()
  return (
    <fieldset>
      <legend>{legend}</legend>
      {hint && <p className="hint">{hint}</p>}
      <div className="chips">
        {options.map(({ value, label }) => (
          <label key={value} className="chip">
            <input
              type="radio"
              name={name}
              value={value}
              checked={value === chosen}
              disabled={isDisabled}
              onChange={() => choose(value)}
            />
            <span>{label}</span>
          </label>
        ))}
        {children}
      </div>
    </fieldset>
  )
}

/** Any of some. */
export function ManyChips({
  legend,
  options,
  chosen,
  choose,
  hint,
  isDisabled = false,
}: ChipsProps & {
  readonly chosen: readonly string[]
  readonly choose: (values: readonly string[]) => void
}): ReactNode {
  const toggle = (value: string): void =>
    choose(chosen.includes(value) ? chosen.filter(each => each !== value) : [...chosen, value])
  return (
    <fieldset>
      <legend>{legend}</legend>
      {hint && <p className="hint">{hint}</p>}
      <div className="chips">
        {options.map(({ value, label }) => (
          <label key={value} className="chip">
            <input
              type="checkbox"
              value={value}
              checked={chosen.includes(value)}
              disabled={isDisabled}
              onChange={() => toggle(value)}
            />
            <span>{label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}
