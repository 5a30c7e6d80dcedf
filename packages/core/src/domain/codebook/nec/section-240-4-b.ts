import type { Printed } from '../printed.ts'
import { nextStandard, SECTION_240_6 } from './section-240-6.ts'

/** The rating up to which the next standard one above an ampacity is permitted. */
export const SECTION_240_4_B: Printed & { readonly unit: string; readonly upTo: number } = {
  standard: 'NEC',
  edition: '2023',
  clause: '240.4(B) and (C)',
  read: 'page',
  unit: 'A',
  upTo: 800,
}

/**
 * The greatest breaker before a conductor: the next standard rating, above 800 A the one below.
 *
 * Not for a circuit of several outlets for plugs, and never over 240.4(D).
 *
 * A conductor that carries 10 A or less, after every correction, may stand behind a fuse of 10 A only.
 *
 * @param amps - what the conductor carries, after every correction [A]
 * @returns [A]
 * @source [NEC-240.4-B] 240.4(B) and (C) with 240.6(A)
 */
export function greatestBreaker(amps: number): number | undefined {
  if (amps <= 0) return 0
  const greatestFuse = Math.max(...SECTION_240_6.fusesOnly)
  if (amps <= greatestFuse) return greatestFuse
  const next = nextStandard(amps)
  if (next !== undefined && next <= SECTION_240_4_B.upTo) return next
  return SECTION_240_6.ratings.findLast(rating => rating <= amps * (1 + 1e-9))
}
