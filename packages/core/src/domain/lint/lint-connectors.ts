import type { ControlBox, Place } from '../box/control-box.ts'
import type { LintFinding } from './finding.ts'
import { finding } from './finding.ts'

function lintPlace(box: ControlBox, place: Place, index: number): readonly LintFinding[] {
  const { board } = box
  const at = board.connectors.findIndex(each => each.id === place.connector)
  const connector = board.connectors[at]
  if (!connector) return []
  const pinned = Object.values(connector.pins)
  const landed = Object.entries(place.lands)
  const missed = landed.flatMap(([does, terminal]) =>
    terminal === undefined || pinned.includes(terminal)
      ? []
      : [
          finding('connector-misses-terminal', ['places', index, 'lands', does], {
            connector: connector.id,
            terminal,
            place: place.label,
          }),
        ],
  )
  const own = landed.map(([, terminal]) => terminal)
  const elsewhere = Object.entries(connector.pins).flatMap(([pin, terminal]) =>
    own.includes(terminal)
      ? []
      : [
          finding('connector-pin-elsewhere', ['board', 'connectors', at, 'pins', pin], {
            connector: connector.id,
            pin,
            terminal,
            place: place.label,
          }),
        ],
  )
  return [...missed, ...elsewhere]
}

/** Places whose connector's pins do not reach their terminals, and connectors of no place. */
export function lintConnectors(box: ControlBox): readonly LintFinding[] {
  const used = box.places.map(each => each.connector)
  const unused = box.board.connectors.flatMap(({ id }, index) =>
    used.includes(id)
      ? []
      : [finding('connector-unused', ['board', 'connectors', index], { connector: id })],
  )
  return [...box.places.flatMap((place, index) => lintPlace(box, place, index)), ...unused]
}
