import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp } from '../support/app.ts'
import { goTo, jobWithPlan } from '../support/every-screen.ts'

const options = { device: 'phone', language: 'en', scheme: 'light' } as const

const saved = (page: Page) => page.locator('.saved[data-state="saved"]')
const breaker = (page: Page) =>
  page.locator('[data-field="supply/breaker"] .chip input:checked + span')
const follows = (page: Page) => page.getByText(/^Another tab of this browser is writing/u)

async function supplyOfNewJob(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'New job' }).click()
  await page.getByRole('link', { name: /^The tub/u }).click()
  await page.getByRole('radio', { name: 'United States' }).click()
  await page.getByRole('link', { name: 'Next' }).click()
  await page.getByRole('heading', { name: 'The supply' }).waitFor()
}

test('whoever asks twice, and whoever hands over and back, can write in the end', async () => {
  const { page, context } = await openApp(options)
  await supplyOfNewJob(page)
  const other = await context.newPage()
  await other.goto(page.url())
  await follows(other).waitFor()
  await other.getByRole('button', { name: 'Write here instead' }).dblclick()
  await follows(page).waitFor()
  await other.getByRole('radio', { name: '40 A', exact: true }).click()
  await saved(other).waitFor()
  await page.getByRole('button', { name: 'Write here instead' }).dblclick()
  await follows(other).waitFor()
  await page.getByRole('radio', { name: '60 A', exact: true }).click()
  await saved(page).waitFor()
  await expect.poll(() => breaker(other).textContent()).toBe('60 A')
  await page.close()
  await follows(other).waitFor({ state: 'detached' })
  await other.getByRole('radio', { name: '30 A', exact: true }).click()
  await saved(other).waitFor()
}, 120_000)

test('a tab whose save failed does not hand over until it is saved', async () => {
  const { page, context } = await openApp(options)
  await supplyOfNewJob(page)
  const other = await context.newPage()
  await other.goto(page.url())
  await follows(other).waitFor()
  await page.evaluate(() => {
    const own = globalThis as unknown as { put: typeof IDBObjectStore.prototype.put }
    own.put = IDBObjectStore.prototype.put
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError')
    }
  })
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await page.getByText(/^NOT SAVED/u).waitFor()
  await other.getByRole('button', { name: 'Write here instead' }).click()
  await other.waitForTimeout(500)
  expect(await follows(other).count()).toBe(1)
  await page.getByText(/^NOT SAVED/u).waitFor()
  await page.evaluate(() => {
    const own = globalThis as unknown as { put: typeof IDBObjectStore.prototype.put }
    IDBObjectStore.prototype.put = own.put
  })
  await page.getByRole('button', { name: 'Try again' }).click()
  await saved(page).waitFor()
  await other.getByRole('button', { name: 'Write here instead' }).click()
  await follows(page).waitFor()
  await expect.poll(() => breaker(other).textContent()).toBe('30 A')
}, 120_000)

test('what is typed is kept when the person goes back without leaving the field', async () => {
  const { page } = await openApp(options)
  await supplyOfNewJob(page)
  await page.getByRole('link', { name: 'Back' }).click()
  const name = page.locator('[data-field="title"] input')
  await name.fill('Tub behind the garage')
  await page.goBack()
  await page.getByText('Tub behind the garage').first().waitFor()
  await saved(page).waitFor()
  await page.reload()
  await page.getByText('Tub behind the garage').first().waitFor()
  await page.getByRole('link', { name: 'Tubwright' }).click()
  await page.locator('a.card', { hasText: 'Tub behind the garage' }).waitFor()
}, 60_000)

test('an amount that can be read two ways is asked for again', async () => {
  const { page } = await openApp(options)
  await supplyOfNewJob(page)
  const amount = page.locator('[data-field="supply/breaker"] input[inputmode="decimal"]')
  await amount.fill('1,000')
  await amount.blur()
  await page.getByText('“1,000” may be 1000 or 1.', { exact: false }).waitFor()
  expect(await breaker(page).count()).toBe(0)
}, 60_000)

test('a stop is raised from a tab that only follows', async () => {
  const { page, context } = await openApp(options)
  await supplyOfNewJob(page)
  const other = await context.newPage()
  await other.goto(page.url())
  await follows(other).waitFor()
  await other.getByRole('button', { name: 'STOP' }).click()
  await other.getByRole('button', { name: /^Any shock/u }).click()
  await other.getByRole('heading', { name: 'Stop all work', level: 1 }).waitFor()
  await page.getByRole('heading', { name: 'Stop all work', level: 1 }).waitFor()
}, 60_000)

test('ticks of one plan are none of another', async () => {
  const app = await openApp({ ...options, device: 'desk' })
  const { page } = app
  const job = await jobWithPlan(app)
  await goTo(page, `/job/${job}/wiring`)
  await page.locator('main svg.board').waitFor({ timeout: 30_000 })
  await page.locator('.ticks input').first().click({ force: true })
  await page.getByText(/^1 of \d+ ends landed/u).waitFor()
  await goTo(page, `/job/${job}/match`)
  await page.locator('[data-verdict] button.main').first().click({ timeout: 60_000 })
  await goTo(page, `/job/${job}/wiring`)
  await page.locator('main svg.board').waitFor({ timeout: 30_000 })
  const told = await page.getByText(/^\d+ of \d+ ends landed/u).textContent()
  // The supply's own ends may sit where they sat; those of the box do not count.
  expect(told).toMatch(/^[01] of/u)
}, 120_000)

test('labels that look like markup or script break no screen', async () => {
  const app = await openApp(options)
  const { page } = app
  const job = await jobWithPlan(app)
  await goTo(page, `/job/${job}/survey/load-pump-a`)
  await page.getByText('More about this').click()
  const label = page.locator('[data-field="loads/pump-a/label"] input')
  await label.fill('one=low "on two=high" <b onclick=x>javascript:</b>')
  await label.blur()
  await saved(page).waitFor()
  for (const [screen, ready] of [
    ['wiring', 'main svg.board'],
    ['findings', '[data-holds]'],
    ['sheet', 'iframe.page'],
  ] as const) {
    await goTo(page, `/job/${job}/${screen}`)
    await page.locator(ready).first().waitFor({ timeout: 30_000 })
  }
  expect(await page.frameLocator('iframe.page').locator('b[onclick]').count()).toBe(0)
}, 120_000)

test('a survey that is no survey inside is refused, and the page goes on', async () => {
  const { page } = await openApp(options)
  for (const body of ['loads: [null]', 'loads: 5', 'supply: { cables: { a: 1 } }']) {
    const text = `schema: survey/1\nid: x\ntitle: X\n${body}\n`
    await page.getByLabel('Open a job file or a survey').setInputFiles({
      name: 'x.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(text),
    })
    await page.getByText(/^This file cannot be opened/u).waitFor()
    expect(await page.locator('a.card').count(), body).toBe(0)
    await page.reload()
  }
}, 60_000)
