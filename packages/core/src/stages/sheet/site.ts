import type { Feed, Profile } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { SheetSetting, SheetStrap, SheetWire } from './artifact.ts'
import type { BoundingPoints } from './bounds.ts'

/** Everything that the steps are laid out from. */
export interface Site {
  readonly job: Job
  readonly plan: WiringPlan
  readonly verification: Verification
  readonly feed: Feed
  readonly profile: Profile | undefined
  readonly wires: readonly SheetWire[]
  readonly settings: readonly SheetSetting[]
  readonly straps: readonly SheetStrap[]
  readonly bounding: BoundingPoints
}

export const numbersOf = (wires: readonly SheetWire[]): readonly number[] =>
  wires.map(each => each.number)

/** Whether some end of a wire is on a terminal. */
export const isLanded = (wire: SheetWire): boolean =>
  wire.ends.some(each => each.terminal !== undefined)
