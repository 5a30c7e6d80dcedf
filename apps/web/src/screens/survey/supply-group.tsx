import type { System } from '@tubwright/core'
import { conductorSets, habitsOf, SYSTEMS } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { useIsAmerican } from './here.ts'
import { More } from './more.tsx'
import { useSurvey } from './use-survey.ts'

/** What the source is, and the breaker of its circuit. */
export function SupplyGroup(): ReactNode {
  const web = useWeb()
  const { region } = useSurvey()
  const isAmerican = useIsAmerican()
  const habits = region ? habitsOf(region) : undefined
  return (
    <>
      <Field
        path={['supply', 'system']}
        label={web['survey.system']}
        labels={each => web[`survey.system-${each}` as keyof typeof web]}
        first={habits?.systems ?? SYSTEMS}
      />
      <Field
        path={['supply', 'breaker']}
        label={web['survey.breaker']}
        unit="A"
        usual={habits?.breakers ?? []}
      />
      <Field
        path={['supply', 'frequency']}
        label={web['survey.frequency']}
        unit="Hz"
        usual={['60 Hz', '50 Hz']}
      />
      {!isAmerican && <Earthing />}
      <More
        below={[
          ['supply', 'sourceImpedance'],
          ['supply', 'feeder'],
          ['supply', 'turnable'],
        ]}
      />
    </>
  )
}

/** How a fault to earth is cleared: outside North America a verdict on the run rests on it. */
function Earthing(): ReactNode {
  const web = useWeb()
  const at = (key: string) => ['supply', key]
  return (
    <Disclosure
      title={web['survey.earthing-more']}
      below={[at('breakerType'), at('earthing'), at('earthLoop')]}
    >
      <Field
        path={at('breakerType')}
        label={web['survey.breaker-type']}
        hint={web['survey.breaker-type-hint']}
      />
      <Field path={at('earthing')} label={web['survey.earthing']} />
      <Field
        path={at('earthLoop')}
        label={web['survey.earth-loop']}
        hint={web['survey.earth-loop-hint']}
        unit="Ω"
      />
    </Disclosure>
  )
}

/** What a system commonly brings, or nothing while it is not known. */
export const setsOf = (system: unknown): readonly (readonly string[])[] =>
  SYSTEMS.includes(system as System) ? conductorSets(system as System) : []
