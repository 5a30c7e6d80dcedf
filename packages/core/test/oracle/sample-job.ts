import { readFileSync } from 'node:fs'
import type { OracleJob, RawLanding, State, WrongLanding } from './oracle.ts'
import { readJob, statesOf, wrongLandings } from './oracle.ts'

const read = (path: string): string =>
  readFileSync(new URL(`../../../catalog/data/${path}`, import.meta.url), 'utf8')

export const SAMPLE_FILES = {
  survey: read('tubs/everyday-240-circulation.yaml'),
  box: read('boxes/heron-4.yaml'),
  devices: [read('devices/ground-fault-breaker-2.yaml')],
}

/** The sample tub on the sample box, landed by hand from the two files. */
export const SAMPLE_PLAN: RawLanding = {
  ends: {
    'gf.tail': 'gf.NB',
    'run.leg1@gf': 'gf.L1',
    'run.leg2@gf': 'gf.L2',
    'run.neutral@gf': 'gf.N',
    'run.earth@gf': 'gf.EB',
    'run.leg1@box': 'box.A1',
    'run.neutral@box': 'box.A2',
    'run.leg2@box': 'box.A3',
    'run.earth@box': 'box.A4',
    'pump-a.high': 'box.B1',
    'pump-a.low': 'box.B2',
    'pump-a.common': 'box.B3',
    'pump-a.earth': 'box.B4',
    'pump-b.hot': 'box.C1',
    'pump-b.common': 'box.C3',
    'pump-b.earth': 'box.C4',
    'circulation.hot': 'box.D1',
    'circulation.common': 'box.D3',
    'circulation.earth': 'box.D4',
    'ozonator.hot': 'box.E1',
    'ozonator.common': 'box.E3',
    'ozonator.earth': 'box.E4',
    'heater.hot': 'box.H1',
    'heater.common': 'box.H2',
    'heater.earth': 'box.H4',
    'water-probe.signal': 'box.S1',
    'water-probe.common': 'box.S2',
    'limit-probe.signal': 'box.S3',
    'limit-probe.common': 'box.S4',
    'light.hot': 'box.Q1',
    'light.common': 'box.Q2',
    'keypad.hot': 'box.K1',
    'keypad.common': 'box.K2',
  },
  jumpers: { J1: 'out', J2: 'v240', J3: 'v240', J4: 'v120' },
  straps: {},
  settings: { profile: 'circulation-heats', currentLimit: '40 A' },
}

export const GARDEN_FILES = {
  survey: read('tubs/garden-230.yaml'),
  box: read('boxes/sorrel-32.yaml'),
  devices: [read('devices/residual-current-breaker-2.yaml'), read('devices/isolator-2.yaml')],
}

/** The garden tub behind its isolator, landed by hand from the files. */
export const GARDEN_PLAN: RawLanding = {
  ends: {
    'armoured.line@rcd': 'rcd.L',
    'armoured.neutral@rcd': 'rcd.N',
    'armoured.earth@rcd': 'rcd.EB',
    'armoured.line@isolator': 'isolator.L-in',
    'armoured.neutral@isolator': 'isolator.N-in',
    'armoured.earth@isolator': 'isolator.E-in',
    'last.line@isolator': 'isolator.L-out',
    'last.neutral@isolator': 'isolator.N-out',
    'last.earth@isolator': 'isolator.E-out',
    'last.line@box': 'box.V1',
    'last.neutral@box': 'box.V2',
    'last.earth@box': 'box.V3',
    'pump-a.high': 'box.W1',
    'pump-a.low': 'box.W2',
    'pump-a.common': 'box.W3',
    'pump-a.earth': 'box.W4',
    'circulation.hot': 'box.Y1',
    'circulation.common': 'box.Y2',
    'circulation.earth': 'box.Y3',
    'blower.hot': 'box.B1',
    'blower.common': 'box.B2',
    'blower.earth': 'box.B3',
    'ozonator.hot': 'box.Z1',
    'ozonator.common': 'box.Z2',
    'light.hot': 'box.D1',
    'light.common': 'box.D2',
    'heater.hot': 'box.G1',
    'heater.common': 'box.G2',
    'heater.earth': 'box.G3',
    'water-probe.signal': 'box.P1',
    'water-probe.common': 'box.P2',
    'limit-probe.signal': 'box.P3',
    'limit-probe.common': 'box.P4',
    'keypad.hot': 'box.D3',
    'keypad.common': 'box.D4',
  },
  jumpers: {},
  straps: {},
  settings: { profile: 'circulation-heats', currentLimit: '32 A' },
}

/** A text with one piece of it written otherwise; every one of that piece. */
export function edited(text: string, from: string | RegExp, to: string): string {
  const after = text.replaceAll(from, to)
  if (after === text) throw new Error(`nothing to edit: ${from}`)
  return after
}

/** What is written otherwise, and how. */
export type Edit = readonly [from: string | RegExp, to: string]

/** A text with several pieces of it written otherwise, one after the other. */
export const withEdits = (text: string, edits: readonly Edit[]): string =>
  edits.reduce((sum, [from, to]) => edited(sum, from, to), text)

export const sampleJob = (): OracleJob => readJob(SAMPLE_FILES, SAMPLE_PLAN)

/** The plan with some ends elsewhere. */
export const withEnds = (plan: RawLanding, ends: Readonly<Record<string, string>>): RawLanding => ({
  ...plan,
  ends: { ...plan.ends, ...ends },
})

/** The plan with some jumpers elsewhere. */
export const withJumpers = (
  plan: RawLanding,
  jumpers: Readonly<Record<string, string>>,
): RawLanding => ({ ...plan, jumpers: { ...plan.jumpers, ...jumpers } })

/** The same picks for the same seed: wrong landings, each in one of its states. */
export function seededCases(
  job: OracleJob,
  at: { readonly seed: number; readonly count: number },
): { readonly wrong: WrongLanding; readonly state: State }[] {
  const all = [...wrongLandings(job)]
  const next = randomFrom(at.seed)
  const pick = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)] as T
  return Array.from({ length: at.count }, () => {
    const wrong = pick(all)
    return { wrong, state: pick(statesOf(job, wrong.landing.settings).all) }
  })
}

/** Numbers from 0 to 1 by a linear congruence: enough to pick cases, the same everywhere. */
function randomFrom(seed: number): () => number {
  let value = seed >>> 0
  return () => {
    value = (Math.imul(value, 1_664_525) + 1_013_904_223) >>> 0
    return value / 2 ** 32
  }
}
