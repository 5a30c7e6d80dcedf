import type { Job } from '../../domain/job.ts'
import { isPowered } from '../../domain/load/load.ts'
import type { WiringPlan } from '../plan/artifact.ts'
import type { SheetJumper, SheetSetting, SheetStrap } from './artifact.ts'
import { text } from './messages.ts'

/** Every jumper, those that stay as the factory set them among them. */
export function jumpersOf({ box }: Job, plan: WiringPlan): readonly SheetJumper[] {
  return plan.jumpers.map(({ jumper: id, label, from, to, fromLabel, toLabel, moves }) => ({
    id,
    label,
    positions: (box.board.jumpers.find(each => each.id === id)?.positions ?? []).map(each => ({
      id: each.id,
      label: each.label ?? each.id,
    })),
    from,
    to,
    fromLabel,
    toLabel,
    moves,
  }))
}

/** Straps by the volts that each position means: what the plate of the motor prints. */
export function strapsOf(job: Job, plan: WiringPlan): readonly SheetStrap[] {
  return plan.straps.map(({ load, label, from, to, moves }) => {
    const own = job.loads.filter(isPowered).find(each => each.id === load)?.straps?.positions
    const volts = (id: string) => own?.[id]?.volts.text ?? id
    return { load, label, from: volts(from), to: volts(to), moves }
  })
}

/** What is entered that wiring and current depend on. */
export function settingsOf({ box }: Job, { landing }: WiringPlan): readonly SheetSetting[] {
  const { profile, currentLimit } = landing.settings
  const { profile: resetProfile, currentLimit: resetLimit } = box.resetsTo ?? {}
  const find = (id: string) => box.profiles.find(each => each.id === id)
  return [
    {
      name: text('setting.profile'),
      to: find(profile)?.label ?? profile,
      factory: find(box.profileFactory)?.label ?? box.profileFactory,
      entered: find(profile)?.entered ?? '',
      moves: profile !== box.profileFactory,
      ...(resetProfile === undefined || resetProfile === profile
        ? {}
        : { fallsTo: find(resetProfile)?.label ?? resetProfile }),
    },
    {
      name: text('setting.limit'),
      to: currentLimit.text,
      factory: box.currentLimit.factory.text,
      entered: box.currentLimit.entered,
      moves: currentLimit.si !== box.currentLimit.factory.si,
      ...(resetLimit === undefined || resetLimit.si === currentLimit.si
        ? {}
        : { fallsTo: resetLimit.text }),
    },
  ]
}
