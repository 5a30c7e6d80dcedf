import type { Network } from './build-network.ts'
import type { OracleJob } from './read-job.ts'
import type { State } from './states.ts'
import { contactsMoved } from './states.ts'

/** Which switches are closed, one value per switch, and the first state that makes them so. */
export interface Configuration {
  readonly closed: Uint8Array
  readonly name: string
}

/** Which switches are closed in a state; one value per switch. */
export function switchesIn(
  job: OracleJob,
  network: Network,
  state: State,
  limit: 'closed' | 'open',
): Uint8Array {
  const { closed, opened } = contactsMoved(job, state)
  return Uint8Array.from(network.switches, each => {
    if (each.kind === 'touch') return 0
    if (each.kind !== 'contact') return 1
    if (each.isLimit) return limit === 'closed' ? 1 : 0
    const own = each.board === 'box' ? each.name.slice('box.'.length) : ''
    return closed.has(own) || (each.restsClosed && !opened.has(own)) ? 1 : 0
  })
}

/** Each distinct set of closed switches once, the first state that makes it standing for it. */
export function configurations(
  job: OracleJob,
  network: Network,
  states: readonly State[],
  limit: 'closed' | 'open',
): Configuration[] {
  const found = new Map<string, Configuration>()
  for (const state of states) {
    const closed = switchesIn(job, network, state, limit)
    const key = closed.join('')
    if (!found.has(key)) found.set(key, { closed, name: `{${state.join(', ')}}` })
  }
  return [...found.values()]
}
