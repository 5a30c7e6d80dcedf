import type { FeedFunction, Jumper } from '../../domain/board/board.ts'
import type { Feed } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import { BOX, findTerminal, placeOf } from '../../domain/job.ts'
import type { Landing } from '../../domain/landing/landing.ts'
import type { Load } from '../../domain/load/load.ts'
import { isMotor, isPowered } from '../../domain/load/load.ts'
import type { Cold } from '../../domain/wiring/cold.ts'
import { allPlugged, coldOf, pointNode } from '../../domain/wiring/cold.ts'
import type { EarthPath } from '../../domain/wiring/cold-earth.ts'
import { earthPaths } from '../../domain/wiring/cold-earth.ts'
import { COLD_LIMITS } from '../../domain/wiring/cold-figures.ts'
import { insulationBetween } from '../../domain/wiring/cold-insulation.ts'
import { ohmsBetween } from '../../domain/wiring/cold-meter.ts'
import type { ColdPart } from '../../domain/wiring/cold-ohms.ts'
import { boardNode } from '../../domain/wiring/wire.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Reading } from './artifact.ts'
import { bondReadings } from './bonding.ts'
import type { SiteCircuit } from './circuits.ts'
import { idleCircuits } from './circuits.ts'
import { coldText, earthText, partText } from './cold-texts.ts'
import type { SheetText } from './messages.ts'
import { text } from './messages.ts'
import { functionText } from './wires.ts'

/** Earth leads of heaters that go on a stud of their own: landed while the board is still cold. */
const earlyEarths = (job: Job, landing: Landing): readonly string[] =>
  job.loads.flatMap(load =>
    load.kind === 'heater' && placeOf(job, landing, load)?.connector === undefined
      ? load.leads.flatMap(({ id, function: does }) =>
          does === 'earth' ? [`${load.id}.${id}`] : [],
        )
      : [],
  )

/** The box as the cold check finds it: supply off, nothing plugged in, the heater's earth landed. */
const bareBox = (job: Job, landing: Landing): Cold =>
  coldOf(job, landing, { plugged: new Set(earlyEarths(job, landing)), supply: 'off' })

/** Each pair that some position of a jumper joins, with what the planned position makes of it. */
function jumperReadings(cold: Cold, jumper: Jumper): readonly Reading[] {
  const { board } = cold.job.box
  const terminalOn = (node: string) => board.terminals.find(each => each.node === node)?.id
  const pairs = jumper.positions.flatMap(each => each.joins)
  return pairs.flatMap(([from, to]): readonly Reading[] => {
    const [a, b] = [terminalOn(from), terminalOn(to)]
    if (a === undefined || b === undefined) return []
    return [
      {
        what: text('read.jumper', { jumper: jumper.id, a, b }),
        expected: coldText(cold, boardNode(BOX, from), boardNode(BOX, to)),
        unit: 'Ω',
      },
    ]
  })
}

function supplyReading(
  cold: Cold,
  feed: Feed,
  [from, to]: readonly [FeedFunction, FeedFunction],
): readonly Reading[] {
  const { job } = cold
  const at = (name: FeedFunction) =>
    job.box.board.terminals.find(each => each.id === feed.lands[name])
  const [a, b] = [at(from), at(to)]
  if (!a || !b) return []
  return [
    {
      what: text('read.terminals', {
        what: text('read.pair', { a: functionText(job, from), b: functionText(job, to) }),
        a: a.id,
        b: b.id,
      }),
      expected: coldText(cold, boardNode(BOX, a.node), boardNode(BOX, b.node)),
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

/**
 * Elements, and windings whose ohms were surveyed, each between its own leads with these off. A
 * winding that nobody read has no row: it would say nothing.
 */
function circuitReadings(cold: Cold, landing: Landing, load: Load): readonly Reading[] {
  if (!isPowered(load)) return []
  const { job } = cold
  return load.circuits.flatMap((circuit): readonly Reading[] => {
    const [a = '', b = ''] = circuit.across.map(each => pointNode(cold, `${load.id}.${each}`))
    const expected = coldText(cold, a, b)
    if (load.kind === 'heater') {
      const terminals = circuit.across.flatMap(
        id => findTerminal(job, landing.ends[`${load.id}.${id}`] ?? '')?.id ?? [],
      )
      const what = text('read.heater', { load: load.label, terminals: terminals.join(' – ') })
      return [{ what, expected, unit: 'Ω' }]
    }
    if (!isMotor(load) || ohmsBetween(cold, a, b).kind !== 'ohms') return []
    const [from, to] = circuit.across.map(id => {
      const lead = load.leads.find(each => each.id === id)
      return lead ? functionText(job, lead.function) : id
    })
    const what = text('read.winding', { load: load.label, a: from ?? '', b: to ?? '' })
    return [{ what, expected, unit: 'Ω' }]
  })
}

function earthReadings(cold: Cold, feed: Feed): readonly Reading[] {
  const from = feed.lands.earth
  const paths = earthPaths(cold, feed).filter(each => each.kind !== 'run')
  const expected = earthText(paths)
  if (from === undefined || !expected) return []
  const all = paths.flatMap(({ kind, subject }) =>
    kind === 'terminal' ? [subject.slice(BOX.length + 1)] : [],
  )
  return [{ what: text('read.earth', { a: from, all }), expected, unit: 'Ω' }]
}

/** Earth to the metal of a load, once it is plugged in and before it gets power. */
export function caseReading(job: Job, landing: Landing, feed: Feed, load: Load): Reading {
  const cold = coldOf(job, landing, { plugged: new Set([load.id]), supply: 'off' })
  const own = (each: EarthPath) => each.kind === 'metal' && each.subject === load.id
  return {
    what: text('read.case', { load: load.label }),
    expected: earthText(earthPaths(cold, feed).filter(own)),
    unit: 'Ω',
  }
}

/** The terminal that the earth of a device's own circuit lands on. */
const earthOf = (feed: Feed, circuits: readonly SiteCircuit[], device: string): string => {
  const second = circuits[1]?.devices.includes(device) ? feed.lands['second-earth'] : undefined
  return second ?? feed.lands.earth ?? ''
}

/** Earth end to end, once the supply is landed and while everything is off. */
export function runReadings(
  job: Job,
  landing: Landing,
  feed: Feed,
  circuits: readonly SiteCircuit[],
): readonly Reading[] {
  const cold = coldOf(job, landing, { plugged: new Set(), supply: 'open' })
  return earthPaths(cold, feed)
    .filter(each => each.kind === 'run')
    .filter(each => !idleCircuits(circuits).some(idle => idle.devices.includes(each.subject)))
    .map(each => ({
      what: text('read.run', { a: each.label, b: earthOf(feed, circuits, each.subject) }),
      expected: earthText([each]),
      unit: 'Ω',
    }))
}

const PROBE_CELSIUS = [10, 20, 30, 40] as const

/** A probe alone at some temperatures of its water. */
function probeReadings(job: Job, landing: Landing): readonly Reading[] {
  const colds = PROBE_CELSIUS.map(celsius =>
    coldOf(job, landing, { plugged: new Set(), supply: 'off', celsius }),
  )
  return job.loads.flatMap((load): readonly Reading[] => {
    if (load.kind !== 'probe') return []
    const [signal, common] = load.leads
    const read = colds.flatMap(cold => {
      const [a, b] = [signal, common].map(each => pointNode(cold, `${load.id}.${each?.id}`))
      const reading = ohmsBetween(cold, a ?? '', b ?? '')
      return reading.kind === 'ohms' ? [reading] : []
    })
    const kilohms = read.map(({ expected }) => Math.round(expected / 100) / 10)
    const [at10, at20, at30, at40] = kilohms
    if (at10 === undefined || at20 === undefined || at30 === undefined || at40 === undefined)
      return []
    const band = Math.max(...read.map(({ expected, high }) => high / expected - 1))
    return [
      {
        what: text('read.probe', { probe: load.label }),
        expected: text('expect.probe', { at10, at20, at30, at40, band }),
        unit: 'kΩ',
      },
    ]
  })
}

/** A switch that proves flow is open at rest: shut, it is stuck or bridged. Common practice, no source. */
const flowSwitchReadings = ({ box }: Job): readonly Reading[] =>
  box.flowProof === 'probe-pair'
    ? []
    : [{ what: text(`read.${box.flowProof}`), expected: text('expect.open'), unit: 'Ω' }]

/** Parts of the board go off with the board. */
const unplugText = (part: ColdPart): SheetText =>
  ['electronics', 'input', 'semiconductor'].includes(part.kind)
    ? text('named.board', { of: part.of })
    : partText(part)

const isSame = (a: SheetText, b: SheetText): boolean =>
  a.message === b.message && JSON.stringify(a.params) === JSON.stringify(b.params)

/** The test of everything that carries mains against earth, and what it would kill. */
export function insulationTexts(job: Job, landing: Landing, feed: Feed): readonly SheetText[] {
  const cold = coldOf(job, landing, { plugged: allPlugged(job), supply: 'off' })
  const nodes = (isWanted: (name: string) => boolean) =>
    Object.entries(feed.lands).flatMap(([name, id]) => {
      const node = pointNode(cold, `${BOX}.${id}`)
      return node !== undefined && isWanted(name) ? [node] : []
    })
  const isEarthName = (name: string): boolean => name.endsWith('earth')
  const test = insulationBetween(
    cold,
    nodes(name => !isEarthName(name)),
    nodes(isEarthName),
  )
  if (test.kind === 'joined' || test.expected === undefined) return []
  const named = test.unplug.map(each => unplugText(each.part))
  const parts = named.filter((each, at) => named.findIndex(other => isSame(each, other)) === at)
  return [
    text('cold.insulation', {
      volts: test.volts,
      parts,
      expected: test.expected,
      least: COLD_LIMITS.leastInsulation,
      suspect: COLD_LIMITS.suspectInsulation,
      good: COLD_LIMITS.goodInsulation,
    }),
  ]
}

/** Every reading that is taken with the power locked off and the supply not yet landed. */
export function coldReadings(job: Job, { landing }: WiringPlan, feed: Feed): readonly Reading[] {
  const cold = bareBox(job, landing)
  const apart = coldOf(job, landing, { plugged: new Set(), supply: 'off' })
  return [
    ...SUPPLY_PAIRS.flatMap(pair => supplyReading(cold, feed, pair)),
    ...job.box.board.jumpers.flatMap(each => jumperReadings(cold, each)),
    ...job.loads.flatMap(each => circuitReadings(apart, landing, each)),
    ...earthReadings(cold, feed),
    ...bondReadings(job),
    ...flowSwitchReadings(job),
    ...probeReadings(job, landing),
  ]
}
