import type { Plant, State } from '@tubwright/core'
import { closedIn, observe, plantOf, statesOf, writeSpiceNetlist } from '@tubwright/core'
import { amps, figure } from '@tubwright/words'
import type { Shelf } from '../catalogue.ts'
import { findSurvey } from '../catalogue.ts'
import { BadInput, EXIT } from '../exits.ts'
import { writeWhole } from '../files.ts'
import type { Talk } from '../talk.ts'
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
  const { solved, trip, blown } = observe(plant, state)
  return {
    schema: 'solved-mode/1' as const,
    mode: keyOf(state.commands),
    trip: trip ?? null,
    blown,
    currentLaw: solved.solution.kclResidual,
    powerBalance: solved.solution.powerBalance,
    loads: plant.circuits.map(({ load, name, a, b, element }) => ({
      circuit: name,
      label: load.label,
      volts: solved.across(a, b),
      amps: solved.amps(element),
    })),
    terminals: plant.terminals.map(({ name, terminal, node, elements }) => ({
      terminal: name,
      label: terminal.label ?? terminal.id,
      voltsToEarth: solved.potential(node),
      amps: elements.reduce((sum, each) => sum + solved.amps(each), 0),
    })),
  }
}

function show(figures: ReturnType<typeof figuresOf>, talk: Talk): void {
  talk.data(talk.bold(`Mode ${figures.mode}`))
  talk.data(
    `current law to ${figures.currentLaw.toExponential(1)}, power balance to ${figures.powerBalance.toExponential(1)}`,
  )
  if (figures.trip) talk.data(talk.red(`${figures.trip.part} trips: ${amps(figures.trip.amps)}`))
  talk.data(talk.bold('\nLoad                          volts     amps'))
  for (const each of figures.loads)
    talk.data(
      `${each.circuit.padEnd(28)} ${figure(each.volts).padStart(6)} ${figure(each.amps).padStart(8)}`,
    )
  talk.data(talk.bold('\nTerminal                     volts to earth     amps'))
  for (const each of figures.terminals)
    talk.data(
      `${each.terminal.padEnd(28)} ${figure(each.voltsToEarth).padStart(14)} ${figure(each.amps).padStart(8)}`,
    )
}

/** One mode solved: volts and amps of everything, or its netlist for any simulator. */
export function runSolve(shelf: Shelf, name: string, options: SolveOptions, talk: Talk): number {
  const { job, landing } = jobAndLanding(shelf, findSurvey(shelf, name), options, talk)
  const states = statesOf(job, landing)
  if (!states.ok) throw new BadInput(`More than ${states.failure.limit} commands: too many states.`)
  const state = stateNamed(states.value, options.mode ?? 'off')
  const plant = plantOf(job, landing)
  if (!plant.ok) throw new BadInput('The landing makes no network that can be solved.')
  if (options.spice) {
    const netlist = writeSpiceNetlist(plant.value.wiring.network, closedIn(plant.value, state))
    if (options.map !== undefined)
      writeWhole(options.map, `${JSON.stringify(netlist.map, null, 2)}\n`)
    talk.data(options.json ? JSON.stringify(netlist, null, 2) : netlist.text)
    return EXIT.fine
  }
  const figures = figuresOf(plant.value, state)
  if (options.json) talk.data(JSON.stringify(figures, null, 2))
  else show(figures, talk)
  return figures.trip || figures.blown.length > 0 ? EXIT.found : EXIT.fine
}
