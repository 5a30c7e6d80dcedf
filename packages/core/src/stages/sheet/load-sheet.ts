import type { Part } from '../../domain/board/board.ts'
import type { Job } from '../../domain/job.ts'
import { BOX, findTerminal, placeOf } from '../../domain/job.ts'
import type { Circuit, Load, PoweredLoad } from '../../domain/load/load.ts'
import { isMotor, isPowered } from '../../domain/load/load.ts'
import { drawOf, plateVolts, strapOf } from '../../domain/wiring/draw.ts'
import { circuitElement, partElement } from '../../domain/wiring/wire.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { SheetWire } from './artifact.ts'
import type { Ladder, LadderPart, LoadSheetRow } from './ladder/artifact.ts'
import { commandOf } from './ladder/captions.ts'
import { circuitText } from './ladder/describe.ts'
import { partsOnWay } from './ladder/paths.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { commandLabel } from './together.ts'

interface Sources {
  readonly job: Job
  readonly plan: WiringPlan
  readonly verification: Verification
  readonly wires: readonly SheetWire[]
  readonly ladder: Ladder
}

function ampsText({ job, plan }: Sources, load: PoweredLoad, circuit: Circuit): SheetText {
  const { from, to, assumed } = drawOf(job, plan.landing, load, circuit)
  if (assumed) return text('lid.amps-unknown')
  return from === to ? text('lid.amps', { amps: to }) : text('lid.amps-range', { from, to })
}

/** A contact is held to its figure for what it switches. */
function ratingOf({ rated: { resistive, motor } }: Extract<Part, { kind: 'contact' }>, load: Load) {
  return isMotor(load) && motor ? motor.text : resistive.text
}

const unique = <Value extends { readonly id: string }>(all: readonly Value[]): readonly Value[] =>
  all.filter((each, at) => all.findIndex(other => other.id === each.id) === at)

/** The fuses, contacts and jumpers of the box that a load's current passes. */
function passed({ job }: Sources, load: Load, way: readonly LadderPart[]) {
  const parts = unique(way).flatMap(({ id, name, note }) => {
    const part = job.box.board.parts.find(each => partElement(BOX, each.id) === id)
    return [{ id, name, note, part }]
  })
  return {
    fuses: parts.flatMap(({ name, part }) =>
      part?.kind === 'fuse' ? [{ name, rating: part.rated.text }] : [],
    ),
    contacts: parts.flatMap(({ name, part }) =>
      part?.kind === 'contact' ? [{ name, rating: ratingOf(part, load) }] : [],
    ),
    jumpers: unique(way).flatMap(({ symbol, name, note }) =>
      symbol === 'jumper' && typeof note === 'string' ? [{ id: name, position: note }] : [],
    ),
  }
}

function rowOf(sources: Sources, load: PoweredLoad): LoadSheetRow {
  const { job, plan, verification, wires, ladder } = sources
  const { landing } = plan
  const way = load.circuits.flatMap(each =>
    partsOnWay(ladder.sections, circuitElement(load.id, each.id)),
  )
  const commands = load.circuits.flatMap(each => commandOf(job, landing, load, each) ?? [])
  const strap = strapOf(load, landing)
  const isLanded = load.leads.some(each =>
    findTerminal(job, landing.ends[`${load.id}.${each.id}`] ?? ''),
  )
  const places = job.box.places.filter(
    each => each.id === plan.assignments.find(one => one.load === load.id)?.place,
  )
  return {
    load: load.id,
    label: load.label,
    place: (places[0] ?? placeOf(job, landing, load))?.label,
    volts: plateVolts(load, landing),
    amps: load.circuits.map(each => ({
      circuit: circuitText({ of: 'circuit', load, circuit: each }),
      amps: ampsText(sources, load, each),
    })),
    leads: wires
      .filter(each => each.kind === 'lead' && each.owner === load.id)
      .map(({ number, letters, functionText, ends }) => ({
        wire: number,
        terminal: ends[0]?.terminal,
        letters,
        functionText,
      })),
    strap: strap === undefined ? undefined : (load.straps?.positions[strap]?.volts.text ?? strap),
    ...passed(sources, load, way),
    commands: [...new Set(commands)].map(each => commandLabel(job.box, each)),
    isAlwaysOn: isLanded && commands.length === 0,
    liveWhenOff: verification.liveWhenOff.includes(load.id),
  }
}

/** One line a load, in the order of the outputs. */
export const loadSheetOf = (sources: Sources, loads: readonly Load[]): readonly LoadSheetRow[] =>
  loads.filter(isPowered).map(each => rowOf(sources, each))
