import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { killAndReopen, openApp } from '../support/app.ts'
import { numbersFrom } from '../support/numbers.ts'

const SEED = 20_261_125
const KILLS = process.env['SOAK'] === 'all' ? 1000 : 20
const WAIT_MAX = 900 // [ms] until the kill

/** What the page said before it died: calls that were on their way then are lost with it. */
interface Said {
  /** Entries that the page showed as saved. */
  saved: number
  /** Taps, and taps whose entry was shown as saved. */
  tapped: number
  acknowledged: number
}

/** Taps one breaker after the other, some while the last is still being saved, and tells of it. */
async function tapBreakers(first: number): Promise<void> {
  const { tell } = globalThis as unknown as { tell: (told: Partial<Said>) => Promise<void> }
  const chips = [
    ...document.querySelectorAll<HTMLInputElement>('[data-field="supply/breaker"] .chip input'),
  ]
  const mark = () => document.querySelector<HTMLElement>('.saved')
  for (let taps = 1; ; taps++) {
    const chip = chips[(first + taps - 1) % chips.length]
    void tell({ tapped: taps })
    chip?.click()
    // At once or a little later: a kill lands before, in and after a write.
    await new Promise(done => setTimeout(done, taps % 3))
    // Two of three taps come while others are being written.
    if (taps % 3 > 0) continue
    while (mark()?.dataset['state'] !== 'saved' || !chip?.checked)
      await new Promise(done => setTimeout(done, 1))
    void tell({ acknowledged: taps, saved: Number(mark()?.dataset['saved']) })
  }
}

/** How many entries the page shows as saved, and which breaker. */
async function readBack({ page }: App): Promise<{ readonly saved: number; readonly at: number }> {
  const mark = page.locator('.saved[data-state="saved"]')
  await mark.waitFor()
  const chips = page.locator('[data-field="supply/breaker"] .chip input')
  await chips.first().waitFor()
  const at = await chips.evaluateAll(all =>
    all.findIndex(each => (each as HTMLInputElement).checked),
  )
  return { saved: Number(await mark.getAttribute('data-saved')), at }
}

/** What a page that does not come shows of itself: each part is asked apart, since any may hang. */
async function seenOn(page: Page): Promise<string> {
  const asked: Readonly<Record<string, () => unknown>> = {
    text: () => document.body.textContent,
    markup: () => document.documentElement.outerHTML.slice(0, 6000),
    state: () => [document.readyState, document.hidden, location.href, performance.now()],
    loaded: () =>
      performance
        .getEntriesByType('resource')
        .map(each => [each.name, (each as PerformanceResourceTiming).responseEnd]),
    locks: () => navigator.locks.query(),
    databases: () => indexedDB.databases(),
    cacheNames: () => caches.keys(),
    kept: () => ({ ...localStorage, ...sessionStorage }),
    registration: async () => {
      const found = await navigator.serviceWorker.getRegistration()
      return [found?.active?.state, found?.waiting?.state, found?.installing?.state]
    },
    controller: () => navigator.serviceWorker.controller?.state,
    database: () =>
      new Promise(done => {
        const request = indexedDB.open('tubwright-own')
        request.onsuccess = () => done('opened')
        request.onerror = () => done(String(request.error))
        request.onblocked = () => done('blocked')
      }),
  }
  const told: Record<string, unknown> = {}
  for (const [name, ask] of Object.entries(asked))
    told[name] = await Promise.race([
      page.evaluate(ask).catch(String),
      new Promise(done => setTimeout(done, 3000, 'no answer in 3 s')),
    ])
  return JSON.stringify(told)
}

/** Opens the job from the list; where there is none, says what the page showed in its place. */
async function openFirstJob({ page }: App, kill: number): Promise<void> {
  const card = page.locator('a.card').first()
  const isThere = await card.waitFor({ timeout: 30_000 }).then(
    () => true,
    () => false,
  )
  if (!isThere) throw new Error(`after kill ${kill} no job is listed: ${await seenOn(page)}`)
  await card.click()
}

/** Whether the browser had thrown its database away; the job then begins at its first screen. */
async function isBroughtBack({ page }: App): Promise<boolean> {
  const back = page.getByText('Jobs were brought back')
  await page
    .getByRole('heading', { name: 'The supply' })
    .or(back)
    .first()
    .waitFor({ timeout: 30_000 })
  if ((await back.count()) === 0) return false
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.getByRole('link', { name: /^The supply/u }).click()
  return true
}

const CHIPS = 6

test(
  `${KILLS} kills of the browser at random moments lose no saved field (seed ${SEED})`,
  async () => {
    const random = numbersFrom(SEED)
    let app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
    await app.page.getByRole('button', { name: 'New job' }).click()
    await app.page.getByRole('link', { name: /^The tub/u }).click()
    await app.page.getByRole('radio', { name: 'United States' }).click()
    await app.page.getByRole('link', { name: 'Next' }).click()
    await app.page.getByRole('heading', { name: 'The supply' }).waitFor()
    let before = await readBack(app)
    let inFlight = 0
    let broughtBack = 0
    for (let kill = 0; kill < KILLS; kill++) {
      const said: Said = { saved: before.saved, tapped: 0, acknowledged: 0 }
      await app.page.exposeFunction('tell', (told: Partial<Said>) => {
        Object.assign(said, told)
      })
      const first = before.at + 1
      const dying = app.page.evaluate(tapBreakers, first).catch(() => undefined)
      await new Promise(done => setTimeout(done, 60 + random() * WAIT_MAX))
      app = await killAndReopen(app)
      await dying
      // The list leads back to the same question.
      await openFirstJob(app, kill)
      if (await isBroughtBack(app)) broughtBack++
      await app.page.getByRole('heading', { name: 'The supply' }).waitFor()
      const found = await readBack(app)
      // Nothing that was shown as saved is gone, and the field is that of the last entry, one a tap.
      expect(found.saved, `entries after kill ${kill}`).toBeGreaterThanOrEqual(said.saved)
      const taps = found.saved - before.saved
      const expected = taps === 0 ? before.at : (first + taps - 1) % CHIPS
      expect(found.at, `breaker after kill ${kill} and ${taps} taps`).toBe(expected)
      if (said.tapped > said.acknowledged) inFlight++
      before = found
    }
    process.stdout.write(
      `${KILLS} kills: ${before.saved} entries saved, ${inFlight} kills while a save was on its way, ${broughtBack} times brought back from the second copy\n`,
    )
    expect(before.saved).toBeGreaterThan(KILLS)
    expect(inFlight).toBeGreaterThan(0)
  },
  60_000 + KILLS * 8_000,
)
