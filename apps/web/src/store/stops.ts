import type { Act, FieldView, JobState, Json } from '@tubwright/records'
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

/** Only a statement clears: whatever else stands there, a stop stands. */
function isCleared(value: Json | undefined): boolean {
  if (typeof value !== 'object' || value === null) return false
  const { state, found } = value as { readonly state?: unknown; readonly found?: unknown }
  return state === 'cleared' && typeof found === 'string' && found.length >= FOUND_LEAST
}

/** Whether a stop stands: also while somebody raised it whom the one who cleared it had not seen. */
export const stands = (field: FieldView): boolean => {
  if (field.kind === 'empty') return false
  return field.kind === 'conflict' || !isCleared(field.value)
}

/** Whether something stands where only stops may: then nobody can say which of them do. */
const isBroken = (state: JobState): boolean => fieldAt(state, ['stops']).kind !== 'empty'

export const standingStops = (state: JobState): readonly Stop[] =>
  STOPS.filter(stop => isBroken(state) || stands(fieldAt(state, stopPath(stop))))

/** The acts by which a stop is raised or cleared, whatever stands in their way. */
export const stopActs = (state: JobState, stop: Stop, value: Json): readonly Act[] => [
  ...(isBroken(state) ? [{ do: 'clear' as const, path: ['stops'] }] : []),
  { do: 'set', path: stopPath(stop), value },
]
