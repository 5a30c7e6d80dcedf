import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

const english = { device: 'phone', language: 'en', scheme: 'light' } as const

test('a new job has nothing answered, and says so of each group', async () => {
  const { page } = await openApp(english)
  await page.getByRole('button', { name: 'New job' }).click()
  await page.getByRole('link', { name: 'The supply not begun' }).waitFor()
  const begun = page.getByRole('link', { name: 'not begun' })
  expect(await begun.allTextContents()).toEqual([
    'The supply not begun',
    'Between panel and tub not begun',
    'The wires to the tub not begun',
    'The loads not begun',
    'Room for the box not begun',
  ])
  expect(await page.getByText('answered').count()).toBe(0)
  await screenshot(page, 'survey-new-phone', true)
  await page.getByRole('link', { name: 'The wires to the tub not begun' }).click()
  await page.locator('main').getByRole('link', { name: 'Between panel and tub' }).waitFor()
}, 60_000)

test('with all that a plan needs, the questions of the supply are counted, and led to', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await goTo(page, `/job/${job}/survey/done`)
  await page.getByText('Everything that a plan needs is answered.').waitFor()
  const told = page.getByText(/^Questions that a verdict on the supply asks besides: \d+\./u)
  await told.waitFor({ timeout: 30_000 })
  const count = Number(/\d+/u.exec((await told.textContent()) ?? '')?.[0])
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-done-phone')
  await page.getByRole('link', { name: 'See what it asks' }).click()
  const asks = page.getByRole('region', { name: 'What to ask' })
  await asks.waitFor({ timeout: 30_000 })
  expect(await asks.getByRole('link').count()).toBe(count)
}, 60_000)
