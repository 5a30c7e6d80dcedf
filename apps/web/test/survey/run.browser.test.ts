import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'
import { surveyFiveLoads } from '../support/five-loads.ts'
import { thumbOn } from '../support/thumb.ts'

const english = { device: 'phone', language: 'en', scheme: 'light' } as const

const saved = (page: Page) => page.locator('.saved[data-state="saved"]').waitFor()
const cards = (page: Page) => page.locator('main section.card > h2')
const LOCAL = /Local disconnect, two legs/u

test('a disconnect is put into a run already described, by taps alone, and a plan holds', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  const thumb = thumbOn(page)
  await goTo(page, `/job/${job}/survey/protection`)
  await thumb.tap('button', 'Add a device behind it')
  // What has no terminals on its supply side can only stand first.
  const add = page.getByRole('region', { name: 'Add a device behind it' })
  await add.getByRole('radio', { name: LOCAL }).waitFor()
  expect(await add.getByRole('radio', { name: /^Two-pole ground-fault/u }).count()).toBe(0)
  await add.getByRole('radio', { name: LOCAL }).click()
  await page.getByText(/was put in here: .* → The tub/u).waitFor()
  await saved(page)
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-run-put-between-phone', true)
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: /^The wires to the tub \d+ open/u }).click()
  await page.getByRole('heading', { name: 'To the tub', exact: true }).waitFor()
  // From the panel to the tub.
  expect(await cards(page).allTextContents()).toEqual(['Garage to tub', 'To the tub'])
  const piece = (name: string) => page.getByRole('region', { name, exact: true })
  const [first, last] = [piece('Garage to tub'), piece('To the tub')]
  const ends = first.getByRole('group', { name: 'It ends at' })
  expect(await ends.getByRole('radio', { name: LOCAL }).isChecked()).toBe(true)
  expect(await last.getByRole('radio', { name: 'The tub' }).isChecked()).toBe(true)
  const landed = (at: string) => page.getByRole('radio', { name: new RegExp(`^Yes: .*${at}`, 'u') })
  await landed('L1-in').click()
  await landed('L1-out').click()
  await first.getByLabel('Length of this piece', { exact: true }).fill('30')
  await last.getByLabel('Length of this piece', { exact: true }).fill('6')
  await last.getByLabel('Length of this piece', { exact: true }).press('Enter')
  await saved(page)
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-run-two-pieces-phone', true)
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: 'The wires to the tub answered' }).waitFor()
  await page.getByRole('link', { name: 'Between panel and tub answered' }).waitFor()
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  await page.locator('[data-supply="open"]').waitFor({ timeout: 60_000 })
  await goTo(page, `/job/${job}/match`)
  await page.locator('[data-verdict^="serves"]').first().waitFor({ timeout: 90_000 })
}, 180_000)

test('the same in a job of one’s own, from the first question to a box that serves', async () => {
  const { page } = await openApp(english)
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('Begin with a tub of the demo').waitFor()
  const thumb = thumbOn(page)
  await surveyFiveLoads(page, thumb)
  await thumb.tap('link', 'Survey')
  await thumb.tap('link', /^Between panel and tub/u)
  await thumb.tap('button', 'Add a device behind it')
  const add = page.getByRole('region', { name: 'Add a device behind it' })
  await add.getByRole('radio', { name: LOCAL }).click()
  await thumb.tap('link', 'Next')
  await page.locator('main section.card').nth(1).waitFor()
  expect(await cards(page).allTextContents()).toEqual([
    'To: Local disconnect, two legs switched, neutral passed through',
    'To the tub',
  ])
  await thumb.tap('radio', /^Yes: .*L1-in/u)
  await thumb.tap('radio', /^Yes: .*L1-out/u)
  for (const [index, length] of ['40', '8'].entries()) {
    const field = page.getByLabel('Length of this piece', { exact: true }).nth(index)
    await field.fill(length)
    await field.press('Enter')
  }
  await saved(page)
  await thumb.tap('link', 'Survey')
  await page.getByRole('link', { name: 'The wires to the tub answered' }).waitFor()
  await thumb.tap('link', 'Supply')
  await page.locator('[data-supply="open"]').waitFor({ timeout: 60_000 })
  await thumb.tap('link', 'Match')
  await page.locator('[data-verdict^="serves"]').first().waitFor({ timeout: 90_000 })
}, 180_000)

test('what was put in is undone with a tap, and of several pieces one is asked for', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'large-60')
  await goTo(page, `/job/${job}/survey/protection`)
  await page.getByRole('button', { name: 'Add a device behind it' }).click()
  const which = page.getByRole('group', { name: 'Between which?' })
  await which.getByRole('radio', { name: 'Disconnect on the terrace → The tub' }).click()
  await page
    .getByRole('region', { name: 'Add a device behind it' })
    .getByRole('radio', { name: LOCAL })
    .click()
  await page.getByRole('button', { name: 'Undo' }).waitFor()
  await saved(page)
  await goTo(page, `/job/${job}/survey/run`)
  await page.locator('main section.card').nth(2).waitFor()
  expect(await cards(page).allTextContents()).toEqual([
    'Pool house to terrace',
    'Terrace to tub',
    'To the tub',
  ])
  await goTo(page, `/job/${job}/survey/protection`)
  const disconnect = page.getByRole('region', { name: LOCAL })
  await disconnect.getByRole('button', { name: 'Take this out' }).click()
  await saved(page)
  await page.getByRole('button', { name: 'Add a device behind it' }).click()
  await which.getByRole('radio', { name: /→ Disconnect on the terrace$/u }).click()
  await page
    .getByRole('region', { name: 'Add a device behind it' })
    .getByRole('radio', { name: LOCAL })
    .click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await saved(page)
  await goTo(page, `/job/${job}/survey/run`)
  expect(await page.getByLabel('Length of this piece', { exact: true }).first().inputValue()).toBe(
    '55',
  )
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: 'Between panel and tub answered' }).waitFor()
}, 90_000)

test('a device that is joined to nothing says so, with the way to join it', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'large-60')
  await goTo(page, `/job/${job}/survey/run`)
  const first = page.getByRole('region', { name: 'Pool house to terrace' })
  await first
    .getByRole('group', { name: 'It ends at' })
    .getByRole('radio', { name: 'The tub' })
    .click()
  await saved(page)
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: 'Between panel and tub 1 open' }).waitFor()
  await goTo(page, `/job/${job}/match`)
  const told = 'Disconnect on the terrace is joined to nothing: which wire goes in?'
  await page.getByRole('link', { name: told }).click()
  await page.getByText(told).waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-run-loose-phone', true)
  await page.getByRole('button', { name: /^Ground-fault breaker in the pool house → /u }).click()
  await saved(page)
  expect(await page.getByText(told).count()).toBe(0)
  await goTo(page, `/job/${job}/survey/run`)
  await page.getByRole('radio', { name: /^Yes: .*L1-in/u }).click()
  await saved(page)
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: 'The wires to the tub answered' }).waitFor()
}, 90_000)
