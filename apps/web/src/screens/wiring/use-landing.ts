import type { WireLanding } from '@tubwright/formats'
import type { JobState } from '@tubwright/records'
import { documentOf, fieldAt } from '@tubwright/records'
import { useEffect, useMemo, useState } from 'react'
import { useApp, useJobView } from '../../app/context.ts'
import { NoAnswer } from '../../ask/ask.ts'
import type { Document, OfLanding, Refusal, Wired } from '../../ask/protocol.ts'
import { useDocument } from '../survey/use-survey.ts'
import type { AsBuilt } from './as-built.ts'
import { isAsPlannedIn, laidOver } from './as-built.ts'

/** Where the plan that a person took stands in the record. */
export const TAKEN_PATH = ['plan', 'taken'] as const
/** Where an end really sits, set only where it is not as planned. */
export const endPath = (end: string): readonly string[] => ['asBuilt', 'ends', end]
/** Where a jumper really sits, set only where it is not as planned. */
export const jumperPath = (jumper: string): readonly string[] => ['asBuilt', 'jumpers', jumper]
/** Whether an end is landed and ticked. */
export const tickPath = (end: string): readonly string[] => ['ticks', `end:${end}`]

/** The plan that was taken, what was found of it since, and the landing that both make. */
export interface Taken {
  readonly box: string
  readonly planned: WireLanding
  readonly asBuilt: AsBuilt
  /** The plan with what is as built laid over it: what is judged, drawn and printed. */
  readonly landing: WireLanding
  readonly isAsPlanned: boolean
  /** Whether two people took different plans, and nobody has decided: then no verdict holds. */
  readonly isContested: boolean
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const textsIn = (value: unknown): Readonly<Record<string, string>> =>
  isObject(value)
    ? Object.fromEntries(
        Object.entries(value).flatMap(([id, at]) => (typeof at === 'string' ? [[id, at]] : [])),
      )
    : {}

/** Conflicts of two people are no text and so leave the plan's: `heldBack` then holds the verdict. */
function asBuiltIn(state: JobState): AsBuilt {
  const said = documentOf(state, ['asBuilt'])
  const { ends, jumpers } = isObject(said) ? said : {}
  return { ends: textsIn(ends), jumpers: textsIn(jumpers) }
}

const isLanding = (value: unknown): value is WireLanding =>
  isObject(value) && isObject(value['ends']) && isObject(value['jumpers'])

/** What a job says of the plan taken; undefined where none was. */
export function takenIn(state: JobState): Taken | undefined {
  const field = fieldAt(state, TAKEN_PATH)
  const value = field.kind === 'conflict' ? field.values.at(-1)?.value : lastOf(field)
  if (!isObject(value)) return undefined
  const { box, landing: planned } = value
  if (typeof box !== 'string' || !isLanding(planned)) return undefined
  const asBuilt = asBuiltIn(state)
  return {
    box,
    planned,
    asBuilt,
    landing: laidOver(planned, asBuilt),
    isAsPlanned: isAsPlannedIn(planned, asBuilt),
    isContested: field.kind === 'conflict',
  }
}

const lastOf = (field: ReturnType<typeof fieldAt>): unknown =>
  field.kind === 'set' ? field.value : undefined

/** The plan that was taken in the open job, and the landing as it is now. */
export function useTaken(): Taken | undefined {
  const { state } = useJobView()
  return useMemo(() => takenIn(state), [state])
}

/** What the core is asked of the landing looked at; undefined where no plan was taken. */
export function useOfLanding(): OfLanding | undefined {
  const document: Document = useDocument()
  const taken = useTaken()
  const made = useMemo(
    () => taken && { document, box: taken.box, landing: taken.landing },
    [document, taken],
  )
  return useSame(made)
}

/** The object as it was, while it says the same: a tick changes the record and no landing. */
function useSame<Value>(value: Value): Value {
  const key = useMemo(() => JSON.stringify(value), [value])
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says all of it
  return useMemo(() => value, [key])
}

/** The landing as the core lays it out, with what was last known while it is asked again. */
export interface WiredView {
  readonly wired: Wired | undefined
  /** What `wired` is of. */
  readonly of: OfLanding | undefined
  /** Whether the landing has changed since `wired`, so that its verdict is of another one. */
  readonly isOld: boolean
  /** Why the landing as it is now has no answer. */
  readonly refusal: Refusal | undefined
}

export const refusalOf = (error: unknown): Refusal =>
  error instanceof NoAnswer
    ? error.refusal
    : { reason: 'fault', detail: error instanceof Error ? error.message : String(error) }

interface Found {
  readonly of: OfLanding
  readonly wired: Wired
}

/** Asks for the landing as it is now, and keeps the last answer until the next one is there. */
export function useWired(): WiredView {
  const { core, shelf, language } = useApp()
  const of = useOfLanding()
  const planned = useSame(useTaken()?.planned)
  const asks = useMemo(
    () => of && { ...of, language, ...(planned ? { planned } : {}) },
    [of, planned, language],
  )
  const [found, setFound] = useState<Found>()
  const [refused, setRefused] = useState<{ readonly asks: unknown; readonly refusal: Refusal }>()
  const [answered, setAnswered] = useState<unknown>()
  useEffect(() => {
    if (!asks || !of) return undefined
    let isWanted = true
    void shelf()
      .then(() => core.ask('wired', asks))
      .then(wired => {
        if (!isWanted) return
        setFound({ of, wired })
        setAnswered(asks)
      })
      .catch(error => isWanted && setRefused({ asks, refusal: refusalOf(error) }))
    return () => {
      isWanted = false
    }
  }, [core, shelf, asks, of])
  return {
    wired: of ? found?.wired : undefined,
    of: found?.of,
    isOld: answered !== asks,
    refusal: refused?.asks === asks ? refused?.refusal : undefined,
  }
}
