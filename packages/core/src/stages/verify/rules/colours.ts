import type { Finding } from '../../../base/verdict.ts'
import type { Colour } from '../../../domain/described.ts'
import type { End } from '../../../domain/job.ts'
import { findTerminal } from '../../../domain/job.ts'
import type { Evidence, Rule } from '../rule.ts'

const NEUTRAL: Readonly<Record<'america' | 'elsewhere', readonly Colour[]>> = {
  america: ['white', 'grey'],
  elsewhere: ['blue'],
}
const EARTH: readonly Colour[] = ['green', 'green-yellow', 'bare']

const finding = (message: string, severity: Finding['severity'], end: End): Finding => ({
  rule: colours.id,
  message,
  verdict: 'breaks',
  severity,
  subjects: [end.id],
  params: { end: end.id, colour: end.colour, function: end.function },
})

/** Whether the end carries a line conductor: by where it is and what it does, not by its colour. */
function isLine({ allOff, plant, legVolts }: Evidence, end: End): boolean {
  if (end.function === 'leg1' || end.function === 'leg2') return true
  if (end.function === 'neutral' || end.function === 'earth') return false
  const terminal = plant.terminals.find(each => each.ends.includes(end))
  if (terminal?.terminal.class !== 'mains') return false
  if (end.function !== 'common') return true
  return allOff.solved.potential(terminal.node) > 0.5 * legVolts
}

function judge(evidence: Evidence, end: End): readonly Finding[] {
  const region = evidence.job.tub.region
  const neutral = NEUTRAL[region === 'US' || region === 'CA' ? 'america' : 'elsewhere']
  if (isLine(evidence, end)) {
    if (EARTH.includes(end.colour)) return [finding('earth-colour-live', 'caution', end)]
    return neutral.includes(end.colour) ? [finding('re-identify', 'notice', end)] : []
  }
  if (end.function === 'earth' && !EARTH.includes(end.colour))
    return [finding('earth-not-green', 'notice', end)]
  if (end.function === 'neutral' && end.of === 'cable' && !neutral.includes(end.colour))
    return [finding('neutral-colour', 'notice', end)]
  return []
}

/** Function rules, colour is a note: a white wire used hot is marked again, a green one never used. */
export const colours: Rule = {
  id: 'VERIFY-18',
  title: 'Colours that mislead',
  source: 'NEC 2023 200.6, 200.7(C), 250.119; IEC 60445',
  check: evidence =>
    evidence.allOff.trip
      ? []
      : evidence.job.ends
          .filter(end => findTerminal(evidence.job, evidence.landing.ends[end.id] ?? ''))
          .flatMap(end => judge(evidence, end)),
}
