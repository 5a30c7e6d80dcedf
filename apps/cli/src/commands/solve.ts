import type { Plant, State } from '@tubwright/core'
import {
  closedIn,
  observe,
  plantOf,
  statesOf,
  throughAmps,
  writeSpiceNetlist,
} from '@tubwright/core'
import { amps, figure } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { findSurvey, writeOutput } from '../catalogue.ts'
import { BadInput, EXIT } from '../exits.ts'
import type { Talk } from '../talk.ts'
import { showWire } from '../wire.ts'
import type { VerifyOptions } from './verify.ts'
import { jobAndLanding } from './verify.ts'

export interface SolveOptions extends VerifyOptions {
  readonly mode?: string
  readonly spice?: boolean
  readonly map?: string
}

const keyOf = (commands: Iterable<string>): string => [...commands].sort().join('+') || 'off'

function stateNamed(states: readonly State[], name: string): State {
  const wanted = keyOf(name === 'off' ? [] : name.split(/[+,]/u).map(each => each.trim()))
  const state = states.find(each => keyOf(each.commands) === wanted)
  if (state) return state
  const may = states.filter(each => each.kind === 'mode').map(each => keyOf(each.commands))
  throw new BadInput(
    `--mode ${name}: the box cannot be in it. It can be in:\n  ${may.join('\n  ')}`,
  )
}

function figuresOf(plant: Plant, state: State) {
  const { solved, trip, blown, opened } = observe(plant, state)
  return {
    schema: 'solved-mode/1' as const,
    mode: keyOf(state.commands),
    trip: trip ?? null,
    blown,
    opened,
    currentLaw: solved.solution.kclResidual,
    powerBalance: solved.solution.powerBalance,
    loads: plant.circuits.map(({ load, name, a, b, element }) => ({
      circuit: name,
      label: load.label,
      volts: solved.across(a, b),
      amps: solved.amps(element),
    })),
    terminals: plant.terminals.map(each => ({
      terminal: each.name,
      label: each.terminal.label ?? each.terminal.id,
      voltsToEarth: solved.potential(each.node),
      amps: throughAmps(each, solved),
    })),
  }
}

function show(figures: ReturnType<typeof figuresOf>, talk: Talk): void {
  talk.data(talk.bold(`Mode ${figures.mode}`))
  talk.data(
    `current law to ${figures.currentLaw.toExponential(1)}, power balance to ${figures.powerBalance.toExponential(1)}`,
  )
  if (figures.trip) talk.data(talk.red(`${figures.trip.part} trips: ${amps(figures.trip.amps)}`))
  for (const each of figures.opened)
    talk.data(talk.red(`${each.part} trips and opens its own circuit: ${amps(each.amps)}`))
  for (const each of figures.blown)
    talk.data(talk.red(`${each.part} blows: ${amps(each.amps)} (${amps(each.rated)} rated)`))
  talk.data(talk.bold(`\n${'Load'.padEnd(24)}    volts     amps`))
  for (const { circuit, volts, amps, label } of figures.loads)
    talk.data(
      `${circuit.padEnd(24)} ${figure(volts).padStart(8)} ${figure(amps).padStart(8)}  ${label}`,
    )
  talk.data(talk.bold(`\n${'Terminal'.padEnd(24)} to earth     amps`))
  for (const { terminal, voltsToEarth, amps, label } of figures.terminals)
    talk.data(
      `${terminal.padEnd(24)} ${figure(voltsToEarth).padStart(8)} ${figure(amps).padStart(8)}  ${label}`,
    )
}

/** One mode solved: volts and amps of everything, or its netlist for any simulator. */
export function runSolve(shelf: Shelf, name: string, options: SolveOptions, talk: Talk): number {
  const { job, landing } = jobAndLanding(shelf, findSurvey(shelf, name), options, 'solving', talk)
  const states = statesOf(job, landing)
  if (!states.ok) throw new BadInput(`More than ${states.failure.limit} commands: too many states.`)
  const state = stateNamed(states.value, options.mode ?? 'off')
  const plant = plantOf(job, landing)
  if (!plant.ok) throw new BadInput('The landing makes no network that can be solved.')
  if (options.map !== undefined && !options.spice)
    throw new BadInput('--map goes with --spice: it says what the names of the netlist stand for.')
  if (options.spice) {
    const netlist = writeSpiceNetlist(plant.value.wiring.network, closedIn(plant.value, state))
    if (options.map !== undefined)
      writeOutput(shelf, options.map, `${JSON.stringify(netlist.map, null, 2)}\n`, [
        name,
        options.box,
        options.landing,
      ])
    const wire = { schema: 'netlist/1' as const, ...netlist }
    if (options.json) showWire(wire, shelf, talk)
    else talk.data(netlist.text)
    return EXIT.fine
  }
  const figures = figuresOf(plant.value, state)
  if (options.json) showWire(figures, shelf, talk)
  else show(figures, talk)
  return figures.trip || figures.blown.length > 0 ? EXIT.found : EXIT.fine
}
