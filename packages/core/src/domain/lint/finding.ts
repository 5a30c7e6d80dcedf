import type { Diagnostic } from '../../base/diagnostic.ts'

type Path = Diagnostic['path']

/**
 * Everything that lint can say, with how grave it is and the parameters of its sentence.
 *
 * A warning is almost surely a slip of the pen; a notice may well be meant so.
 */
export const LINT_FINDINGS = {
  'spot-taken': { severity: 'warning', params: ['thing', 'other'] },
  'outside-board': { severity: 'warning', params: ['thing', 'x', 'y', 'width', 'height'] },
  'terminal-dead-end': { severity: 'warning', params: ['terminal', 'node'] },
  'terminal-below-contact': {
    severity: 'notice',
    params: ['terminal', 'rated', 'contact', 'carries'],
  },
  'terminal-unused': { severity: 'notice', params: ['terminal'] },
  'connector-misses-terminal': { severity: 'warning', params: ['connector', 'terminal', 'place'] },
  'connector-pin-elsewhere': {
    severity: 'warning',
    params: ['connector', 'pin', 'terminal', 'place'],
  },
  'supplied-plug-fits-no-socket': { severity: 'warning', params: ['load', 'plug', 'sockets'] },
  'place-socket-other-shape': {
    severity: 'warning',
    params: ['place', 'connector', 'shape', 'load', 'plug'],
  },
  'connector-unused': { severity: 'notice', params: ['connector'] },
  'fuse-in-no-path': { severity: 'warning', params: ['part', 'kind'] },
  'no-fuse-in-path': { severity: 'notice', params: ['place'] },
  'contact-never-closed': { severity: 'warning', params: ['contact'] },
  'contact-never-opened': { severity: 'warning', params: ['contact'] },
  'limit-contact-unsensed': { severity: 'notice', params: ['contact'] },
  'command-in-no-profile': { severity: 'warning', params: ['command'] },
  'command-of-no-output': { severity: 'notice', params: ['command'] },
  'output-never-on': { severity: 'warning', params: ['place', 'function'] },
  'output-dead-on-feed': { severity: 'notice', params: ['place', 'function', 'feed'] },
  'output-on-when-off': { severity: 'warning', params: ['place', 'function', 'command', 'on'] },
  'output-without-return': { severity: 'warning', params: ['place'] },
  'transformer-volts': { severity: 'warning', params: ['part', 'plate', 'volts', 'feed'] },
  'electronics-dead': { severity: 'warning', params: ['part', 'feed'] },
  'jumper-shorts-feed': { severity: 'warning', params: ['jumper', 'position', 'feed'] },
  'feed-shorted': { severity: 'warning', params: ['feed'] },
  'command-shorts-feed': { severity: 'warning', params: ['on', 'feed'] },
  'feed-never-chosen': { severity: 'warning', params: ['feed', 'other'] },
  'no-limit': { severity: 'warning', params: [] },
  'limit-not-in-series': { severity: 'warning', params: ['place'] },
  'limit-opens-nothing': { severity: 'warning', params: ['input'] },
  'sensor-in-no-place': { severity: 'warning', params: ['input'] },
  'profile-like-another': { severity: 'warning', params: ['profile', 'other'] },
  'profile-never-heats': { severity: 'warning', params: ['profile'] },
  'limit-like-another': { severity: 'notice', params: ['limit', 'other'] },
  'limit-changes-nothing': { severity: 'warning', params: [] },
  'yield-never-fires': { severity: 'warning', params: ['command', 'feed'] },
  'yield-shed-anyway': { severity: 'notice', params: ['command', 'feed'] },
  'exclusive-never-fires': { severity: 'warning', params: ['commands'] },
  'assumes-never-exceed': { severity: 'notice', params: ['feed', 'most', 'least'] },
  'too-many-commands': { severity: 'warning', params: ['profile', 'most'] },
  'not-all-tried': { severity: 'notice', params: ['feed', 'tried', 'of'] },
  'lead-in-no-circuit': { severity: 'warning', params: ['load', 'lead'] },
  'plug-misses-lead': { severity: 'warning', params: ['load', 'lead'] },
  'line-never-arrives': { severity: 'warning', params: ['function', 'terminal'] },
  'lines-joined': { severity: 'warning', params: ['function', 'other'] },
  'ground-fault-misses-line': { severity: 'warning', params: ['part', 'function'] },
  'device-in-no-cable': { severity: 'warning', params: ['device'] },
  'nothing-moves-water': { severity: 'notice', params: [] },
  'no-ground-fault-device': { severity: 'notice', params: [] },
  'still-unknown': { severity: 'notice', params: ['reason'] },
} as const satisfies Readonly<
  Record<string, { readonly severity: 'warning' | 'notice'; readonly params: readonly string[] }>
>

export type LintId = keyof typeof LINT_FINDINGS
type Params<Id extends LintId> = Readonly<
  Record<(typeof LINT_FINDINGS)[Id]['params'][number], string | number>
>

/** What looks wrong in a description that can be read: data, whose sentence the words package makes. */
export interface LintFinding {
  readonly id: LintId
  readonly severity: 'warning' | 'notice'
  /** Where in the file, from the top. */
  readonly path: Path
  readonly params: Readonly<Record<string, string | number>>
}

/** A finding with exactly the parameters of its sentence. */
export const finding = <Id extends LintId>(
  id: Id,
  path: Path,
  params: Params<Id>,
): LintFinding => ({ id, severity: LINT_FINDINGS[id].severity, path, params })
