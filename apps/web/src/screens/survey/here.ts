import { useSurvey } from './use-survey.ts'

/** Whether the tub stands where sizes are in inches and conductors have gauges; so it is taken before it is said. */
export function useIsAmerican(): boolean {
  const { region = 'US' } = useSurvey()
  return region === 'US' || region === 'CA'
}
