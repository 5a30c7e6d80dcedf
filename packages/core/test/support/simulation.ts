import { Simulation } from 'eecircuit-engine'

let started: Promise<Simulation> | undefined

async function start(): Promise<Simulation> {
  const simulation = new Simulation()
  await simulation.start()
  return simulation
}

/**
 * The one circuit simulator of this process, started when it is first wanted.
 *
 * Two of them in one process hand each other's plots back, or none.
 */
export const theSimulation = (): Promise<Simulation> => {
  started ??= start()
  return started
}

let last: Promise<unknown> = Promise.resolve()

/** One after the other: it holds one netlist at a time. */
export function inTurn<Value>(work: (simulation: Simulation) => Promise<Value>): Promise<Value> {
  const turn = last.then(theSimulation).then(work)
  last = turn.catch(() => undefined)
  return turn
}
