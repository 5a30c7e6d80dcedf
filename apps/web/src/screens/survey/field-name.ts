import type { SurveyPath } from './use-survey.ts'

/** Lists and named entries: what stands in them has an id, and no field is named by it. */
const WITH_IDS = [
  'loads',
  'devices',
  'cables',
  'conductors',
  'leads',
  'circuits',
  'capacitors',
  'positions',
  'pins',
  'receptacles',
  'lights',
  'switches',
  'metal',
  'readings',
]

/** The name of a field in the files: items and named entries have none of their own. */
export function fieldName(path: SurveyPath): string {
  const keys = path.filter((_, index) => !WITH_IDS.includes(path[index - 1] ?? ''))
  const at = keys.at(-1) === 'amps' || path.at(-2) !== 'amps' ? keys : keys.slice(0, -1)
  return at[0] === 'loads' ? ['load', ...at.slice(1)].join('.') : ['survey', ...at].join('.')
}
