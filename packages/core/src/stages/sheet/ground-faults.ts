import type { Board } from '../../domain/board/board.ts'
import { BOX } from '../../domain/job.ts'
import { isSplit, servingCircuits } from './circuits.ts'
import type { SheetParam, SheetText } from './messages.ts'
import { text } from './messages.ts'
import { keepsNeutral } from './neutral.ts'
import type { Site } from './site.ts'
import { panelLabel } from './wires.ts'

/** A device that trips on a ground fault, by what a person calls it and what its trip leaves live. */
export interface GroundFault {
  readonly device: SheetParam
  readonly leaves: 'nothing' | 'neutral' | 'other-circuit' | 'supply-terminals'
  /** Of the box, where the supply still stands once the box's own device has tripped. */
  readonly terminals: readonly string[]
}

const hasOne = ({ parts }: Board): boolean => parts.some(each => each.kind === 'ground-fault')

/** Where a device of the box has its supply: lines and neutral before it stay live. */
const supplyTerminals = ({ feed }: Site): readonly string[] =>
  Object.entries(feed.lands).flatMap(([name, id]) => (name.endsWith('earth') || !id ? [] : [id]))

/** Devices upstream, but none of a circuit that stays locked off; then that of the box. */
export function groundFaults(site: Site): readonly GroundFault[] {
  const { job, circuits } = site
  const serving = servingCircuits(circuits).flatMap(each => each.devices)
  const upstream = [...job.devices]
    .filter(([id, device]) => serving.includes(id) && hasOne(device.board))
    .map(([id]): GroundFault => {
      const leaves = keepsNeutral(job, id) ? 'neutral' : 'nothing'
      return {
        device: panelLabel(job, id),
        leaves: isSplit(circuits) ? 'other-circuit' : leaves,
        terminals: [],
      }
    })
  if (!hasOne(job.box.board)) return upstream
  const device = text('device.of-box', { box: panelLabel(job, BOX) })
  return [...upstream, { device, leaves: 'supply-terminals', terminals: supplyTerminals(site) }]
}

/** Its test at first power. */
export const powerButton = ({ device, leaves, terminals }: GroundFault): SheetText =>
  leaves === 'supply-terminals'
    ? text('power.button-box', { device, terminals })
    : text('power.button', { device })

/** Its test with everything connected. */
export function protectButton({ device, leaves, terminals }: GroundFault): SheetText {
  switch (leaves) {
    case 'nothing':
      return text('protect.button', { device })
    case 'neutral':
      return text('protect.button-neutral', { device })
    case 'other-circuit':
      return text('protect.button-circuit', { device })
    case 'supply-terminals':
      return text('protect.button-box', { device, terminals })
  }
}
