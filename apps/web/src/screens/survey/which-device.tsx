import type { System } from '@tubwright/core'
import { SYSTEMS, suitsSystem } from '@tubwright/core'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import { useDevices } from './use-devices.ts'
import { useSurvey } from './use-survey.ts'

/** One of the devices on the shelf: those for this source as chips, the others beside. */
export function WhichDevice({
  question,
  chosen,
  choose,
  may = () => true,
}: {
  readonly question: string
  readonly chosen: unknown
  readonly choose: (device: string) => void
  /** Whether a kind can stand where it is asked for; what is chosen is shown all the same. */
  readonly may?: (device: DeviceChoice) => boolean
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const devices = useDevices().filter(each => each.id === chosen || may(each))
  const system = survey.value(['supply', 'system'])
  const suits = ({ fedAt }: DeviceChoice) =>
    !SYSTEMS.includes(system as System) || suitsSystem(fedAt, system as System)
  const others = devices.filter(each => !suits(each))
  const chips = (legend: string, all: readonly DeviceChoice[]) => (
    <Chips
      legend={legend}
      options={all.map(({ id, label }) => ({ value: id, label }))}
      chosen={typeof chosen === 'string' ? chosen : undefined}
      choose={choose}
      isDisabled={!survey.canWrite}
    />
  )
  return (
    <>
      {chips(question, devices.filter(suits))}
      {others.length > 0 && (
        <details>
          <summary>{web['survey.other-devices']}</summary>
          {chips(web['survey.other-devices'], others)}
        </details>
      )}
    </>
  )
}
