import { habitsOf } from '@tubwright/core'
import { say } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Disclosure } from './disclosure.tsx'
import { Field } from './field.tsx'
import { useIsAmerican } from './here.ts'
import { useSurvey } from './use-survey.ts'

/** What a breaker or disconnect is marked for: of use to a verdict on the supply. */
export function DeviceRatings({
  device,
  label,
}: {
  readonly device: string
  readonly label: string
}): ReactNode {
  const web = useWeb()
  const isAmerican = useIsAmerican()
  const { region } = useSurvey()
  const base = ['supply', 'devices', device]
  const terminals = [...base, 'terminals']
  const enclosure = [...base, 'enclosure']
  const heatMark = [...base, 'heatMark']
  return (
    <Disclosure
      title={say(web['survey.ratings'], { device: label })}
      below={[terminals, enclosure, heatMark]}
    >
      <Field
        path={terminals}
        label={web['survey.terminals']}
        hint={web['survey.terminals-hint']}
        first={isAmerican ? ['60 °C', '75 °C'] : ['70 °C', '90 °C']}
      />
      <Field
        path={enclosure}
        label={web['survey.enclosure']}
        unit="A"
        usual={habitsOf(region ?? 'US').breakers.slice(-4)}
      />
      <Field path={heatMark} label={web['survey.heat-mark']} hint={web['survey.heat-mark-hint']} />
    </Disclosure>
  )
}
