/** What a new author is asked before a skeleton is written. */
export interface SkeletonAnswers {
  readonly id: string
  readonly feeds: readonly FeedKind[]
  readonly outputs: readonly OutputKind[]
  readonly heaterPoles: 1 | 2
  readonly profiles: readonly ProfileKind[]
}

export const FEED_KINDS = ['two-legs', 'one-leg', 'one-phase-230'] as const
export type FeedKind = (typeof FEED_KINDS)[number]

export const OUTPUT_KINDS = [
  'two-speed-pump',
  'one-speed-pump',
  'circulation-pump',
  'ozonator',
  'blower',
  'light',
] as const
export type OutputKind = (typeof OUTPUT_KINDS)[number]

export const PROFILE_KINDS = ['circulation', 'low-speed', 'one-speed'] as const
export type ProfileKind = (typeof PROFILE_KINDS)[number]

/** The pump that each profile filters and heats with. */
export const PUMP_OF = {
  circulation: 'circulation-pump',
  'low-speed': 'two-speed-pump',
  'one-speed': 'one-speed-pump',
} as const satisfies Readonly<Record<ProfileKind, OutputKind>>

/** As many pumps as a skeleton has letters for. */
export const PUMPS_MAX = 3

type Kind = Omit<SkeletonAnswers, 'id'>

/** Boxes to begin from, by what feeds them. */
export const SKELETON_KINDS = {
  'two-legs': {
    feeds: ['two-legs'],
    outputs: ['two-speed-pump', 'one-speed-pump', 'circulation-pump', 'ozonator', 'light'],
    heaterPoles: 2,
    profiles: ['circulation', 'low-speed'],
  },
  'one-leg': {
    feeds: ['one-leg'],
    outputs: ['two-speed-pump', 'circulation-pump', 'ozonator', 'light'],
    heaterPoles: 1,
    profiles: ['circulation', 'low-speed'],
  },
  convertible: {
    feeds: ['two-legs', 'one-leg'],
    outputs: ['two-speed-pump', 'circulation-pump', 'ozonator', 'light'],
    heaterPoles: 2,
    profiles: ['circulation', 'low-speed'],
  },
  'one-phase-230': {
    feeds: ['one-phase-230'],
    outputs: ['two-speed-pump', 'circulation-pump', 'ozonator', 'blower', 'light'],
    heaterPoles: 2,
    profiles: ['circulation', 'low-speed'],
  },
} as const satisfies Readonly<Record<string, Kind>>
export type SkeletonKind = keyof typeof SKELETON_KINDS
