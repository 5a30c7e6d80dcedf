import type { FeedFunction } from '../../domain/board/board.ts'
import { LINES } from '../../domain/board/board.ts'
import type { System } from '../../domain/described.ts'
import { EMFS, WITHOUT_NEUTRAL } from '../../domain/wiring/figures.ts'

/** The sets of conductors that are met on a system, the usual one first. Common practice, no source. */
export function conductorSets(system: System): readonly (readonly FeedFunction[])[] {
  const lines = LINES.filter(each => EMFS[system][each])
  const [first = 'leg1'] = lines
  const withoutNeutral: readonly FeedFunction[] = [...lines, 'earth']
  if (WITHOUT_NEUTRAL.includes(system)) return [withoutNeutral]
  const whole: readonly FeedFunction[] = [...lines, 'neutral', 'earth']
  return lines.length === 1
    ? [whole]
    : [whole, withoutNeutral, ...(lines.length === 2 ? [[first, 'neutral', 'earth'] as const] : [])]
}

/** Whether a device is made for as many lines as a system has, by what arrives at it. */
export function suitsSystem(fedAt: readonly string[], system: System): boolean {
  const lines = LINES.filter(each => EMFS[system][each])
  const takes = LINES.filter(each => fedAt.includes(each))
  const needsNeutral = WITHOUT_NEUTRAL.includes(system) === fedAt.includes('neutral')
  return takes.length === lines.length && !(needsNeutral && lines.length === 1)
}
