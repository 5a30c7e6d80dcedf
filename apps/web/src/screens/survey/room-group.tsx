import { habitsOf } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { Field } from './field.tsx'
import { useSurvey } from './use-survey.ts'

/** The room for the box, and the hole of the old keypad. */
export function RoomGroup(): ReactNode {
  const web = useWeb()
  const { region } = useSurvey()
  const unit = habitsOf(region ?? 'US').openingUnit
  return (
    <>
      <h2>{web['survey.bay']}</h2>
      {(['width', 'height', 'depth'] as const).map(side => (
        <Field key={side} path={['bay', side]} label={web[`survey.${side}`]} unit={unit} />
      ))}
      <h2>{web['survey.keypad-hole']}</h2>
      {(['width', 'height'] as const).map(side => (
        <Field key={side} path={['keypadHole', side]} label={web[`survey.${side}`]} unit={unit} />
      ))}
    </>
  )
}
