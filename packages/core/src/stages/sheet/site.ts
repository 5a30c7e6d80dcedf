import type { Feed, Profile } from '../../domain/box/control-box.ts'
import type { Job } from '../../domain/job.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { Verification } from '../verify/artifact.ts'
import type { OpenPoint, SheetSetting, SheetStrap, SheetWire } from './artifact.ts'
import type { Bound } from './bounds.ts'
import type { SiteCircuit } from './circuits.ts'
import type { SheetParam, SheetText } from './messages.ts'
import { text } from './messages.ts'

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
  readonly bounds: readonly Bound[]
  readonly circuits: readonly SiteCircuit[]
  readonly open: readonly OpenPoint[]
}

type Numbers = readonly (number | SheetText)[]

/** Numbers in order, three and more in a row as one run: a long list is not read at a tub. */
export function runsOf(numbers: readonly number[]): Numbers {
  const runs: number[][] = []
  for (const number of [...numbers].sort((a, b) => a - b)) {
    const last = runs.at(-1)
    if (last && last.at(-1) === number - 1) last.push(number)
    else runs.push([number])
  }
  return runs.flatMap((run): Numbers => {
    const [from, to] = [run[0] ?? 0, run.at(-1) ?? 0]
    return run.length > 2 ? [text('wires.run', { from, to })] : run
  })
}

export const numbersOf = (wires: readonly SheetWire[]): Numbers =>
  runsOf(wires.map(each => each.number))

/** Settings that a reset or power cut changes, each with what it has to be. */
export const fallingTexts = ({ settings }: Site): readonly SheetText[] =>
  settings
    .filter(each => each.fallsTo !== undefined)
    .map(({ name, to }) => text('set.value', { setting: name, value: to }))

/** What is said wherever power comes back; nothing where no setting falls back. */
export function againTexts(site: Site): readonly SheetText[] {
  const settings: SheetParam = fallingTexts(site)
  return settings.length > 0 ? [text('set.again', { settings })] : []
}

/** Whether some end of a wire is on a terminal. */
export const isLanded = (wire: SheetWire): boolean =>
  wire.ends.some(each => each.terminal !== undefined)
