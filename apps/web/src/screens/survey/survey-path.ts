import type { SurveyPath } from './use-survey.ts'

export const isBelow = (path: SurveyPath, above: SurveyPath): boolean =>
  above.every((step, index) => path[index] === step)

/** A path of the survey as an address has it: no id has a dot. */
export const addressOf = (path: SurveyPath): string => path.join('.')
export const pathAt = (address: string): SurveyPath => address.split('.')
