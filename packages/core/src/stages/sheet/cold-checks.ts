import type { Board, FeedFunction, Jumper, Part } from '../../domain/board/board.ts'
import type { Feed } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import { findTerminal } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { Load } from '../../domain/load/load.ts'
import { isPowered } from '../../domain/load/load.ts'
import { drawOf } from '../../domain/wiring/draw.ts'
import { probeOhms } from '../../domain/wiring/sensing.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Reading } from './artifact.ts'
import { bondReadings } from './bonding.ts'
import { text } from './messages.ts'
import { functionText } from './wires.ts'

/** Most ohms of a link that is in; common practice, no source. */
const LINK_OHMS = 0.5
/** Most ohms of earth inside the tub; common practice, no source. */
export const EARTH_OHMS = 0.1
/** How far an element may lie from its plate; common practice, no source. */
const ELEMENT_TOLERANCE = 0.1

type Pair = readonly [string, string]

/** What an ohmmeter finds between two nodes of a cold board with nothing plugged in. */
export type ColdPath = 'joined' | 'winding' | 'open'

const copper = (board: Board, landing: Landing): readonly Pair[] =>
  board.jumpers.flatMap(jumper => {
    const at = landing.jumpers[jumper.id] ?? jumper.factory
    return jumper.positions.find(each => each.id === at)?.joins ?? []
  })

/** Parts that pass a meter's current though everything is off. */
function conducts(part: Part): readonly Pair[] {
  switch (part.kind) {
    case 'fuse':
    case 'pole':
    case 'switch':
    case 'electronics':
      return [part.across]
    case 'contact':
      return part.role === 'limit' ? [part.across] : []
    case 'transformer':
      return [part.primary, part.secondary]
    case 'ground-fault':
      return part.poweredFrom ? [part.poweredFrom] : []
  }
}

function reaches(pairs: readonly Pair[], from: string, to: string): boolean {
  const reached = new Set([from])
  for (let grew = true; grew; ) {
    grew = false
    for (const [a, b] of pairs) {
      if (reached.has(a) === reached.has(b)) continue
      reached.add(a).add(b)
      grew = true
    }
  }
  return reached.has(to)
}

/** Copper alone, through a part, or not at all. */
export function coldPath(board: Board, landing: Landing, from: string, to: string): ColdPath {
  const joints = copper(board, landing)
  if (reaches(joints, from, to)) return 'joined'
  return reaches([...joints, ...board.parts.flatMap(conducts)], from, to) ? 'winding' : 'open'
}

const expectation = (path: ColdPath) => {
  if (path === 'joined') return text('expect.joined', { ohms: LINK_OHMS })
  return path === 'open' ? text('expect.open') : text('expect.winding')
}

const terminalOn = (board: Board, node: string): string | undefined =>
  board.terminals.find(each => each.node === node)?.id

/** Each pair that some position of a jumper joins, with what the planned position makes of it. */
function jumperReadings(board: Board, landing: Landing, jumper: Jumper): readonly Reading[] {
  const pairs = jumper.positions.flatMap(each => each.joins)
  return pairs.flatMap(([from, to]) => {
    const [a, b] = [terminalOn(board, from), terminalOn(board, to)]
    if (a === undefined || b === undefined) return []
    return [
      {
        what: text('read.jumper', { jumper: jumper.id, a, b }),
        expected: expectation(coldPath(board, landing, from, to)),
        unit: 'Ω',
      },
    ]
  })
}

function supplyReading(
  job: Job,
  landing: Landing,
  feed: Feed,
  [from, to]: readonly [FeedFunction, FeedFunction],
): readonly Reading[] {
  const { board } = job.box
  const at = (name: FeedFunction) => board.terminals.find(each => each.id === feed.lands[name])
  const [a, b] = [at(from), at(to)]
  if (!a || !b) return []
  return [
    {
      what: text('read.terminals', {
        what: text('read.pair', { a: functionText(job, from), b: functionText(job, to) }),
        a: a.id,
        b: b.id,
      }),
      expected: expectation(coldPath(board, landing, a.node, b.node)),
      unit: 'Ω',
    },
  ]
}

/** Cold pairs at the feed terminals, before the supply is landed: the board alone answers. */
const SUPPLY_PAIRS = [
  ['neutral', 'earth'],
  ['leg1', 'earth'],
  ['leg2', 'earth'],
  ['leg3', 'earth'],
  ['leg1', 'leg2'],
  ['leg2', 'leg3'],
  ['leg1', 'neutral'],
  ['second-neutral', 'second-earth'],
  ['second-leg1', 'second-earth'],
  ['second-leg2', 'second-earth'],
  ['second-leg1', 'second-leg2'],
] as const

/** The element's ohms by its plate: V²/P, with the tolerance of elements. */
function heaterReadings(job: Job, landing: Landing, load: Load): readonly Reading[] {
  if (load.kind !== 'heater') return []
  return load.circuits.flatMap(circuit => {
    const draw = drawOf(job, landing, load, circuit)
    if (draw.assumed || draw.from <= 0) return []
    const [most, least] = [draw.volts / draw.from, draw.volts / draw.to]
    const terminals = circuit.across.flatMap(lead => {
      const terminal = findTerminal(job, landing.ends[`${load.id}.${lead}`] ?? '')
      return terminal ? [terminal.id] : []
    })
    return [
      {
        what: text('read.heater', { load: load.label, terminals: terminals.join(' – ') }),
        expected: text('expect.ohms', {
          ohms: (most + least) / 2,
          low: least * (1 - ELEMENT_TOLERANCE),
          high: most * (1 + ELEMENT_TOLERANCE),
        }),
        unit: 'Ω',
      },
    ]
  })
}

function earthReadings({ box }: Job, feed: Feed): readonly Reading[] {
  const from = feed.lands.earth
  if (from === undefined) return []
  const all = box.board.terminals.filter(each => each.class === 'earth' && each.id !== from)
  return [
    {
      what: text('read.earth', { a: from, all: all.map(each => each.id) }),
      expected: text('expect.earth', { ohms: EARTH_OHMS }),
      unit: 'Ω',
    },
  ]
}

const kilohms = (load: Extract<Load, { kind: 'probe' }>, celsius: number): number =>
  Math.round(probeOhms(load.curve, celsius) / 100) / 10

const probeReadings = (job: Job): readonly Reading[] =>
  job.loads.flatMap(load =>
    load.kind === 'probe'
      ? [
          {
            what: text('read.probe', { probe: load.label }),
            expected: text('expect.probe', {
              at10: kilohms(load, 10),
              at20: kilohms(load, 20),
              at30: kilohms(load, 30),
              at40: kilohms(load, 40),
            }),
            unit: 'kΩ' as const,
          },
        ]
      : [],
  )

/** A switch that proves flow is open at rest: shut, it is stuck or bridged. Common practice, no source. */
const flowSwitchReadings = ({ box }: Job): readonly Reading[] =>
  box.flowProof === 'probe-pair'
    ? []
    : [{ what: text(`read.${box.flowProof}`), expected: text('expect.open'), unit: 'Ω' }]

/** Every reading that is taken with the power locked off and the supply not yet landed. */
export function coldReadings(job: Job, plan: WiringPlan, feed: Feed): readonly Reading[] {
  const { landing } = plan
  const { board } = job.box
  const powered = job.loads.filter(isPowered)
  return [
    ...SUPPLY_PAIRS.flatMap(pair => supplyReading(job, landing, feed, pair)),
    ...board.jumpers.flatMap(each => jumperReadings(board, landing, each)),
    ...powered.flatMap(each => heaterReadings(job, landing, each)),
    ...earthReadings(job, feed),
    ...bondReadings(job),
    ...flowSwitchReadings(job),
    ...probeReadings(job),
  ]
}
