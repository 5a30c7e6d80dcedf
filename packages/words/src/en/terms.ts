import type { Severity, Verdict } from '@tubwright/core'

export const SEVERITY_EN: Readonly<Record<Severity, string>> = {
  danger: 'DANGER',
  warning: 'WARNING',
  caution: 'CAUTION',
  notice: 'NOTICE',
}

export const VERDICT_EN: Readonly<Record<Verdict, string>> = {
  holds: 'it holds',
  breaks: 'it breaks',
  provided: 'it holds provided',
  'not-shown': 'not shown',
  'experts-differ': 'experts differ',
}

export const DIAGNOSTIC_EN = {
  'not-readable': 'cannot be read: {is}. It may be: {may}.',
  'too-large': 'is too large: {is}. It may have {may}.',
  'yaml-syntax': 'is no YAML here: {is}. It wants {may}.',
  'too-many-aliases': 'repeats itself too often: {is}. It may have {may}.',
  'unknown-key': 'unknown key {is}. It may be: {may}.',
  'missing-key': '{path} is {is}. It wants {may}.',
  'wrong-type': '{path} is {is}. It wants {may}.',
  'wrong-value': '{path} is {is}. It may be: {may}.',
  'wrong-quantity': '{path} is {is}. It may be {may}.',
  'unknown-name': '{path} is {is}. It may be {may}.',
  'duplicate-name': '{path} is {is}. It wants {may}.',
  contradiction: '{path} is {is}. It may be: {may}.',
  'other-job': 'this landing is for {is}; here are {may}. Give the landing of these, or its own.',
  implausible: '{path} is {is}, which is hardly ever so; usual is {may}. Look again.',
} as const

/** What stands round a diagnostic: before what does not block, after what has a near name. */
export const DIAGNOSED_EN = {
  warning: 'warning: {told}',
  'did-you-mean': 'Did you mean "{near}"?',
  'whole-file': 'it',
} as const

/** How a sentence is marked that nobody qualified has read in its language. */
export const REVIEW_EN = {
  mark: 'translation not reviewed',
  notice:
    'Translation not yet reviewed by a qualified person; in case of doubt the English text holds.',
} as const
