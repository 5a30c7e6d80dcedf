import type { SheetStep } from './artifact.ts'
import { text } from './messages.ts'
import { conditionsOf } from './open-points.ts'
import type { Site } from './site.ts'

/** What takes the place of every later step where a landing is not shown to hold. */
export function mendStep({ open }: Site): SheetStep {
  const points = conditionsOf(open).map(each => `!${each.number}`)
  return {
    name: 'mend',
    title: text('step.mend'),
    caution: { severity: 'danger', text: text('caution.mend') },
    licensed: true,
    actions: [
      ...(points.length > 0 ? [text('mend.points', { points })] : []),
      text('mend.file'),
      text('mend.judge'),
    ],
    readings: [],
    outside: [],
  }
}
