import { inUseBy } from './in-use.ts'
import { leave, wasLeft } from './left-versions.ts'
import { ownScript } from './trusted.ts'
import type { UpdateAct, UpdateEvent, UpdateState } from './update-rule.ts'
import { startOfUpdates, stepUpdate } from './update-rule.ts'

const MINUTE = 60_000
const LOOK_EVERY = 30 * MINUTE
/** A worker that does not answer or take over in this time [ms] is not waited for. */
const PATIENCE = 2000

/** Written into the page by the build: a page that is only being worked on has none. */
const ownVersion = (): string =>
  document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? ''

function memory(): Storage | undefined {
  try {
    return sessionStorage
  } catch {
    return undefined
  }
}

const after = <T>(milliseconds: number, value: T): Promise<T> =>
  new Promise(resolve => setTimeout(resolve, milliseconds, value))

/** The version whose files a worker keeps; undefined if it does not answer. */
function versionOf(worker: ServiceWorker): Promise<string | undefined> {
  const { port1, port2 } = new MessageChannel()
  const answer = new Promise<string>(resolve => {
    port1.onmessage = ({ data }) => resolve(String(data))
  })
  worker.postMessage('version', [port2])
  return Promise.race([answer, after(PATIENCE, undefined)])
}

let state: UpdateState = startOfUpdates({ hidden: false, spent: false })
let inUse = inUseBy(undefined, '')
let registration: ServiceWorkerRegistration | undefined
/** What was done last, and whether this page is going to start again for it. */
let acting: Promise<boolean> | undefined

/** True once the new version has taken over; false if another page is in use, or it does not come. */
async function takeOver(): Promise<boolean> {
  const { serviceWorker } = navigator
  const taken = new Promise<boolean>(resolve =>
    serviceWorker.addEventListener('controllerchange', () => resolve(true), { once: true }),
  )
  let hasTaken = false
  const free = await inUse.ifNone(async () => {
    registration?.waiting?.postMessage('take-over')
    hasTaken = await Promise.race([taken, after(PATIENCE, false)])
  })
  if (!free) send('declined')
  return hasTaken
}

function reload(): boolean {
  leave(memory(), ownVersion())
  location.reload()
  return true
}

const ACTS: Readonly<Record<UpdateAct, () => boolean | Promise<boolean>>> = {
  'take-over': takeOver,
  reload,
}

/** Being looked at only counts once there is something to look at. */
const isInUse = ({ started, hidden, holds }: UpdateState): boolean =>
  holds > 0 || (started && !hidden)

const listeners = new Set<() => void>()

/** For a screen that says so: whether a newer version stands by. */
export const isUpdateWaiting = (): boolean => state.waiting || state.replaced

/** Calls back whenever that may have changed, until the function that comes back is called. */
export function onUpdates(listener: () => void): () => void {
  listeners.add(listener)
  return () => void listeners.delete(listener)
}

function send(event: UpdateEvent): void {
  const step = stepUpdate(state, event)
  state = step.state
  for (const listener of listeners) listener()
  const settled = inUse.set(isInUse(state))
  const { act } = step
  if (act) acting = settled.then(ACTS[act])
}

/**
 * Keeps the version as it is while something is open that another start would lose: a field being
 * filled, a camera, a reading. The function that comes back lets go, once.
 *
 * @param _reason - for whoever reads the call
 */
export function holdUpdates(_reason: string): () => void {
  let held = true
  send('held')
  return () => {
    if (held) send('released')
    held = false
  }
}

async function noticeController(): Promise<void> {
  const { controller } = navigator.serviceWorker
  if (!controller) return
  const version = await versionOf(controller)
  if (version !== undefined && version !== ownVersion()) send('replaced')
}

function follow(worker: ServiceWorker | null): void {
  worker?.addEventListener('statechange', () => {
    // The first version of all takes nobody's place.
    if (worker.state === 'installed' && navigator.serviceWorker.controller) send('waiting')
  })
}

function watch(found: ServiceWorkerRegistration): void {
  if (registration) return
  registration = found
  found.addEventListener('updatefound', () => follow(found.installing))
  follow(found.installing)
  if (found.waiting) send('waiting')
}

/** Asks the host itself, past all caches, which version it has; without a network it stays silent. */
async function lookForUpdate(): Promise<void> {
  try {
    const response = await fetch('version.json', { cache: 'no-store' })
    const { version } = (await response.json()) as { version?: unknown }
    if (version !== ownVersion()) await registration?.update()
  } catch {
    // No network, or a host that is being changed: the next look will tell.
  }
}

function listen(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => void noticeController())
  document.addEventListener('visibilitychange', () => {
    send(document.hidden ? 'hidden' : 'shown')
    if (!document.hidden) void lookForUpdate()
  })
  window.addEventListener('online', () => void lookForUpdate())
  setInterval(() => void lookForUpdate(), LOOK_EVERY)
}

/** After the first screen is there: what is kept for later must not slow down what is seen now. */
function register(): void {
  const go = async () => {
    try {
      watch(await navigator.serviceWorker.register(ownScript('sw.js'), { updateViaCache: 'none' }))
    } catch {
      // A private window, or a host without sw.js: the app works, only not without a network.
    }
  }
  const atRest = () => {
    if ('requestIdleCallback' in window) requestIdleCallback(() => void go(), { timeout: PATIENCE })
    else setTimeout(() => void go(), PATIENCE / 4)
  }
  if (document.readyState === 'complete') atRest()
  else window.addEventListener('load', atRest, { once: true })
}

/** A new version that already stands by: it is taken now, while nothing can be lost. */
async function takeWaiting(): Promise<void> {
  if (!navigator.serviceWorker.controller) return
  const found = await navigator.serviceWorker.getRegistration()
  if (!found?.waiting) return
  watch(found)
  // The page is going to start again, so this one need not go on; unless it does not happen.
  if (await acting) await after(PATIENCE, undefined)
}

/**
 * Starts what lets the app work without a network and renew itself. Await it before the first screen
 * is made: a version that waits takes over here.
 */
export async function startOffline(): Promise<void> {
  if (ownVersion() === '' || !('serviceWorker' in navigator)) return
  inUse = inUseBy(navigator.locks, `tubwright in use ${new URL('.', document.baseURI).pathname}`)
  state = startOfUpdates({ hidden: document.hidden, spent: wasLeft(memory(), ownVersion()) })
  listen()
  try {
    await takeWaiting()
  } finally {
    send('started')
    register()
  }
}
