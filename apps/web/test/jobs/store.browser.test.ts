import { appendFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { jpegOf, take } from '../photos/support/photos.ts'
import { killAndReopen, openApp } from '../support/app.ts'
import { beginTub } from '../support/every-screen.ts'

const BURST = 60
const SAVE_MAX = 50 // [ms] of 95 in 100
const options = { device: 'phone', language: 'en', scheme: 'light' } as const

const saved = (page: Page) => page.locator('.saved[data-state="saved"]')

async function newJob(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New job' }).click()
  await page.getByRole('link', { name: /^The tub/u }).click()
  await page.getByRole('radio', { name: 'United States' }).click()
  await page.getByRole('link', { name: 'Next' }).click()
  await page.getByRole('heading', { name: 'The supply' }).waitFor()
}

test('every tap is on the disk within 50 ms in 95 of 100 cases', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  for (let turn = 0; turn < 100; turn++) {
    await page.getByRole('radio', { name: turn % 2 === 0 ? '30 A' : '40 A', exact: true }).click()
    await saved(page).waitFor()
  }
  await page.getByRole('link', { name: 'Tubwright' }).click()
  await page.getByRole('link', { name: 'Settings' }).click()
  const said = await page.getByText(/^The last saves took/u).textContent()
  const time = Number(/([\d.]+) ms/u.exec(said ?? '')?.[1])
  process.stdout.write(`saves: 95 of 100 within ${time} ms (goal ${SAVE_MAX})\n`)
  expect(time).toBeLessThanOrEqual(SAVE_MAX)
}, 120_000)

test('what is entered while another entry is being written is written too', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  const mark = saved(page)
  const before = Number(await mark.getAttribute('data-saved'))
  await page.evaluate(async taps => {
    const chips = document.querySelectorAll<HTMLInputElement>(
      '[data-field="supply/breaker"] .chip input',
    )
    for (let tap = 1; tap <= taps; tap++) {
      chips[tap % chips.length]?.click()
      await new Promise(done => setTimeout(done, tap % 4))
    }
  }, BURST)
  await mark.waitFor()
  const checked = page.locator('[data-field="supply/breaker"] input:checked + span')
  const chosen = await checked.textContent()
  expect(Number(await mark.getAttribute('data-saved'))).toBe(before + BURST)
  await page.reload()
  await mark.waitFor()
  expect(Number(await mark.getAttribute('data-saved'))).toBe(before + BURST)
  expect(await checked.textContent()).toBe(chosen)
}, 60_000)

test('one tab writes, another follows and can take over', async () => {
  const { page, context, url } = await openApp(options)
  await newJob(page)
  const place = page.url()
  const other = await context.newPage()
  await other.goto(url)
  await other.getByText(/^Another tab of this browser is writing/u).waitFor()
  await expect.poll(() => other.getByRole('button', { name: 'New job' }).isDisabled()).toBe(true)
  await other.goto(place)
  const breaker = other.locator('[data-field="supply/breaker"] input:checked + span')
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await expect.poll(() => breaker.textContent()).toBe('30 A')
  await other.getByRole('button', { name: 'Write here instead' }).click()
  await page.getByText(/^Another tab of this browser is writing/u).waitFor()
  await other.getByRole('radio', { name: '40 A', exact: true }).click()
  await saved(other).waitFor()
  const first = page.locator('[data-field="supply/breaker"] input:checked + span')
  await expect.poll(() => first.textContent()).toBe('40 A')
  await other.close()
  await page.getByRole('radio', { name: '60 A', exact: true }).click({ timeout: 15_000 })
  await saved(page).waitFor()
}, 120_000)

test('a connection that the browser drops is opened again, and nothing is lost', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await saved(page).waitFor()
  // Another connection that wants a newer version makes this one close; then the way is free again.
  await page.evaluate(async () => {
    const transactions = IDBDatabase.prototype.transaction
    let lost = 0
    IDBDatabase.prototype.transaction = function (...args) {
      if (lost++ === 0) {
        this.close()
        throw new DOMException('Connection to Indexed Database server lost', 'InvalidStateError')
      }
      return transactions.apply(this, args)
    }
  })
  await page.getByRole('radio', { name: '50 A', exact: true }).click()
  await saved(page).waitFor()
  await page.reload()
  const breaker = page.locator('[data-field="supply/breaker"] input:checked + span')
  await expect.poll(() => breaker.textContent()).toBe('50 A')
}, 60_000)

test('what cannot be written stays on the page, says so, and is written when it can be', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  await page.evaluate(() => {
    const own = globalThis as unknown as { put: typeof IDBObjectStore.prototype.put }
    own.put = IDBObjectStore.prototype.put
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError')
    }
  })
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await page.getByText(/^NOT SAVED/u).waitFor()
  const breaker = page.locator('[data-field="supply/breaker"] input:checked + span')
  expect(await breaker.textContent()).toBe('30 A')
  await page.evaluate(() => {
    const own = globalThis as unknown as { put: typeof IDBObjectStore.prototype.put }
    IDBObjectStore.prototype.put = own.put
  })
  await page.getByRole('button', { name: 'Try again' }).click()
  await saved(page).waitFor()
  await page.reload()
  await expect.poll(() => breaker.textContent()).toBe('30 A')
}, 60_000)

test('a store that was wiped is noticed, with what is missing', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await saved(page).waitFor()
  await page.getByRole('link', { name: 'Tubwright' }).click()
  const title = await page.locator('a.card .title').textContent()
  await page.reload()
  await page.locator('a.card').waitFor()
  await page.evaluate(async () => {
    const root = await navigator.storage.getDirectory()
    await root.removeEntry('jobs-own', { recursive: true })
    await new Promise((done, refused) => {
      const request = indexedDB.deleteDatabase('tubwright-own')
      request.onsuccess = done
      request.onerror = refused
      request.onblocked = refused
    })
  })
  await page.reload()
  await page.getByText('Something is missing on this device').waitFor()
  await page
    .getByRole('listitem')
    .getByText(title ?? '?')
    .waitFor()
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.reload()
  await page.getByRole('button', { name: 'New job' }).waitFor()
  expect(await page.getByText('Something is missing on this device').count()).toBe(0)
}, 60_000)

/** Ends the log of the database as a kill in the middle of a record does, with a later record behind it. */
function tearDatabase(profile: string): void {
  const folder = join(profile, 'Default', 'IndexedDB')
  const logs = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(each =>
    /\d+\.log$/u.test(each),
  )
  expect(logs.length).toBeGreaterThan(0)
  // A head that promises 200 bytes of one whole record, and 400 others after it.
  const torn = Buffer.concat([Buffer.from([1, 2, 3, 4, 200, 0, 1]), Buffer.alloc(400, 7)])
  for (const log of logs) appendFileSync(join(folder, log), torn)
}

test('a database that the browser throws away after a kill comes back whole, photos too', async () => {
  const app = await openApp({ ...options, device: 'phone' })
  await newJob(app.page)
  await app.page.getByRole('radio', { name: '30 A', exact: true }).click()
  await saved(app.page).waitFor()
  const survey = app.page.url()
  await app.page.goto(survey.replace(/survey.*$/u, 'survey/photos'))
  await take(app.page, 'board', await jpegOf(app.page, 1200, 900), 'file')
  await app.page.locator('[data-slot="board"][data-state="done"]').waitFor()
  await saved(app.page).waitFor()
  await app.kill()
  tearDatabase(app.profile)
  const { page } = await killAndReopen(app)
  await page.getByText('Jobs were brought back').waitFor()
  await page.locator('a.card').click()
  await page.goto(page.url().replace(/#.*$/u, survey.slice(survey.indexOf('#'))))
  const breaker = page.locator('[data-field="supply/breaker"] input:checked + span')
  expect(await breaker.textContent()).toBe('30 A')
  await page.goto(survey.replace(/survey.*$/u, 'survey/photos'))
  await page.locator('[data-slot="board"][data-state="done"] img').waitFor()
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.reload()
  await page.locator('[data-slot="board"][data-state="done"] img').waitFor()
  expect(await page.getByText('Jobs were brought back').count()).toBe(0)
}, 90_000)

test('the demo shop never mixes with real jobs, and can be reset', async () => {
  const { page } = await openApp(options)
  await newJob(page)
  await page.getByRole('link', { name: 'Tubwright' }).click()
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('No job yet.', { exact: false }).waitFor()
  await beginTub(page, 'wye-208')
  await page.getByRole('heading', { name: 'Survey' }).waitFor()
  await page.getByRole('link', { name: 'Tubwright' }).click()
  expect(await page.locator('a.card').count()).toBe(1)
  await page.getByRole('button', { name: 'Reset the demo shop' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Reset the demo shop' }).click()
  await page.getByText('No job yet.', { exact: false }).waitFor()
  await page.getByRole('button', { name: 'Leave the demo shop' }).click()
  await expect.poll(() => page.locator('a.card').count()).toBe(1)
}, 60_000)
