import type { Terminal } from '../../domain/board/board.ts'
import type { Region } from '../../domain/described.ts'
import type { Job } from '../../domain/job.ts'
import type { Load } from '../../domain/load/load.ts'
import { isMotor } from '../../domain/load/load.ts'
import type { Reading } from './artifact.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'

/** Most ohms of a bond wire with its two lugs [Ω]; common practice, no source. */
const BOND_OHMS = 1

/** What has a bond lug of its own: motors and heaters in metal. Common practice, no source. */
const isMetal = (load: Load): boolean =>
  (isMotor(load) || load.kind === 'heater') && load.leads.some(each => each.function === 'earth')

export const metalLoads = (job: Job): readonly Load[] => job.loads.filter(isMetal)

/** The lug of the box for the bond wire: the earth screw or stud that no feed and no load uses. */
export function bondLug({ box }: Job): Terminal | undefined {
  const used = new Set([...box.feeds, ...box.places].flatMap(({ lands }) => Object.values(lands)))
  return box.board.terminals.find(
    each =>
      each.class === 'earth' &&
      (each.kind === 'stud' || each.kind === 'screw') &&
      !used.has(each.id),
  )
}

/**
 * How thick a bond wire is, where that is known for the region.
 *
 * @source [NEC-680.26] solid copper, not smaller than 8 AWG; for the other regions no figure is
 *   known here
 */
export const bondSize = (region: Region): SheetText =>
  region === 'US' ? text('bond.size-us') : text('bond.size-local')

function lugText(job: Job): SheetText {
  const lug = bondLug(job)
  if (!lug) return text('bond.lug-maker')
  return lug.torque
    ? text('bond.lug', { lug: lug.id, torque: lug.torque.text })
    : text('bond.lug-no-torque', { lug: lug.id })
}

/** What is joined with what, by which wire, on which lug, how tight. */
export const bondTexts = (job: Job): readonly SheetText[] => [
  text('bond.wire', { size: bondSize(job.tub.region) }),
  text('bond.join', { lug: lugText(job), parts: metalLoads(job).map(each => each.label) }),
  text('bond.torque'),
]

/** Bond lug to each metal part, loads unplugged: the bond wire alone answers. */
export const bondReadings = (job: Job): readonly Reading[] => {
  const expected = text('expect.bond', { ohms: BOND_OHMS })
  return [
    ...metalLoads(job).map(
      ({ label: load }): Reading => ({ what: text('read.bond', { load }), expected, unit: 'Ω' }),
    ),
    { what: text('read.bond-other'), expected, unit: 'Ω' },
  ]
}
