import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

const english = { device: 'phone', language: 'en', scheme: 'light' } as const

test('what stands around the tub is entered, drawn and judged, and nothing near is an answer too', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await page.getByRole('link', { name: /^The place.*optional/u }).click()
  const field = (at: string) => page.locator(`[data-field="yard/${at}"]`)
  const choose = (at: string, name: string) => field(at).getByRole('radio', { name }).click()
  const type = async (label: string, text: string): Promise<void> => {
    await page.getByLabel(label, { exact: true }).fill(text)
    await page.getByLabel(label, { exact: true }).press('Enter')
  }
  await choose('setting', 'Outdoors')
  await choose('dwelling', 'A house for one family')
  await choose('selfContained', 'Yes')
  await type('Height of the rim', '36')
  await choose('groundBonded', 'No')
  await type('How far is that switch?', '8')
  await choose('disconnect/inSight', 'Yes')
  await page.getByRole('button', { name: 'Add an outlet' }).click()
  await type('How far is Outlet 1?', '4')
  await page.getByRole('button', { name: 'Add a light' }).click()
  await page.getByRole('button', { name: 'Take out Light 1' }).click()
  await field('lights').getByLabel('None').check()
  await page.locator('.saved[data-state="saved"]').waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-yard-answered-phone', true)
  await page.reload()
  expect(await page.getByLabel('How far is Outlet 1?', { exact: true }).inputValue()).toBe('4')
  expect(await field('lights').getByLabel('None').isChecked()).toBe(true)
  await goTo(page, `/job/${job}/survey`)
  await page.getByRole('link', { name: /^The place answered: \d+/u }).waitFor()

  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  await page.locator('[data-supply="breaks"]').waitFor({ timeout: 30_000 })
  const near = page.locator('.finding[data-verdict="breaks"]', { hasText: 'Outlet 1' })
  expect(await near.first().textContent()).toMatch(/4 ft/u)
  await page.locator('section svg.yard').waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'supply-yard-phone', true)
}, 90_000)

test('the loads of the house are added by a tap each, and asked for their power', async () => {
  const app = await openApp({ ...english, scheme: 'dark' })
  const { page } = app
  await jobOn(app, 'everyday-240-plain')
  await page.getByRole('link', { name: /^The house/u }).click()
  await page.getByRole('radio', { name: '200 A' }).click()
  await page.getByRole('button', { name: 'Add: Range or oven' }).click()
  await page.getByLabel('Power of Range or oven', { exact: true }).fill('8')
  await page.getByLabel('Power of Range or oven', { exact: true }).press('Enter')
  await page.getByRole('button', { name: 'Add: Vehicle charger' }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-service-phone-dark', true)
  // What was added without its power holds the verdict back, and says so.
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  await page.locator('[data-supply="not-judged"]').waitFor({ timeout: 30_000 })
  await page.getByRole('link', { name: /^The house/u }).click()
  await page.getByRole('button', { name: 'Take out Vehicle charger' }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  await page.locator('.supply-lead').waitFor({ timeout: 30_000 })
}, 60_000)

test('a tingle that was felt says what to do at once, and stops all work with a tap', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await page.getByRole('link', { name: /^Shock or tingle/u }).click()
  await page.locator('[data-field="touch/felt"]').getByRole('radio', { name: 'Yes' }).click()
  await page
    .getByText(/^DANGER|Nobody in or at the water/u)
    .first()
    .waitFor()
  await page.locator('.saved[data-state="saved"]').waitFor()
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'survey-touch-phone', true)
  await goTo(page, `/job/${job}/supply`)
  await page.locator('[data-supply="breaks"]').waitFor({ timeout: 30_000 })
  expect(await page.locator('.supply-lead').textContent()).toContain('Do not power it.')
  await goTo(page, `/job/${job}/survey/touch`)
  await page.getByRole('button', { name: 'Stop all work now' }).click()
  await page.locator('.red textarea').waitFor()
  await goTo(page, `/job/${job}/supply`)
  await page.locator('.red textarea').waitFor()
  expect(await page.locator('[data-supply]').count()).toBe(0)
}, 60_000)

test('marks of heat stand before any figure', async () => {
  const app = await openApp(english)
  const { page } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await goTo(page, `/job/${job}/survey/protection/supply.devices.gf.heatMark`)
  await page.locator('[data-asked]').getByRole('radio', { name: 'Yes' }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.getByRole('link', { name: 'Back to the supply' }).click()
  await page.locator('[data-supply="breaks"]').waitFor({ timeout: 30_000 })
  const first = page.locator('article.finding').first()
  expect(await first.getAttribute('data-verdict')).toBe('breaks')
  expect(await first.textContent()).toMatch(/DANGER.*shows heat.*bright copper/u)
  await screenshot(page, 'supply-heat-phone')
}, 60_000)
