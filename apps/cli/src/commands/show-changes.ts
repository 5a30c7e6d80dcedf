import type { BoxChanges, BoxMatch, Change } from '@tubwright/core'
import { CHANGES_EN, TO_GET_EN, tellChanges, tellOutcome } from '@tubwright/words'
import type { Talk } from '../talk.ts'

/** Each change as one line, with what is to be got for it. */
export const changeLines = (changes: readonly Change[], talk: Talk): readonly string[] =>
  tellChanges(changes).map(
    ({ change, told }) => `${told} ${talk.dim(`[${TO_GET_EN[change.kind]}]`)}`,
  )

/** The changes with which a box would serve, or why none are named. */
function showOne(changes: BoxChanges, indent: string, talk: Talk): void {
  for (const line of tellOutcome(changes)) talk.data(`${indent}${line}`)
  if (changes.outcome !== 'found') return
  for (const line of changeLines(changes.changes, talk)) talk.data(`${indent}  - ${line}`)
  if (changes.along.length > 0) talk.data(`${indent}${CHANGES_EN.along}`)
  for (const line of changeLines(changes.along, talk)) talk.data(`${indent}  - ${line}`)
}

/** The same of a matched box, where changes were asked for. */
export function showChangesOf({ changes }: BoxMatch, talk: Talk): void {
  if (changes) showOne(changes, '           ', talk)
}

/** Boxes that have no plan with changes either. */
export function showUnchangeable(boxes: readonly BoxMatch[], talk: Talk): void {
  for (const { box, changes } of boxes) {
    if (!changes || (changes.outcome === 'found' && changes.proof === 'holds')) continue
    talk.data(`\n${talk.red('no changes')}  ${box}`)
    showOne(changes, '  ', talk)
  }
}
