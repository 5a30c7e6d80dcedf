import { newGroups } from './groups.ts'
import { joinJumpers } from './join-copper.ts'
import type { OracleJob } from './read-job.ts'
import { isEarth } from './read-job.ts'

/** Whether the box keeps both sides of some heater of its own off the supply when it does not heat. */
export function holdsBothPolesOpen(job: OracleJob): boolean {
  const groups = newGroups()
  joinJumpers(job, job.plan, groups)
  const { board, places } = job.box
  for (const part of board.parts ?? []) {
    const isJoining =
      part.kind === 'fuse' ||
      part.kind === 'pole' ||
      part.kind === 'switch' ||
      part.role === 'limit' ||
      part.rest === 'closed'
    const [a, b] = part.across ?? []
    if (isJoining && a !== undefined && b !== undefined) groups.join(`box.${a}`, `box.${b}`)
  }
  const groupOf = (terminal: string): string =>
    groups.of(job.terminals.get(`box.${terminal}`)?.node ?? '')
  const supply = new Set(
    Object.entries(job.feed.lands).flatMap(([key, id]) => (isEarth(key) ? [] : [groupOf(id)])),
  )
  return places.some(({ takes, lands }) => {
    const { hot, common } = lands
    return (
      takes.includes('heater') &&
      hot !== undefined &&
      common !== undefined &&
      !supply.has(groupOf(hot)) &&
      !supply.has(groupOf(common))
    )
  })
}
