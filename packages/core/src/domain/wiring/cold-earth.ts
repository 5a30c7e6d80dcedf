import type { NodeId } from '../../engines/circuit/network.ts'
import type { Feed } from '../box/control-box.ts'
import type { Job } from '../job.ts'
import { BOX, boardLabel, findTerminal } from '../job.ts'
import type { Cold } from './cold.ts'
import { pointNode } from './cold.ts'
import { COLD_LIMITS } from './cold-figures.ts'
import { ohmBounds, ohmsWith } from './cold-meter.ts'
import { boardNode } from './wire.ts'

/** Earth from the feed's earth terminal to something that has to be joined to it. */
export interface EarthPath {
  /** Metal of a load, the other earth terminals of the box, or the far end of the run. */
  readonly kind: 'metal' | 'terminal' | 'run'
  /** A load, a terminal `box.B4`, or a device. */
  readonly subject: string
  readonly label: string
  /** By the model, copper at 20 °C and joints [Ω]; absent where it is open. */
  readonly expected?: number
  /** Most that it may read [Ω]. */
  readonly limit: number
  /** Whether it keeps to the limit with every joint at its worst. */
  readonly holds: boolean
}

function earthPath(
  cold: Cold,
  from: NodeId,
  to: NodeId,
  about: Pick<EarthPath, 'kind' | 'subject' | 'label'>,
): EarthPath {
  const limit = about.kind === 'run' ? COLD_LIMITS.runOhms : COLD_LIMITS.earthOhms
  // Copper alone: what insulation or a winding lets through is no earth.
  const copper = { ...cold, elements: cold.elements.filter(each => each.role === 'joint') }
  const expected = ohmsWith(copper.elements, from, to, each => each.ohms?.expected ?? 0)
  const holds = ohmBounds(copper, from, to).greatest <= limit
  return {
    ...about,
    ...(expected < Number.POSITIVE_INFINITY ? { expected } : {}),
    limit,
    holds,
  }
}

/** The device that brings earth to the box, and the terminal its earth conductor lands on here. */
const runsOf = ({ job, landing }: Cold) =>
  job.tub.supply.cables
    .filter(each => each.to === BOX)
    .flatMap(cable =>
      cable.conductors
        .filter(each => /(?:^|-)earth$/u.test(each.function))
        .flatMap(each => {
          const terminal = findTerminal(job, landing.ends[`${cable.id}.${each.id}@${BOX}`] ?? '')
          const earth = job.devices.get(cable.from)?.board.earth
          return terminal && earth !== undefined
            ? [
                {
                  device: cable.from,
                  from: boardNode(BOX, terminal.node),
                  to: boardNode(cable.from, earth),
                },
              ]
            : []
        }),
    )

const loadsWithMetal = ({ loads }: Job) =>
  loads.filter(load => load.leads.some(each => each.function === 'earth'))

/**
 * Continuity of earth: from the earth terminal of the feed to each metal part that is plugged in, to
 * each earth terminal of the box, and end to end of the run where it is landed.
 */
export function earthPaths(cold: Cold, feed: Feed): readonly EarthPath[] {
  const { job } = cold
  const name = `${BOX}.${feed.lands.earth}`
  const from = pointNode(cold, name)
  if (feed.lands.earth === undefined || from === undefined) return []
  const terminals = job.box.board.terminals.filter(
    each => each.class === 'earth' && each.id !== feed.lands.earth,
  )
  return [
    ...terminals.map(({ id, node, label }) =>
      earthPath(cold, from, boardNode(BOX, node), {
        kind: 'terminal',
        subject: `${BOX}.${id}`,
        label: label ?? id,
      }),
    ),
    ...loadsWithMetal(job).flatMap(({ id, label }) => {
      const metal = pointNode(cold, `${id}.metal`)
      const isIn = cold.landing.ends[`${id}.${earthLead(job, id)}`] !== 'insulated'
      return metal !== undefined && isIn
        ? [earthPath(cold, from, metal, { kind: 'metal', subject: id, label })]
        : []
    }),
    ...runsOf(cold).map(({ device, from: here, to }) =>
      earthPath(cold, here, to, {
        kind: 'run',
        subject: device,
        label: boardLabel(job, device),
      }),
    ),
  ]
}

const earthLead = ({ loads }: Job, load: string): string =>
  loads.find(each => each.id === load)?.leads.find(each => each.function === 'earth')?.id ?? ''
