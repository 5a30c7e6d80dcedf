import type { Unit } from '@tubwright/core'
import { DIMENSIONS, parseQuantity } from '@tubwright/core'
import type { Json } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useId, useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { Chips, ManyChips } from '../../parts/chips.tsx'
import { AmountEditor, LineEditor, TextEditor } from './editors.tsx'
import type { SurveyPath } from './use-survey.ts'

/** What is said of a value that is known in part, as far as it is said. */
interface Partly {
  readonly from?: string
  readonly to?: string
  readonly oneOf?: readonly string[]
  readonly source?: string
}

/** The whole of it once everything is there; undefined before. */
function wholeOf({ from, to, oneOf, source }: Partly, isRange: boolean): Json | undefined {
  if (!source) return undefined
  if (isRange) return from && to ? { from, to, source } : undefined
  return oneOf && oneOf.length > 1 ? { oneOf: [...oneOf], source } : undefined
}

/** A value between two, or one of some, with how that is known; set once all of it is there. */
export function PartlyKnown({
  at,
  label,
  value,
  unit,
  set,
}: {
  readonly at: SurveyPath
  readonly label: string
  readonly value: unknown
  readonly unit: Unit
  readonly set: (value: Json) => void
}): ReactNode {
  const web = useWeb()
  const given = (typeof value === 'object' && value !== null ? value : {}) as Partly
  const [typed, setTyped] = useState<Partly>({})
  const [isRange, setIsRange] = useState(given.oneOf === undefined)
  const now = { ...given, ...typed }
  const take = (change: Partly): void => {
    const next = { ...now, ...change }
    setTyped(next)
    const whole = wholeOf(next, isRange)
    if (whole !== undefined) set(whole)
  }
  const common = { clear: () => undefined, isDisabled: false }
  const amount = (side: 'from' | 'to') => (
    <AmountEditor
      {...common}
      at={[...at, side]}
      label={web[`survey.${side}`]}
      value={now[side]}
      form={{ unit }}
      set={text => take({ [side]: String(text) })}
    />
  )
  const readValues = (text: string) =>
    text
      .split(';')
      .filter(each => each.trim() !== '')
      .map(each => ({ is: each.trim(), read: parseQuantity(unit, each.trim()) }))
  const refuseValues = (text: string): string | undefined => {
    const bad = readValues(text).find(each => !each.read.ok)
    const { example } = DIMENSIONS[unit]
    return bad && say(web['survey.amount-no-number'], { is: bad.is, example })
  }
  const takeValues = (text: Json): void =>
    take({
      oneOf: readValues(String(text)).flatMap(({ read }) => (read.ok ? [read.value.text] : [])),
    })
  return (
    <fieldset>
      <Chips
        legend={label}
        options={[
          { value: 'range', label: web['survey.range'] },
          { value: 'one-of', label: web['survey.one-of'] },
        ]}
        chosen={isRange ? 'range' : 'one-of'}
        choose={chosen => setIsRange(chosen === 'range')}
      />
      {isRange ? (
        <>
          {amount('from')}
          {amount('to')}
        </>
      ) : (
        <LineEditor
          at={[...at, 'oneOf']}
          label={web['survey.values']}
          value={(now.oneOf ?? []).join('; ')}
          set={takeValues}
          refuse={refuseValues}
          most={200}
          isDisabled={false}
        />
      )}
      <Source value={now.source} set={source => take({ source })} isDisabled={false} />
    </fieldset>
  )
}

/** One of some words, with how that is known; set once two may be and the source is said. */
export function OneOfSome({
  label,
  value,
  options,
  nameOf,
  set,
  clear,
  isDisabled,
}: {
  readonly label: string
  readonly value: unknown
  readonly options: readonly string[]
  readonly nameOf: (option: string) => string
  readonly set: (value: Json) => void
  readonly clear: () => void
  readonly isDisabled: boolean
}): ReactNode {
  const web = useWeb()
  const given = (typeof value === 'object' && value !== null ? value : {}) as Partly
  const [typed, setTyped] = useState<Partly>({})
  const now = { ...given, ...typed }
  const take = (change: Partly): void => {
    const next = { ...now, ...change }
    setTyped(next)
    const whole = wholeOf(next, false)
    if (whole !== undefined) set(whole)
    else if (given.oneOf) clear()
  }
  const inOrder = (some: readonly string[]) => options.filter(each => some.includes(each))
  return (
    <fieldset>
      <ManyChips
        legend={label}
        hint={web['survey.which-of']}
        options={options.map(each => ({ value: each, label: nameOf(each) }))}
        chosen={now.oneOf ?? []}
        choose={some => take({ oneOf: inOrder(some) })}
        isDisabled={isDisabled}
      />
      <Source value={now.source} set={source => take({ source })} isDisabled={isDisabled} />
    </fieldset>
  )
}

const SOURCES = ['owner', 'part', 'photo'] as const

/** How something is known: a tap for what is usual, words for the rest. */
function Source({
  value,
  set,
  isDisabled,
}: {
  readonly value: string | undefined
  readonly set: (source: string) => void
  readonly isDisabled: boolean
}): ReactNode {
  const web = useWeb()
  const name = useId()
  return (
    <>
      <TextEditor
        label={web['survey.source']}
        value={value}
        set={source => set(String(source))}
        clear={() => undefined}
        isDisabled={isDisabled}
      />
      <div className="chips near">
        {SOURCES.map(each => web[`survey.source-${each}`]).map(source => (
          <label key={source} className="chip">
            <input
              type="radio"
              name={name}
              checked={source === value}
              disabled={isDisabled}
              onChange={() => set(source)}
            />
            <span>{source}</span>
          </label>
        ))}
      </div>
    </>
  )
}
