import type {
  Circuit,
  Cold,
  ColdReading,
  ColdState,
  Job,
  Landing,
  Load,
} from '../../../../src/index.ts'
import { allPlugged, coldOf, ohmsBetween, parseQuantity, pointNode } from '../../../../src/index.ts'
import { planned, slipped } from '../../../support/judged.ts'

export { planned, slipped }

export const DEMO = planned('everyday-240-circulation', 'heron-4')

/** A cold network of the demo: everything plugged in and the supply landed, unless told otherwise. */
export const coldDemo = (
  state: Partial<ColdState> = {},
  landing: Landing = DEMO.landing,
  job: Job = DEMO.job,
): Cold => coldOf(job, landing, { plugged: allPlugged(job), supply: 'open', ...state })

/** The node of a name that there is. */
export function at(cold: Cold, name: string): string {
  const node = pointNode(cold, name)
  if (node === undefined) throw new Error(`no point ${name}`)
  return node
}

export const read = (cold: Cold, from: string, to: string): ColdReading =>
  ohmsBetween(cold, at(cold, from), at(cold, to))

export const NOTHING: ReadonlySet<string> = new Set()

/** A known value of so many ohms. */
export function known(text: string): NonNullable<Circuit['ohms']> {
  const value = parseQuantity('Ω', text)
  if (!value.ok) throw new Error(text)
  return { kind: 'known', value: value.value }
}

const withCircuits = (load: Load, id: string, ohms: Readonly<Record<string, string>>): Load =>
  load.id !== id || load.kind === 'probe'
    ? load
    : {
        ...load,
        circuits: load.circuits.map(each => {
          const text = ohms[each.id]
          return text === undefined ? each : { ...each, ohms: known(text) }
        }),
      }

/** A job with ohms surveyed at the circuits of a load. */
export const surveyed = (job: Job, load: string, ohms: Readonly<Record<string, string>>): Job => ({
  ...job,
  loads: job.loads.map(each => withCircuits(each, load, ohms)),
})

/** A job whose box gives the ohms of its transformer's primary. */
export const withPrimary = (job: Job, ohms: string): Job => ({
  ...job,
  box: {
    ...job.box,
    board: {
      ...job.box.board,
      parts: job.box.board.parts.map(each =>
        each.kind === 'transformer' ? { ...each, primaryOhms: known(ohms) } : each,
      ),
    },
  },
})
