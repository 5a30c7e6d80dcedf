import type { ControlBox, Survey } from '@tubwright/core'
import { matchEquipment, planAndProve } from '@tubwright/core'
import { readControlBox } from '@tubwright/formats'
import type { Shelf } from '../catalogue.ts'
import { demoFolder, findSurvey, jobFor, readShelf } from '../catalogue.ts'

const TRIED_MAX = 4 // plans: what is wanted is an example, not a search

/** What a tub lacks to be a good example for a box: adapters; undefined where the box cannot serve it. */
function adaptersFor(survey: Survey, box: ControlBox): number | undefined {
  const [match] = matchEquipment(survey, [box]).boxes
  return match?.verdict === 'may-serve' && match.open.length === 0
    ? match.adapters.length
    : undefined
}

function isPlanned(shelf: Shelf, survey: Survey, box: ControlBox): boolean {
  const planned = planAndProve(jobFor(shelf, survey, box))
  return planned.ok && planned.value.verification.findings.every(each => each.severity === 'notice')
}

/**
 * A tub of the demo that a described box serves: one with the fewest adapters whose plan is proven.
 *
 * @returns its id, or undefined where none was found
 */
export function tubFor(file: string, text: string): string | undefined {
  const box = readControlBox(file, text).value
  if (!box) return undefined
  const shelf = readShelf(demoFolder(), { warnings: [], take: () => undefined })
  return shelf.tubs
    .flatMap(id => {
      const survey = findSurvey(shelf, id)
      const adapters = adaptersFor(survey, box)
      return adapters === undefined ? [] : [{ id, survey, adapters }]
    })
    .sort((a, b) => a.adapters - b.adapters)
    .slice(0, TRIED_MAX)
    .find(each => isPlanned(shelf, each.survey, box))?.id
}
