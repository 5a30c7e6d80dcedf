import { atMost } from '../../../base/compare.ts'
import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { boardNode } from '../../../domain/wiring/wire.ts'
import type { Evidence, Rule } from '../rule.ts'
import { commandsOf, standing, worst } from '../rule.ts'

function mainsOnLowVoltage(evidence: Evidence): readonly Finding[] {
  const low = evidence.plant.terminals.filter(
    ({ terminal }) => terminal.class === 'low-voltage' || terminal.class === 'sensor',
  )
  return worst(standing(evidence), low, ({ node }, at) => at.solved.potential(node))
    .filter(({ value }) => !atMost(value, LIMITS.extraLowVolts))
    .map(({ thing, value, at }) => ({
      rule: lowVoltage.id,
      message: 'mains-on-low-voltage',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [thing.name],
      params: { terminal: thing.terminal.label ?? thing.terminal.id, volts: value },
      on: commandsOf(at.state),
    }))
}

function overfedTransformer(evidence: Evidence): readonly Finding[] {
  const { plant, band } = evidence
  const fed = plant.parts.flatMap(({ board, part, name }) =>
    part.kind === 'transformer'
      ? [
          {
            name,
            plate: part.volts.primary.si,
            a: boardNode(board, part.primary[0]),
            b: boardNode(board, part.primary[1]),
          },
        ]
      : [],
  )
  return worst(standing(evidence), fed, ({ a, b }, at) => at.solved.across(a, b))
    .filter(({ thing, value }) => !atMost(value * band.high, LIMITS.most * thing.plate))
    .map(({ thing, value, at }) => ({
      rule: lowVoltage.id,
      message: 'transformer-over-volts',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [thing.name],
      params: { part: thing.name, volts: value * band.high, plate: thing.plate },
      on: commandsOf(at.state),
    }))
}

/** No mains on a low-voltage or sensor terminal, and no transformer above its plate. */
export const lowVoltage: Rule = {
  id: 'VERIFY-3',
  title: 'Low voltage stays low',
  source: 'IEC 61140, extra-low voltage 50 V (from memory)',
  check: evidence => [...mainsOnLowVoltage(evidence), ...overfedTransformer(evidence)],
}
