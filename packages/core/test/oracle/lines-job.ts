import type { OracleJob, RawLanding } from './oracle.ts'
import { readJob } from './oracle.ts'

/** A supply by its lines, and one motor between two of its conductors. */
export interface LinesJob {
  readonly system: string
  readonly region?: 'US' | 'EU'
  readonly lines: readonly string[]
  /** Between which two the motor lies, by function. */
  readonly across: readonly [string, string]
  readonly volts: string
  /** Of the neutral conductor; absent: there is none. */
  readonly neutral?: string
  readonly more?: string
}

/** A job on a supply of that kind: a breaker that opens all, a box that switches both sides. */
export function linesJob(described: LinesJob): {
  readonly job: OracleJob
  readonly plan: RawLanding
} {
  const { lines, neutral, region = 'EU' } = described
  const conductors = [...lines, ...(neutral === undefined ? [] : ['neutral'])]
  const plan: RawLanding = {
    ends: Object.fromEntries([
      ...[...conductors, 'earth'].flatMap(each => [
        [`run.${each}@dev`, `dev.${each}`],
        [`run.${each}@box`, `box.${each}`],
      ]),
      ['pump.hot', 'box.hot'],
      ['pump.common', 'box.common'],
      ['pump.earth', 'box.pump-earth'],
    ]),
    jumpers: {},
    straps: {},
    settings: { profile: 'only', currentLimit: '16 A' },
  }
  const files = {
    survey: surveyOf(described, conductors, region),
    box: boxOf(described, conductors),
    devices: [deviceOf(conductors, region)],
  }
  return { job: readJob(files, plan), plan }
}

const terminal = (id: string, node: string, kind = 'mains'): string =>
  `    - { id: ${id}, node: ${node}, class: ${kind}, rated: 32 A }`

const named = (conductors: readonly string[], to: (each: string) => string): string =>
  conductors.map(each => `${each}: ${to(each)}`).join(', ')

const deviceOf = (conductors: readonly string[], region: string): string => `
id: opens-all
board:
  earth: PE
  terminals:
${conductors.map(each => terminal(each, `${each}-out`)).join('\n')}
${terminal('earth', 'PE', 'earth')}
  parts:
${conductors.map(each => `    - { id: P-${each}, kind: pole, across: [${each}-in, ${each}-out] }`).join('\n')}
    - id: GF
      kind: ground-fault
      sums: [${conductors.map(each => `P-${each}`).join(', ')}]
      trip: ${region === 'US' ? '{ from: 4 mA, to: 6 mA }' : '{ from: 15 mA, to: 30 mA }'}
fedAt: { ${named(conductors, each => `${each}-in`)}, earth: PE }
`

const boxOf = ({ system, across: [a, b] }: LinesJob, conductors: readonly string[]): string => `
id: small
largestBreaker: 32 A
board:
  earth: PE
  terminals:
${conductors.map(each => terminal(each, each)).join('\n')}
${terminal('earth', 'PE', 'earth')}
${terminal('hot', 'HOT')}
${terminal('common', 'COM')}
${terminal('pump-earth', 'PE', 'earth')}
  parts:
    - { id: R1, kind: contact, across: [${a}, HOT], rated: { resistive: 16 A } }
    - { id: R2, kind: contact, across: [${b}, COM], rated: { resistive: 16 A } }
feeds: [{ id: one, system: ${system}, lands: { ${named(conductors, each => each)}, earth: earth } }]
places: [{ id: pump, takes: [pump], lands: { hot: hot, common: common, earth: pump-earth } }]
commands: [{ id: pump, closes: [R1, R2] }]
heat: heat
profiles: [{ id: only, commands: [pump], heatsWith: [] }]
currentLimit: { offered: [16 A], names: draw }
`

const surveyOf = (
  { system, volts, neutral, more }: LinesJob,
  conductors: readonly string[],
  region: string,
): string => `
id: abroad
region: ${region}
supply:
  system: ${system}
  frequency: 50 Hz
  breaker: 16 A
  devices: [{ id: dev, device: opens-all }]
${more ?? ''}
  cables:
    - id: run
      from: dev
      to: box
      length: 10 m
      conductors:
${[...conductors, 'earth'].map(each => `        - { id: ${each}, function: ${each}, size: ${each === 'neutral' ? neutral : '2.5 mm2'}, from: ${each} }`).join('\n')}
loads:
  - kind: pump
    id: pump
    volts: ${volts}
    leads:
      - { id: hot, function: hot, size: 1.5 mm2 }
      - { id: common, function: common, size: 1.5 mm2 }
      - { id: earth, function: earth, size: 1.5 mm2 }
    circuits: [{ id: run, across: [hot, common], amps: 6 A, powerFactor: 0.8 }]
`
