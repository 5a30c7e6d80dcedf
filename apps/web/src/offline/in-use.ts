/**
 * Tells the pages of the app in one browser of each other: each one that is looked at or holds
 * something open has a share in one lock, so that a version is never replaced under any of them.
 */
export interface InUse {
  readonly set: (inUse: boolean) => Promise<void>
  /** Runs the work if no page is in use, and keeps others waiting meanwhile; false if one is. */
  readonly ifNone: (work: () => Promise<void>) => Promise<boolean>
}

type Locks = Pick<LockManager, 'request'>

/** A browser without locks: then each page answers for itself. */
const alone: InUse = {
  set: async () => undefined,
  ifNone: async work => {
    await work()
    return true
  },
}

export function inUseBy(locks: Locks | undefined, name: string): InUse {
  if (!locks) return alone
  let share: { readonly release: () => void; readonly ended: Promise<unknown> } | undefined

  function take(): void {
    let release = () => {}
    const until = new Promise<void>(done => {
      release = done
    })
    share = { release, ended: locks?.request(name, { mode: 'shared' }, () => until) ?? until }
  }

  async function giveBack(): Promise<void> {
    const { release, ended } = share ?? {}
    share = undefined
    release?.()
    await ended
  }

  return {
    set: async inUse => {
      if (inUse && !share) take()
      if (!inUse) await giveBack()
    },
    ifNone: async work => {
      let free = false
      await locks.request(name, { ifAvailable: true }, async lock => {
        free = lock !== null
        if (free) await work()
      })
      return free
    },
  }
}
