import type { ResultType, Simulation } from 'eecircuit-engine'
import { inTurn } from '../support/simulation.ts'
import { buildNetwork } from './build-network.ts'
import { switchesIn } from './configurations.ts'
import type { RawLanding } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import type { Numbered } from './solve-dense.ts'
import { nodeIm, nodeRe, numberNetwork, solveNetwork } from './solve-dense.ts'
import type { State } from './states.ts'

/** Above this an element holds no node: insulation and open contacts [Ω]. */
const HOLDING_OHMS = 1e6

export type SimulatorCheck =
  | { readonly compared: number; readonly worst: number }
  | { readonly skipped: string }

/**
 * Writes one state as a netlist, has it solved by a circuit simulator and compares node voltages.
 *
 * Nodes that float on insulation alone are simulated but not compared: single elimination in the
 * simulator keeps few of their digits.
 *
 * @returns nodes compared, and the worst difference as a share of the source volts
 */
export async function checkInSimulator(
  job: OracleJob,
  landing: RawLanding,
  state: State,
): Promise<SimulatorCheck> {
  const numbered = numberNetwork(buildNetwork(job, landing, {}))
  const closed = switchesIn(job, numbered.network, state, 'closed')
  const held = heldNodes(numbered, closed)
  if (held.size === 0) return { skipped: 'every node floats on insulation alone' }
  const volts = await simulate(netlistOf(numbered, closed, job.hertz))
  if (typeof volts === 'string') return { skipped: volts }
  const own = solveNetwork(numbered, closed)
  let worst = 0
  for (const node of held) {
    const at = volts.get(`v(n${node})`)
    if (!at) return { skipped: `the simulator gave no n${node}` }
    worst = Math.max(worst, Math.hypot(at.real - nodeRe(own, node), at.img - nodeIm(own, node)))
  }
  return { compared: held.size, worst: worst / numbered.sourceVolts }
}

/** Resistance of each branch in this state; undefined where there is nothing. */
function branchOhms(numbered: Numbered, closed: Uint8Array): (number | undefined)[] {
  const { network, a, b } = numbered
  const ohms: (number | undefined)[] = network.branches.map(each => each.r)
  network.switches.forEach((each, at) => {
    if (closed[at] === 1) return
    const { open } = network.branches[each.branch] ?? {}
    ohms[each.branch] = open !== undefined && Number.isFinite(open) ? open : undefined
  })
  return ohms.map((each, at) => ((a[at] ?? -2) === -2 || (b[at] ?? -2) === -2 ? undefined : each))
}

/** Nodes joined to the reference by elements of less than `HOLDING_OHMS`. */
function heldNodes(numbered: Numbered, closed: Uint8Array): ReadonlySet<number> {
  const ohms = branchOhms(numbered, closed)
  const pairs = ohms.flatMap((each, at): [number, number][] =>
    each === undefined || each >= HOLDING_OHMS
      ? []
      : [[numbered.a[at] ?? -1, numbered.b[at] ?? -1]],
  )
  const reached = new Set([-1])
  for (const node of reached)
    for (const pair of pairs) if (pair.includes(node)) for (const each of pair) reached.add(each)
  reached.delete(-1)
  return reached
}

/** The netlist of one state: nodes `n0`, `n1`, …, ground `0`. */
export function netlistOf(numbered: Numbered, closed: Uint8Array, hertz: number): string {
  const { network, a, b } = numbered
  const node = (at: number | undefined): string => (at === undefined || at < 0 ? '0' : `n${at}`)
  const digits = (value: number): string => value.toExponential(16)
  const lines = branchOhms(numbered, closed).flatMap((r, at) => {
    const branch = network.branches[at]
    if (r === undefined || !branch) return []
    const [from, to] = [node(a[at]), node(b[at])]
    const { re, im } = branch.emf
    if (re !== 0 || im !== 0) {
      const degrees = (Math.atan2(im, re) * 180) / Math.PI
      return [
        `V${at} e${at} ${to} DC 0 AC ${digits(Math.hypot(re, im))} ${digits(degrees)}`,
        `R${at} ${from} e${at} ${digits(r)}`,
      ]
    }
    const henries = digits(branch.x / (2 * Math.PI * hertz))
    if (branch.x === 0) return [`R${at} ${from} ${to} ${digits(r)}`]
    if (r === 0) return [`L${at} ${from} ${to} ${henries}`]
    return [`R${at} ${from} m${at} ${digits(r)}`, `L${at} m${at} ${to} ${henries}`]
  })
  const windings = network.windings.flatMap((winding, at) => {
    const [p, q, s, t] = [...(numbered.windings[at]?.nodes ?? [])].map(node)
    return [
      `EW${at} w${at} u${at} ${p} ${q} ${digits(winding.ratio)}`,
      `VW${at} u${at} ${t} DC 0 AC 0`,
      `RW${at} w${at} ${s} ${digits(winding.r)}`,
      `FW${at} ${q} ${p} VW${at} ${digits(winding.ratio)}`,
    ]
  })
  return [
    '* one state of a landing',
    ...lines,
    ...windings,
    `.ac lin 1 ${hertz} ${hertz}`,
    '.end',
    '',
  ].join('\n')
}

type Volts = ReadonlyMap<string, { readonly real: number; readonly img: number }>

let runs = 0
/** Node voltages by name, or why there are none. */
const simulate = (netlist: string): Promise<Volts | string> =>
  inTurn(simulation => simulateNow(simulation, netlist))

/** The plot of this netlist and of no other: one that cannot be solved leaves that of the run before. */
async function plotOf(simulation: Simulation, netlist: string): Promise<ResultType | undefined> {
  const title = `run ${++runs}`
  const named = netlist.replace('* one state of a landing', `* ${title}`)
  simulation.setNetList(named.replace('\n.ac ', '\n.options noopac\n.ac '))
  const result = await simulation.runSim()
  return result.header.includes(`${title}\n`) ? result : undefined
}

/** Node voltages by name, or why there are none: a bad netlist does not throw. */
async function simulateNow(simulation: Simulation, netlist: string): Promise<Volts | string> {
  const result = await plotOf(simulation, netlist)
  if (!result) return 'the simulator gave no plot of this run'
  const error = simulation.getError().find(each => /error|singular/iu.test(each))
  if (error !== undefined) return `the simulator says: ${error}`
  if (result.dataType !== 'complex' || !/AC Analysis/u.test(result.header))
    return `the simulator gave no AC analysis: ${result.header.slice(0, 80)}`
  return new Map(
    result.data.flatMap(each => {
      const [value] = each.values
      return value ? [[each.name, value] as const] : []
    }),
  )
}
