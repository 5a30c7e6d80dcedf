/** No, too near to tell, yes. */
export type Level = 0 | 1 | 2

/** A figure within this share of its limit is too near to tell. */
const NEAR = 0.005

/** Whether a figure lies above a limit (or reaches it: the band is wider than the difference). */
export function above(figure: number, limit: number): Level {
  if (figure > limit * (1 + NEAR)) return 2
  return figure < limit * (1 - NEAR) ? 0 : 1
}

export const below = (figure: number, limit: number): Level => not(above(figure, limit))
export const not = (level: Level): Level => (2 - level) as Level
export const both = (...levels: readonly Level[]): Level => Math.min(...levels) as Level
export const either = (...levels: readonly Level[]): Level => Math.max(0, ...levels) as Level

/** What was found: hazards, and figures too near their limits; one each per kind and subject. */
export interface Findings {
  readonly hazards: Map<string, string>
  readonly near: Map<string, string>
  readonly most: number
}

export const newFindings = (most: number): Findings => ({
  hazards: new Map(),
  near: new Map(),
  most,
})

export const isFull = (findings: Findings): boolean => findings.hazards.size >= findings.most

/** Notes one figure by its level; the text is made only when it is kept. */
export function note(
  findings: Findings,
  at: { readonly kind: string; readonly subject: string; readonly level: Level },
  text: () => string,
): void {
  if (at.level === 0) return
  const key = `${at.kind} ${at.subject}`
  const into = at.level === 2 ? findings.hazards : findings.near
  if (into.has(key) || (at.level === 2 && isFull(findings))) return
  into.set(key, `${at.kind}: ${at.subject} ${text()}`)
}
