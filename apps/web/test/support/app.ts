import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { inject, onTestFinished } from 'vitest'
import type { App, OpenOptions } from './open.ts'
import { open } from './open.ts'

declare module 'vitest' {
  interface ProvidedContext {
    /** A copy of the bundle as it was when the run began. */
    bundle: string
  }
}

export type { App } from './open.ts'

export type AppOptions = Partial<OpenOptions>

/** As openApp, for an app that several tests share: open it in beforeAll; it closes with the file. */
export const openShared = (options: AppOptions = {}): Promise<App> =>
  open({ bundle: inject('bundle'), ...options })

/** Opens the app in a browser of its own on a server of its own; all ends with the test. */
export async function openApp(options: AppOptions = {}): Promise<App> {
  const app = await openShared(options)
  onTestFinished(() => app.close())
  return app
}

/** As openApp, closed as soon as the look is done: for several in turn within one test. */
export async function withBrowser<T>(
  options: AppOptions,
  look: (app: App) => Promise<T>,
): Promise<T> {
  const app = await openShared(options)
  try {
    return await look(app)
  } finally {
    await app.close()
  }
}

/** Ends the browser as a flat battery would, and opens another on what it left on disk. */
export const killAndReopen = (app: App, changes: AppOptions = {}): Promise<App> =>
  app.reopen(changes)

/** What a machine can tell of barriers, one line each; an empty list where it finds none. */
export async function axe(page: Page, within?: string): Promise<readonly string[]> {
  const builder = new AxeBuilder({ page })
  const { violations } = await (within ? builder.include(within) : builder).analyze()
  return violations.flatMap(each =>
    each.nodes.map(node => `${each.id} (${each.impact}): ${each.help}: ${node.target.join(' ')}`),
  )
}

const SHOTS = fileURLToPath(new URL('../../../../out/screens/', import.meta.url))

/** Writes what is seen to out/screens, for a person to look at. */
export async function screenshot(page: Page, name: string, fullPage = false): Promise<string> {
  mkdirSync(SHOTS, { recursive: true })
  const path = join(SHOTS, `${name}.png`)
  await page.screenshot({ path, fullPage })
  return path
}
