import type { ControlBox } from '../../domain/box/control-box.ts'
import type { Verification } from '../verify/artifact.ts'
import type { TogetherRow } from './artifact.ts'

export const commandLabel = ({ commands }: ControlBox, id: string): string =>
  commands.find(each => each.id === id)?.label ?? id

const isWithin = (a: readonly string[], b: readonly string[]): boolean =>
  a.length < b.length && a.every(id => b.includes(id))

/** Modes without the commands that no load answers, each combination once, at its most. */
function withoutIdle(
  modes: Verification['modes'],
  answered: ReadonlySet<string | undefined>,
): Verification['modes'] {
  const byCommands = new Map<string, Verification['modes'][number]>()
  for (const mode of modes) {
    const commands = mode.commands.filter(each => answered.has(each))
    const key = commands.join(' ')
    const known = byCommands.get(key)
    if (!known || Math.max(...mode.lineAmps) > Math.max(...known.lineAmps))
      byCommands.set(key, { ...mode, commands, heats: mode.heats || known?.heats === true })
  }
  return [...byCommands.values()]
}

/** Modes that nothing can be added to, those that heat first. */
export function togetherRows(
  box: ControlBox,
  { modes: all, expected }: Verification,
): readonly TogetherRow[] {
  const answered = new Set(expected.map(each => each.command))
  const modes = withoutIdle(all, answered)
  const order = box.commands.map(each => each.id)
  const byBox = (ids: readonly string[]) =>
    [...ids].sort((a, b) => order.indexOf(a) - order.indexOf(b))
  return modes
    .filter(mode => mode.commands.length > 0)
    .filter(mode => !modes.some(other => isWithin(mode.commands, other.commands)))
    .map(({ commands, heats, lineAmps }) => ({
      commands: byBox(commands).map(id => commandLabel(box, id)),
      heats,
      lineAmps,
    }))
    .sort((a, b) => Number(b.heats) - Number(a.heats) || b.commands.length - a.commands.length)
}
