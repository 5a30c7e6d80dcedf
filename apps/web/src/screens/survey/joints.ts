import type { FeedFunction } from '@tubwright/core'
import { BOX, ownFunction } from '@tubwright/core'
import type { Act, Json } from '@tubwright/records'
import type { DeviceChoice, Document } from '../../ask/protocol.ts'
import type { SurveyPath } from './use-survey.ts'

/** A wire of a cable, as far as it was answered. */
export interface Wire {
  readonly id: string
  readonly function?: unknown
  readonly size?: unknown
  readonly colour?: unknown
  readonly taped?: unknown
  readonly otherEnd?: { readonly size?: unknown; readonly colour?: unknown }
  readonly from?: unknown
  readonly to?: unknown
}

/** A piece of the run, as far as it was answered. */
export interface Piece {
  readonly id: string
  readonly label?: unknown
  readonly from?: unknown
  readonly to?: unknown
  readonly length?: unknown
  readonly conductors: readonly Wire[]
}

/** A device of the run, as far as it was answered. */
export interface RunDevice {
  readonly id: string
  readonly device?: unknown
  readonly label?: unknown
  readonly fedBy?: unknown
}

/** What stands between panel and tub, and the pieces that join it. */
export interface Run {
  readonly devices: readonly RunDevice[]
  readonly pieces: readonly Piece[]
}

const itemsIn = <Item>(list: unknown): readonly Item[] =>
  Array.isArray(list) ? (list as readonly Item[]) : []

/** The run of a survey, as it is written. */
export function runOf(document: Document): Run {
  const { devices, cables } = (document['supply'] ?? {}) as Readonly<Record<string, unknown>>
  return {
    devices: itemsIn<RunDevice>(devices),
    pieces: itemsIn<Partial<Piece>>(cables).map(each => ({
      ...each,
      id: String(each.id),
      conductors: itemsIn<Wire>(each.conductors),
    })),
  }
}

/** The panel feeds the first device, and the first one of a second circuit. */
const isFedByPanel = ({ fedBy }: RunDevice, index: number): boolean =>
  index === 0 || fedBy !== undefined

/** The same from the panel to the tub, circuit by circuit; what hangs on nothing comes last. */
export function inOrder(run: Run): Run {
  const devices: RunDevice[] = []
  const pieces: Piece[] = []
  const visit = (device: RunDevice): void => {
    if (devices.includes(device)) return
    devices.push(device)
    for (const piece of run.pieces) {
      if (piece.from !== device.id || pieces.includes(piece)) continue
      pieces.push(piece)
      const next = run.devices.find(each => each.id === piece.to)
      if (next) visit(next)
    }
  }
  run.devices.filter(isFedByPanel).forEach(visit)
  const hasNothingIn = (device: RunDevice) => !run.pieces.some(each => each.to === device.id)
  run.devices.filter(hasNothingIn).forEach(visit)
  return {
    devices: [...devices, ...run.devices.filter(each => !devices.includes(each))],
    pieces: [...pieces, ...run.pieces.filter(each => !pieces.includes(each))],
  }
}

/** What a piece is called before somebody names it, by where it ends. */
export type NameOfPiece = (end: string) => string

const pathOf = (...keys: readonly string[]): readonly string[] => ['survey', 'supply', ...keys]
const set = (path: readonly string[], value: unknown): Act => ({
  do: 'set',
  path,
  value: value as Json,
})
const clear = (path: readonly string[]): Act => ({ do: 'clear', path })
const clearSaid = (path: readonly string[], value: unknown): readonly Act[] =>
  value === undefined ? [] : [clear(path)]

/** A piece that nobody named is called by where it ends. */
function renamed(piece: Piece, end: string, nameOf: NameOfPiece): readonly Act[] {
  const isUnnamed = piece.label === undefined || piece.label === nameOf(String(piece.to))
  return isUnnamed ? [set(pathOf('cables', piece.id, 'label'), nameOf(end))] : []
}

/** Lets a piece begin or end elsewhere: where its wires sat there is said anew. */
export function endAt(
  piece: Piece,
  key: 'from' | 'to',
  end: string,
  nameOf: NameOfPiece,
): readonly Act[] {
  const wires = piece.conductors.flatMap(each =>
    clearSaid(pathOf('cables', piece.id, 'conductors', each.id, key), each[key]),
  )
  return [
    set(pathOf('cables', piece.id, key), end),
    ...wires,
    ...(key === 'to' ? renamed(piece, end, nameOf) : []),
  ]
}

/**
 * Puts a device into a piece: the piece ends at it, and another one with the same wires goes on from
 * it. How long either is, and where wires sit on the device, stays open.
 *
 * @param next - the name of the piece that goes on
 */
export function putBetween(
  piece: Piece,
  device: string,
  next: string,
  nameOf: NameOfPiece,
): readonly Act[] {
  const own = (...keys: readonly string[]) => pathOf('cables', piece.id, ...keys)
  const on = (...keys: readonly string[]) => pathOf('cables', next, ...keys)
  const end = String(piece.to ?? BOX)
  const wires = piece.conductors.flatMap((each): readonly Act[] => {
    // What was found at the end towards the tub is found on the piece that goes there now.
    const { size = each.size, colour = each.colour } = each.otherEnd ?? {}
    const known = { function: each.function, size, colour, taped: each.taped, to: each.to }
    return [
      { do: 'add', path: on('conductors', each.id) },
      ...Object.entries(known).flatMap(([key, value]) =>
        value === undefined ? [] : [set(on('conductors', each.id, key), value)],
      ),
      ...Object.entries(each.otherEnd ?? {}).flatMap(([key, value]) =>
        clearSaid(own('conductors', each.id, 'otherEnd', key), value),
      ),
    ]
  })
  return [
    { do: 'add', path: on() },
    set(on('label'), nameOf(end)),
    set(on('from'), device),
    set(on('to'), end),
    ...wires,
    ...clearSaid(own('length'), piece.length),
    ...endAt(piece, 'to', device, nameOf),
  ]
}

/** Leads a piece into a device that is there already: on from it where nothing goes on yet. */
export const joinTo = (
  { pieces }: Run,
  piece: Piece,
  device: string,
  next: string,
  nameOf: NameOfPiece,
): readonly Act[] =>
  pieces.some(each => each.from === device)
    ? endAt(piece, 'to', device, nameOf)
    : putBetween(piece, device, next, nameOf)

/** Takes a device out of the run: where one piece goes in and one on, they are one again. */
export function takeOutOf({ pieces }: Run, device: string, nameOf: NameOfPiece): readonly Act[] {
  const into = pieces.filter(each => each.to === device)
  const on = pieces.filter(each => each.from === device)
  const gone: Act = { do: 'withdraw', path: pathOf('devices', device) }
  const [piece] = into
  const [after] = on
  if (!piece || !after || into.length > 1 || on.length > 1) {
    const hanging = (some: readonly Piece[], key: 'from' | 'to') =>
      some.flatMap(each => [
        ...each.conductors.flatMap(wire =>
          clearSaid(pathOf('cables', each.id, 'conductors', wire.id, key), wire[key]),
        ),
        clear(pathOf('cables', each.id, key)),
      ])
    return [...hanging(into, 'to'), ...hanging(on, 'from'), gone]
  }
  const end = String(after.to ?? BOX)
  const landed = piece.conductors.flatMap(each => {
    const same = after.conductors.find(wire => wire.function === each.function)
    return same?.to === undefined
      ? []
      : [set(pathOf('cables', piece.id, 'conductors', each.id, 'to'), same.to)]
  })
  return [
    ...endAt(piece, 'to', end, nameOf),
    ...landed,
    ...clearSaid(pathOf('cables', piece.id, 'length'), piece.length),
    { do: 'withdraw', path: pathOf('cables', after.id) },
    gone,
  ]
}

/**
 * The acts after which everything is as it was before some.
 *
 * @param valueAt - what stood at a path of the record then
 */
export function undoOf(
  acts: readonly Act[],
  valueAt: (path: readonly string[]) => unknown,
): readonly Act[] {
  const added = acts.flatMap(each => (each.do === 'add' ? [each.path.join('/')] : []))
  const isNew = (path: readonly string[]) =>
    added.some(each => `${path.join('/')}/`.startsWith(`${each}/`))
  return acts.toReversed().flatMap((each): readonly Act[] => {
    if (each.do === 'add' || each.do === 'restore') {
      const isInside = isNew(each.path.slice(0, -1))
      return isInside ? [] : [{ do: 'withdraw', path: each.path }]
    }
    if (each.do === 'withdraw') return [{ do: 'restore', path: each.path }]
    if (each.do === 'settle' || isNew(each.path)) return []
    const before = valueAt(each.path)
    return [before === undefined ? clear(each.path) : set(each.path, before)]
  })
}

/** Something of a run that is joined to nothing, and where that is mended. */
export interface LooseEnd {
  readonly kind: 'nothing-in' | 'nothing-on' | 'no-beginning' | 'no-end' | 'in-a-ring'
  /** The device or the piece. */
  readonly of: string
  readonly path: SurveyPath
}

/** Everything of a run that hangs on nothing. A piece whose end was never said is an open field. */
export function looseEndsOf(run: Run): readonly LooseEnd[] {
  const { devices, pieces } = run
  const isDevice = (id: unknown) => devices.some(each => each.id === id)
  const ofDevices = devices.flatMap((each, index): readonly LooseEnd[] => {
    const at = { of: each.id, path: ['supply', 'devices', each.id] }
    return [
      ...(isFedByPanel(each, index) || pieces.some(({ to }) => to === each.id)
        ? []
        : [{ kind: 'nothing-in', ...at } as const]),
      ...(pieces.some(({ from }) => from === each.id)
        ? []
        : [{ kind: 'nothing-on', ...at } as const]),
    ]
  })
  const ofPieces = pieces.flatMap(({ id, from, to }): readonly LooseEnd[] => {
    const at = (key: string) => ({ of: id, path: ['supply', 'cables', id, key] })
    return [
      ...(from === undefined || isDevice(from)
        ? []
        : [{ kind: 'no-beginning', ...at('from') } as const]),
      ...(to === undefined || to === BOX || isDevice(to)
        ? []
        : [{ kind: 'no-end', ...at('to') } as const]),
    ]
  })
  const reached = reachedIn(run)
  const ringed = pieces.flatMap(({ id, from }): readonly LooseEnd[] =>
    isDevice(from) && !reached.has(String(from)) && leadsBack(run, String(from))
      ? [{ kind: 'in-a-ring', of: id, path: ['supply', 'cables', id, 'to'] }]
      : [],
  )
  return [...ofDevices, ...ofPieces, ...ringed]
}

/** Every device that a piece leads to from some, themselves only where one leads back. */
function ledTo({ pieces }: Run, from: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>()
  const next = [...from]
  for (let at = next.pop(); at !== undefined; at = next.pop())
    for (const piece of pieces) {
      const to = String(piece.to)
      if (piece.from === at && piece.to !== undefined && !found.has(to)) {
        found.add(to)
        next.push(to)
      }
    }
  return found
}

function reachedIn(run: Run): ReadonlySet<string> {
  const heads = run.devices.filter(isFedByPanel).map(each => each.id)
  return new Set([...heads, ...ledTo(run, heads)])
}

const leadsBack = (run: Run, device: string): boolean => ledTo(run, [device]).has(device)

/** Ends of wires that arrive at a device of a known kind, and of which nobody said on what terminal. */
export const unlandedIn = (
  { devices, pieces }: Run,
  kinds: readonly DeviceChoice[],
): readonly SurveyPath[] =>
  pieces.flatMap(piece => {
    const kind = devices.find(each => each.id === piece.to)?.device
    const arrives = kinds.find(each => each.id === kind)?.arrives ?? {}
    return piece.conductors
      .filter(each => each.to === undefined && arrives[carriedBy(each)] !== undefined)
      .map(each => ['supply', 'cables', piece.id, 'conductors', each.id, 'to'])
  })

/** What a wire carries within its own circuit. */
export const carriedBy = (wire: Wire): string => ownFunction(String(wire.function) as FeedFunction)

/** Whether a kind of device can stand behind another one: it has terminals for all that arrives. */
export const standsBehind = ({ fedAt, arrives }: DeviceChoice): boolean =>
  fedAt.every(each => arrives[each] !== undefined)

/** What a piece is called. */
export function labelIn({ pieces }: Run, id: string): string {
  const label = pieces.find(each => each.id === id)?.label
  return typeof label === 'string' ? label : id
}
