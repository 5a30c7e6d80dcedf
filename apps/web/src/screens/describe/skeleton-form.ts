import type {
  FeedKind,
  OutputKind,
  ProfileKind,
  SkeletonAnswers,
  SkeletonKind,
} from '@tubwright/formats'
import { OUTPUT_KINDS, PROFILE_KINDS, PUMP_OF, PUMPS_MAX, SKELETON_KINDS } from '@tubwright/formats'

/** What a new author has answered so far. */
export interface SkeletonForm {
  readonly id: string
  readonly feeds: readonly FeedKind[]
  /** How many of each pump. */
  readonly pumps: Readonly<Record<PumpKind, number>>
  /** Everything else that is switched. */
  readonly outputs: readonly OutputKind[]
  readonly heaterPoles: 1 | 2
  readonly profiles: readonly ProfileKind[]
}

export const PUMP_KINDS = ['two-speed-pump', 'one-speed-pump'] as const
export type PumpKind = (typeof PUMP_KINDS)[number]

const isPump = (output: OutputKind): output is PumpKind => PUMP_KINDS.some(each => each === output)

export const OTHER_OUTPUTS: readonly OutputKind[] = OUTPUT_KINDS.filter(each => !isPump(each))

/** The answers that a kind of box begins with. */
export function formOf(id: string, kind: SkeletonKind): SkeletonForm {
  const { feeds, outputs, heaterPoles, profiles } = SKELETON_KINDS[kind]
  const all: readonly OutputKind[] = outputs
  const count = (pump: PumpKind) => all.filter(each => each === pump).length
  return {
    id,
    feeds,
    pumps: { 'two-speed-pump': count('two-speed-pump'), 'one-speed-pump': count('one-speed-pump') },
    outputs: all.filter(each => !isPump(each)),
    heaterPoles,
    profiles,
  }
}

const outputsOf = ({ pumps, outputs }: SkeletonForm): readonly OutputKind[] => [
  ...PUMP_KINDS.flatMap(pump => Array.from({ length: pumps[pump] }, () => pump)),
  ...OTHER_OUTPUTS.filter(each => outputs.includes(each)),
]

/** Profiles whose pump is there. */
export const servedProfiles = (form: SkeletonForm): readonly ProfileKind[] =>
  PROFILE_KINDS.filter(each => outputsOf(form).includes(PUMP_OF[each]))

/** What is wrong with the answers, by its sentence. */
export type FormFault =
  | 'describe.wrong-id'
  | 'describe.id-taken'
  | 'describe.no-feed'
  | 'describe.two-families'
  | 'describe.too-many-pumps'
  | 'describe.no-profile'

const ID = /^[A-Za-z][A-Za-z0-9-]{0,39}$/u

/** Why no box can be written from the answers yet. */
export function faultOf(form: SkeletonForm, taken: readonly string[]): FormFault | undefined {
  const { id, feeds, pumps } = form
  if (!ID.test(id)) return 'describe.wrong-id'
  if (taken.includes(id)) return 'describe.id-taken'
  if (feeds.length === 0) return 'describe.no-feed'
  if (feeds.includes('one-phase-230') && feeds.length > 1) return 'describe.two-families'
  if (pumps['two-speed-pump'] + pumps['one-speed-pump'] > PUMPS_MAX)
    return 'describe.too-many-pumps'
  return answersOf(form).profiles.length === 0 ? 'describe.no-profile' : undefined
}

/** The answers as a skeleton is written from them. */
export function answersOf(form: SkeletonForm): SkeletonAnswers {
  const { id, feeds, heaterPoles, profiles } = form
  const served = servedProfiles(form)
  return {
    id,
    feeds,
    outputs: outputsOf(form),
    heaterPoles,
    profiles: profiles.filter(each => served.includes(each)),
  }
}
