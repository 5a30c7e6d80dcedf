import { atMost } from '../../../base/compare.ts'
import type { Finding } from '../../../base/verdict.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import type { DevicesOpen, Evidence, Rule } from '../rule.ts'
import { boxMains, COMMON_PRACTICE, commandsOf } from '../rule.ts'

const finding = (
  message: string,
  severity: Finding['severity'],
  { device, observation }: DevicesOpen,
  params: Finding['params'],
): Finding => ({
  rule: disconnect.id,
  message,
  verdict: 'breaks',
  severity,
  subjects: [device],
  params,
  on: commandsOf(observation.state),
})

function liveBox(evidence: Evidence, open: DevicesOpen): Finding | undefined {
  for (const { node, terminal } of boxMains(evidence)) {
    const volts = open.observation.solved.potential(node)
    if (!atMost(volts, LIMITS.extraLowVolts)) {
      const label = terminal.label ?? terminal.id
      return finding('disconnect-wired-round', 'danger', open, {
        device: labelOf(evidence, open.device),
        terminal: label,
        volts,
      })
    }
  }
  return undefined
}

const labelOf = ({ job }: Evidence, device: string): string =>
  job.tub.supply.devices.find(each => each.id === device)?.label ??
  job.devices.get(device)?.label ??
  device

/** Exchanged line and load sides still disconnect, and fool the hand that expects one side dead. */
function liveTubSide(evidence: Evidence, open: DevicesOpen): Finding | undefined {
  const lands = new Set(
    Object.values(evidence.job.devices.get(open.device)?.lands ?? {}).map(
      id => `${open.device}.${id}`,
    ),
  )
  const live = evidence.plant.terminals.find(
    ({ name, node }) =>
      lands.has(name) && !atMost(open.observation.solved.potential(node), LIMITS.extraLowVolts),
  )
  return live
    ? finding('tub-side-live', 'caution', open, {
        device: labelOf(evidence, open.device),
        terminal: live.terminal.label ?? live.terminal.id,
      })
    : undefined
}

/** Each device of the supply, opened, leaves the box without line volts. */
export const disconnect: Rule = {
  id: 'VERIFY-25',
  title: 'Every disconnect disconnects',
  source: COMMON_PRACTICE,
  check: evidence => {
    const seen = new Map<string, Finding>()
    for (const open of evidence.disconnectsOpen) {
      const found = liveBox(evidence, open) ?? liveTubSide(evidence, open)
      const before = seen.get(open.device)
      if (found && before?.severity !== 'danger') seen.set(open.device, found)
    }
    return [...seen.values()]
  },
}
