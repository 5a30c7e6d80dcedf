import type { FeedFunction, LeadFunction } from '../../domain/board/board.ts'
import type { Colour, Region, System } from '../../domain/described.ts'
import { ownFunction } from '../../domain/supply/circuits.ts'

/**
 * What is commonly met in a region: offered as one tap, never taken for an answer.
 *
 * Common practice, no source, unless one is named.
 */
interface Habits {
  readonly frequency: '50 Hz' | '60 Hz'
  readonly systems: readonly System[]
  /** Breakers of tubs. */
  readonly breakers: readonly string[]
  readonly volts: readonly string[]
  readonly feedSizes: readonly string[]
  readonly leadSizes: readonly string[]
  readonly lengthUnit: 'ft' | 'm'
  readonly openingUnit: 'in' | 'mm'
  readonly feedColours: Readonly<Partial<Record<FeedFunction, Colour>>>
  readonly leadColours: Readonly<Record<LeadFunction, Colour>>
}

const AMERICAN: Habits = {
  frequency: '60 Hz',
  systems: ['split-phase', 'single-leg', 'two-legs-of-wye', 'high-leg-delta'],
  breakers: ['15 A', '20 A', '30 A', '40 A', '50 A', '60 A'],
  volts: ['240 V', '120 V', '230 V', '115 V', '12 V'],
  feedSizes: ['14 AWG', '12 AWG', '10 AWG', '8 AWG', '6 AWG', '4 AWG'],
  leadSizes: ['14 AWG', '16 AWG', '18 AWG', '12 AWG', '20 AWG', '22 AWG'],
  lengthUnit: 'ft',
  openingUnit: 'in',
  feedColours: { leg1: 'black', leg2: 'red', leg3: 'blue', neutral: 'white', earth: 'green' },
  leadColours: {
    hot: 'black',
    high: 'black',
    low: 'red',
    common: 'white',
    earth: 'green',
    signal: 'white',
    data: 'yellow',
  },
}

/** Conductor colours of fixed wiring: brown, black, grey; blue; green-yellow. @source [IEC-60445] (from memory) */
const EUROPEAN: Habits = {
  frequency: '50 Hz',
  systems: ['single-phase-230', 'three-phase-230-400', 'two-lives-230'],
  breakers: ['13 A', '16 A', '20 A', '25 A', '32 A', '40 A'],
  volts: ['230 V', '240 V', '12 V'],
  feedSizes: ['1.5 mm2', '2.5 mm2', '4 mm2', '6 mm2', '10 mm2', '16 mm2'],
  leadSizes: ['1.5 mm2', '1 mm2', '0.75 mm2', '2.5 mm2', '0.5 mm2'],
  lengthUnit: 'm',
  openingUnit: 'mm',
  feedColours: {
    leg1: 'brown',
    leg2: 'black',
    leg3: 'grey',
    neutral: 'blue',
    earth: 'green-yellow',
  },
  leadColours: {
    hot: 'brown',
    high: 'brown',
    low: 'black',
    common: 'blue',
    earth: 'green-yellow',
    signal: 'white',
    data: 'yellow',
  },
}

const HABITS: Readonly<Record<Region, Habits>> = {
  US: AMERICAN,
  CA: AMERICAN,
  UK: EUROPEAN,
  EU: EUROPEAN,
  AU: EUROPEAN,
  NZ: EUROPEAN,
}

export const habitsOf = (region: Region): Habits => HABITS[region]

/** The colour usual for what a conductor of the supply carries, on either circuit. */
export const usualFeedColour = (region: Region, carries: FeedFunction): Colour =>
  HABITS[region].feedColours[ownFunction(carries)] ?? 'black'
