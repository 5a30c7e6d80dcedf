import type { LeadFunction } from '../../../domain/board/board.ts'
import type { Job } from '../../../domain/job.ts'
import { BOX } from '../../../domain/job.ts'
import type { Landing } from '../../../domain/landing/landing.ts'
import type { Circuit, Load } from '../../../domain/load/load.ts'
import type { SheetText } from '../messages.ts'
import { text } from '../messages.ts'
import { commandLabel } from '../together.ts'
import { functionText, panelLabel } from '../wires.ts'
import { circuitText } from './describe.ts'
import { partKey } from './designations.ts'
import type { Edge } from './graph.ts'
import type { Row } from './rows.ts'
import type { Material } from './sections.ts'

/** The command that runs a circuit of a load where it is landed; undefined where nothing switches it. */
export function commandOf(
  { box }: Job,
  landing: Landing,
  load: Load,
  { across }: Circuit,
): string | undefined {
  const terminals = across.map(lead => landing.ends[`${load.id}.${lead}`])
  for (const { lands, commands } of box.places)
    for (const name of Object.keys(commands) as LeadFunction[])
      if (terminals.includes(`${BOX}.${lands[name]}`)) return commands[name]
  return undefined
}

const isOff = (landing: Landing, load: Load, { across }: Circuit): boolean =>
  across.some(lead => !landing.ends[`${load.id}.${lead}`]?.startsWith(`${BOX}.`))

const cableLabel = ({ tub }: Job, id: string): string =>
  tub.supply.cables.find(each => each.id === id)?.label ?? id

function edgeSays(material: Material, { is }: Edge): readonly SheetText[] {
  const { job, landing, names } = material
  switch (is.of) {
    case 'circuit': {
      const { load, circuit } = is
      const name = circuitText(is)
      const command = commandOf(job, landing, load, circuit)
      const runs = isOff(landing, load, circuit)
        ? text('rung.off')
        : command === undefined
          ? text('rung.always')
          : text('rung.with', { command: commandLabel(job.box, command) })
      return [
        name
          ? text('rung.load-circuit', { load: load.label, circuit: name })
          : text('rung.load', { load: load.label }),
        runs,
      ]
    }
    case 'probe':
      return [text('rung.load', { load: is.load.label })]
    case 'winding':
      if (is.which === 'secondary')
        return [
          text('rung.secondary', { transformer: names.get(partKey(is.board, is.part.id)) ?? '' }),
        ]
      return [text(is.part.isolating ? 'rung.primary' : 'rung.auto-primary')]
    case 'wire':
      return is.wire.kind === 'cable'
        ? [
            text('rung.conductor', {
              function: is.wire.functionText,
              cable: cableLabel(job, is.wire.owner),
            }),
          ]
        : []
    case 'part':
      if (is.part.kind === 'electronics') return [text('rung.electronics')]
      if (is.part.kind === 'ground-fault')
        return [text('rung.ground-fault', { device: panelLabel(job, is.board) })]
      return []
    case 'jumper':
      return []
  }
}

/** What stands beside a rung: what it is for, and what runs it. */
export function saysOf(material: Material, { main, steps }: Row): readonly SheetText[] {
  if (main?.spare) {
    const { place, lead, isOnly } = main.spare
    return [
      isOnly
        ? text('rung.spare', { place: place.label })
        : text('rung.spare-lead', { place: place.label, lead: functionText(material.job, lead) }),
    ]
  }
  if (main?.edge) return edgeSays(material, main.edge)
  return steps.flatMap(({ edge }) => (edge ? edgeSays(material, edge) : [])).slice(0, 1)
}
