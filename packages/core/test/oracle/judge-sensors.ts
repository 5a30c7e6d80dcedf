import type { Network } from './build-network.ts'
import type { Findings, Level } from './findings.ts'
import { above, both, note } from './findings.ts'
import { probeOhms, sensedCelsius } from './quantities.ts'
import type { RawSensor } from './raw-files.ts'
import type { OracleJob } from './read-job.ts'
import { solveReal } from './solve-real.ts'

const TRUE_CELSIUS = 40
const OPEN_CELSIUS = -10
const SHORT_CELSIUS = 120

/** Kind 9: what each sensor input makes of the probes and of whatever else it sees. */
export function judgeSensors(job: OracleJob, network: Network, findings: Findings): void {
  const wires = outside(network)
  for (const sensor of job.box.sensors ?? []) {
    const seen = seenBy(job, wires, sensor)
    if (seen === undefined) continue
    const level = levelOf(sensor, seen)
    note(findings, { kind: '9 sensors', subject: sensor.id, level }, () => describe(sensor, seen))
  }
}

interface Seen {
  readonly celsius: number
  /** Places of the probes in the path. */
  readonly places: readonly string[]
}

function levelOf(sensor: RawSensor, seen: Seen): Level {
  if (seen.celsius < OPEN_CELSIUS || seen.celsius > SHORT_CELSIUS) return 0
  const isLow = above(TRUE_CELSIUS - seen.celsius, 1)
  const isElsewhere = seen.places.length === 1 && seen.places[0] !== sensor.reads
  if (isElsewhere && sensor.duty !== 'control') return 2
  return both(isLow, 2)
}

const describe = (sensor: RawSensor, seen: Seen): string =>
  `(${sensor.duty}) reads ${seen.celsius.toFixed(1)} °C at ${TRUE_CELSIUS} °C from ` +
  `[${seen.places.join(', ')}] for ${sensor.reads}`

interface Resistor {
  readonly a: string
  readonly b: string
  readonly ohms: number
  readonly probe?: string
}

/** Everything outside the box as resistances: a sensor is read with direct current. */
function outside(network: Network): Resistor[] {
  const probes = new Map(network.probes.map(each => [each.branch, each]))
  return network.branches.flatMap((each, at): Resistor[] => {
    if (each.board === 'box' || each.what === 'insulation' || each.r === 0) return []
    const probe = probes.get(at)
    const { a, b } = each
    return probe
      ? [{ a, b, ohms: probeOhms(probe.curve, TRUE_CELSIUS), probe: probe.place }]
      : [{ a, b, ohms: each.r }]
  })
}

/** Undefined when nothing joins the two terminals: an open probe. */
function seenBy(job: OracleJob, wires: readonly Resistor[], sensor: RawSensor): Seen | undefined {
  const [from, to] = sensor.terminals.map(id => job.terminals.get(`box.${id}`)?.node ?? id)
  if (from === undefined || to === undefined) return undefined
  const near = reachedFrom(from, wires)
  if (!near.has(to)) return undefined
  const nodes = [...near].filter(node => node !== to)
  const own = wires.filter(each => near.has(each.a))
  const volts = solveReal(nodes, own, from)
  const at = (node: string): number => volts.get(node) ?? 0
  const ohms = at(from)
  const carries = (each: Resistor): boolean => Math.abs(at(each.a) - at(each.b)) > 1e-9 * each.ohms
  return {
    celsius: sensedCelsius(sensor.curve, ohms),
    places: own.flatMap(each => (each.probe !== undefined && carries(each) ? [each.probe] : [])),
  }
}

function reachedFrom(from: string, wires: readonly Resistor[]): ReadonlySet<string> {
  const reached = new Set([from])
  for (const node of reached)
    for (const each of wires) {
      if (each.a === node) reached.add(each.b)
      if (each.b === node) reached.add(each.a)
    }
  return reached
}
