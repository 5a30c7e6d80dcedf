import type { Part } from '../../domain/board/board.ts'
import type { End, Job } from '../../domain/job.ts'
import type { SupplyDevice } from '../../domain/supply/supply.ts'
import { reachedFrom } from '../../domain/wiring/reach.ts'

type Pair = readonly [string, string]

/** Copper and what stays shut when a device is off or has tripped: poles and switches do not. */
function staysShut(part: Part): readonly Pair[] {
  switch (part.kind) {
    case 'pole':
    case 'switch':
    case 'contact':
    case 'electronics':
    case 'ground-fault':
    case 'transformer':
      return []
    case 'fuse':
      return [part.across]
  }
}

/** Own tails of a device, as they were found. */
const tailPairs = (device: SupplyDevice): readonly Pair[] =>
  device.tails.flatMap(tail => {
    const on = device.board.terminals.find(each => each.id === tail.lands)
    return on ? [[tail.node, on.node] as const] : []
  })

const isNeutralOf = (device: string, end: End): boolean =>
  end.of === 'cable' && end.board === device && end.function === 'neutral'

/**
 * Whether the neutral towards the tub stays joined to the supply when this device is off or tripped.
 *
 * Read from the parts of the device and from where the neutral was found: it is asked before
 * anything is moved.
 */
export function keepsNeutral(job: Job, id: string): boolean {
  const device = job.devices.get(id)
  const from = device?.fedAt.neutral
  if (!device || from === undefined) return false
  const { board } = device
  const joined = [
    ...tailPairs(device),
    ...board.parts.flatMap(staysShut),
    ...board.jumpers.flatMap(jumper => jumper.positions.flatMap(each => each.joins)),
  ]
  const onward = new Set(job.tub.supply.cables.filter(each => each.from === id).map(own => own.id))
  return job.ends
    .filter(end => isNeutralOf(id, end) && onward.has(end.owner))
    .some(end => {
      const at = board.terminals.find(each => `${id}.${each.id}` === end.found)
      return at !== undefined && reachedFrom(from, joined).has(at.node)
    })
}
