import type { System } from '@tubwright/core'
import { freeId, SYSTEMS, suitsSystem } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import { Conductors } from './conductors.tsx'
import { DeviceRatings } from './device-ratings.tsx'
import { addActs, TakeOut, useFreeId } from './items.tsx'
import { More } from './more.tsx'
import { useFirstDevice, useRun, useRunDevices } from './run.ts'
import type { SurveyPath } from './use-survey.ts'
import { useSurvey } from './use-survey.ts'

export function useDevices(): readonly DeviceChoice[] {
  const { shelf } = useApp()
  const [devices, setDevices] = useState<readonly DeviceChoice[]>([])
  useEffect(() => void shelf().then(found => setDevices(found.devices)), [shelf])
  return devices
}

/** What stands between panel and tub, and where each wire sits on it. */
export function ProtectionGroup(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const first = useFirstDevice()
  const others = useRunDevices().slice(1)
  const run = useRun()
  const known = useDevices()
  const device = known.find(each => each.id === first?.device)
  const choose = (id: string): void => {
    if (first) survey.set(['supply', 'devices', first.id, 'device'], id)
    else survey.act(...draftRun(id, web['survey.run-label']))
  }
  return (
    <>
      <WhichDevice question={web['survey.device']} chosen={first?.device} choose={choose} />
      {first && run && (
        <Conductors piece={run} device={device} question={web['survey.conductors']} />
      )}
      {first && <AboutDevice id={first.id} />}
      {others.map(each => (
        <OtherDevice key={each.id} id={each.id} device={each.device} />
      ))}
      {first && <AddDevice />}
    </>
  )
}

/** One of the devices on the shelf: those for this source as chips, the others beside. */
function WhichDevice({
  question,
  chosen,
  choose,
}: {
  readonly question: string
  readonly chosen: string | undefined
  readonly choose: (device: string) => void
}): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const devices = useDevices()
  const system = survey.value(['supply', 'system'])
  const suits = ({ fedAt }: DeviceChoice) =>
    !SYSTEMS.includes(system as System) || suitsSystem(fedAt, system as System)
  const others = devices.filter(each => !suits(each))
  const chips = (legend: string, all: readonly DeviceChoice[]) => (
    <Chips
      legend={legend}
      options={all.map(({ id, label }) => ({ value: id, label }))}
      chosen={chosen}
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

/** What a person calls a device of the run: by its own label, or by that of its kind. */
export function useDeviceLabel(): (id: string) => string {
  const known = useDevices()
  const devices = useRunDevices()
  return id => {
    const found = devices.find(each => each.id === id)
    if (typeof found?.label === 'string') return found.label
    return known.find(each => each.id === found?.device)?.label ?? id
  }
}

/** What is printed on a device, and whatever else the files can say of it. */
function AboutDevice({ id }: { readonly id: string }): ReactNode {
  const base = ['supply', 'devices', id]
  const labelOf = useDeviceLabel()
  const asked: readonly SurveyPath[] = ['device', 'terminals', 'enclosure', 'heatMark'].map(
    each => [...base, each],
  )
  return (
    <>
      <DeviceRatings device={id} label={labelOf(id)} />
      <More below={[base]} asked={asked} />
    </>
  )
}

function OtherDevice({ id, device }: { readonly id: string; readonly device: unknown }): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const labelOf = useDeviceLabel()
  const path = ['supply', 'devices', id]
  return (
    <section className="card" aria-label={labelOf(id)}>
      <h2>{labelOf(id)}</h2>
      <WhichDevice
        question={web['survey.device-which']}
        chosen={typeof device === 'string' ? device : undefined}
        choose={chosen => survey.set([...path, 'device'], chosen)}
      />
      <AboutDevice id={id} />
      <TakeOut path={path} />
    </section>
  )
}

function AddDevice(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const freeName = useFreeId()
  const list = ['supply', 'devices']
  return (
    <p>
      <button
        type="button"
        className="plain"
        disabled={!survey.canWrite}
        onClick={() => survey.act(...addActs([...list, freeName(list, 'device')]))}
      >
        {web['survey.device-add']}
      </button>
    </p>
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
