import type { Board } from '../../domain/board/board.ts'
import type { Job } from '../../domain/job.ts'
import { BOX, boardOf } from '../../domain/job.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type {
  OpenPoint,
  PanelJumper,
  PanelPartner,
  PanelTerminal,
  SheetPanel,
  SheetWire,
  WireEnd,
} from './artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { panelLabel } from './wires.ts'

/** Board measures to a hundredth of a millimetre: metres leave binary dust. */
const millimetres = (metres: number): number => Math.round(metres * 100_000) / 100

interface Landed {
  readonly wire: SheetWire
  readonly end: WireEnd
}

const pointsOn = (points: readonly OpenPoint[], subjects: readonly string[]): readonly number[] =>
  points.filter(each => each.subjects.some(id => subjects.includes(id))).map(each => each.number)

function terminalsOf(
  panel: string,
  board: Board,
  landed: readonly Landed[],
  points: readonly OpenPoint[],
): readonly PanelTerminal[] {
  return board.terminals.map(({ id, label, kind, class: kept, at: [x, y] }) => {
    const here = landed.filter(({ end }) => end.terminal === id)
    return {
      id,
      label: label ?? '',
      kind,
      class: kept,
      x: millimetres(x.si),
      y: millimetres(y.si),
      wires: here.map(({ wire }) => wire.number),
      points: pointsOn(points, [`${panel}.${id}`, ...here.map(({ end }) => end.end)]),
    }
  })
}

function jumpersOf(
  panel: string,
  board: Board,
  plan: WiringPlan,
  points: readonly OpenPoint[],
): readonly PanelJumper[] {
  return board.jumpers.map(jumper => {
    const to = plan.landing.jumpers[jumper.id] ?? jumper.factory
    return {
      id: jumper.id,
      label: jumper.label,
      ...(jumper.at
        ? { at: { x: millimetres(jumper.at[0].si), y: millimetres(jumper.at[1].si) } }
        : {}),
      positions: jumper.positions.map(each => ({ id: each.id, label: each.label ?? each.id })),
      from: jumper.factory,
      to,
      moves: to !== jumper.factory,
      points: pointsOn(points, [`${panel}.${jumper.id}`]),
    }
  })
}

const SHORT = { high: 'pin.high', low: 'pin.low' } as const

const pinText = ({ kind, function: name, functionText }: SheetWire): SheetText =>
  kind === 'lead' && (name === 'high' || name === 'low') ? text(SHORT[name]) : functionText

/** Where the far end of a cable conductor lands. */
function farOf({ wire, end }: Landed): string | undefined {
  return wire.ends.find(each => each.end !== end.end)?.terminal
}

function partnerLabel(job: Job, panel: string, { wire, end }: Landed): PanelPartner['label'] {
  if (wire.kind === 'lead')
    return job.loads.find(each => each.id === wire.owner)?.label ?? wire.owner
  if (wire.kind === 'tail') return text('tail.white', { device: panelLabel(job, panel) })
  const far = wire.ends.find(each => each.end !== end.end)
  return far?.panelLabel ?? wire.owner
}

/** A load by its kind, the control box as a box; another device of the supply by its cable. */
function symbolOf(job: Job, { wire, end }: Landed): PanelPartner['symbol'] {
  if (wire.kind === 'lead') return job.loads.find(each => each.id === wire.owner)?.kind ?? 'cable'
  if (wire.kind === 'tail') return 'tail'
  return wire.ends.some(each => each.end !== end.end && each.panel === BOX) ? 'box' : 'cable'
}

function partnersOf(
  job: Job,
  panel: string,
  landed: readonly Landed[],
  points: readonly OpenPoint[],
): readonly PanelPartner[] {
  const groups = new Map<string, Landed[]>()
  for (const each of landed) {
    if (each.end.terminal === undefined) continue
    const key = `${each.wire.kind} ${each.wire.owner}`
    groups.set(key, [...(groups.get(key) ?? []), each])
  }
  return [...groups.values()].flatMap(group => {
    const first = group[0]
    if (!first) return []
    const { kind, owner } = first.wire
    return [
      {
        id: owner,
        label: partnerLabel(job, panel, first),
        symbol: symbolOf(job, first),
        pins: group.flatMap(each => {
          const far = farOf(each)
          return each.end.terminal === undefined
            ? []
            : [
                {
                  wire: each.wire.number,
                  terminal: each.end.terminal,
                  text: kind === 'tail' ? text('function.neutral') : pinText(each.wire),
                  ...(far === undefined ? {} : { far }),
                },
              ]
        }),
        points: kind === 'lead' ? pointsOn(points, [owner]) : [],
      },
    ]
  })
}

function panelOf(
  job: Job,
  panel: string,
  plan: WiringPlan,
  wires: readonly SheetWire[],
  points: readonly OpenPoint[],
): readonly SheetPanel[] {
  const board = boardOf(job, panel)
  if (!board) return []
  const landed = wires.flatMap(wire =>
    wire.ends.filter(end => end.panel === panel).map(end => ({ wire, end })),
  )
  return [
    {
      id: panel,
      label: panelLabel(job, panel),
      width: millimetres(board.size.width.si),
      height: millimetres(board.size.height.si),
      terminals: terminalsOf(panel, board, landed, points),
      jumpers: jumpersOf(panel, board, plan, points),
      fuses: board.parts.flatMap(part =>
        part.kind === 'fuse' ? [{ id: part.id, rated: part.rated.text }] : [],
      ),
      partners: partnersOf(job, panel, landed, points),
    },
  ]
}

/** The control board and each supply device, as the eye finds them, with what leads to them. */
export const panelsOf = (
  job: Job,
  plan: WiringPlan,
  wires: readonly SheetWire[],
  points: readonly OpenPoint[],
): readonly SheetPanel[] =>
  [BOX, ...job.devices.keys()].flatMap(panel => panelOf(job, panel, plan, wires, points))
