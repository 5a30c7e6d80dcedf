import type { BoxChanges, Change, LoadKind, LoadSpec } from '@tubwright/core'

/** What becomes otherwise at the tub, by the kind of change and what is known of it. */
export const CHANGE_EN = {
  replace: '{load}: {another} of {to}, for the one of {from}.',
  'replace-earthed': '{load}: {another} with an earth lead, for the one without.',
  'replace-earthed-too': '{load}: {another} of {to}, with an earth lead, for the one of {from}.',
  'from-carton': '{load}: “{to}” out of the carton in its place.',
  'new-keypad':
    '{load}: new keypad, “{to}” out of the carton; that of another maker is never used again.',
  'new-keypad-and-plate':
    '{load}: new keypad and blanking plate; “{to}” out of the carton, for that of another maker is never used again.',
  'leave-out': 'Leave {load} out: it stays without supply, its leads capped.',
  adapter: '{load}: an adapter; its plug ({plug}) goes into no socket that could take it.',
  'adapter-bare': '{load}: a plug for its bare leads.',
  'blanking-plate':
    'Keypad: a blanking plate; the hole is {width:mm} × {height:mm}, the new keypad covers {ownWidth:mm} × {ownHeight:mm}.',
} as const satisfies Readonly<Record<Change['kind'], string> & Readonly<Record<string, string>>>
export type ChangeMessage = keyof typeof CHANGE_EN

/** One point of what a load is chosen by. */
export const SPEC_EN = {
  volts: '{value:V}',
  amps: 'at most {value:A}',
  current: '{value}',
  curve: 'curve {value}',
  // Of the load found: what it draws is no limit.
  'found-amps': '{value:A}',
} as const satisfies Readonly<Record<Exclude<keyof LoadSpec, 'earthed'> | 'found-amps', string>>

export const CURRENT_EN = { ac: 'alternating current', dc: 'direct current' } as const

/** Another load of the kind. */
export const ANOTHER_EN = {
  pump: 'a pump',
  'circulation-pump': 'a circulation pump',
  heater: 'a heater',
  ozonator: 'an ozonator',
  blower: 'a blower',
  light: 'a light',
  audio: 'an amplifier',
  sanitiser: 'a sanitiser',
  keypad: 'a keypad',
  probe: 'a probe',
} as const satisfies Readonly<Record<LoadKind, string>>

/** Which change of the supply would help, by the message of the shortfall. */
export const SUPPLY_EN = {
  'not-for-region': 'a place whose mark it carries ({offers})',
  'not-for-frequency': 'a supply of {offers}',
  'not-for-system': 'a {offers} supply',
  'conductor-missing': 'a run that brings {missing} too',
  'high-leg': 'two legs that stand at 120 V each',
  'conductor-too-small': 'a thicker {conductor} of {cable}, or a smaller breaker',
  'terminal-does-not-hold': 'a {conductor} of {from} to {to}',
  'breaker-too-large': 'a breaker of {largest:A} at most, with a run that suits it',
  'no-setting-low-enough': 'a larger breaker, with a run that suits it',
} as const satisfies Readonly<Record<string, string>>
export type SupplyMessage = keyof typeof SUPPLY_EN

/** Where a search stopped. */
export const STOPPED_EN = {
  sets: 'Stopped after {limit} sets of changes: that proves nothing.',
  plans: 'Stopped after planning {limit} sets of changes: that proves nothing.',
  solves: 'Stopped after {limit} landings of the cheapest set: that proves nothing.',
} as const satisfies Readonly<
  Record<Extract<BoxChanges, { outcome: 'limit-reached' }>['of'], string>
>

/** What changes would do for a box, or why none are named. */
export const CHANGES_EN = {
  holds: 'Cheapest changes with which a plan holds, cost {cost} (relative):',
  waits: 'Cheapest changes, cost {cost} (relative); whether a plan holds waits for an answer:',
  'not-tried':
    'Cheapest changes by its requirements, cost {cost} (relative); nothing is planned yet:',
  along: 'With them:',
  'only-supply': 'Only a change of the supply would help: {which}.',
  'not-supply-alone': 'A change of the supply would not be enough: {which}.',
  'nothing-helps': 'No change at the loads would help: {which}',
  unmended: 'No change would help: {which}',
  none: 'No changes would help: each set of them was tried ({considered}).',
  'no-plan':
    'By its requirements it would serve with changes ({tried} tried), but none of them leads to a plan that holds.',
} as const satisfies Readonly<Record<string, string>>
export type ChangesMessage = keyof typeof CHANGES_EN

/** What is to be done about a change, as it stands behind it. */
export const TO_GET_EN = {
  replace: 'BUY',
  adapter: 'BUY OR MAKE',
  'blanking-plate': 'BUY OR MAKE',
  'from-carton': 'IN THE CARTON',
  'leave-out': 'NOTHING TO BUY',
} as const satisfies Readonly<Record<Change['kind'], string>>

/** Above the changes and parts of a plan that needs some. */
export const PLAN_CHANGES_EN = {
  heading: 'First change at the tub',
  'as-changed': 'The plan is of the tub as it is after these changes, not as it was found.',
} as const

/** What goes into a landing file of a changed tub. */
export const CHANGED_NOTE_EN = 'Only after these changes at the tub: {changes}'
