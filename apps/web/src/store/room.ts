/** How much room is left on this device, and whether the browser may clear it by itself. */
export interface Room {
  /** [bytes]; undefined where the browser does not say. */
  readonly left?: number
  readonly used?: number
  readonly isPersistent: boolean
}

export async function readRoom(): Promise<Room> {
  const storage = navigator.storage as StorageManager | undefined
  const { quota, usage } = (await storage?.estimate?.()) ?? {}
  const isPersistent = (await storage?.persisted?.()) ?? false
  return {
    isPersistent,
    ...(usage === undefined ? {} : { used: usage }),
    ...(quota === undefined || usage === undefined ? {} : { left: Math.max(0, quota - usage) }),
  }
}

/** Asks the browser to keep what is stored here; asked once, when the first job is saved. */
export const askToPersist = async (): Promise<boolean> =>
  (await navigator.storage?.persist?.()) ?? false
