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
