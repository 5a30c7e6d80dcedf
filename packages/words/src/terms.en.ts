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

/** Before what does not block. */
export const WARNING_EN = 'warning: {told}'
export const DID_YOU_MEAN_EN = 'Did you mean "{near}"?'
