import type { End, Job, ProvenPlan, WiringPlan } from '@tubwright/core'
import { COLOUR_LETTERS, changesLoads, findTerminal } from '@tubwright/core'
import { PLAN_CHANGES_EN, SHEET_EN } from '@tubwright/words'
import type { Talk } from '../talk.ts'
import { proofLine, showFindings } from './findings.ts'
import { changeLines } from './show-changes.ts'
import { showTogether } from './together.ts'

type Row = readonly string[]

/** Columns, each as wide as its widest cell. */
function table(rows: readonly Row[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map(row => row[column]?.length ?? 0)),
  )
  return rows.map(row => row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  '))
}

function notesOf({ landing, reidentify, moved }: WiringPlan, end: End): string {
  const at = landing.ends[end.id]
  const move = moved.find(each => each.end === end.id)
  return [
    ...(at === 'insulated' ? [SHEET_EN['note.insulated']] : []),
    ...(at === 'loose' ? [SHEET_EN['note.loose']] : []),
    ...(move ? [`MOVE IT from ${move.from.replace('.', ' ')}.`] : []),
    ...(reidentify.includes(end.id) ? [SHEET_EN['note.re-identify']] : []),
  ].join(' ')
}

function rowOf(job: Job, plan: WiringPlan, end: End): Row {
  const at = plan.landing.ends[end.id] ?? ''
  const terminal = findTerminal(job, at)
  return [
    `  ${end.id}`,
    SHEET_EN[`function.${end.function}`],
    COLOUR_LETTERS[end.colour],
    end.size.text.padStart(7),
    terminal ? at.replace('.', ' ') : '—',
    terminal?.label ?? '',
    notesOf(plan, end),
  ]
}

/** What an end belongs to, as a person calls it; for a load, with the place it goes to. */
function ownerOf(job: Job, plan: WiringPlan, end: End): string {
  if (end.of === 'cable')
    return job.tub.supply.cables.find(each => each.id === end.owner)?.label ?? end.owner
  if (end.of === 'tail') return job.devices.get(end.owner)?.label ?? end.owner
  const load = job.loads.find(each => each.id === end.owner)?.label ?? end.owner
  const placed = plan.assignments.find(each => each.load === end.owner)?.place
  const place = job.box.places.find(each => each.id === placed)?.label
  const adapter = Object.hasOwn(plan.landing.adapters, end.owner) ? ', by an adapter' : ''
  return `${load} → ${place ?? 'no place'}${adapter}`
}

function showWires(job: Job, plan: WiringPlan, talk: Talk): void {
  talk.data(talk.bold('\nWires: end, what it is, colour, size, where it lands'))
  const lines = table(job.ends.map(end => rowOf(job, plan, end)))
  let owner = ''
  for (const [index, end] of job.ends.entries()) {
    const next = ownerOf(job, plan, end)
    if (next !== owner) talk.data(`  ${next}`)
    owner = next
    talk.data(`  ${lines[index]?.trimEnd()}`)
  }
}

function showSettings(job: Job, { jumpers, straps, landing }: WiringPlan, talk: Talk): void {
  const move = (moves: boolean, from: string): string => (moves ? `MOVE from ${from}` : 'leave')
  const rows = [
    ...jumpers.map(each => [
      `  ${each.jumper}`,
      each.toLabel,
      move(each.moves, each.fromLabel),
      each.label,
    ]),
    ...straps.map(each => [
      `  ${each.load}`,
      each.to,
      move(each.moves, each.from),
      `strap of ${each.label}`,
    ]),
  ]
  if (rows.length > 0) talk.data(talk.bold('\nJumpers and straps'))
  for (const line of table(rows)) talk.data(line.trimEnd())
  const { profile, currentLimit } = landing.settings
  const found = job.box.profiles.find(each => each.id === profile)
  talk.data(talk.bold('\nSettings'))
  for (const line of table([
    ['  profile', profile, found ? `${found.label}: ${found.entered}` : ''],
    ['  current limit', currentLimit.text, job.box.currentLimit.entered],
  ]))
    talk.data(line.trimEnd())
}

/** What has to become otherwise at the tub before any of this holds, with what is to be bought. */
function showChanges({ changes }: WiringPlan, talk: Talk): void {
  if (changes.length === 0) return
  talk.data(talk.bold(`\n${PLAN_CHANGES_EN.heading}`))
  for (const line of changeLines(changes, talk)) talk.data(`  - ${line}`)
  talk.data(`  ${PLAN_CHANGES_EN['as-changed']}`)
}

/** A proven plan for a person: every wire, jumper and setting, and what there is to heed. */
export function showPlan(job: Job, { plan, verification }: ProvenPlan, talk: Talk): void {
  talk.data(talk.bold(`${plan.survey} on ${job.box.label}, ${job.box.maker} (${plan.box})`))
  talk.data(`Proven: ${proofLine(verification)}.`)
  const { considered, solved, boundedOut } = plan.search
  talk.data(`Best of ${considered} candidates: ${solved} solved, ${boundedOut} bounded out.`)
  showChanges(plan, talk)
  showWires(job, plan, talk)
  showSettings(job, plan, talk)
  showTogether(job.box, verification, talk)
  talk.data(talk.bold('\nFindings'))
  showFindings(verification.findings, talk)
}

/** The other boxes with a plan that holds, and how they differ. */
export function showOthers(plans: readonly ProvenPlan[], talk: Talk): void {
  if (plans.length === 0) return
  talk.data(talk.bold('\nAlso proven'))
  const isChanged = plans.some(({ plan }) => plan.changes.length > 0)
  const rows = plans.map(({ plan, verification }) => [
    `  ${plan.box}`,
    ...(isChanged ? [`changes: ${plan.changes.filter(changesLoads).length}`] : []),
    `adapters: ${plan.score.adapters}`,
    `findings: ${verification.findings.length}`,
    `--box ${plan.box}${plan.changes.length > 0 ? ' --with-changes' : ''} shows it`,
  ])
  for (const line of table(rows)) talk.data(line.trimEnd())
}
