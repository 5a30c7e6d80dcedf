import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { goTo, jobWithPlan } from '../support/every-screen.ts'
import { jpegOf, take } from './support/photos.ts'

test('a camera photo is pinned, and the sheet ends with it and its map', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  const job = await jobWithPlan(app)
  await goTo(page, `/job/${job}/survey/photos`)
  await page.locator('[data-slot="board"]').waitFor()
  await take(page, 'board', await jpegOf(page, 1600, 1200, { quality: 0.8, noise: true }))
  await page.locator('[data-slot="board"][data-state="done"]').waitFor()
  await page.locator('.thumb').first().click()
  await page.locator('.photo-face img').waitFor()
  await page.locator('.photo-face').click({ position: { x: 120, y: 90 } })
  await page.getByLabel('Terminal, as printed beside it').fill('J4')
  await page.getByLabel('Note').first().fill('red plug')
  await page.getByLabel('Note').first().blur()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await goTo(page, `/job/${job}/sheet`)
  const sheet = page.frameLocator('iframe.page')
  const photo = sheet.locator('svg.photo')
  await photo.waitFor({ timeout: 30_000 })
  expect(await photo.locator('image').getAttribute('href')).toMatch(/^data:image\/jpeg;base64,/u)
  expect(await photo.locator('text').allTextContents()).toEqual(['1'])
  expect(await sheet.locator('table.pins tbody tr').allTextContents()).toEqual(['1J4red plug'])
  const width = await photo.locator('image').evaluate(async each => {
    const image = new Image()
    image.src = each.getAttribute('href') ?? ''
    await image.decode()
    return image.naturalWidth
  })
  expect(width).toBe(1600)
  await photo.scrollIntoViewIfNeeded()
  await screenshot(page, 'sheet-photo-phone')
}, 120_000)
