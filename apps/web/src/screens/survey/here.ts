import type { Region } from '@tubwright/core'
import { useSurvey } from './use-survey.ts'

/** The same of a region, where it is known already. */
export const isAmerican = (region: Region = 'US'): boolean => region === 'US' || region === 'CA'

/** Whether the tub stands where sizes are in inches and conductors have gauges; so it is taken before it is said. */
export function useIsAmerican(): boolean {
  return isAmerican(useSurvey().region)
}
