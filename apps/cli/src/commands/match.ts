import type { MatchSet, Survey } from '@tubwright/core'
import { matchEquipment } from '@tubwright/core'
import { wireMatch } from '@tubwright/formats'
import { tellMatch } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { boxesToChoose, findSurvey } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'

function show(survey: Survey, match: MatchSet, talk: Talk): void {
  talk.data(talk.bold(survey.title))
  for (const box of match.boxes) {
    const may = box.verdict === 'may-serve'
    const mark = may ? talk.green('may serve') : talk.red('cannot   ')
    talk.data(`\n${mark}  ${box.label}, ${box.maker} (${box.box})`)
    for (const shortfall of box.shortfalls) talk.data(`           ${tellMatch(shortfall)}`)
    for (const question of box.open) talk.data(`           Open: ${tellMatch(question)}`)
    if (box.adapters.length > 0) talk.data(`           Adapter for: ${box.adapters.join(', ')}`)
  }
  if (match.conflict.length > 0) {
    talk.data(`\n${talk.bold('No box may serve. These cannot be had together:')}`)
    for (const each of match.conflict) talk.data(`  - ${tellMatch(each)}`)
  }
}

/** Which boxes may serve, and every reason why the others cannot. */
export function runMatch(
  shelf: Shelf,
  name: string,
  { json }: { readonly json?: boolean },
  talk: Talk,
): number {
  const survey = findSurvey(shelf, name)
  const match = matchEquipment(survey, boxesToChoose(shelf))
  if (json) showWire(wireMatch(match), shelf, talk)
  else show(survey, match, talk)
  return match.boxes.some(each => each.verdict === 'may-serve') ? EXIT.fine : EXIT.found
}
