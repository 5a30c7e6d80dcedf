import { SERVICE_LOADS } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Field } from './field.tsx'
import { useIsAmerican } from './here.ts'
import type { Item } from './items.tsx'
import { addActs, labelOf, TakeOut, useFreeId } from './items.tsx'
import { useSurvey } from './use-survey.ts'

const LOADS = ['service', 'loads']

/** What the whole house may draw: for who reckons whether it can feed the tub. */
export function ServiceGroup(): ReactNode {
  const web = useWeb()
  const isAmerican = useIsAmerican()
  return (
    <>
      <p className="hint">{web['survey.service-hint']}</p>
      <Field
        path={['service', 'main']}
        label={web['survey.service-main']}
        unit="A"
        usual={isAmerican ? ['100 A', '150 A', '200 A'] : ['40 A', '63 A', '80 A', '100 A']}
      />
      <Field
        path={['service', 'area']}
        label={web['survey.service-area']}
        unit={isAmerican ? 'ft²' : 'm²'}
      />
      <HouseLoads />
      <Field path={['service', 'complete']} label={web['survey.service-complete']} />
    </>
  )
}

/** Every fixed load of the house, and one tap for each kind to add. */
function HouseLoads(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const freeName = useFreeId()
  const written = survey.value(LOADS)
  const loads = Array.isArray(written) ? (written as readonly Item[]) : []
  const add = (kind: (typeof SERVICE_LOADS)[number]): void => {
    const name = web[`option.service-${kind}`]
    const same = loads.filter(each => labelOf(each).startsWith(name)).length
    const label = same > 0 ? `${name} ${same + 1}` : name
    survey.act(...addActs([...LOADS, freeName(LOADS, kind)], { label, kind }))
  }
  return (
    <section aria-label={web['survey.service-loads']} data-field={LOADS.join('/')}>
      <h2>{web['survey.service-loads']}</h2>
      {loads.map(each => (
        <HouseLoad key={each.id} load={each} />
      ))}
      <div className="chips">
        {SERVICE_LOADS.map(kind => (
          <button key={kind} type="button" disabled={!survey.canWrite} onClick={() => add(kind)}>
            {say(web['survey.service-add'], { kind: web[`option.service-${kind}`] })}
          </button>
        ))}
      </div>
    </section>
  )
}

function HouseLoad({ load }: { readonly load: Item }): ReactNode {
  const web = useWeb()
  const name = labelOf(load)
  const path = [...LOADS, load.id]
  return (
    <section className="card" aria-label={name}>
      <h3>{name}</h3>
      <Field
        path={[...path, 'power']}
        label={say(web['survey.service-power'], { thing: name })}
        unit="kW"
      />
      <details>
        <summary>{say(web['survey.thing-name'], { thing: name })}</summary>
        <Field path={[...path, 'label']} label={say(web['survey.thing-name'], { thing: name })} />
        <Field path={[...path, 'kind']} label={web['survey.service-kind']} />
      </details>
      <TakeOut path={path}>{say(web['survey.thing-out'], { thing: name })}</TakeOut>
    </section>
  )
}
