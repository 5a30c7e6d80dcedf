import type { Act } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Field } from './field.tsx'
import type { LoadSoFar } from './load-so-far.ts'
import { inRecord, useSurvey } from './use-survey.ts'

const BARE = ''

/** Bare leads, or a plug by what it looks like, its pins in the order of the leads. */
export function Plug({ load }: { readonly load: LoadSoFar }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { shelf } = useApp()
  const [shapes, setShapes] = useState<readonly string[]>([])
  const [isOther, setIsOther] = useState(false)
  useEffect(() => void shelf().then(found => setShapes(found.plugs)), [shelf])
  const base = ['loads', load.id, 'plug']
  const shape = survey.value([...base, 'shape'])
  const pins = (survey.value([...base, 'pins']) ?? {}) as Readonly<Record<string, unknown>>
  const leads = load.leads ?? []
  const choose = (chosen: string): void => {
    setIsOther(false)
    if (chosen === BARE)
      survey.act(
        { do: 'clear', path: inRecord([...base, 'shape']) },
        ...Object.keys(pins).map(
          (pin): Act => ({ do: 'clear', path: inRecord([...base, 'pins', pin]) }),
        ),
      )
    else
      survey.act(
        { do: 'set', path: inRecord([...base, 'shape']), value: chosen },
        ...leads.map(
          (each, index): Act => ({
            do: 'set',
            path: inRecord([...base, 'pins', String(index + 1)]),
            value: each.id,
          }),
        ),
      )
  }
  const count = ['', '', 'two', 'three', 'four'][leads.length]
  const fitting = shapes.filter(each => count !== undefined && each.startsWith(count))
  const chosen =
    typeof shape === 'string' ? shape : leads.some(each => each.size) && !isOther ? BARE : undefined
  return (
    <>
      <Chips
        legend={web['survey.plug']}
        options={[
          { value: BARE, label: web['survey.bare-leads'] },
          ...[...new Set([...fitting, ...(typeof shape === 'string' ? [shape] : [])])].map(
            each => ({
              value: each,
              label: each,
            }),
          ),
        ]}
        chosen={chosen}
        choose={choose}
        isDisabled={!survey.canWrite}
      >
        <button type="button" disabled={!survey.canWrite} onClick={() => setIsOther(true)}>
          {web['survey.other-plug']}
        </button>
      </Chips>
      {isOther && <Field path={[...base, 'shape']} label={web['survey.plug-words']} />}
    </>
  )
}
