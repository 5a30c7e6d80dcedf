/** What a service worker's surroundings offer. The page's own types know none of it. */
export interface Lasting {
  readonly waitUntil: (until: Promise<unknown>) => void
}

export interface Asked extends Lasting {
  readonly request: Request
  readonly respondWith: (response: Promise<Response>) => void
}

export interface Told extends Lasting {
  readonly data: unknown
  readonly ports: readonly Pick<MessagePort, 'postMessage'>[]
}

interface Events {
  readonly install: Lasting
  readonly activate: Lasting
  readonly fetch: Asked
  readonly message: Told
}

export interface WorkerScope {
  readonly registration: {
    readonly scope: string
    readonly installing: unknown
    readonly waiting: unknown
  }
  readonly clients: { readonly claim: () => Promise<void> }
  readonly caches: CacheStorage
  readonly fetch: (request: Request) => Promise<Response>
  readonly skipWaiting: () => Promise<void>
  readonly addEventListener: <Name extends keyof Events>(
    name: Name,
    listener: (event: Events[Name]) => void,
  ) => void
}
