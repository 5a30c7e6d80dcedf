import type { ControlBox, SupplyDevice } from '@tubwright/core'
import { readControlBox, readSupplyDevice } from '@tubwright/formats'
import type { ShelfTexts, ShelfView } from './protocol.ts'

/** The shelf as the core wants it, and as the screens show it. */
export interface Shelf {
  readonly boxes: ReadonlyMap<string, ControlBox>
  readonly devices: ReadonlyMap<string, SupplyDevice>
  readonly view: ShelfView
}

const idIn = (text: string): string => /^id:\s*(\S+)/mu.exec(text)?.[1] ?? '?'

/** The terminals on the supply side: of several on one bar the one that nothing goes on from. */
const arrivalsAt = ({ fedAt, lands, board }: SupplyDevice): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(fedAt).flatMap(([carries, node]) => {
      const all = board.terminals.filter(each => each.node === node)
      const own = all.find(each => each.id !== lands[carries as keyof typeof lands]) ?? all[0]
      return own ? [[carries, own.id]] : []
    }),
  )

const deviceChoice = (device: SupplyDevice) => {
  const { id, label, note, fedAt, lands, board } = device
  return {
    id,
    label,
    ...(note === undefined ? {} : { note }),
    fedAt: Object.keys(fedAt),
    lands: lands as Readonly<Record<string, string>>,
    arrives: arrivalsAt(device),
    terminals: board.terminals.map(each => ({ id: each.id, label: each.label ?? each.id })),
  }
}

const boxChoice = ({ id, label, maker, feeds }: ControlBox) => ({
  id,
  label,
  maker,
  feeds: feeds.map(each => each.label),
})

/** Reads the texts of a shelf; one that cannot be used is left out and told of. */
export function readShelf({ boxes, devices }: ShelfTexts): Shelf {
  const refused: { id: string; diagnostics: ShelfView['refused'][number]['diagnostics'] }[] = []
  const read = <Value extends { readonly id: string }>(
    texts: readonly string[],
    reader: typeof readControlBox | typeof readSupplyDevice,
  ): ReadonlyMap<string, Value> =>
    new Map(
      texts.flatMap(text => {
        const id = idIn(text)
        const { value, diagnostics } = reader(`${id}.yaml`, text)
        if (value) return [[value.id, value as unknown as Value] as const]
        refused.push({ id, diagnostics })
        return []
      }),
    )
  const own = read<ControlBox>(boxes, readControlBox)
  const known = read<SupplyDevice>(devices, readSupplyDevice)
  const plugs = new Set([...own.values()].flatMap(box => box.board.connectors.map(at => at.shape)))
  return {
    boxes: own,
    devices: known,
    view: {
      boxes: [...own.values()].map(boxChoice),
      devices: [...known.values()].map(deviceChoice),
      plugs: [...plugs].sort(),
      refused,
    },
  }
}
