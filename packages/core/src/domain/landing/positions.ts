import type { Job } from '../job.ts'
import { BOX } from '../job.ts'
import { isPowered } from '../load/load.ts'
import type { Landing } from './landing.ts'

export interface JumperSetting {
  readonly jumper: string
  readonly label: string
  readonly from: string
  readonly to: string
  readonly fromLabel: string
  readonly toLabel: string
  readonly moves: boolean
}

export interface StrapSetting {
  readonly load: string
  readonly label: string
  readonly from: string
  readonly to: string
  readonly moves: boolean
}

/** Every jumper of the box: where it leaves the factory, and where a landing has it. */
export const jumperSettings = ({ box }: Job, landing: Landing): readonly JumperSetting[] =>
  box.board.jumpers.map(({ id, label, factory, positions }) => {
    const to = landing.jumpers[id] ?? factory
    const labelOf = (at: string) => positions.find(each => each.id === at)?.label ?? at
    return {
      jumper: id,
      label,
      from: factory,
      to,
      fromLabel: labelOf(factory),
      toLabel: labelOf(to),
      moves: to !== factory,
    }
  })

/** Every strap: where it was found, and where a landing has it. */
export const strapSettings = ({ loads }: Job, landing: Landing): readonly StrapSetting[] =>
  loads.flatMap(load => {
    if (!isPowered(load) || !load.straps) return []
    const from = load.straps.found
    const to = landing.straps[load.id] ?? from
    return [{ load: load.id, label: load.label, from, to, moves: from !== to }]
  })

/** Ends upstream that a landing has elsewhere than they were found. */
export const movedEnds = (
  { ends }: Job,
  landing: Landing,
): readonly { readonly end: string; readonly from: string; readonly to: string }[] =>
  ends.flatMap(({ id, board, found }) => {
    const to = landing.ends[id]
    return board !== BOX && found !== undefined && to !== undefined && to !== found
      ? [{ end: id, from: found, to }]
      : []
  })
