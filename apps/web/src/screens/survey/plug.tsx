import { shapeOf } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import { Chips } from '../../parts/chips.tsx'
import { Field } from './field.tsx'
import type { Lead, LoadSoFar } from './load-so-far.ts'
import { inRecord, useSurvey } from './use-survey.ts'

const BARE = ''

/** Its leads in the order of its shape, whenever each was said. */
function inShape(load: LoadSoFar): readonly Lead[] {
  const order: readonly unknown[] = shapeOf(load)?.leads ?? []
  const place = (lead: Lead) => [...order, lead.function].indexOf(lead.function)
  return (load.leads ?? []).toSorted((a, b) => place(a) - place(b))
}

/** Bare leads, or a plug by what it looks like, its pins in the order of the leads. */
export function Plug({ load }: { readonly load: LoadSoFar }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const { shelf } = useApp()
  const [shapes, setShapes] = useState<readonly string[]>([])
  const [isOther, setIsOther] = useState(false)
  const [saysEach, setSaysEach] = useState(false)
  const [isBare, setIsBare] = useState(false)
  useEffect(() => void shelf().then(found => setShapes(found.plugs)), [shelf])
  const base = ['loads', load.id, 'plug']
  const shape = survey.value([...base, 'shape'])
  const pins = (survey.value([...base, 'pins']) ?? {}) as Readonly<Record<string, unknown>>
  const leads = inShape(load)
  const choose = (chosen: string): void => {
    setIsOther(false)
    setIsBare(chosen === BARE)
    if (chosen === BARE)
      survey.act(
        { do: 'clear', path: inRecord([...base, 'shape']) },
        ...Object.keys(pins).map(
          (pin): Act => ({ do: 'clear', path: inRecord([...base, 'pins', pin]) }),
        ),
      )
    else survey.act({ do: 'set', path: inRecord([...base, 'shape']), value: chosen })
  }
  const inOrder = leads.map((each, index) => [String(index + 1), each.id] as const)
  const isInOrder =
    inOrder.length > 0 &&
    Object.keys(pins).length === inOrder.length &&
    inOrder.every(([pin, lead]) => pins[pin] === lead)
  const setPins = (isOrder: boolean): void => {
    setSaysEach(!isOrder)
    survey.act(
      ...inOrder.map(([pin, lead]): Act => {
        const path = inRecord([...base, 'pins', pin])
        return isOrder
          ? { do: 'set', path, value: lead }
          : { do: 'set', path, value: { unknown: 'not visible' } }
      }),
    )
  }
  const nameOf = (id: string): string => {
    const does = leads.find(each => each.id === id)?.function
    return web[`survey.lead-${String(does)}` as keyof typeof web] ?? id
  }
  const count = ['', '', 'two', 'three', 'four'][leads.length]
  const fitting = shapes.filter(each => count !== undefined && each.startsWith(count))
  const chosen = typeof shape === 'string' ? shape : isBare && !isOther ? BARE : undefined
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
      {typeof shape === 'string' && inOrder.length > 0 && (
        <Chips
          legend={web['survey.pin-order']}
          options={[
            {
              value: 'order',
              label: inOrder.map(([pin, lead]) => `${pin} ${nameOf(lead)}`).join(' · '),
            },
            { value: 'each', label: web['survey.pins-each'] },
          ]}
          chosen={saysEach ? 'each' : isInOrder ? 'order' : undefined}
          choose={chosen => setPins(chosen === 'order')}
          isDisabled={!survey.canWrite}
        />
      )}
      {(saysEach || (!isInOrder && Object.keys(pins).length > 0)) &&
        Object.keys(pins).map(pin => (
          <Chips
            key={pin}
            legend={say(web['survey.pin'], { pin })}
            options={leads.map(({ id }) => ({ value: id, label: nameOf(id) }))}
            chosen={typeof pins[pin] === 'string' ? String(pins[pin]) : undefined}
            choose={lead => survey.set([...base, 'pins', pin], lead)}
            isDisabled={!survey.canWrite}
          />
        ))}
      {isOther && <Field path={[...base, 'shape']} label={web['survey.plug-words']} />}
    </>
  )
}
