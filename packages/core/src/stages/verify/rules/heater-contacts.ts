import { atLeast } from '../../../base/compare.ts'
import type { ControlBox, Feed } from '../../../domain/box/control-box.ts'
import { reachedFrom } from '../../../domain/wiring/reach.ts'
import { isClosedAtRest } from '../../../domain/wiring/wire.ts'
import type { Rule } from '../rule.ts'
import { COMMON_PRACTICE, isMainsCircuit } from '../rule.ts'

type Pair = readonly [string, string]

/** What the board joins with nothing commanded: closed parts, and the jumpers that the feed needs. */
function closedPairs({ board }: ControlBox, feed: Feed): readonly Pair[] {
  const parts = board.parts.flatMap((part): readonly Pair[] => {
    switch (part.kind) {
      case 'fuse':
      case 'pole':
      case 'switch':
        return [part.across]
      case 'contact':
        return isClosedAtRest(part) ? [part.across] : []
      default:
        return []
    }
  })
  const jumpers = board.jumpers.flatMap(({ id, positions, factory }) => {
    const at = feed.jumpers[id] ?? factory
    return positions.find(each => each.id === at)?.joins ?? []
  })
  return [...parts, ...jumpers]
}

/** Whether the box, with nothing commanded, holds a heater's both terminals off the feed. */
export function holdsBothPoles(box: ControlBox, feed: Feed): boolean {
  const nodeOf = (id: string | undefined) => box.board.terminals.find(each => each.id === id)?.node
  const pairs = closedPairs(box, feed)
  const fed = Object.entries(feed.lands).flatMap(([does, id]) => {
    const node = does === 'earth' ? undefined : nodeOf(id)
    return node === undefined ? [] : [...reachedFrom(node, pairs)]
  })
  return box.places.some(({ takes, lands }) => {
    const [hot, common] = [nodeOf(lands.hot), nodeOf(lands.common)]
    return (
      takes.includes('heater') &&
      hot !== undefined &&
      common !== undefined &&
      !fed.includes(hot) &&
      !fed.includes(common)
    )
  })
}

/** On a box that opens both poles of its heater, neither pole is landed past its contact. */
export const heaterContacts: Rule = {
  id: 'VERIFY-26',
  title: 'Heater behind both its contacts',
  source: COMMON_PRACTICE,
  check: ({ job, feed, plant, allOff, legVolts }) => {
    if (!feed || allOff.trip || !holdsBothPoles(job.box, feed)) return []
    const isLive = (node: string) => atLeast(allOff.solved.potential(node), 0.5 * legVolts)
    return plant.circuits
      .filter(each => each.load.kind === 'heater' && isMainsCircuit(each))
      .filter(({ a, b }) => isLive(a) || isLive(b))
      .map(({ load, name }) => ({
        rule: heaterContacts.id,
        message: 'heater-past-contact',
        verdict: 'breaks',
        severity: 'danger',
        subjects: [load.id, name],
        params: { heater: load.label },
        on: [],
      }))
  },
}
