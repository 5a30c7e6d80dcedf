import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

const english = { device: 'phone', language: 'en', scheme: 'light' } as const

test('a new load says nothing of its earth until somebody does, and its verdict waits for that', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await goTo(page, `/job/${job}/survey/loads`)
  await page.getByRole('button', { name: 'Pump, one speed' }).click()
  const earth = page.getByRole('group', { name: 'Has it an earth lead?' })
  await earth.waitFor()
  expect(await earth.getByRole('radio', { checked: true }).count()).toBe(0)
  await page.getByRole('radio', { name: '240 V' }).click()
  await page.getByLabel('What the plate says').fill('9')
  await page.getByLabel('What the plate says').press('Enter')
  await page.getByRole('radio', { name: 'No', exact: true }).first().click()
  await page.getByRole('radio', { name: '14 AWG' }).click()
  await page.getByRole('radio', { name: /^As usual here/u }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.getByRole('link', { name: 'Next' }).click()
  await page.getByRole('link', { name: 'Pump, one speed 1 open' }).click()
  await earth.getByRole('radio', { name: 'Yes', exact: true }).click()
  await page.getByRole('radio', { name: '14 AWG' }).click()
  await page.getByRole('radio', { name: /^As usual here: hot black, common/u }).click()
  // Its pins are asked in the order of its kind, whenever its earth was said.
  await page.getByRole('radio', { name: 'three-way square plug' }).click()
  await page.getByRole('radio', { name: /^1 hot · 2 common.* · 3 earth/u }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.getByRole('link', { name: 'Next' }).click()
  await page.getByRole('link', { name: 'Pump, one speed answered' }).waitFor()
}, 60_000)

test('from a load one comes to all of them, and what was taken out lies folded', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await goTo(page, `/job/${job}/survey/loads`)
  const heading = (name: string) => page.getByRole('heading', { name, level: 1 })
  for (const kind of ['Blower', 'Audio']) {
    await page.getByRole('button', { name: kind }).click()
    await heading(kind).waitFor()
    await page.getByRole('link', { name: 'Next' }).click()
    await heading('The loads').waitFor()
    await page.getByRole('link', { name: kind }).click()
    await page.getByRole('button', { name: 'Take this out' }).click()
    await heading('The loads').waitFor()
  }
  const gone = page.getByText('Taken out: Blower')
  expect(await gone.count()).toBe(1)
  expect(await gone.isVisible()).toBe(false)
  await page.getByText('Taken out: 2').click()
  expect(await gone.isVisible()).toBe(true)
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-loads-taken-out-phone', true)
  await page.getByRole('button', { name: 'Bring it back' }).first().click()
  await page.getByText('Taken out: 1').waitFor()
  await page.getByRole('link', { name: 'Next' }).click()
  await heading('Room for the box').waitFor()
  await page.getByRole('link', { name: 'Back' }).click()
  await heading('The loads').waitFor()
}, 60_000)

test('a name for the job is asked, and no word on not knowing it', async () => {
  const { page } = await openApp(english)
  await page.getByRole('button', { name: 'New job' }).click()
  await page.getByRole('link', { name: /^The tub/u }).click()
  await page.getByLabel('A name for this job').waitFor()
  const unknown = page.getByRole('button', { name: /Don’t know/u })
  expect(await unknown.evaluateAll(all => all.map(each => each.ariaLabel))).toEqual([
    'Where does the tub stand?: Don’t know',
  ])
}, 60_000)
