import { beforeAll, describe, expect, test } from 'vitest'
import type { Element, Network, NodeId, Plant } from '../../src/index.ts'
import {
  closedIn,
  LEG_VOLTS,
  planRefit,
  plantOf,
  solveState,
  statesOf,
  writeSpiceNetlist,
} from '../../src/index.ts'
import type { Simulator } from '../engines/circuit/support/simulator.ts'
import { startSimulator } from '../engines/circuit/support/simulator.ts'
import { checkPhysics } from '../support/check-physics.ts'
import { demoBoxes, demoDevices, demoIds, demoJob, demoTub } from '../support/demo.ts'

const TOLERANCE = 1e-9 // of the source's leg volts: what a general simulator is good for
const LIMIT_OHMS = 1e5 // beyond this an element is insulation or an open contact

/** What joins two nodes well enough that neither hangs on insulation by it. */
function joins(element: Element, closed: ReadonlySet<string>): boolean {
  switch (element.kind) {
    case 'impedance':
      return Math.hypot(element.ohms.re, element.ohms.im) < LIMIT_OHMS
    case 'contact':
      return closed.has(element.id)
    case 'source':
      return true
    default:
      return false
  }
}

/** Nodes that more than insulation ties to the reference. */
function tiedNodes(network: Network, closed: ReadonlySet<string>): ReadonlySet<NodeId> {
  const tied = new Set([network.reference])
  for (let grew = true; grew; ) {
    grew = false
    for (const element of network.elements) {
      if (element.kind === 'transformer' || !joins(element, closed)) continue
      const [a, b] = element.between
      if (tied.has(a) === tied.has(b)) continue
      tied.add(a).add(b)
      grew = true
    }
  }
  return tied
}

let simulator: Simulator
beforeAll(async () => {
  simulator = await startSimulator()
})

async function compareMode(
  plant: Plant,
  state: Parameters<typeof solveState>[1],
  legVolts: number,
) {
  const closed = closedIn(plant, state)
  const { network } = plant.wiring
  const ours = solveState(plant, state)
  checkPhysics(network, ours.solution, closed)
  const theirs = await simulator.solve(writeSpiceNetlist(network, closed))
  let [worst, compared] = [0, 0]
  for (const node of tiedNodes(network, closed)) {
    const [a, b] = [ours.volts(node), theirs.get(node)]
    if (!b) throw new Error(`the simulator has no ${node}`)
    worst = Math.max(worst, Math.hypot(a.re - b.re, a.im - b.im) / legVolts)
    compared++
  }
  return { worst, compared }
}

describe('every mode of every demo job in an independent simulator', () => {
  for (const id of demoIds('tubs')) {
    const [best] = planRefit(demoTub(id), demoBoxes(), demoDevices).plans
    if (!best) continue
    test(`${id} on ${best.plan.box}`, async () => {
      const job = demoJob(id, best.plan.box)
      const plant = plantOf(job, best.plan.landing)
      const states = statesOf(job, best.plan.landing)
      if (!plant.ok || !states.ok) throw new Error('not solved')
      let [worst, compared] = [0, 0]
      for (const state of states.value) {
        const result = await compareMode(plant.value, state, LEG_VOLTS[job.tub.supply.system])
        worst = Math.max(worst, result.worst)
        compared += result.compared
      }
      console.log(
        `${id}: ${states.value.length} states, ${compared} node voltages, worst ${worst.toExponential(1)} of the leg`,
      )
      expect(compared).toBeGreaterThan(10 * states.value.length)
      expect(worst).toBeLessThanOrEqual(TOLERANCE)
    })
  }
})
