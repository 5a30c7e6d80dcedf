import type { System } from '@tubwright/core'
import { freeId, SYSTEMS, suitsSystem } from '@tubwright/core'
import type { Act } from '@tubwright/records'
import type { ReactNode } from 'react'
import { useEffect, useState } from 'react'
import { useApp, useWeb } from '../../app/context.ts'
import type { DeviceChoice } from '../../ask/protocol.ts'
import { Chips } from '../../parts/chips.tsx'
import { Items } from './items.tsx'
import { More } from './more.tsx'
import { setsOf } from './supply-group.tsx'
import { inRecord, useSurvey } from './use-survey.ts'

export function useDevices(): readonly DeviceChoice[] {
  const { shelf } = useApp()
  const [devices, setDevices] = useState<readonly DeviceChoice[]>([])
  useEffect(() => void shelf().then(found => setDevices(found.devices)), [shelf])
  return devices
}

/** The first device of the run, as the survey has it. */
export function useFirstDevice(): { readonly id: string; readonly device: string } | undefined {
  const { value } = useSurvey()
  const [first] = (value(['supply', 'devices']) ?? []) as readonly {
    readonly id: string
    readonly device?: unknown
  }[]
  return first ? { id: first.id, device: String(first.device ?? '') } : undefined
}

/** What stands between panel and tub, and where each wire sits on it. */
export function ProtectionGroup(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const devices = useDevices()
  const first = useFirstDevice()
  const system = survey.value(['supply', 'system'])
  const suits = ({ fedAt }: DeviceChoice) =>
    !SYSTEMS.includes(system as System) || suitsSystem(fedAt, system as System)
  const choose = (device: string): void => {
    if (first) survey.set(['supply', 'devices', first.id, 'device'], device)
    else survey.act(...draftRun(device, web['survey.run-label']))
  }
  const options = (all: readonly DeviceChoice[]) =>
    all.map(({ id, label }) => ({ value: id, label }))
  const others = devices.filter(each => !suits(each))
  return (
    <>
      <Chips
        legend={web['survey.device']}
        options={options(devices.filter(suits))}
        chosen={first?.device}
        choose={choose}
        isDisabled={!survey.canWrite}
      />
      {others.length > 0 && (
        <details>
          <summary>{web['survey.other-devices']}</summary>
          <Chips
            legend={web['survey.other-devices']}
            options={options(others)}
            chosen={first?.device}
            choose={choose}
            isDisabled={!survey.canWrite}
          />
        </details>
      )}
      {first && <Conductors />}
      {first && (
        <More
          below={[['supply', 'devices', first.id]]}
          asked={[['supply', 'devices', first.id, 'device']]}
        />
      )}
      <Items list={['supply', 'devices']} from={1} />
    </>
  )
}

/** A device, and the cable from it to the box. */
function draftRun(device: string, label: string): readonly Act[] {
  const [first, run] = ['protection', freeId('run', ['protection'])]
  const at = (...path: readonly string[]) => inRecord(['supply', ...path])
  return [
    { do: 'add', path: at('devices', first) },
    { do: 'set', path: at('devices', first, 'device'), value: device },
    { do: 'add', path: at('cables', run) },
    { do: 'set', path: at('cables', run, 'label'), value: label },
    { do: 'set', path: at('cables', run, 'from'), value: first },
    { do: 'set', path: at('cables', run, 'to'), value: 'box' },
  ]
}

interface Conductor {
  readonly id: string
  readonly function?: unknown
  readonly from?: unknown
}

/** The cable that leads to the box, and its conductors. */
export function useRun():
  | { readonly id: string; readonly conductors: readonly Conductor[] }
  | undefined {
  const { value } = useSurvey()
  const cables = (value(['supply', 'cables']) ?? []) as readonly {
    readonly id: string
    readonly to?: unknown
    readonly conductors?: readonly Conductor[]
  }[]
  const run = cables.find(each => each.to === 'box') ?? cables[0]
  return run && { id: run.id, conductors: run.conductors ?? [] }
}

/** Which wires arrive, and whether each sits where the device marks it. */
function Conductors(): ReactNode {
  const web = useWeb()
  const survey = useSurvey()
  const run = useRun()
  const first = useFirstDevice()
  const device = useDevices().find(each => each.id === first?.device)
  const [saysEach, setSaysEach] = useState(false)
  if (!run) return undefined
  const nameOf = (each: string): string => web[`survey.wire-${each}` as keyof typeof web] ?? each
  const has = run.conductors.map(each => String(each.function ?? each.id))
  const sets = setsOf(survey.value(['supply', 'system']))
  const at = (...path: readonly string[]) =>
    inRecord(['supply', 'cables', run.id, 'conductors', ...path])
  const take = (set: readonly string[]): void => {
    const gone = run.conductors.filter(each => !set.includes(String(each.function)))
    const come = set.filter(each => !has.includes(each))
    survey.act(
      ...gone.map((each): Act => ({ do: 'withdraw', path: at(each.id) })),
      ...come.flatMap((each): readonly Act[] => [
        survey.bring(['supply', 'cables', run.id, 'conductors', each]),
        { do: 'set', path: at(each, 'function'), value: each },
      ]),
    )
  }
  const lands = device?.lands ?? {}
  const isAsMarked =
    run.conductors.length > 0 &&
    run.conductors.every(
      each => each.from !== undefined && each.from === lands[String(each.function)],
    )
  const asMarked = (): void => {
    setSaysEach(false)
    survey.act(
      ...run.conductors.flatMap((each): readonly Act[] => {
        const terminal = lands[String(each.function)]
        return terminal === undefined
          ? []
          : [{ do: 'set', path: at(each.id, 'from'), value: terminal }]
      }),
    )
  }
  /** What was said of all of them is taken back: each is open until it is said. */
  const sayEach = (): void => {
    setSaysEach(true)
    survey.act(
      ...run.conductors
        .filter(each => each.from !== undefined)
        .map((each): Act => ({ do: 'clear', path: at(each.id, 'from') })),
    )
  }
  const landed = run.conductors
    .map(each => `${nameOf(String(each.function))} ${lands[String(each.function)] ?? '–'}`)
    .join(', ')
  return (
    <>
      <Chips
        legend={web['survey.conductors']}
        options={sets.map(set => ({ value: set.join(), label: set.map(nameOf).join(' · ') }))}
        chosen={sets
          .find(set => set.length === has.length && set.every(each => has.includes(each)))
          ?.join()}
        choose={chosen => take(chosen.split(','))}
        isDisabled={!survey.canWrite}
      />
      {run.conductors.length > 0 && device && (
        <Chips
          legend={web['survey.as-marked']}
          options={[
            { value: 'yes', label: web['survey.as-marked-yes'].replace('{landed}', landed) },
            { value: 'no', label: web['survey.as-marked-no'] },
          ]}
          chosen={isAsMarked && !saysEach ? 'yes' : saysEach ? 'no' : undefined}
          choose={chosen => (chosen === 'yes' ? asMarked() : sayEach())}
          isDisabled={!survey.canWrite}
        />
      )}
      {device &&
        (saysEach || (!isAsMarked && run.conductors.some(each => each.from !== undefined))) &&
        run.conductors.map(each => (
          <Chips
            key={each.id}
            legend={web['survey.lands-at'].replace('{wire}', nameOf(String(each.function)))}
            options={device.terminals.map(({ id, label }) => ({
              value: id,
              label: `${id} · ${label}`,
            }))}
            chosen={each.from === undefined ? undefined : String(each.from)}
            choose={terminal =>
              survey.set(['supply', 'cables', run.id, 'conductors', each.id, 'from'], terminal)
            }
            isDisabled={!survey.canWrite}
          />
        ))}
    </>
  )
}
