import type { ControlBox } from '../box/control-box.ts'
import type { Load } from '../load/load.ts'
import { suitsSensor, takes } from '../wiring/fits.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

/** Each shape of the box's sockets once, with the sockets that have it. */
function socketsOf({ board: { connectors } }: ControlBox): string {
  const shapes = [...new Set(connectors.map(each => each.shape))]
  const told = shapes.map(shape => {
    const ids = connectors.filter(each => each.shape === shape).map(each => each.id)
    return `“${shape}” (${ids.join(', ')})`
  })
  return told.join(', ') || '–'
}

/** Places for a load whose sockets are of another shape than its plug, where no place has its shape. */
function lintPlacesFor(box: ControlBox, load: Load, plug: string): readonly LintFinding[] {
  const places = box.places.flatMap((place, index) => {
    const connector = box.board.connectors.find(each => each.id === place.connector)
    const isFor = takes(place, load) && suitsSensor(box, place, load)
    return isFor && connector ? [{ place, index, connector }] : []
  })
  if (places.some(each => each.connector.shape === plug)) return []
  return places.map(({ place, index, connector }) =>
    finding('place-socket-other-shape', ['places', index, 'connector'], {
      place: place.label,
      connector: connector.id,
      shape: connector.shape,
      load: load.label,
      plug,
    }),
  )
}

/** Plugs of the carton that fit no socket of their box, or none of a place that takes their load. */
export function lintSupplied(box: ControlBox): readonly LintFinding[] {
  return box.supplied.flatMap((load, index) => {
    const plug = load.plug?.shape
    if (plug === undefined) return []
    if (box.board.connectors.some(each => each.shape === plug))
      return lintPlacesFor(box, load, plug)
    const path = ['supplied', index, 'plug', 'shape']
    const params = { load: load.label, plug, sockets: socketsOf(box) }
    return [finding('supplied-plug-fits-no-socket', path, params)]
  })
}
