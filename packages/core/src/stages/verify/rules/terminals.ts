import type { Finding } from '../../../base/verdict.ts'
import type { PlantTerminal } from '../../../domain/wiring/plant.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE } from '../rule.ts'

const finding = (
  message: string,
  { name, terminal }: PlantTerminal,
  params: Finding['params'],
): Finding => ({
  rule: terminals.id,
  message,
  verdict: 'breaks',
  severity: 'caution',
  subjects: [name],
  params: { terminal: terminal.label ?? terminal.id, ...params },
})

function crowded(at: PlantTerminal): readonly Finding[] {
  const most = at.terminal.conductors
  return at.ends.length > most
    ? [finding('too-many-on-a-terminal', at, { count: at.ends.length, most })]
    : []
}

function misfits(at: PlantTerminal): readonly Finding[] {
  const { holds } = at.terminal
  if (!holds) return []
  return at.ends
    .filter(({ size }) => size.mm2 < holds.from.mm2 || size.mm2 > holds.to.mm2)
    .map(end =>
      finding('size-not-held', at, {
        end: end.id,
        size: end.size.text,
        from: holds.from.text,
        to: holds.to.text,
      }),
    )
}

/** One conductor a terminal, unless its maker says more, and of a size that it holds. */
export const terminals: Rule = {
  id: 'VERIFY-24',
  title: 'Terminals hold what is on them',
  source: COMMON_PRACTICE,
  check: ({ plant }) => plant.terminals.flatMap(each => [...crowded(each), ...misfits(each)]),
}
