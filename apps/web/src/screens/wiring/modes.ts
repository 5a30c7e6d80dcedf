/** Commands that are on together; none of them: everything off. */
export type Mode = readonly string[]

export const ALL_OFF: Mode = []

export const isSameMode = (a: Mode, b: Mode): boolean =>
  a.length === b.length && a.every(each => b.includes(each))

/** Commands that any mode has, in the order of the box. */
export const commandsIn = (modes: readonly Mode[], order: readonly string[]): readonly string[] =>
  order.filter(each => modes.some(mode => mode.includes(each)))

const differences = (a: Mode, b: Mode): number =>
  a.filter(each => !b.includes(each)).length + b.filter(each => !a.includes(each)).length

/**
 * The mode that switching one command comes to: of those the box can be in, the one in which least
 * else changes. High speed puts low speed off; the heater may bring the circulation along.
 */
export function switched(modes: readonly Mode[], on: Mode, command: string): Mode {
  const isOff = !on.includes(command)
  const wished = isOff ? [...on, command] : on.filter(each => each !== command)
  let best: Mode | undefined
  for (const mode of modes.filter(each => each.includes(command) === isOff)) {
    const isNearer = best === undefined || differences(mode, wished) < differences(best, wished)
    if (isNearer) best = mode
  }
  return best ?? on
}
