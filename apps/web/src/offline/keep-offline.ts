import type { Asked, Told, WorkerScope } from './worker-scope.ts'

/** One file of the build: where it is from the bundle's root, and what it must be. */
export interface BuiltFile {
  readonly path: string
  /** As `integrity` of a request wants it: "sha256-…". */
  readonly hash: string
}

export interface Build {
  readonly version: string
  readonly files: readonly BuiltFile[]
}

/** The page itself, however a host calls its file. */
const INDEX = './'

/** These hold the hash of their content in their name: under one name they are always the same. */
const isHashed = (path: string): boolean => path.startsWith('assets/')

/** A browser that was killed may have kept a page without its end, or without anything. */
const isWhole = async (page: Response): Promise<boolean> =>
  (await page.text()).trimEnd().endsWith('</html>')

/** Other copies of the app may lie in other folders of a host, each with caches of its own. */
const familyOf = (scope: string): string => `tubwright ${new URL(scope).pathname} `

/** A page must not be given an answer that was led elsewhere, so it is made afresh. */
async function plain(response: Response): Promise<Response> {
  if (!response.redirected) return response
  const { status, statusText, headers } = response
  return new Response(await response.blob(), { status, statusText, headers })
}

/**
 * The whole service worker: keeps the files of one build and answers from them.
 *
 * It installs only once every file is there and is what the build says it is. Until then, and if any
 * fails, the version before goes on. It knows nothing of what the app itself keeps.
 */
export function keepOffline(scope: WorkerScope, build: Build): void {
  const root = scope.registration.scope
  const family = familyOf(root)
  const own = family + build.version
  const urlOf = (path: string) => new URL(path, root).href
  const listed = new Set(build.files.map(({ path }) => urlOf(path)))

  const oldCaches = async (): Promise<readonly string[]> =>
    (await scope.caches.keys()).filter(name => name.startsWith(family) && name !== own)

  async function found(url: string, names: readonly string[]): Promise<Response | undefined> {
    for (const name of names) {
      const response = await (await scope.caches.open(name)).match(url)
      if (response) return response
    }
    return undefined
  }

  async function load({ path, hash }: BuiltFile, cache: RequestCache): Promise<Response> {
    const request = new Request(urlOf(path), { integrity: hash, cache, credentials: 'same-origin' })
    const response = await scope.fetch(request)
    if (!response.ok) throw new Error(`${path}: ${response.status}`)
    return plain(response)
  }

  async function download(file: BuiltFile): Promise<Response> {
    if (!isHashed(file.path)) return load(file, 'no-cache')
    try {
      return await load(file, 'default')
    } catch {
      // The browser may have kept a broken one under this name, for a year: ask past what it kept.
      return load(file, 'reload')
    }
  }

  async function keep(file: BuiltFile, into: Cache, old: readonly string[]): Promise<void> {
    const same = isHashed(file.path) ? await found(urlOf(file.path), old) : undefined
    await into.put(urlOf(file.path), same ?? (await download(file)))
  }

  async function isComplete(): Promise<boolean> {
    const kept = await (await scope.caches.open(own)).keys()
    return kept.length === build.files.length
  }

  async function keepAll(): Promise<void> {
    // What an install left that was broken off is not trusted; the browser still has most of it.
    await scope.caches.delete(own)
    const [into, old] = [await scope.caches.open(own), await oldCaches()]
    for (const file of build.files) await keep(file, into, old)
    if (!(await isComplete())) throw new Error('What was kept is gone again.')
  }

  async function install(): Promise<void> {
    try {
      await keepAll()
    } catch (error) {
      await scope.caches.delete(own)
      throw error
    }
  }

  /** Not while a newer version installs or stands by: its cache is none of the old ones. */
  async function purge(): Promise<void> {
    const old = await oldCaches()
    const { installing, waiting } = scope.registration
    if (installing || waiting) return
    for (const name of old) await scope.caches.delete(name)
  }

  /** A page of the version before may still be open and want a part of it that it has not read yet. */
  async function fromAnyCache(request: Request): Promise<Response> {
    const kept = await found(request.url, [own, ...(await oldCaches())])
    return kept ?? scope.fetch(request)
  }

  async function page(url: URL): Promise<Response> {
    if (url.href === root || !url.href.startsWith(root)) {
      const kept = await found(urlOf(INDEX), [own])
      if (kept && (await isWhole(kept.clone()))) return kept
      return scope.fetch(new Request(url, { credentials: 'same-origin' }))
    }
    if (listed.has(url.href)) return fromAnyCache(new Request(url))
    // Its parts are found from the root only, so that is where a page is led.
    return Response.redirect(root)
  }

  function answer(event: Asked): void {
    const { request } = event
    const url = new URL(request.url)
    if (request.method !== 'GET' || url.origin !== new URL(root).origin) return
    url.search = ''
    url.hash = ''
    if (request.mode === 'navigate') {
      event.respondWith(page(url))
      // The page that comes now is of this version; whoever still had the old one has let it go.
      event.waitUntil(purge())
    } else if (listed.has(url.href) || isHashed(url.href.slice(root.length)))
      event.respondWith(fromAnyCache(request))
  }

  function hear(event: Told): void {
    if (event.data === 'take-over') event.waitUntil(scope.skipWaiting())
    if (event.data === 'version') event.ports[0]?.postMessage(build.version)
  }

  scope.addEventListener('install', event => event.waitUntil(install()))
  scope.addEventListener('activate', event => event.waitUntil(scope.clients.claim()))
  scope.addEventListener('fetch', answer)
  scope.addEventListener('message', hear)
}
