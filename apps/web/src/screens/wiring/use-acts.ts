import type { Act } from '@tubwright/records'
import { useCallback, useMemo, useRef, useState } from 'react'
import { useJob, useJobView, useRole } from '../../app/context.ts'
import type { Done } from './acts.ts'
import { backTo, moveEnd, moveJumper, stillStands, tickEnd } from './acts.ts'
import type { Taken } from './use-landing.ts'

/** What a person does to the wires, and takes back. */
export interface WiringActs {
  readonly canWrite: boolean
  readonly move: (end: string, to: string) => void
  readonly setJumper: (jumper: string, to: string) => void
  readonly tick: (end: string, isTicked: boolean) => void
  /** What was done last, as long as it can be taken back. */
  readonly last: Done | undefined
  readonly undo: () => void
  /** When the last move began [ms of the page]; read by whoever measures the verdict. */
  readonly movedAt: { current: number | undefined }
}

const KEPT = 50 // steps that can be taken back

export function useWiringActs(taken: Taken | undefined): WiringActs {
  const job = useJob()
  const { state } = useJobView()
  const canWrite = useRole() === 'writes'
  const [done, setDone] = useState<readonly Done[]>([])
  const movedAt = useRef<number>(undefined)
  const act = useCallback(
    (kind: Done['kind'], what: string, acts: readonly Act[]): void => {
      if (!canWrite || acts.length === 0) return
      if (kind === 'moved') movedAt.current = performance.now()
      const step = { kind, what, acts, back: backTo(job.view.state, acts) }
      void job.append(...acts).catch(() => undefined)
      setDone(before => [...before.slice(1 - KEPT), step])
    },
    [job, canWrite],
  )
  const tick = useCallback(
    (end: string, isTicked: boolean): void =>
      taken &&
      act(isTicked ? 'ticked' : 'unticked', end, tickEnd(job.view.state, taken, end, isTicked)),
    [act, job, taken],
  )
  const last = done.at(-1)
  const standing = last && stillStands(state, last) ? last : undefined
  return useMemo(
    () => ({
      canWrite,
      move: (end, to) => taken && act('moved', end, moveEnd(job.view.state, taken, end, to)),
      setJumper: (jumper, to) =>
        taken && act('moved', jumper, moveJumper(job.view.state, taken, jumper, to)),
      tick,
      last: standing,
      undo: () => {
        if (!canWrite || !standing) return
        if (standing.kind === 'moved') movedAt.current = performance.now()
        void job.append(...standing.back).catch(() => undefined)
        setDone(before => before.slice(0, -1))
      },
      movedAt,
    }),
    [canWrite, taken, act, tick, job, standing],
  )
}
