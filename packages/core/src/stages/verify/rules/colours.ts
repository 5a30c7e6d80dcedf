import type { Finding } from '../../../base/verdict.ts'
import { isEarth } from '../../../domain/board/board.ts'
import { COLOUR_CODES } from '../../../domain/codebook/colours.ts'
import type { Colour } from '../../../domain/described.ts'
import type { End } from '../../../domain/job.ts'
import { findTerminal } from '../../../domain/job.ts'
import type { Evidence, Rule } from '../rule.ts'

const EARTH: readonly Colour[] = ['green', 'green-yellow', 'bare']

const finding = (message: string, severity: Finding['severity'], end: End): Finding => ({
  rule: colours.id,
  message,
  verdict: 'breaks',
  severity,
  subjects: [end.id],
  params: { end: end.id, colour: end.colour, function: end.function },
})

const isNeutral = ({ function: does }: End): boolean =>
  does === 'neutral' || does === 'second-neutral'

/** Where the end is, with nothing on; undefined off its terminal, and on one that is no mains. */
function potentialOf({ allOff, plant }: Evidence, end: End): number | undefined {
  const terminal = plant.terminals.find(each => each.ends.includes(end))
  return terminal?.terminal.class === 'mains' ? allOff.solved.potential(terminal.node) : undefined
}

/** Whether the end carries a line conductor: by what stands on it, and for a switched lead by use. */
function isLine(evidence: Evidence, end: End): boolean {
  const potential = potentialOf(evidence, end)
  if (potential === undefined) return false
  if (potential > 0.5 * evidence.legVolts) return true
  return end.of === 'lead' && end.function !== 'common' && !isEarth(end.function)
}

function judgeLine(end: End, neutral: readonly Colour[]): readonly Finding[] {
  if (end.of !== 'lead' && isNeutral(end)) return [finding('neutral-carries-line', 'caution', end)]
  if (EARTH.includes(end.colour)) return [finding('earth-colour-live', 'caution', end)]
  return neutral.includes(end.colour) ? [finding('re-identify', 'notice', end)] : []
}

/** A leg conductor on a mains terminal where nothing is live serves as something else. */
const isIdleLeg = (evidence: Evidence, end: End): boolean =>
  end.of === 'cable' && /leg\d$/u.test(end.function) && potentialOf(evidence, end) !== undefined

function judge(evidence: Evidence, end: End): readonly Finding[] {
  const { neutral } = COLOUR_CODES[evidence.job.tub.region]
  if (isLine(evidence, end)) return judgeLine(end, neutral)
  if (isIdleLeg(evidence, end)) return [finding('leg-carries-no-line', 'caution', end)]
  if (isEarth(end.function) && !EARTH.includes(end.colour))
    return [finding('earth-not-green', 'notice', end)]
  if (isNeutral(end) && end.of === 'cable' && !neutral.includes(end.colour))
    return [finding('neutral-colour', 'notice', end)]
  return []
}

/** Function rules, colour is a note: a white wire used hot is marked again, a green one never used. */
export const colours: Rule = {
  id: 'VERIFY-18',
  title: 'Colours that mislead',
  source: 'NEC 2023 200.6, 200.7(C), 250.119; CE Code 4-036; IEC 60445; AS/NZS 3000 3.8',
  check: evidence =>
    // A plug turned round exchanges line and neutral: colours say nothing then.
    evidence.allOff.trip || evidence.turned
      ? []
      : evidence.job.ends
          .filter(end => findTerminal(evidence.job, evidence.landing.ends[end.id] ?? ''))
          .flatMap(end => judge(evidence, end)),
}
