import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobWithPlan } from '../support/every-screen.ts'

test('a supply that breaks is told on every screen about the box, and on the sheet', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  const job = await jobWithPlan(app, 'plain-breaker-230')
  for (const screen of ['match', 'wiring', 'findings', 'sheet']) {
    await goTo(page, `/job/${job}/${screen}`)
    const bar = page.locator('[data-supply-bar="breaks"]')
    await bar.waitFor()
    expect(await bar.textContent(), screen).toContain('No ground-fault device watches')
    expect(await bar.textContent(), screen).toContain('Do not power it.')
  }
  expect(await barriers(page)).toEqual([])
  const sheet = page.frameLocator('iframe.page')
  await sheet.locator('[data-supply="breaks"]').waitFor()
  await screenshot(page, 'supply-told-elsewhere-phone')
  await page.getByRole('link', { name: 'See the supply' }).click()
  // The heater of the box that was taken is counted.
  await page.locator('[data-supply="breaks"]').waitFor()
  expect(await page.locator('.supply-lead').textContent()).toContain('Counted with')
  await screenshot(page, 'supply-with-box-phone')
}, 60_000)

test('a supply that holds leaves the screens about the box alone', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  const job = await jobWithPlan(app, 'told-run-240')
  await goTo(page, `/job/${job}/supply`)
  await page.locator('[data-supply]').waitFor()
  expect(await page.locator('[data-supply="breaks"]').count()).toBe(0)
  await goTo(page, `/job/${job}/findings`)
  await page.locator('[data-holds]').waitFor()
  expect(await page.locator('[data-supply-bar="breaks"]').count()).toBe(0)
}, 60_000)
