/** What is wrong with something from outside, and where: data, never a sentence. */
export interface Fault {
  /** From the top of what was read. */
  readonly path: readonly (string | number)[]
  readonly is: string
  readonly may: string
}

export type Outcome<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly failure: Fault }

export const ok = <Value>(value: Value): Outcome<Value> => ({ ok: true, value })

export const fail = (failure: Fault): Outcome<never> => ({ ok: false, failure })

/** The same fault, seen from further out. */
export const within = (at: readonly (string | number)[], fault: Fault): Fault => ({
  ...fault,
  path: [...at, ...fault.path],
})

const SHOWN_MAX = 80 // characters of a foreign text that a fault repeats

/** A short text of whatever was found; never runs foreign code, never grows long. */
export function told(value: unknown): string {
  if (value === undefined) return 'nothing'
  if (Array.isArray(value)) return `a list of ${value.length}`
  if (typeof value === 'object' && value !== null) return 'an object'
  if (typeof value === 'string') return JSON.stringify(cut(value))
  if (typeof value === 'number' || typeof value === 'boolean' || value === null) return `${value}`
  return `a ${typeof value}`
}

const cut = (text: string): string =>
  text.length > SHOWN_MAX ? `${text.slice(0, SHOWN_MAX)}…` : text
