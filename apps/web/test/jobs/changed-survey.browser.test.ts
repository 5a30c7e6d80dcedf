import { expect, test } from 'vitest'
import { openApp } from '../support/app.ts'
import { goTo, jobWithPlan } from '../support/every-screen.ts'

test('a survey that changes after its plan was taken is told of on every later screen', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  const job = await jobWithPlan(app)
  const told = page.getByText('The survey was changed after this plan was taken.', { exact: false })
  await goTo(page, `/job/${job}/findings`)
  await page.locator('[data-holds]').waitFor({ timeout: 30_000 })
  expect(await told.count()).toBe(0)
  await goTo(page, `/job/${job}/survey/supply`)
  await page.getByRole('radio', { name: '30 A', exact: true }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  for (const screen of ['wiring', 'findings', 'sheet']) {
    await goTo(page, `/job/${job}/${screen}`)
    await told.waitFor()
  }
  // Forty amps set behind a breaker of thirty: the old landing no longer holds, and nothing says it does.
  await goTo(page, `/job/${job}/findings`)
  await page.locator('[data-holds="false"]').waitFor({ timeout: 30_000 })
  expect(await page.locator('[data-holds="true"]').count()).toBe(0)
  // As it was when the plan was taken: nothing is told any more.
  await goTo(page, `/job/${job}/survey/supply`)
  await page.getByRole('radio', { name: '50 A', exact: true }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await goTo(page, `/job/${job}/findings`)
  await page.locator('[data-holds="true"]').waitFor({ timeout: 30_000 })
  expect(await told.count()).toBe(0)
}, 120_000)
