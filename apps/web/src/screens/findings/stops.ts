import type { FieldView, JobState, Json } from '@tubwright/records'
import { fieldAt } from '@tubwright/records'

/** What stops all work and cannot be waved away. */
export const STOPS = ['shock', 'burning', 'hot-water', 'bypass'] as const
export type Stop = (typeof STOPS)[number]

export const stopPath = (stop: Stop): readonly string[] => ['stops', stop]

/** What a stop says in the record: raised, or cleared by a statement of what was found. */
export const RAISED: Json = { state: 'stands' }
export const cleared = (found: string): Json => ({ state: 'cleared', found })

/** Fewer letters say nothing of what was found. */
export const FOUND_LEAST = 12

const isCleared = (value: Json | undefined): boolean =>
  typeof value === 'object' && value !== null && (value as { state?: unknown }).state === 'cleared'

/** Whether a stop stands: also while somebody raised it whom the one who cleared it had not seen. */
export const stands = (field: FieldView): boolean => {
  if (field.kind === 'empty') return false
  return field.kind === 'conflict' || !isCleared(field.value)
}

export const standingStops = (state: JobState): readonly Stop[] =>
  STOPS.filter(stop => stands(fieldAt(state, stopPath(stop))))
