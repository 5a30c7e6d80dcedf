/**
 * Stops at a programmer's error: something that no input can cause.
 *
 * Bad input is never reported this way; it becomes a diagnostic, a failure or a finding.
 */
export function invariant(condition: boolean, message: string): asserts condition {
  if (!condition) throw new Error(`invariant: ${message}`)
}

/** The compiler proves that every member of a union was handled; this throws if it was wrong. */
export function unreachable(value: never): never {
  throw new Error(`invariant: unhandled ${JSON.stringify(value)}`)
}
