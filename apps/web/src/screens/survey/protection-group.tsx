import { freeId } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useWeb } from '../../app/context.ts'
import { AddDevice } from './add-device.tsx'
import { Conductors, Landed } from './conductors.tsx'
import { DeviceRatings } from './device-ratings.tsx'
import { addActs } from './items.tsx'
import type { RunDevice } from './joints.ts'
import { standsBehind, takeOutOf } from './joints.ts'
import { DeviceEnds } from './loose-ends.tsx'
import { More } from './more.tsx'
import { useFirstDevice, usePieceName, useRun, useWholeRun } from './run.ts'
import { useDeviceLabel, useDevices } from './use-devices.ts'
import type { SurveyPath } from './use-survey.ts'
import { inRecord, useSurvey } from './use-survey.ts'
import { WhichDevice } from './which-device.tsx'

/** What stands between panel and tub, and where each wire sits on it. */
export function ProtectionGroup(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const first = useFirstDevice()
  const others = useWholeRun().devices.filter(each => each.id !== first?.id)
  const run = useRun()
  const known = useDevices()
  const device = known.find(each => each.id === first?.device)
  const choose = (id: string): void => {
    if (first) survey.set(['supply', 'devices', first.id, 'device'], id)
    else survey.act(...draftRun(id, web['survey.run-label']))
  }
  const isOwn = run !== undefined && run.from === first?.id
  return (
    <>
      <WhichDevice question={web['survey.device']} chosen={first?.device} choose={choose} />
      {first && run && isOwn && (
        <>
          <Conductors
            piece={run}
            question={web[others.length > 0 ? 'survey.wires-on' : 'survey.conductors']}
          />
          {run.conductors.length > 0 && device && (
            <Landed piece={run} end="from" device={device} question={web['survey.as-marked']} />
          )}
        </>
      )}
      {first && (
        <>
          <DeviceEnds device={first.id} />
          <AboutDevice id={first.id} except={['fedBy', 'breaker']} />
        </>
      )}
      {others.map(each => (
        <OtherDevice key={each.id} device={each} />
      ))}
      {first && <AddDevice />}
    </>
  )
}

/** What is printed on a device, and whatever else the files can say of it. */
function AboutDevice({
  id,
  except = [],
}: {
  readonly id: string
  /** What is not asked of it: the first circuit is told with the source. */
  readonly except?: readonly string[]
}): ReactNode {
  const base = ['supply', 'devices', id]
  const labelOf = useDeviceLabel()
  const asked: readonly SurveyPath[] = [
    'device',
    'terminals',
    'enclosure',
    'heatMark',
    ...except,
  ].map(each => [...base, each])
  return (
    <>
      <DeviceRatings device={id} label={labelOf(id)} />
      <More below={[base]} asked={asked} />
    </>
  )
}

/** A device behind the first one, or the first of another circuit. */
function OtherDevice({ device }: { readonly device: RunDevice }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const run = useWholeRun()
  const known = useDevices()
  const labelOf = useDeviceLabel()
  const nameOf = usePieceName()
  const path = ['supply', 'devices', device.id]
  const choose = (chosen: string): void => {
    const label = known.find(each => each.id === chosen)?.label
    const towards = run.pieces.filter(
      ({ to, label: name }) => to === device.id && name === nameOf(device.id),
    )
    // What was called by where it ends goes on so.
    survey.act(
      { do: 'set', path: inRecord([...path, 'device']), value: chosen },
      ...towards.map(
        (each): Act => ({
          do: 'set',
          path: inRecord(['supply', 'cables', each.id, 'label']),
          value: nameOf(device.id, device.label === undefined ? label : undefined),
        }),
      ),
    )
  }
  return (
    <section className="card" aria-label={labelOf(device.id)}>
      <h2>{labelOf(device.id)}</h2>
      <WhichDevice
        question={web['survey.device-which']}
        chosen={device.device}
        choose={choose}
        may={each => device.fedBy !== undefined || standsBehind(each)}
      />
      <DeviceEnds device={device.id} />
      <AboutDevice id={device.id} />
      <button
        type="button"
        disabled={!survey.canWrite}
        onClick={() => survey.act(...takeOutOf(run, device.id, nameOf))}
      >
        {web['survey.withdraw']}
      </button>
    </section>
  )
}

/** A device, and the cable from it to the box. */
function draftRun(device: string, label: string): readonly Act[] {
  const [first, run] = ['protection', freeId('run', ['protection'])]
  return [
    ...addActs(['supply', 'devices', first], { device }),
    ...addActs(['supply', 'cables', run], { label, from: first, to: 'box' }),
  ]
}
