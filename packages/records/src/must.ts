import type { Outcome } from './fault.ts'

/** The value of an outcome that cannot have failed unless a programmer erred; throws where it did. */
export function must<Value>(outcome: Outcome<Value>): Value {
  if (outcome.ok) return outcome.value
  const { path, is, may } = outcome.failure
  throw new Error(`invariant: ${path.join(' / ')} is ${is}, may be ${may}`)
}
