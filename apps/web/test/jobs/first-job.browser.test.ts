import { expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { openApp } from '../support/app.ts'
import { surveyFiveLoads } from '../support/five-loads.ts'
import { thumbOn } from '../support/thumb.ts'

/** From an empty page to the printed sheet, as a newcomer goes. */
async function fromEmptyToSheet({ page }: App): Promise<void> {
  const thumb = thumbOn(page)
  await surveyFiveLoads(page, thumb)
  await thumb.tap('link', 'Match')
  const serves = page.locator('[data-verdict="serves"]').first()
  await serves.waitFor({ timeout: 60_000 })
  await serves.getByRole('button', { name: /^Take this plan/u }).click()
  await page.getByText('This plan is taken.').waitFor()
  await thumb.tap('link', 'Findings')
  await page.getByText(/^It holds/u).waitFor({ timeout: 30_000 })
  await thumb.tap('link', 'Sheet')
  const sheet = page.frameLocator('iframe.page')
  await sheet.getByRole('heading', { name: 'Work sheet' }).waitFor({ timeout: 30_000 })
  expect(await sheet.locator('svg.board').count()).toBeGreaterThan(0)
  const font = await sheet.locator('h1').evaluate(each => getComputedStyle(each).fontSize)
  expect(Number.parseFloat(font)).toBeGreaterThan(20)
  await thumb.tap('radio', 'Lid sheet')
  await sheet.getByText('Load sheet, for the lid').waitFor({ timeout: 30_000 })
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file' }).click(),
  ])
  expect(saved.suggestedFilename()).toMatch(/load-sheet\.html$/u)
}

const toDemo = async (app: App): Promise<void> => {
  await app.page.getByRole('button', { name: 'Demo shop' }).click()
  await app.page.getByText('Begin with a tub of the demo').waitFor()
}

test('a newcomer goes from empty to the sheet', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  await toDemo(app)
  await fromEmptyToSheet(app)
}, 180_000)

test('the same with the network cut once the page is there', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  await toDemo(app)
  await app.page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await app.goOffline()
  await fromEmptyToSheet(app)
}, 180_000)
