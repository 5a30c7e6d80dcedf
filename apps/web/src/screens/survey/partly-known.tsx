import type { Unit } from '@tubwright/core'
import type { Json } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useState } from 'react'
import { useWeb } from '../../app/context.ts'
import { AmountEditor, TextEditor } from './editors.tsx'

interface Between {
  readonly from?: string
  readonly to?: string
  readonly source?: string
}

/** A value that lies between two, with how that is known; set once all three are there. */
export function PartlyKnown({
  label,
  value,
  unit,
  set,
}: {
  readonly label: string
  readonly value: unknown
  readonly unit: Unit
  readonly set: (value: Json) => void
}): ReactNode {
  const web = useWeb()
  const given = (typeof value === 'object' && value !== null ? value : {}) as Between
  const [typed, setTyped] = useState<Between>({})
  const now = { ...given, ...typed }
  const take = (change: Between): void => {
    const next = { ...now, ...change }
    setTyped(next)
    const { from, to, source } = next
    if (from && to && source) set({ from, to, source })
  }
  const common = { clear: () => undefined, isDisabled: false }
  return (
    <fieldset>
      <legend>{label}</legend>
      <AmountEditor
        {...common}
        label={web['survey.from']}
        value={now.from}
        form={{ unit }}
        set={from => take({ from: String(from) })}
      />
      <AmountEditor
        {...common}
        label={web['survey.to']}
        value={now.to}
        form={{ unit }}
        set={to => take({ to: String(to) })}
      />
      <TextEditor
        {...common}
        label={web['survey.source']}
        value={now.source}
        set={source => take({ source: String(source) })}
      />
    </fieldset>
  )
}
