/** A complex number: of volts, by cosine and sine of its angle. */
export interface Phasor {
  readonly re: number
  readonly im: number
}

export const NO_VOLTS: Phasor = { re: 0, im: 0 }

export type SourceLine = 'leg1' | 'leg2' | 'leg3'

export type SupplySystem =
  | 'split-phase'
  | 'single-leg'
  | 'two-legs-of-wye'
  | 'single-phase-230'
  | 'two-lives-230'
  | 'three-phase-230-400'
  | 'high-leg-delta'

interface Source {
  /** EMF of each line to the star point [V]. */
  readonly lines: Readonly<Partial<Record<SourceLine, Phasor>>>
  readonly hasNeutral: boolean
}

const HALF_ROOT = Math.sqrt(3) / 2

/** An EMF [V] at one of the angles that occur; written out, so that 90° and 180° carry no rounding. */
const at = {
  0: (volts: number): Phasor => ({ re: volts, im: 0 }),
  90: (volts: number): Phasor => ({ re: 0, im: volts }),
  120: (volts: number): Phasor => ({ re: -volts / 2, im: volts * HALF_ROOT }),
  180: (volts: number): Phasor => ({ re: -volts, im: 0 }),
  '-120': (volts: number): Phasor => ({ re: -volts / 2, im: -volts * HALF_ROOT }),
}

const TO_STAR = 230 / Math.sqrt(3) // of two lives with 230 V between them

const SOURCES: Readonly<Record<SupplySystem, Source>> = {
  'split-phase': { lines: { leg1: at[0](120), leg2: at[180](120) }, hasNeutral: true },
  'single-leg': { lines: { leg1: at[0](120) }, hasNeutral: true },
  'two-legs-of-wye': { lines: { leg1: at[0](120), leg2: at['-120'](120) }, hasNeutral: true },
  'single-phase-230': { lines: { leg1: at[0](230) }, hasNeutral: true },
  'two-lives-230': {
    lines: { leg1: at[0](TO_STAR), leg2: at['-120'](TO_STAR) },
    hasNeutral: false,
  },
  'three-phase-230-400': {
    lines: { leg1: at[0](230), leg2: at['-120'](230), leg3: at[120](230) },
    hasNeutral: true,
  },
  'high-leg-delta': {
    lines: { leg1: at[0](120), leg2: at[90](120 * Math.sqrt(3)) },
    hasNeutral: true,
  },
}

export function sourceOf(system: string): Source {
  const source = (SOURCES as Readonly<Record<string, Source>>)[system]
  if (!source) throw new Error(`no supply system "${system}"`)
  return source
}
