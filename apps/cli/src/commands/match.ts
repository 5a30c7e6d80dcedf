import type { ControlBox, MatchSet, Survey } from '@tubwright/core'
import { matchEquipment, matchWithChanges } from '@tubwright/core'
import { wireMatch } from '@tubwright/formats'
import { tellMatch } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { boxesToChoose, findSurvey } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import { showChangesOf } from './show-changes.ts'

export interface MatchOptions {
  readonly json?: boolean
  readonly changes?: boolean
}

function show(survey: Survey, match: MatchSet, talk: Talk): void {
  talk.data(talk.bold(survey.title))
  for (const box of match.boxes) {
    const may = box.verdict === 'may-serve'
    const mark = may ? talk.green('may serve') : talk.red('cannot   ')
    talk.data(`\n${mark}  ${box.label}, ${box.maker} (${box.box})`)
    for (const shortfall of box.shortfalls) talk.data(`           ${tellMatch(shortfall)}`)
    for (const question of box.open) talk.data(`           Open: ${tellMatch(question)}`)
    if (box.adapters.length > 0) talk.data(`           Adapter for: ${box.adapters.join(', ')}`)
    showChangesOf(box, talk)
  }
  if (match.conflict.length > 0) {
    talk.data(`\n${talk.bold('No box may serve. These cannot be had together:')}`)
    for (const each of match.conflict) talk.data(`  - ${tellMatch(each)}`)
  }
}

/** Which boxes may serve, every reason why the others cannot, and on demand what would help. */
export function runMatch(
  shelf: Shelf,
  name: string,
  { json, changes }: MatchOptions,
  talk: Talk,
): number {
  const survey = findSurvey(shelf, name)
  const boxes = boxesToChoose(shelf)
  const report = (each: ControlBox): void => talk.note(`changes for ${each.label} …`)
  const match = changes
    ? matchWithChanges(survey, boxes, shelf.devices, {}, report)
    : matchEquipment(survey, boxes)
  if (json) showWire(wireMatch(match), shelf, talk)
  else show(survey, match, talk)
  return match.boxes.some(each => each.verdict === 'may-serve') ? EXIT.fine : EXIT.found
}
