import type { OracleJob, RawLanding } from './oracle.ts'
import { readJob } from './oracle.ts'
import type { Edit } from './sample-job.ts'
import { withEdits } from './sample-job.ts'

const ONE_LEG_DEVICE = `
id: one-leg
board:
  earth: PE
  terminals:
    - { id: I, node: L-IN, class: mains, rated: 40 A }
    - { id: L, node: L-OUT, class: mains, rated: 40 A }
    - { id: N, node: N-OUT, class: mains, rated: 40 A }
    - { id: E, node: PE, class: earth, rated: 40 A }
  parts:
    - { id: P1, kind: pole, across: [L-IN, L-OUT] }
    - { id: PN, kind: switch, across: [N-IN, N-OUT], rated: 40 A }
    - { id: GF, kind: ground-fault, sums: [P1, PN], trip: { from: 4 mA, to: 6 mA }, poweredFrom: [L-IN, N-IN] }
fedAt: { leg1: L-IN, neutral: N-IN, earth: PE }
`

// the pump and the electronics hang on the first circuit, the heater on the second
const TWO_CIRCUIT_BOX = `
id: two-circuits
largestBreaker: 20 A
board:
  earth: PE
  terminals:
    - { id: A1, node: A, class: mains, rated: 20 A }
    - { id: A2, node: A-N, class: mains, rated: 20 A }
    - { id: A3, node: PE, class: earth, rated: 20 A }
    - { id: B1, node: B, class: mains, rated: 20 A }
    - { id: B2, node: B-N, class: mains, rated: 20 A }
    - { id: B3, node: PE, class: earth, rated: 20 A }
    - { id: P1, node: P-HOT, class: mains, rated: 20 A }
    - { id: P2, node: A-N, class: mains, rated: 20 A }
    - { id: P3, node: PE, class: earth, rated: 20 A }
    - { id: H1, node: H-HOT, class: mains, rated: 20 A }
    - { id: H2, node: H-COM, class: mains, rated: 20 A }
    - { id: H3, node: PE, class: earth, rated: 20 A }
  parts:
    - { id: R1, kind: contact, across: [A, P-HOT], rated: { resistive: 20 A } }
    - { id: RL, kind: contact, role: limit, across: [B, B-L], rated: { resistive: 20 A } }
    - { id: R2, kind: contact, across: [B-L, H-HOT], rated: { resistive: 20 A } }
    - { id: R3, kind: contact, across: [B-N, H-COM], rated: { resistive: 20 A } }
    - { id: U1, kind: electronics, across: [A, A-N], volts: 120 V, power: 5 W }
feeds:
  - id: two
    system: split-phase
    lands: { leg1: A1, neutral: A2, earth: A3, second-leg1: B1, second-neutral: B2, second-earth: B3 }
places:
  - { id: pump, takes: [pump], lands: { hot: P1, common: P2, earth: P3 } }
  - { id: heater, takes: [heater], lands: { hot: H1, common: H2, earth: H3 } }
commands:
  - { id: pump, closes: [R1] }
  - { id: heat, closes: [R2, R3] }
heat: heat
profiles: [{ id: only, commands: [pump, heat], heatsWith: [pump] }]
currentLimit: { offered: [16 A], names: draw }
`

const TWO_CIRCUIT_TUB = `
id: two-cords
region: US
supply:
  system: split-phase
  frequency: 60 Hz
  breaker: 15 A
  devices:
    - { id: one, device: one-leg }
    - { id: two, device: one-leg, fedBy: { leg1: leg2 }, breaker: 20 A }
  cables:
    - id: first
      from: one
      to: box
      length: 20 ft
      conductors:
        - { id: hot, function: leg1, size: 14 AWG, from: L }
        - { id: neutral, function: neutral, size: 14 AWG, from: N }
        - { id: earth, function: earth, size: 14 AWG, from: E }
    - id: second
      from: two
      to: box
      length: 20 ft
      conductors:
        - { id: hot, function: second-leg1, size: 12 AWG, from: L }
        - { id: neutral, function: second-neutral, size: 12 AWG, from: N }
        - { id: earth, function: second-earth, size: 12 AWG, from: E }
loads:
  - kind: pump
    id: pump
    volts: 120 V
    movesWaterThroughHeater: [run]
    leads:
      - { id: hot, function: hot, size: 14 AWG }
      - { id: common, function: common, size: 14 AWG }
      - { id: earth, function: earth, size: 14 AWG }
    circuits: [{ id: run, across: [hot, common], amps: 8 A, powerFactor: 0.8 }]
  - kind: heater
    id: heater
    volts: 120 V
    leads:
      - { id: hot, function: hot, size: 12 AWG }
      - { id: common, function: common, size: 12 AWG }
      - { id: earth, function: earth, size: 12 AWG }
    circuits: [{ id: element, across: [hot, common], power: 1.4 kW }]
`

/** Landed by hand: each cable on its own terminals. */
export const TWO_CIRCUIT_PLAN: RawLanding = {
  ends: {
    'first.hot@one': 'one.L',
    'first.neutral@one': 'one.N',
    'first.earth@one': 'one.E',
    'second.hot@two': 'two.L',
    'second.neutral@two': 'two.N',
    'second.earth@two': 'two.E',
    'first.hot@box': 'box.A1',
    'first.neutral@box': 'box.A2',
    'first.earth@box': 'box.A3',
    'second.hot@box': 'box.B1',
    'second.neutral@box': 'box.B2',
    'second.earth@box': 'box.B3',
    'pump.hot': 'box.P1',
    'pump.common': 'box.P2',
    'pump.earth': 'box.P3',
    'heater.hot': 'box.H1',
    'heater.common': 'box.H2',
    'heater.earth': 'box.H3',
  },
  jumpers: {},
  straps: {},
  settings: { profile: 'only', currentLimit: '16 A' },
}

/** A tub on two circuits, on one leg each, with its files written otherwise. */
export const twoCircuitJob = (
  edits: { readonly tub?: readonly Edit[]; readonly box?: readonly Edit[] } = {},
): OracleJob =>
  readJob(
    {
      survey: withEdits(TWO_CIRCUIT_TUB, edits.tub ?? []),
      box: withEdits(TWO_CIRCUIT_BOX, edits.box ?? []),
      devices: [ONE_LEG_DEVICE],
    },
    TWO_CIRCUIT_PLAN,
  )
