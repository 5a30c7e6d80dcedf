import { boundsOf } from '../../../base/known.ts'
import type { Part } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX, boardOf } from '../../../domain/job.ts'
import type { LoadKind } from '../../../domain/load/load.ts'
import { circuitAt } from '../../../domain/supply/circuits.ts'
import { primaryVolts } from '../../../domain/wiring/wire.ts'
import type { SheetText } from '../messages.ts'
import { text } from '../messages.ts'
import type { LadderPart, LadderSymbol } from './artifact.ts'
import { apparatusKey, loadKey, partKey, poleName } from './designations.ts'
import type { EdgeIs } from './graph.ts'
import type { Material } from './sections.ts'

type Drawn = Pick<LadderPart, 'symbol' | 'name' | 'note' | 'restsClosed'>

const LOADS: Readonly<Record<LoadKind, LadderSymbol>> = {
  pump: 'motor',
  'circulation-pump': 'motor',
  blower: 'motor',
  heater: 'element',
  ozonator: 'apparatus',
  light: 'lamp',
  audio: 'apparatus',
  sanitiser: 'apparatus',
  keypad: 'apparatus',
  probe: 'probe',
}

type Contact = Extract<Part, { kind: 'contact' }>

const contactSymbol = ({ role, type }: Contact): LadderSymbol =>
  role === 'limit' ? 'limit' : type === 'relay' ? 'contact' : type

/** What a contact may carry: resistive, then motor where it has such a figure. */
export const contactRating = ({ rated: { resistive, motor } }: Contact): string =>
  motor ? `${resistive.text}/${motor.text}` : resistive.text

/** What the breaker of a supply device is rated: fixed by its maker, or as the survey gives it. */
export function poleRating(job: Job, device: string, part: Extract<Part, { kind: 'pole' }>) {
  if (part.rated) return part.rated.text
  const breaker = circuitAt(job.tub.supply, device)?.breaker
  const bounds = breaker && boundsOf(breaker)
  if (!bounds) return '?'
  return bounds.from === bounds.to ? `${bounds.to} A` : `${bounds.from}–${bounds.to} A`
}

function partDrawn(
  { job, names }: Material,
  board: string,
  part: Exclude<Part, { kind: 'transformer' }>,
): Drawn {
  const isDevice = board !== BOX && (part.kind === 'pole' || part.kind === 'switch')
  const apparatus = names.get(apparatusKey(board)) ?? ''
  const name = isDevice
    ? poleName(job, board, part.id, apparatus)
    : (names.get(partKey(board, part.id)) ?? part.id)
  const plain = { name, restsClosed: false }
  switch (part.kind) {
    case 'contact':
      return {
        name,
        symbol: contactSymbol(part),
        note: contactRating(part),
        restsClosed: part.role === 'limit' || part.rest === 'closed',
      }
    case 'fuse':
    case 'switch':
      return { ...plain, symbol: part.kind, note: part.rated.text }
    case 'pole':
      return { ...plain, symbol: 'pole', note: poleRating(job, board, part) }
    case 'electronics':
      return { ...plain, symbol: 'electronics', note: part.power.text }
    case 'ground-fault':
      return { ...plain, symbol: 'ground-fault', note: undefined }
  }
}

/** Volts of a transformer's primary as its tap stands. */
export function primaryText(
  { landing, job }: Material,
  board: string,
  part: Extract<Part, { kind: 'transformer' }>,
): string {
  const own = boardOf(job, board)
  const taps = Object.values(part.taps?.volts ?? {})
  const volts = own ? primaryVolts(part, landing.jumpers, own) : part.volts.primary.si
  return taps.find(each => each.si === volts)?.text ?? part.volts.primary.text
}

/** The circuit of a load by its lead, where it has several. */
export function circuitText({
  load,
  circuit,
}: Extract<EdgeIs, { of: 'circuit' }>): SheetText | undefined {
  if (load.circuits.length < 2) return undefined
  const lead = circuit.across
    .map(id => load.leads.find(each => each.id === id))
    .find(each => each?.function !== 'common')
  if (!lead) return undefined
  if (lead.function === 'high' || lead.function === 'low') return text(`pin.${lead.function}`)
  return text(`function.${lead.function}`)
}

/** What stands on a rung for everything but wires. */
export function drawnOf(material: Material, is: Exclude<EdgeIs, { of: 'wire' }>): Drawn {
  const { names } = material
  switch (is.of) {
    case 'part': {
      if (is.part.kind === 'transformer')
        return drawnOf(material, { ...is, of: 'winding', part: is.part, which: 'primary' })
      return partDrawn(material, is.board, is.part)
    }
    case 'winding':
      return {
        symbol: is.which,
        name: names.get(partKey(is.board, is.part.id)) ?? is.part.id,
        note:
          is.which === 'primary'
            ? primaryText(material, is.board, is.part)
            : is.part.volts.secondary.text,
        restsClosed: false,
      }
    case 'jumper':
      return {
        symbol: 'jumper',
        name: is.jumper.id,
        note: is.jumper.positions.find(each => each.id === is.position)?.label ?? is.position,
        restsClosed: false,
      }
    case 'circuit':
    case 'probe':
      return {
        symbol: LOADS[is.load.kind],
        name: names.get(loadKey(is.load.id)) ?? is.load.id,
        note: is.of === 'circuit' ? circuitText(is) : undefined,
        restsClosed: false,
      }
  }
}
