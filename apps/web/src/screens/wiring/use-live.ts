import type { LiveState } from '@tubwright/core'
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react'
import { useApp } from '../../app/context.ts'
import type { OfLanding, Refusal, Verdict } from '../../ask/protocol.ts'
import type { Mode } from './modes.ts'
import { refusalOf } from './use-landing.ts'

interface Held<Value> {
  readonly key: string
  readonly of: OfLanding
  readonly value: Value
}

/**
 * Waits until the core has read the shelf, once: what is asked many times does not look again each
 * time. The drawing does, and asks anew of a shelf that has changed.
 */
function useReady(): () => Promise<unknown> {
  const { shelf } = useApp()
  const ready = useRef<Promise<unknown>>(undefined)
  return useCallback(() => {
    ready.current ??= shelf().catch((error: unknown) => {
      ready.current = undefined
      throw error
    })
    return ready.current
  }, [shelf])
}

/** One mode of the landing, solved; of a mode or landing that is asked for, the last one meanwhile. */
export function useLive(of: OfLanding | undefined, mode: Mode): LiveState | undefined {
  const { core } = useApp()
  const ready = useReady()
  const solved = useRef<{ of: OfLanding | undefined; states: Map<string, LiveState> }>({
    of: undefined,
    states: new Map(),
  })
  const [held, setHeld] = useState<Held<LiveState>>()
  const key = mode.join(' ')
  useEffect(() => {
    if (!of) return undefined
    if (solved.current.of !== of) solved.current = { of, states: new Map() }
    const { states } = solved.current
    const known = states.get(key)
    if (known) {
      setHeld({ key, of, value: known })
      return undefined
    }
    let isWanted = true
    void ready()
      .then(() => core.ask('live', { ...of, on: key === '' ? [] : key.split(' ') }))
      .then(value => {
        states.set(key, value)
        if (isWanted) setHeld({ key, of, value })
      })
      .catch(() => isWanted && setHeld(undefined))
    return () => {
      isWanted = false
    }
  }, [core, ready, of, key])
  return of ? held?.value : undefined
}

/** What would happen if the landing were powered, and how long it took to know [ms]. */
export interface VerdictView {
  readonly verdict: Verdict | undefined
  /** Whether it is of the landing as it is now: of no other may it be shown. */
  readonly isFresh: boolean
  readonly refusal: Refusal | undefined
  /** From the move of an end to its verdict on the screen. */
  readonly tookMs: number | undefined
}

export function useVerdict(
  of: OfLanding | undefined,
  movedAt: { current: number | undefined },
): VerdictView {
  const { core } = useApp()
  const ready = useReady()
  const [held, setHeld] = useState<{
    readonly of: OfLanding
    readonly verdict?: Verdict
    readonly refusal?: Refusal
  }>()
  const [tookMs, setTookMs] = useState<number>()
  useEffect(() => {
    if (!of) return undefined
    let isWanted = true
    void ready()
      .then(() => core.ask('verdict', of))
      .then(verdict => isWanted && setHeld({ of, verdict }))
      .catch(error => isWanted && setHeld({ of, refusal: refusalOf(error) }))
    return () => {
      isWanted = false
    }
  }, [core, ready, of])
  useLayoutEffect(() => {
    if (!held || movedAt.current === undefined) return
    setTookMs(performance.now() - movedAt.current)
    movedAt.current = undefined
  }, [held, movedAt])
  const isFresh = held !== undefined && held.of === of
  return { verdict: held?.verdict, isFresh, refusal: isFresh ? held.refusal : undefined, tookMs }
}
