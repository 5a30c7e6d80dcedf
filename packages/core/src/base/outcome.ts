/** An expected result or an expected failure, told apart by `ok`. Failures are unions on `reason`. */
export type Outcome<Value, Failure> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: Failure }

export const ok = <Value>(value: Value): Outcome<Value, never> => ({ ok: true, value })

export const fail = <Failure>(failure: Failure): Outcome<never, Failure> => ({
  ok: false,
  failure,
})
