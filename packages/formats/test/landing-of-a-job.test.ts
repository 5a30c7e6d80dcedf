import { jobOf } from '@tubwright/core'
import { readControlBox, readLanding, readSurvey } from '@tubwright/formats'
import { expect, it } from 'vitest'
import { BOXES, CATALOGUE, demo, TUBS } from './support/demo.ts'

const tub = readSurvey('t', demo(TUBS, 'everyday-240-circulation'), CATALOGUE).value
const box = readControlBox('b', demo(BOXES, 'heron-4')).value
if (!tub || !box) throw new Error('the demo cannot be read')
const job = jobOf(tub, box, CATALOGUE)

const complete = `schema: landing/1
survey: everyday-240-circulation
box: heron-4
ends:
${job.ends.map(end => `  ${end.id}: insulated`).join('\n')}
jumpers:
  J1: out
settings:
  profile: circulation-heats
  currentLimit: 40 A
`

const told = (from: string, to: string) =>
  readLanding('l', complete.replace(from, to), job).diagnostics.map(
    each => `${each.line}:${each.column} ${each.code} ${each.is} ${each.didYouMean ?? ''}`,
  )

it('takes a landing that speaks of every end', () => {
  expect(readLanding('l', complete, job).diagnostics).toEqual([])
})

it.each([
  ['run.leg1@gf: insulated', 'run.leg1@gf: gf.L9', '5:16 unknown-name "gf.L9" '],
  ['run.leg1@gf: insulated', 'run.leg1@gf: lose', '5:16 unknown-name "lose" loose'],
  ['  run.leg1@gf: insulated\n', '', '4:1 missing-key no word of "run.leg1@gf" '],
  ['J1: out', 'J1: ot', '39:7 unknown-name "ot" out'],
  ['J1: out', 'J9: out', '39:7 unknown-name "J9" '],
  ['profile: circulation-heats', 'profile: heats', '41:12 unknown-name "heats" '],
  [
    'box: heron-4',
    'box: plover-1',
    '3:6 other-job survey "everyday-240-circulation" on box "plover-1" ',
  ],
])('tells where %s became %s', (from, to, wanted) => {
  expect(told(from, to)).toEqual([wanted])
})

it('says of a landing of another tub that alone, and what it is judged with', () => {
  const other = complete
    .replace('survey: everyday-240-circulation', 'survey: garden-230')
    .replace('run.leg1@gf: insulated', 'strange.end: box.A99')
  const { value, diagnostics } = readLanding('l', other, job)
  expect(value).toBeUndefined()
  expect(diagnostics).toEqual([
    {
      code: 'other-job',
      path: ['survey'],
      is: 'survey "garden-230" on box "heron-4"',
      may: 'survey "everyday-240-circulation" and box "heron-4"',
      file: 'l',
      line: 2,
      column: 9,
    },
  ])
})
