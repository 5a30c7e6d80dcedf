import { atMost } from '../../../base/compare.ts'
import type { Finding } from '../../../base/verdict.ts'
import type { Part, Terminal } from '../../../domain/board/board.ts'
import { boardOf } from '../../../domain/job.ts'
import type { Load } from '../../../domain/load/load.ts'
import { isMains, isPowered } from '../../../domain/load/load.ts'
import { joinedToAny } from '../../../domain/wiring/copper.ts'
import { LIMITS } from '../../../domain/wiring/limits.ts'
import { boardNode, leadNode, primaryVolts } from '../../../domain/wiring/wire.ts'
import type { NodeId } from '../../../engines/circuit/network.ts'
import type { Evidence, Rule } from '../rule.ts'
import { commandsOf, standing, worst } from '../rule.ts'

type TerminalClass = Terminal['class']
const LOW: readonly TerminalClass[] = ['low-voltage', 'sensor']

function mainsOnLowVoltage(evidence: Evidence): readonly Finding[] {
  const low = evidence.plant.terminals.filter(({ terminal }) => LOW.includes(terminal.class))
  return worst(standing(evidence), low, ({ node }, at) => at.solved.potential(node))
    .filter(({ value }) => !atMost(value, LIMITS.extraLowVolts))
    .map(({ thing, value, at }) => ({
      rule: lowVoltage.id,
      message: 'mains-on-low-voltage',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [thing.name],
      params: { terminal: thing.terminal.label ?? thing.terminal.id, volts: value },
      on: commandsOf(at.state),
    }))
}

/** Primary volts at the tap that the landing picks [V]. */
function tapVolts(
  { job, landing }: Evidence,
  part: Extract<Part, { kind: 'transformer' }>,
  name: string,
): number {
  const board = boardOf(job, name)
  return board ? primaryVolts(part, landing.jumpers, board) : part.volts.primary.si
}

function overfedTransformer(evidence: Evidence): readonly Finding[] {
  const { plant, band } = evidence
  const fed = plant.parts.flatMap(({ board, part, name }) =>
    part.kind === 'transformer'
      ? [
          {
            name,
            plate: tapVolts(evidence, part, board),
            a: boardNode(board, part.primary[0]),
            b: boardNode(board, part.primary[1]),
          },
        ]
      : [],
  )
  return worst(standing(evidence), fed, ({ a, b }, at) => at.solved.across(a, b))
    .filter(({ thing, value }) => !atMost(value * band.high, LIMITS.most * thing.plate))
    .map(({ thing, value, at }) => ({
      rule: lowVoltage.id,
      message: 'transformer-over-volts',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [thing.name],
      params: { part: thing.name, volts: value * band.high, plate: thing.plate },
      on: commandsOf(at.state),
    }))
}

/** Nodes that copper alone joins to a terminal of one of these classes. */
const netOf = ({ plant }: Evidence, classes: readonly TerminalClass[]): ReadonlySet<NodeId> =>
  joinedToAny(
    plant,
    plant.terminals
      .filter(({ terminal }) => classes.includes(terminal.class))
      .map(each => each.node),
  )

function joinedToMains({ plant }: Evidence, mains: ReadonlySet<NodeId>): readonly Finding[] {
  return plant.terminals
    .filter(({ terminal, node }) => LOW.includes(terminal.class) && mains.has(node))
    .slice(0, 1)
    .map(({ name, terminal }) => ({
      rule: lowVoltage.id,
      message: 'low-voltage-joined-to-mains',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [name],
      params: { terminal: terminal.label ?? terminal.id },
    }))
}

/** A load with a lead on either joins them through itself. */
function acrossBoth(
  { job }: Evidence,
  mains: ReadonlySet<NodeId>,
  low: ReadonlySet<NodeId>,
): readonly Finding[] {
  return job.loads
    .filter(load => {
      const nodes = load.leads
        .filter(lead => lead.function !== 'data')
        .map(lead => leadNode(load.id, lead.id))
      return nodes.some(node => mains.has(node)) && nodes.some(node => low.has(node))
    })
    .map(load => ({
      rule: lowVoltage.id,
      message: 'load-across-mains-and-low-voltage',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [load.id],
      params: { load: load.label },
    }))
}

/** A probe, or a load made for extra-low voltage alone: nothing in it is insulated for mains. */
const isLowVoltage = (load: Load): boolean => !isPowered(load) || !isMains(load)

/** In the water or under wet hands, and joined to a mains conductor by one lead at least. */
const lowOnMains = ({ job }: Evidence, mains: ReadonlySet<NodeId>): readonly Finding[] =>
  job.loads
    .filter(load =>
      load.leads.some(
        lead =>
          (isLowVoltage(load) || lead.function === 'data') && mains.has(leadNode(load.id, lead.id)),
      ),
    )
    .map(load => ({
      rule: lowVoltage.id,
      message: 'low-voltage-load-on-mains',
      verdict: 'breaks',
      severity: 'danger',
      subjects: [load.id],
      params: { load: load.label },
    }))

/** Low voltage is apart from every mains conductor, the neutral too: it may be live one day. */
function mixed(evidence: Evidence): readonly Finding[] {
  const mains = netOf(evidence, ['mains'])
  const joined = joinedToMains(evidence, mains)
  // Where the two are joined outright, every load on either follows from it.
  if (joined.length > 0) return joined
  const onMains = lowOnMains(evidence, mains)
  return onMains.length > 0 ? onMains : acrossBoth(evidence, mains, netOf(evidence, LOW))
}

/** No mains on a low-voltage or sensor terminal, neutral or line, and no transformer above its plate. */
export const lowVoltage: Rule = {
  id: 'VERIFY-3',
  title: 'Low voltage stays low',
  source: 'IEC 61140, extra-low voltage 50 V (from memory)',
  check: evidence => [
    ...mainsOnLowVoltage(evidence),
    ...overfedTransformer(evidence),
    ...mixed(evidence),
  ],
}
