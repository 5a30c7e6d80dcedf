/**
 * When a new version of the app takes the old one's place.
 *
 * Never while a field, a camera or a reading is open; at once when one waits at a cold start, before
 * anything can be typed; else when the page is hidden and nothing is open.
 */
export interface UpdateState {
  /** False until the app can be used: nothing is lost by another start. */
  readonly started: boolean
  readonly hidden: boolean
  /** How many screens ask for no change now. */
  readonly holds: number
  /** A complete new version stands by. */
  readonly waiting: boolean
  /** It was told to take over, and has not yet. */
  readonly asked: boolean
  /** Another version than this page's answers its requests now. */
  readonly replaced: boolean
  readonly reloading: boolean
  /** This version was left once already and came back: another reload would be a loop. */
  readonly spent: boolean
}

export type UpdateEvent =
  | 'waiting'
  | 'started'
  | 'hidden'
  | 'shown'
  | 'held'
  | 'released'
  | 'replaced'
  /** Another page of the app is in use. */
  | 'declined'

export type UpdateAct = 'take-over' | 'reload'

export interface UpdateStep {
  readonly state: UpdateState
  readonly act?: UpdateAct
}

export interface UpdateStart {
  readonly hidden: boolean
  readonly spent: boolean
}

export const startOfUpdates = ({ hidden, spent }: UpdateStart): UpdateState => ({
  started: false,
  hidden,
  holds: 0,
  waiting: false,
  asked: false,
  replaced: false,
  reloading: false,
  spent,
})

const CHANGES: Readonly<Record<UpdateEvent, (state: UpdateState) => Partial<UpdateState>>> = {
  waiting: () => ({ waiting: true }),
  started: () => ({ started: true }),
  hidden: () => ({ hidden: true }),
  shown: () => ({ hidden: false }),
  held: ({ holds }) => ({ holds: holds + 1 }),
  released: ({ holds }) => ({ holds: Math.max(0, holds - 1) }),
  replaced: () => ({ replaced: true, waiting: false, asked: false }),
  declined: () => ({ asked: false }),
}

/** Nobody would notice that the page starts again. */
const isIdle = ({ started, hidden, holds }: UpdateState): boolean =>
  holds === 0 && (!started || hidden)

/** One event at a time: what is the case after it, and what is to be done, if anything. */
export function stepUpdate(before: UpdateState, event: UpdateEvent): UpdateStep {
  const state = { ...before, ...CHANGES[event](before) }
  // Who was declined asks again when something else happens, not at once and forever.
  if (event === 'declined') return { state }
  if (state.reloading || state.spent || !isIdle(state)) return { state }
  if (state.replaced) return { state: { ...state, reloading: true }, act: 'reload' }
  if (state.waiting && !state.asked) return { state: { ...state, asked: true }, act: 'take-over' }
  return { state }
}
