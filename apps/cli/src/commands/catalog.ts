import type { Shelf } from '../catalogue.ts'
import { EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'

/** What lies in the catalogue: boxes, tubs, supply devices. */
export function runCatalog(
  shelf: Shelf,
  _: string,
  { json }: { readonly json?: boolean },
  talk: Talk,
): number {
  const devices = [...shelf.devices.values()].map(({ id, label }) => ({ id, label }))
  const boxes = shelf.boxes.map(({ id, label, maker }) => ({ id, label, maker }))
  if (json) {
    const form = { schema: 'catalogue/1', boxes, tubs: shelf.tubs, devices }
    showWire(form, shelf, talk)
    return EXIT.fine
  }
  talk.data(talk.bold('Control boxes'))
  for (const { id, label, maker } of boxes) talk.data(`  ${id.padEnd(28)} ${label}, ${maker}`)
  talk.data(talk.bold('\nTubs'))
  for (const tub of shelf.tubs) talk.data(`  ${tub}`)
  talk.data(talk.bold('\nSupply devices'))
  for (const { id, label } of devices) talk.data(`  ${id.padEnd(28)} ${label}`)
  return EXIT.fine
}
