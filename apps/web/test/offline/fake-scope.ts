import type { WorkerScope } from '../../src/offline/worker-scope.ts'

type Listener = (event: never) => void

/** One named cache, by address. Like a browser's, it gives each answer anew. */
function fakeCache() {
  const kept = new Map<string, Response>()
  const urlOf = (asked: string | Request) => (typeof asked === 'string' ? asked : asked.url)
  return {
    match: async (asked: string | Request) => kept.get(urlOf(asked))?.clone(),
    put: async (asked: string | Request, response: Response) =>
      void kept.set(urlOf(asked), response),
    keys: async () => [...kept.keys()],
  }
}

function fakeCaches() {
  const all = new Map<string, ReturnType<typeof fakeCache>>()
  return {
    open: async (name: string) => {
      const found = all.get(name) ?? fakeCache()
      all.set(name, found)
      return found
    },
    delete: async (name: string) => all.delete(name),
    keys: async () => [...all.keys()],
  }
}

/** A host: what it answers by path, and what was asked of it. */
export interface FakeHost {
  readonly files: Map<string, string | Response | Error>
  readonly asked: Request[]
}

export const fakeHost = (files: Readonly<Record<string, string>>): FakeHost => ({
  files: new Map(Object.entries(files)),
  asked: [],
})

async function answerOf(host: FakeHost, request: Request): Promise<Response> {
  host.asked.push(request)
  const file = host.files.get(request.url.slice(ROOT.length) || './')
  if (file instanceof Error) throw file
  if (file instanceof Response) return file.clone()
  return file === undefined ? new Response('', { status: 404 }) : new Response(file)
}

export const ROOT = 'https://host.test/tub/'

/** A browser's side of a service worker, for as many versions as a test installs in turn. */
export function fakeBrowser() {
  const caches = fakeCaches()
  const done = { skipped: 0, claimed: 0 }

  /** Runs a worker's code, and gives what the browser could then send it. */
  function run(host: FakeHost, code: (scope: WorkerScope) => void) {
    const listeners = new Map<string, Listener>()
    const registration = {
      scope: ROOT,
      installing: undefined as unknown,
      waiting: undefined as unknown,
    }
    code({
      registration,
      clients: { claim: async () => void done.claimed++ },
      caches: caches as unknown as CacheStorage,
      fetch: request => answerOf(host, request),
      skipWaiting: async () => void done.skipped++,
      addEventListener: (name, listener) => void listeners.set(name, listener as Listener),
    })
    const send = async (name: string, more: object = {}): Promise<Response | undefined> => {
      const lasting: Promise<unknown>[] = []
      let response: Promise<Response> | undefined
      const event = {
        waitUntil: (until: Promise<unknown>) => void lasting.push(until),
        respondWith: (given: Promise<Response>) => {
          response = given
        },
        ...more,
      }
      listeners.get(name)?.(event as never)
      await Promise.all(lasting)
      return response
    }
    return {
      registration,
      install: () => send('install'),
      activate: () => send('activate'),
      tell: (data: unknown, ports: readonly unknown[] = []) => send('message', { data, ports }),
      ask: async (url: string, more: Partial<Record<'mode' | 'method', string>> = {}) => {
        const request = { url, method: 'GET', mode: 'cors', ...more }
        return (await send('fetch', { request }))?.text()
      },
      open: async (url: string) =>
        send('fetch', { request: { url, method: 'GET', mode: 'navigate' } }),
    }
  }
  return { caches, done, run }
}
