import { readFileSync } from 'node:fs'
import type { RawLanding } from './oracle.ts'

const read = (path: string): string =>
  readFileSync(new URL(`../../../catalog/data/${path}`, import.meta.url), 'utf8')

const ON_THE_BOX = {
  'pump-a.high': 'box.B1',
  'pump-a.low': 'box.B2',
  'pump-a.common': 'box.B3',
  'pump-a.earth': 'box.B4',
  'pump-b.hot': 'box.C1',
  'pump-b.common': 'box.C3',
  'pump-b.earth': 'box.C4',
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
}

/** A tub without circulation pump and ozonator, on two legs: those two places stay free. */
export const PLAIN_240_FILES = {
  survey: read('tubs/everyday-240-plain.yaml'),
  box: read('boxes/heron-4.yaml'),
  devices: [read('devices/ground-fault-breaker-2.yaml')],
}

export const PLAIN_240_PLAN: RawLanding = {
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
    ...ON_THE_BOX,
  },
  jumpers: { J1: 'out', J2: 'v240', J3: 'v240', J4: 'v120' },
  straps: {},
  settings: { profile: 'jets-heat', currentLimit: '40 A' },
}

/** The same tub on a cord of one leg. */
export const PLAIN_120_FILES = {
  survey: read('tubs/everyday-120-plain.yaml'),
  box: read('boxes/heron-4.yaml'),
  devices: [
    read('devices/cord-plug-ground-fault.yaml'),
    read('devices/residual-current-breaker-2.yaml'),
  ],
}

export const PLAIN_120_PLAN: RawLanding = {
  ends: {
    'cord.leg1@plug': 'plug.L1',
    'cord.neutral@plug': 'plug.N',
    'cord.earth@plug': 'plug.EB',
    'cord.leg1@box': 'box.A1',
    'cord.neutral@box': 'box.A2',
    'cord.earth@box': 'box.A4',
    ...ON_THE_BOX,
  },
  jumpers: { J1: 'in', J2: 'v120', J3: 'v120', J4: 'v120' },
  straps: {},
  settings: { profile: 'jets-heat', currentLimit: '16 A' },
}
