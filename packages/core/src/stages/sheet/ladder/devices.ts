import type { Part } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX, boardOf } from '../../../domain/job.ts'
import type { Load } from '../../../domain/load/load.ts'
import { isPowered } from '../../../domain/load/load.ts'
import { drawOf, plateVolts } from '../../../domain/wiring/draw.ts'
import { circuitElement, jumperElement, partElement } from '../../../domain/wiring/wire.ts'
import type { SheetText } from '../messages.ts'
import { text } from '../messages.ts'
import { commandLabel } from '../together.ts'
import { panelLabel } from '../wires.ts'
import type { LadderDevice, LadderSection } from './artifact.ts'
import { contactRating, poleRating, primaryText } from './describe.ts'
import { apparatusKey, loadKey, partKey } from './designations.ts'
import { windingId } from './graph.ts'
import type { Material } from './sections.ts'

type RungsOf = (ids: readonly string[]) => readonly number[]

/** Terminals that are on a part alone: those of a rail would say nothing. */
const MOST_TERMINALS = 3

function terminalsOf(job: Job, board: string, nodes: readonly string[]): readonly string[] {
  const all = boardOf(job, board)?.terminals ?? []
  return [...new Set(nodes)].flatMap(node => {
    const here = all.filter(each => each.node === node)
    return here.length > MOST_TERMINALS ? [] : here.map(each => each.id)
  })
}

function contactWhat({ box }: Job, part: Extract<Part, { kind: 'contact' }>): SheetText {
  if (part.role === 'limit') return text('what.limit')
  const commands = box.commands
    .filter(each => each.closes.includes(part.id) || each.opens.includes(part.id))
    .map(each => commandLabel(box, each.id))
  const kind =
    part.rest === 'closed' ? 'rests-closed' : part.type === 'relay' ? 'contact' : part.type
  return commands.length > 0 ? text(`what.${kind}-by`, { commands }) : text(`what.${kind}`)
}

function partDevice(material: Material, board: string, part: Part, rungsOf: RungsOf): LadderDevice {
  const { job, names } = material
  const id = partElement(board, part.id)
  const isBox = board === BOX
  const name = names.get(partKey(board, part.id)) ?? part.id
  const common = { name, own: isBox && name !== part.id ? part.id : '', rungs: rungsOf([id]) }
  const on = (nodes: readonly string[]) => ({ terminals: terminalsOf(job, board, nodes) })
  switch (part.kind) {
    case 'fuse':
      return { ...common, what: text('what.fuse'), rating: part.rated.text, ...on(part.across) }
    case 'contact':
      return {
        ...common,
        what: contactWhat(job, part),
        rating: contactRating(part),
        ...on(part.across),
      }
    case 'pole':
      return {
        ...common,
        what: text('what.own-pole'),
        rating: poleRating(job, board, part),
        ...on(part.across),
      }
    case 'switch':
      return {
        ...common,
        what: text('what.own-switch'),
        rating: part.rated.text,
        ...on(part.across),
      }
    case 'electronics':
      return {
        ...common,
        what: text('what.electronics'),
        rating: `${part.volts.text}, ${part.power.text}`,
        terminals: [],
      }
    case 'ground-fault':
      return {
        ...common,
        what: text('what.ground-fault', { device: panelLabel(job, board) }),
        rating:
          part.trip.from.si === part.trip.to.si
            ? part.trip.to.text
            : `${part.trip.from.text} – ${part.trip.to.text}`,
        rungs: rungsOf([id, ...part.sums.map(each => partElement(board, each))]),
        terminals: [],
      }
    case 'transformer': {
      const volts = {
        primary: primaryText(material, board, part),
        secondary: part.volts.secondary.text,
      }
      return {
        ...common,
        what: part.isolating
          ? text('what.transformer', volts)
          : text('what.auto-transformer', volts),
        rating: part.rated.text,
        rungs: rungsOf([windingId(id, 'primary'), windingId(id, 'secondary')]),
        terminals: [],
      }
    }
  }
}

function apparatusDevice(
  material: Material,
  device: string,
  rungsOf: RungsOf,
): readonly LadderDevice[] {
  const { job, names } = material
  const name = names.get(apparatusKey(device))
  const parts = boardOf(job, device)?.parts ?? []
  const poles = parts.flatMap(each => (each.kind === 'pole' ? [each] : []))
  const switches = parts.flatMap(each => (each.kind === 'switch' ? [each] : []))
  if (name === undefined) return []
  const label = { device: panelLabel(job, device) }
  const [pole] = poles
  return [
    {
      name,
      what: pole ? text('what.pole', label) : text('what.switch', label),
      rating: pole ? poleRating(job, device, pole) : (switches[0]?.rated.text ?? ''),
      own: '',
      terminals: terminalsOf(
        job,
        device,
        [...poles, ...switches].flatMap(each => each.across),
      ),
      rungs: rungsOf([...poles, ...switches].map(each => partElement(device, each.id))),
    },
  ]
}

function jumperDevices(
  { job, landing }: Material,
  board: string,
  rungsOf: RungsOf,
): readonly LadderDevice[] {
  return (boardOf(job, board)?.jumpers ?? []).map(jumper => {
    const at = landing.jumpers[jumper.id] ?? jumper.factory
    const position = jumper.positions.find(each => each.id === at)
    const joins = position?.joins ?? []
    return {
      name: jumper.id,
      what: text('what.jumper', { what: jumper.label, position: position?.label ?? at }),
      rating: jumper.rated.text,
      own: '',
      terminals: terminalsOf(job, board, joins.flat()),
      rungs: rungsOf(joins.map((_, index) => jumperElement(board, jumper.id, index))),
    }
  })
}

/** Plate volts, and amps where they are known, circuit by circuit. */
function loadRating({ job, landing }: Material, load: Load): string {
  if (!isPowered(load)) return load.curve
  const volts = plateVolts(load, landing)
  const amps = load.circuits.map(circuit => {
    const { from, to, assumed } = drawOf(job, landing, load, circuit)
    const [low, high] = [from, to].map(each => Math.round(each * 100) / 100)
    return assumed ? '?' : low === high ? `${high}` : `${low}–${high}`
  })
  return `${Math.round(volts)} V, ${amps.join(' / ')} A`
}

function loadDevice(material: Material, load: Load, rungsOf: RungsOf): LadderDevice {
  const { names, landing } = material
  const circuits = isPowered(load) ? load.circuits.map(each => each.id) : ['probe']
  return {
    name: names.get(loadKey(load.id)) ?? load.id,
    what: text('what.load', { load: load.label }),
    rating: loadRating(material, load),
    own: '',
    terminals: load.leads.flatMap(each => {
      const at = landing.ends[`${load.id}.${each.id}`]
      return at?.startsWith(`${BOX}.`) ? [at.slice(BOX.length + 1)] : []
    }),
    rungs: rungsOf(circuits.map(each => circuitElement(load.id, each))),
  }
}

const movesAlone = (board: string, part: Part): boolean =>
  board === BOX || (part.kind !== 'pole' && part.kind !== 'switch')

/** Every designation of the ladder, once: supply, box, loads. */
export function devicesOf(
  material: Material,
  sections: readonly LadderSection[],
): readonly LadderDevice[] {
  const { job, loads } = material
  const rungs = sections.flatMap(each => each.rungs)
  const rungsOf: RungsOf = ids =>
    rungs
      .filter(({ steps }) => steps.some(each => each.kind === 'part' && ids.includes(each.id)))
      .map(each => each.number)
  return [
    ...[...job.devices.keys(), BOX].flatMap(board => [
      ...(board === BOX ? [] : apparatusDevice(material, board, rungsOf)),
      ...(boardOf(job, board)?.parts ?? [])
        .filter(each => movesAlone(board, each))
        .map(each => partDevice(material, board, each, rungsOf)),
      ...jumperDevices(material, board, rungsOf),
    ]),
    ...loads.map(each => loadDevice(material, each, rungsOf)),
  ]
}
