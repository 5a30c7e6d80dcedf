import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, onTestFinished, test } from 'vitest'
import type { App } from '../support/app.ts'
import { killAndReopen, openApp } from '../support/app.ts'
import { buildPage, removePages } from './build-page.ts'

/** What the small page puts where a test can reach it. */
interface Reached {
  readonly holdUpdates: (reason: string) => () => void
  readonly later: () => Promise<{ readonly later: string }>
  letGo: () => void
}

let one = ''
let two = ''
beforeAll(async () => {
  one = await buildPage('one')
  two = await buildPage('two')
})
afterAll(() => removePages([one, two]))

const says = (page: Page) => page.locator('#says').textContent()

async function opened(bundle = one): Promise<App> {
  const app = await openApp({ bundle })
  await app.page.evaluate(async () => {
    await navigator.serviceWorker.ready
    while (!navigator.serviceWorker.controller) await new Promise(done => setTimeout(done, 10))
  })
  return app
}

/** No page of a headless browser is ever hidden, so it is told that it is. */
const show = (page: Page, shown: boolean): Promise<void> =>
  page.evaluate(to => {
    Object.defineProperty(document, 'hidden', { configurable: true, get: () => !to })
    document.dispatchEvent(new Event('visibilitychange'))
  }, shown)

const hold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const reached = window as unknown as Reached
    reached.letGo = reached.holdUpdates('a test')
  })

const letGo = (page: Page): Promise<void> =>
  page.evaluate(() => (window as unknown as Reached).letGo())

/** The host has the second build now, and the browser has looked. */
async function publish(app: App, bundle = two): Promise<void> {
  await app.goOnline(bundle)
  await app.page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready
    await registration.update().catch(() => undefined)
    const { installing } = registration
    if (!installing) return
    await new Promise<void>(done =>
      installing.addEventListener('statechange', () => {
        if (installing.state !== 'installing') done()
      }),
    )
  })
}

const isWaiting = (page: Page): Promise<boolean> =>
  page.evaluate(async () => (await navigator.serviceWorker.ready).waiting !== null)

/** Long enough for a wrong reload to be seen. */
const aWhile = (page: Page): Promise<void> => page.waitForTimeout(400)

const cachesOf = (page: Page): Promise<readonly string[]> => page.evaluate(() => caches.keys())

const becomes = (page: Page, text: string): Promise<void> =>
  page.locator('#says', { hasText: text }).waitFor()

test('opens without network and server, again and after a flat battery', async () => {
  const app = await opened()
  await app.goOffline()
  await app.page.reload()
  expect(await says(app.page)).toBe('one')
  await app.page.goto(`${app.url}some/where?else=1`)
  expect([app.page.url(), await says(app.page)]).toEqual([app.url, 'one'])
  const again = await killAndReopen(app, { offline: true })
  expect(await says(again.page)).toBe('one')
})

test('a part that was never read is there without a network, on the first visit too', async () => {
  const app = await opened()
  await app.goOffline()
  const read = await app.page.evaluate(() => (window as unknown as Reached).later())
  expect(read.later).toBe('later one')
})

test('a new version waits while the page is looked at, and comes once it is hidden', async () => {
  const app = await opened()
  await app.page.evaluate(() => caches.open('of somebody else'))
  await publish(app)
  await aWhile(app.page)
  expect([await says(app.page), await isWaiting(app.page)]).toEqual(['one', true])
  await show(app.page, false)
  await becomes(app.page, 'two')
  expect(await cachesOf(app.page)).toEqual([
    'of somebody else',
    expect.stringMatching(/^tubwright \/ /u),
  ])
  await app.goOffline()
  await app.page.reload()
  expect(await says(app.page)).toBe('two')
})

test('a page notices by itself, when it is looked at again', async () => {
  const app = await opened()
  await app.goOnline(two)
  await show(app.page, false)
  await show(app.page, true)
  await expect.poll(() => isWaiting(app.page)).toBe(true)
  await show(app.page, false)
  await becomes(app.page, 'two')
})

test('nothing is renewed while something is held open', async () => {
  const app = await opened()
  await hold(app.page)
  await publish(app)
  await show(app.page, false)
  await aWhile(app.page)
  expect([await says(app.page), await isWaiting(app.page)]).toEqual(['one', true])
  await letGo(app.page)
  await becomes(app.page, 'two')
})

test('nothing is renewed under another page that is in use', async () => {
  const app = await opened()
  const other = await app.context.newPage()
  await other.goto(app.url)
  await becomes(other, 'one')
  await publish(app)
  await show(app.page, false)
  await aWhile(app.page)
  expect([await says(app.page), await says(other)]).toEqual(['one', 'one'])
  // Nor does another start wait for what cannot be had now.
  const third = await app.context.newPage()
  await third.goto(app.url)
  await becomes(third, 'one')
  expect(await third.evaluate(() => performance.now())).toBeLessThan(1900)
  await third.close()
  await show(other, false)
  await becomes(app.page, 'two')
  await becomes(other, 'two')
})

test('what waits is taken at the next cold start, whatever was held before', async () => {
  const app = await opened()
  await hold(app.page)
  await publish(app)
  await app.page.reload()
  await becomes(app.page, 'two')
  const again = await killAndReopen(app, { offline: true })
  expect(await says(again.page)).toBe('two')
})

/** The second build as a broken upload leaves it. */
function damaged(damage: (folder: string, part: string) => void): string {
  const folder = mkdtempSync(join(tmpdir(), 'tubwright-page-'))
  cpSync(two, folder, { recursive: true })
  const part = readdirSync(join(folder, 'assets')).find(name => /^later.*\.js$/u.test(name)) ?? ''
  damage(folder, join(folder, 'assets', part))
  return folder
}

const damages = {
  'lacks a part': (_: string, part: string) => rmSync(part),
  'has another part under the same name': (_: string, part: string) =>
    writeFileSync(part, 'export const later = 0'),
  'has another page than the list says': (folder: string) => {
    writeFileSync(join(folder, 'index.html'), '<!doctype html><title>No</title>')
    for (const ending of ['br', 'gz']) rmSync(join(folder, `index.html.${ending}`), { force: true })
  },
}

test.each(Object.entries(damages))('an upload that %s changes nothing', async (_, damage) => {
  const app = await opened()
  const broken = damaged(damage)
  onTestFinished(() => removePages([broken]))
  await publish(app, broken)
  // A worker that cannot keep what it should says so; that is the test's doing.
  app.faults.take()
  await show(app.page, false)
  await aWhile(app.page)
  expect(await cachesOf(app.page)).toHaveLength(1)
  await app.goOffline()
  await app.page.reload()
  expect(await says(app.page)).toBe('one')
  await publish(app)
  await show(app.page, false)
  await becomes(app.page, 'two')
})

test('what the app itself keeps is untouched by any of it', async () => {
  const app = await opened()
  await app.page.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const asked = indexedDB.open('jobs', 1)
        asked.onupgradeneeded = () => asked.result.createObjectStore('jobs').put('wired', 'tub')
        asked.onsuccess = () => {
          asked.result.close()
          done()
        }
        asked.onerror = failed
      }),
  )
  await publish(app)
  await show(app.page, false)
  await becomes(app.page, 'two')
  const kept = await app.page.evaluate(
    () =>
      new Promise(done => {
        const asked = indexedDB.open('jobs', 1)
        asked.onsuccess = () => {
          const got = asked.result.transaction('jobs').objectStore('jobs').get('tub')
          got.onsuccess = () => done(got.result)
        }
      }),
  )
  expect(kept).toBe('wired')
})
