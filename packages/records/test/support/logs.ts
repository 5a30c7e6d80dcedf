import type { Act, Entry, Path, Reader } from '@tubwright/records'
import { JobLog, must } from '@tubwright/records'

export const HAND = { author: 'Anna', at: '2031-05-04T10:20:30Z' }

export const write = (log: JobLog, ...acts: readonly Act[]): readonly Entry[] =>
  must(log.append(acts, HAND))

export const logOf = (store: string, ...acts: readonly Act[]): JobLog => {
  const log = JobLog.empty(store)
  write(log, ...acts)
  return log
}

/** Another copy with the same entries. */
export const copyOf = (log: JobLog, store: string, reader: Reader = log.reader): JobLog =>
  JobLog.open(store, log.entries, reader)

/** Both hear what the other has. */
export function meet(...logs: readonly JobLog[]): void {
  const all = logs.flatMap(each => each.entries)
  for (const each of logs) each.merge(all)
}

export const set = (path: Path, value: Extract<Act, { do: 'set' }>['value']): Act => ({
  do: 'set',
  path,
  value,
})
export const clear = (path: Path): Act => ({ do: 'clear', path })
export const add = (path: Path): Act => ({ do: 'add', path })
export const withdraw = (path: Path): Act => ({ do: 'withdraw', path })
export const restore = (path: Path): Act => ({ do: 'restore', path })

/** An entry by hand, as anybody might send one. */
export const entryOf = (more: Partial<Record<keyof Entry, unknown>> = {}): Entry =>
  ({
    schema: 'entry/1',
    id: 'a:1',
    ...HAND,
    seen: {},
    act: set(['box'], 'b1'),
    ...more,
  }) as Entry
