import type * as z from 'zod'
import type { CodeFinding, Region, Survey } from '../../../../src/index.ts'
import { checkSupply, service, yard } from '../../../../src/index.ts'
import { demoDevices, demoTub } from '../../../support/demo.ts'
import { known, knownSi } from '../../../support/surveyed.ts'

/** A yard as a file has it. */
export type YardText = z.input<typeof yard>
export type ServiceText = z.input<typeof service>

const TUB_OF: Readonly<Record<Region, string>> = {
  US: 'everyday-240-plain',
  CA: 'everyday-240-plain',
  UK: 'garden-230',
  EU: 'garden-230',
  AU: 'garden-230',
  NZ: 'garden-230',
}

/** An ordinary tub of a region in this yard; without a text it has none. */
export function tubIn(region: Region, text?: YardText): Survey {
  const survey = { ...demoTub(TUB_OF[region]), region }
  return text ? { ...survey, yard: yard.parse(text) } : survey
}

/** A tub of so many amps by its plate, in a house. */
export const tubAt = (region: Region, text: ServiceText, amps = 48): Survey => ({
  ...tubIn(region),
  plate: { draws: knownSi('A', amps) },
  service: service.parse(text),
})

export const report = (survey: Survey) => checkSupply(survey, demoDevices)

/** Findings of one rule. */
export const found = (survey: Survey, rule: string): readonly CodeFinding[] =>
  report(survey).findings.filter(each => each.rule === rule)

/** The one finding of a rule, of one of its questions where it has several. */
export function one(survey: Survey, rule: string, topic = ''): CodeFinding {
  const all = found(survey, rule).filter(each => each.topic === topic)
  if (all.length !== 1 || !all[0]) throw new Error(`${rule} ${topic}: ${all.length} findings`)
  return all[0]
}

export const verdictOf = (survey: Survey, rule: string, topic = ''): string =>
  one(survey, rule, topic).verdict

export const earthed = (survey: Survey, earthing: 'TN-S' | 'TN-C-S' | 'TT'): Survey => ({
  ...survey,
  supply: { ...survey.supply, earthing: known(earthing) },
})
