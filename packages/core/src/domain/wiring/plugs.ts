import type { ControlBox, Place } from '../box/control-box.ts'
import type { Load } from '../load/load.ts'
import { terminalFor } from './fits.ts'

/**
 * Whether a load goes on a place as it is: its own plug into the place's connector with every pin
 * where its lead belongs, or bare leads on a place without a connector.
 */
export function fitsPlug(box: ControlBox, place: Place, load: Load): boolean {
  const connector = box.board.connectors.find(each => each.id === place.connector)
  if (!connector) return load.plug === undefined
  if (load.plug === undefined || load.plug.shape !== connector.shape) return false
  const { pins } = load.plug
  return load.leads.every(lead => {
    const pin = Object.keys(pins).find(each => pins[each] === lead.id)
    return pin !== undefined && connector.pins[pin] === terminalFor(place, lead)
  })
}
