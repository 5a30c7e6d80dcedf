import { expect, test } from 'vitest'
import { openApp } from '../support/app.ts'
import { surveyFiveLoads } from '../support/five-loads.ts'
import { thumbOn } from '../support/thumb.ts'

const TAPS_MAX = 90

test('a tub of five loads is surveyed and judged with one thumb', async () => {
  const { page } = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('Begin with a tub of the demo').waitFor()
  const thumb = thumbOn(page)
  await surveyFiveLoads(page, thumb)

  await thumb.tap('link', 'Match')
  await page.locator('[data-verdict="serves"]').first().waitFor({ timeout: 60_000 })
  const served = await page.locator('[data-verdict="serves"]').count()
  process.stdout.write(
    `taps for a tub of five loads: ${thumb.taps()} (goal ${TAPS_MAX}); boxes that serve: ${served}\n`,
  )
  expect(thumb.taps()).toBeLessThanOrEqual(TAPS_MAX)
  expect(served).toBeGreaterThan(0)
}, 120_000)

test('a value is said to lie between two, or to be one of some, or not to be known', async () => {
  const { page } = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  await page.getByRole('button', { name: 'New job' }).click()
  await page.getByRole('link', { name: /^The supply/u }).click()
  const field = page.locator('[data-field="supply/breaker"]')
  await field.getByRole('button', { name: /Between two/u }).click()
  await field.getByLabel('From', { exact: true }).fill('30')
  await field.getByLabel('To', { exact: true }).fill('40')
  await field.getByLabel('How that is known').fill('worn print')
  await field.getByLabel('How that is known').blur()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await field.getByRole('radio', { name: 'One of some' }).click()
  await field.getByLabel('Values, separated by a semicolon').fill('30 A; 40 A')
  await field.getByLabel('Values, separated by a semicolon').blur()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.reload()
  expect(await field.getByLabel('Values, separated by a semicolon').inputValue()).toBe('30 A; 40 A')
  await field.getByRole('button', { name: /One value/u }).click()
  await field.getByRole('button', { name: /Don’t know/u }).click()
  await field.getByRole('radio', { name: 'Not measured' }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.reload()
  expect(await field.getByRole('radio', { name: 'Not measured' }).isChecked()).toBe(true)
}, 60_000)
