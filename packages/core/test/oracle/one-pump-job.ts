import type { OracleJob, RawLanding } from './oracle.ts'
import { readJob } from './oracle.ts'
import type { Edit } from './sample-job.ts'
import { withEdits } from './sample-job.ts'

const RESIDUAL_DEVICE = `
id: residual-2
board:
  earth: E
  terminals:
    - { id: L, node: L-OUT, class: mains, rated: 40 A }
    - { id: N, node: N-OUT, class: mains, rated: 40 A }
    - { id: E, node: E, class: earth, rated: 40 A }
  parts:
    - { id: P1, kind: pole, across: [L-IN, L-OUT] }
    - { id: P2, kind: pole, across: [N-IN, N-OUT] }
    - { id: D, kind: ground-fault, sums: [P1, P2], trip: { from: 15 mA, to: 30 mA } }
fedAt: { leg1: L-IN, neutral: N-IN, earth: E }
`
const ONE_PUMP_BOX = `
id: small
largestBreaker: 32 A
board:
  earth: PE
  terminals:
    - { id: L, node: L, class: mains, rated: 32 A }
    - { id: N, node: N, class: mains, rated: 32 A }
    - { id: E, node: PE, class: earth, rated: 32 A }
    - { id: P1, node: P-HOT, class: mains, rated: 16 A }
    - { id: P2, node: N, class: mains, rated: 16 A }
    - { id: P4, node: PE, class: earth, rated: 16 A }
    - { id: S1, node: SIG, class: sensor, rated: 1 A }
    - { id: S2, node: COM, class: sensor, rated: 1 A }
  parts:
    - { id: R1, kind: contact, across: [L, P-HOT], rated: { resistive: 16 A } }
    - { id: U1, kind: electronics, across: [L, N], volts: 230 V, power: 5 W }
feeds: [{ id: one, system: single-phase-230, lands: { leg1: L, neutral: N, earth: E } }]
places: [{ id: pump, takes: [pump], lands: { hot: P1, common: P2, earth: P4 }, commands: { hot: pump } }]
commands: [{ id: pump, closes: [R1] }]
heat: heat
profiles: [{ id: only, commands: [pump], heatsWith: [] }]
currentLimit: { offered: [16 A], names: breaker }
sensors: [{ id: water, terminals: [S1, S2], curve: 10k, reads: water, duty: control }]
`
const ONE_PUMP_TUB = `
id: abroad
region: EU
supply:
  system: single-phase-230
  frequency: 50 Hz
  breaker: 16 A
  devices: [{ id: rcd, device: residual-2 }]
  cables:
    - id: run
      from: rcd
      to: box
      length: 10 m
      conductors:
        - { id: line, function: leg1, size: 2.5 mm2, from: L }
        - { id: neutral, function: neutral, size: 2.5 mm2, from: N }
        - { id: earth, function: earth, size: 2.5 mm2, from: E }
loads:
  - kind: pump
    id: pump
    volts: 230 V
    leads:
      - { id: hot, function: hot, size: 1.5 mm2 }
      - { id: common, function: common, size: 1.5 mm2 }
      - { id: earth, function: earth, size: 1.5 mm2 }
    circuits: [{ id: run, across: [hot, common], amps: { from: 4 A, to: 6 A }, powerFactor: 0.8 }]
  - kind: probe
    id: probe
    curve: 10k
    place: water
    leads:
      - { id: signal, function: signal, size: 0.5 mm2 }
      - { id: common, function: common, size: 0.5 mm2 }
`

export const ONE_PUMP_FILES = {
  survey: ONE_PUMP_TUB,
  box: ONE_PUMP_BOX,
  devices: [RESIDUAL_DEVICE],
}

/** One pump on a small box, landed by hand. */
export const ONE_PUMP_PLAN: RawLanding = {
  ends: {
    'run.line@rcd': 'rcd.L',
    'run.neutral@rcd': 'rcd.N',
    'run.earth@rcd': 'rcd.E',
    'run.line@box': 'box.L',
    'run.neutral@box': 'box.N',
    'run.earth@box': 'box.E',
    'pump.hot': 'box.P1',
    'pump.common': 'box.P2',
    'pump.earth': 'box.P4',
    'probe.signal': 'box.S1',
    'probe.common': 'box.S2',
  },
  jumpers: {},
  straps: {},
  settings: { profile: 'only', currentLimit: '16 A' },
}

/** The one-pump job with its files written otherwise. */
export const onePumpJob = (
  edits: {
    readonly tub?: readonly Edit[]
    readonly box?: readonly Edit[]
    readonly device?: readonly Edit[]
  },
  plan = ONE_PUMP_PLAN,
): OracleJob =>
  readJob(
    {
      survey: withEdits(ONE_PUMP_TUB, edits.tub ?? []),
      box: withEdits(ONE_PUMP_BOX, edits.box ?? []),
      devices: [withEdits(RESIDUAL_DEVICE, edits.device ?? [])],
    },
    plan,
  )
