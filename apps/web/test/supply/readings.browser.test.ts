import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

test('readings are asked of nobody who has not done it before, and 0 V is one', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  await jobOn(app, 'everyday-240-plain')
  await page.getByRole('link', { name: /^Six readings at the tub/u }).click()
  await page.getByText(/^DANGERThe box is open and live|The box is open and live/u).waitFor()
  const reading = (name: string) => page.getByLabel(name, { exact: true })
  expect(await page.getByText('What is on meanwhile?').count()).toBe(0)
  await page.getByRole('radio', { name: /^Somebody by phone/u }).click()
  await page.getByText(/^Leave the box closed/u).waitFor()
  expect(await page.getByText('What is on meanwhile?').count()).toBe(0)
  await page.getByRole('radio', { name: /^I do: rated meter/u }).click()
  await page.getByRole('radio', { name: 'Standing by' }).click()
  for (const [name, volts] of [
    ['Leg 1 to leg 2', '241'],
    ['Leg 1 to neutral', '0.4'],
    ['Leg 2 to neutral', '240.6'],
    ['Neutral to earth', '120'],
    ['Leg 1 to earth', '120.5'],
  ] as const) {
    await reading(name).fill(volts)
    await reading(name).press('Enter')
  }
  expect(await page.locator('.wrong').count()).toBe(0)
  expect(await reading('What the heater draws').count()).toBe(0)
  await page.getByRole('radio', { name: 'Heating' }).click()
  await reading('What the heater draws').waitFor()
  await page.getByRole('button', { name: 'Take this out' }).click()
  await page.getByRole('radio', { name: 'Loads off' }).click()
  await reading('Leg 1 to leg 2').fill('0')
  await reading('Leg 1 to leg 2').press('Enter')
  expect(await page.locator('.wrong').count()).toBe(0)
  await reading('Leg 1 to leg 2').fill('241')
  await reading('Leg 1 to leg 2').press('Enter')
  await page.locator('.saved[data-state="saved"]').waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'readings-phone', true)
  await page.reload()
  // Somebody took readings here: what they are is shown, one situation at a time.
  await page.getByRole('radio', { name: 'Standing by' }).click()
  expect(await reading('Leg 1 to neutral').inputValue()).toBe('0.4')
  expect(await reading('Neutral to earth').inputValue()).toBe('120')
  // All of it on one leg: the neutral is open, told with what that does and what to do.
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  const named = page.locator('[data-condition]')
  await named.waitFor({ timeout: 30_000 })
  expect(await named.getAttribute('data-condition')).toBe('neutral-open')
  expect(await named.textContent()).toMatch(/The neutral is open.*DANGER/u)
  expect(await barriers(page)).toEqual([])
  await named.scrollIntoViewIfNeeded()
  await screenshot(page, 'supply-condition-phone', true)
}, 60_000)

test('a supply without neutral or second leg is asked for what it has', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'dark' })
  const { page } = app
  const job = await jobOn(app, 'everyday-120-plain')
  await goTo(page, `/job/${job}/survey/readings`)
  await page.getByRole('radio', { name: /^I do: rated meter/u }).click()
  await page.getByRole('radio', { name: 'Loads off' }).click()
  await page.getByLabel('Leg 1 to neutral', { exact: true }).waitFor()
  expect(await page.locator('[data-field^="readings/"]').count()).toBe(3)
}, 60_000)
