import type { CannotMessage } from '@tubwright/core'

/** Why no landing of a box can so much as be tried, by message. */
export const CANNOT_EN = {
  'not-for-system': 'none of its feeds takes the system of this supply.',
  'conductor-missing': 'its feed needs a conductor that does not reach the tub.',
  'no-setting-low-enough': 'its lowest current limit is above 80 % of the breaker.',
  'too-few-places':
    'not every load gets a place of its own that takes it: none is left for {loads}.',
  'volts-not-together':
    'no position of its jumpers gives every load the volts of its plate together with the others.',
} as const satisfies Readonly<Record<CannotMessage, string>>

/** How an open question that holds up every plan is settled, by its message. */
export const SETTLED_BY_EN: Readonly<Record<string, string>> = {
  'ask-breaker':
    'Write it in the survey, as in "breaker: 50 A" under "supply"; a range or one of several will do.',
}
