import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { BrowserContext, BrowserContextOptions, Page } from 'playwright-core'
import { chromium } from 'playwright-core'
import type { Running } from '../../../server/src/index.ts'
import { serve } from '../../../server/src/index.ts'
import { chromiumHere, FLAGS } from './chromium.ts'
import type { Faults } from './faults.ts'
import { watch } from './faults.ts'
import type { Outside } from './outside.ts'
import { outside } from './outside.ts'
import { groupOf, killGroup } from './processes.ts'

export type Device = 'phone' | 'tablet' | 'desk'

const DEVICES: Readonly<Record<Device, BrowserContextOptions>> = {
  phone: {
    viewport: { width: 390, height: 844 },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
  },
  tablet: {
    viewport: { width: 820, height: 1180 },
    deviceScaleFactor: 2,
    isMobile: true,
    hasTouch: true,
  },
  desk: { viewport: { width: 1280, height: 800 } },
}

export interface OpenOptions {
  readonly device?: Device
  /** Another size than the device's. */
  readonly viewport?: { readonly width: number; readonly height: number }
  readonly scheme?: 'light' | 'dark'
  readonly language?: 'en' | 'es'
  readonly reducedMotion?: boolean
  /** How many times slower than this machine. */
  readonly cpuSlowdown?: number
  /** How many times larger than usual the person has set the browser's text. */
  readonly textScale?: number
  /** Opens without network and server: of use on a profile that has the app already. */
  readonly offline?: boolean
  /** A folder that outlives the browser; without it a fresh one, removed at the end. */
  readonly profile?: string
  /** The folder of the bundle that is served. */
  readonly bundle: string
  /** The server's port, where a profile must find its origin again. */
  readonly port?: number
  /** What is opened first: a route such as "#/jobs". */
  readonly route?: string
  readonly context?: BrowserContextOptions
}

export interface App {
  readonly page: Page
  readonly context: BrowserContext
  readonly url: string
  readonly port: number
  readonly profile: string
  readonly options: OpenOptions
  readonly faults: Faults
  /** Cuts the network and stops the server. */
  readonly goOffline: () => Promise<void>
  /** Starts the server again, with another bundle if one is given, and lets the network through. */
  readonly goOnline: (bundle?: string) => Promise<void>
  /** Ends the browser and all its processes at once, and leaves server and profile. */
  readonly kill: () => Promise<void>
  /** Kills the browser if it still runs, and opens another on the same profile and server. */
  readonly reopen: (changes?: Partial<OpenOptions>) => Promise<App>
  /** Closes all; throws if anything went wrong in the page meanwhile. A second call does nothing. */
  readonly close: () => Promise<void>
}

/** What takes longer [ms] has gone wrong: better told by name than by the test's own limit. */
const PATIENCE = 15_000

const LANGUAGES = { en: 'en-GB', es: 'es-ES' } as const

const contextOptions = (options: OpenOptions): BrowserContextOptions => ({
  ...DEVICES[options.device ?? 'desk'],
  ...(options.viewport ? { viewport: options.viewport } : {}),
  colorScheme: options.scheme ?? 'light',
  locale: LANGUAGES[options.language ?? 'en'],
  reducedMotion: options.reducedMotion ? 'reduce' : 'no-preference',
  ...options.context,
})

async function launch(
  profile: string,
  proxy: string,
  options: OpenOptions,
): Promise<BrowserContext> {
  const { executable, env } = await chromiumHere()
  return chromium.launchPersistentContext(profile, {
    executablePath: executable,
    headless: true,
    args: [...FLAGS, `--proxy-server=${proxy}`],
    env: { ...(process.env as Record<string, string>), ...env },
    ...contextOptions(options),
  })
}

async function slowDown(context: BrowserContext, page: Page, rate: number): Promise<void> {
  if (rate === 1) return
  const session = await context.newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate })
}

/** As a person sets it in the browser: media queries in em follow it, as they do not follow a page's own style. */
async function enlargeText(context: BrowserContext, page: Page, scale: number): Promise<void> {
  if (scale === 1) return
  const session = await context.newCDPSession(page)
  const fontSizes = { standard: 16 * scale, fixed: 13 * scale }
  await session.send('Page.setFontSizes', { fontSizes })
}

/** The server behind a page: it may go away and come back, at one address. */
function standing(first: Running) {
  let running: Running | undefined = first
  return {
    stop: async () => {
      await running?.stop()
      running = undefined
    },
    start: async (folder: string) => {
      await running?.stop()
      running = await serve({ folder, port: first.port })
    },
  }
}

const freshProfile = (): string => mkdtempSync(join(tmpdir(), 'tubwright-profile-'))

/** What is open now, in the order of opening. */
const opened = new Set<App>()

/** Closes whatever a test left open, and throws if anything was wrong in it. */
export async function closeAll(): Promise<void> {
  const results = await Promise.allSettled([...opened].map(app => app.close()))
  const failed = results.find(each => each.status === 'rejected')
  if (failed) throw failed.reason
}

/** Closes everything whatever happens on the way, then throws the first thing that went wrong. */
async function inTurn(steps: readonly (() => Promise<unknown> | unknown)[]): Promise<void> {
  const errors: unknown[] = []
  for (const step of steps)
    try {
      await step()
    } catch (error) {
      errors.push(error)
    }
  if (errors.length > 0) throw errors[0]
}

function refuseFaults(faults: Faults): void {
  const found = faults.take()
  if (found.length > 0) throw new Error(`The page did what it should not:\n${found.join('\n')}`)
}

interface Parts {
  readonly beyond: Outside
  readonly server: ReturnType<typeof standing>
  readonly profile: string
  readonly first: Running
}

async function start(options: OpenOptions, parts: Parts): Promise<App> {
  const { beyond, server, profile, first } = parts
  let cut = options.offline === true
  let heir: App | undefined
  const context = await launch(profile, beyond.proxy, options)
  const group = groupOf(profile)
  context.setDefaultTimeout(PATIENCE)
  const faults = watch(context, {
    origin: () => new URL(first.url).origin,
    cut: () => cut,
    outside: beyond,
  })
  const setCut = async (to: boolean) => {
    cut = to
    await context.setOffline(to)
  }
  const app: App = {
    page: context.pages()[0] ?? (await context.newPage()),
    context,
    url: first.url,
    port: first.port,
    profile,
    options,
    faults,
    goOffline: async () => {
      await setCut(true)
      await server.stop()
    },
    goOnline: async bundle => {
      await server.start(bundle ?? options.bundle)
      await setCut(false)
    },
    kill: async () => {
      await killGroup(group)
    },
    reopen: async changes => {
      await killGroup(group)
      refuseFaults(faults)
      opened.delete(app)
      heir = await start({ ...options, ...changes }, parts)
      return heir
    },
    close: async () => {
      if (heir) return heir.close()
      if (!opened.delete(app)) return
      await inTurn([
        () => context.close(),
        () => killGroup(group),
        () => server.stop(),
        () => beyond.stop(),
        () => {
          if (!options.profile) rmSync(profile, { recursive: true, force: true })
        },
        () => refuseFaults(faults),
      ])
    },
  }
  opened.add(app)
  if (cut) await app.goOffline()
  await slowDown(context, app.page, options.cpuSlowdown ?? 1)
  await enlargeText(context, app.page, options.textScale ?? 1)
  await app.page.goto(`${first.url}${options.route ?? ''}`)
  return app
}

/** Opens the app in a browser of its own on a server of its own. The caller closes it. */
export async function open(options: OpenOptions): Promise<App> {
  const profile = options.profile ?? freshProfile()
  mkdirSync(profile, { recursive: true })
  const beyond = await outside()
  const first = await serve({ folder: options.bundle, port: options.port ?? 0 })
  try {
    return await start(options, { beyond, server: standing(first), profile, first })
  } catch (error) {
    await closeAll().catch(() => undefined)
    await Promise.allSettled([first.stop(), beyond.stop()])
    throw error
  }
}
