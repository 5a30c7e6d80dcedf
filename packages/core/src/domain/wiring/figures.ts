import type { Complex } from '../../base/complex.ts'
import type { Line } from '../board/board.ts'
import type { System } from '../described.ts'

/**
 * Every number of the electrical model that is in no file. Common practice, no source, unless one
 * is named. `docs/electrical-model.md` states the same list for people.
 */
export const FIGURES = {
  /** Source, neutral and earth impedance where the survey gives none [Ω]. */
  sourceOhms: 0.025,
  /** A closed contact, pole, switch or fuse [Ω]. */
  closedOhms: 0.002,
  /** An open contact [Ω]. */
  openOhms: 1e9,
  jumperOhms: 0.001,
  /** Length of a lead inside the equipment bay [m]. */
  leadLength: 1,
  tailLength: 0.5,
  loadInsulationOhms: 20e6,
  boardInsulationOhms: 50e6,
  lowVoltageInsulationOhms: 5e6,
  /** A ground-fault device's own electronics: 1 W at 120 V [Ω]. */
  groundFaultElectronicsOhms: 14_400,
  /** Series impedance of a small transformer, share of its rated impedance. */
  transformerSeries: 0.1,
  /** Magnetising volt-amperes of a small transformer, share of its rating. */
  transformerMagnetising: 0.2,
  /** Body of a person who touches a loose end [Ω]. */
  touchOhms: 2000,
} as const

const HALF_ROOT_3 = Math.sqrt(3) / 2
/** Two lives of a 230 V three-wire network, each to the star point. */
const LIFE_VOLTS = 230 / Math.sqrt(3)

const at = (volts: number, re: number, im: number): Complex => ({ re: volts * re, im: volts * im })

/** What each line of a source stands at to its star point, e^{+jωt} [V]. */
export const EMFS: Readonly<Record<System, Readonly<Partial<Record<Line, Complex>>>>> = {
  'split-phase': { leg1: at(120, 1, 0), leg2: at(120, -1, 0) },
  'single-leg': { leg1: at(120, 1, 0) },
  'two-legs-of-wye': { leg1: at(120, 1, 0), leg2: at(120, -0.5, -HALF_ROOT_3) },
  'single-phase-230': { leg1: at(230, 1, 0) },
  'two-lives-230': { leg1: at(LIFE_VOLTS, 1, 0), leg2: at(LIFE_VOLTS, -0.5, -HALF_ROOT_3) },
  'three-phase-230-400': {
    leg1: at(230, 1, 0),
    leg2: at(230, -0.5, -HALF_ROOT_3),
    leg3: at(230, -0.5, HALF_ROOT_3),
  },
  'high-leg-delta': { leg1: at(120, 1, 0), leg2: at(240, 0, HALF_ROOT_3) },
}

/** Volts of leg 1 to the star point, by system [V]. */
export const LEG_VOLTS: Readonly<Record<System, number>> = {
  'split-phase': 120,
  'single-leg': 120,
  'two-legs-of-wye': 120,
  'single-phase-230': 230,
  'two-lives-230': LIFE_VOLTS,
  'three-phase-230-400': 230,
  'high-leg-delta': 120,
}

/** Systems that bring no neutral. */
export const WITHOUT_NEUTRAL: readonly System[] = ['two-lives-230']

/**
 * How far the supply may lie from nominal, as factors.
 *
 * @source [ANSI-C84.1] range A, utilisation minimum and service maximum (from memory)
 * @source [IEC-60038] 230 V ±10 %; United Kingdom and Australia −6 %, New Zealand ±6 % (from memory)
 */
export const BANDS = {
  US: { low: 110 / 120, high: 126 / 120 },
  CA: { low: 110 / 120, high: 126 / 120 },
  UK: { low: 0.94, high: 1.1 },
  EU: { low: 0.9, high: 1.1 },
  AU: { low: 0.94, high: 1.1 },
  NZ: { low: 0.94, high: 1.06 },
} as const
