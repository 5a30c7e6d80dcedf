import { readdirSync, readFileSync } from 'node:fs'
import { setTimeout as wait } from 'node:timers/promises'

/** A process, as the system tells it: the group is what a browser and all it starts have in common. */
interface Process {
  readonly id: number
  readonly group: number
  readonly ended: boolean
}

/** Browsers that were started here and must be gone at the end. */
const started = new Set<number>()

function processOf(id: number): Process | undefined {
  try {
    const text = readFileSync(`/proc/${id}/stat`, 'utf8')
    // The name in brackets may hold anything, so count from its end: state, parent, group.
    const [state, , group] = text.slice(text.lastIndexOf(')') + 2).split(' ')
    return { id, group: Number(group), ended: state === 'Z' || state === 'X' }
  } catch {
    return undefined
  }
}

const ids = (): readonly number[] => readdirSync('/proc').map(Number).filter(Number.isInteger)

/** What still runs of a group. */
const running = (group: number): readonly Process[] =>
  ids()
    .map(processOf)
    .filter(each => each !== undefined)
    .filter(each => each.group === group && !each.ended)

/** How many processes a group still has. */
export const runningIn = (group: number): number => running(group).length

function commandOf(id: number): readonly string[] {
  try {
    return readFileSync(`/proc/${id}/cmdline`, 'utf8').split('\0')
  } catch {
    return []
  }
}

/** The group of the browser that keeps its things in a folder. */
export function groupOf(profile: string): number {
  const owner = ids().find(id => {
    const command = commandOf(id)
    return (
      command.includes(`--user-data-dir=${profile}`) &&
      !command.some(each => each.startsWith('--type='))
    )
  })
  const group = owner === undefined ? undefined : processOf(owner)?.group
  if (group === undefined) throw new Error('The browser that was started is not found.')
  started.add(group)
  return group
}

async function gone(group: number, patience: number): Promise<boolean> {
  const until = Date.now() + patience
  while (running(group).length > 0) {
    if (Date.now() > until) return false
    await wait(20)
  }
  started.delete(group)
  return true
}

/** Ends a browser and all it started at once, as a flat battery would. */
export async function killGroup(group: number): Promise<void> {
  if (running(group).length > 0) process.kill(-group, 'SIGKILL')
  if (!(await gone(group, 10_000))) throw new Error('A killed browser still runs.')
}

/** Browsers that were started here and still run, after a moment to end in. They are ended too. */
export async function leftRunning(): Promise<readonly number[]> {
  const left: number[] = []
  for (const group of started) {
    if (await gone(group, 3000)) continue
    left.push(group)
    await killGroup(group)
  }
  return left
}
