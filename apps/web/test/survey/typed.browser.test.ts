import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { axe, killAndReopen, openApp, screenshot } from '../support/app.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

const DISK = 1000 // [ms] after the last key everything is long on the disk

const reading = (page: Page) => page.getByLabel('Leg 1 to leg 2', { exact: true })
const title = (page: Page) => page.locator('[data-field="title"] input')
const entries = (page: Page): Promise<string | null> =>
  page.locator('.saved[data-state="saved"]').getAttribute('data-saved')

/** A job with one reading said, and the field of it open. */
async function atReading(app: App, said = ''): Promise<string> {
  const job = await jobOn(app, 'everyday-240-plain')
  const { page } = app
  await goTo(page, `/job/${job}/survey/readings`)
  await page.getByRole('radio', { name: /^I do: rated meter/u }).click()
  await page.getByRole('radio', { name: 'Standing by' }).click()
  await reading(page).fill(said)
  await reading(page).blur()
  await page.locator('.saved[data-state="saved"]').waitFor()
  return job
}

test('a figure that is being typed is there again after a reload, judged by nobody', async () => {
  const app = await openApp({ device: 'phone' })
  const { page } = app
  await atReading(app, '240')
  const before = await entries(page)
  await reading(page).click()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('2x', { delay: 30 })
  await page.waitForTimeout(DISK)
  expect(await page.locator('.wrong').count()).toBe(0)
  expect(await entries(page)).toBe(before)
  await page.reload()
  expect(await reading(page).inputValue()).toBe('2x')
  await page.getByText('Typed before and not used yet').waitFor()
  expect(await page.locator('.wrong').count()).toBe(0)
  expect(await entries(page)).toBe(before)
  expect(await axe(page)).toEqual([])
  await screenshot(page, 'typed-phone')
  await reading(page).fill('241')
  await reading(page).blur()
  await expect.poll(() => entries(page)).toBe(String(Number(before) + 1))
  await page.waitForTimeout(DISK)
  await page.reload()
  expect(await reading(page).inputValue()).toBe('241')
  expect(await page.getByText('Typed before and not used yet').count()).toBe(0)
})

test('a page that goes with the last key takes nothing with it', async () => {
  const app = await openApp({ device: 'phone' })
  const { page } = app
  const job = await atReading(app)
  for (const text of ['241', '242', '243']) {
    await reading(page).fill(text)
    await page.reload()
    expect(await reading(page).inputValue()).toBe(text)
  }
  await goTo(page, `/job/${job}/survey/tub`)
  for (const text of ['Behind the garage', 'Behind the house']) {
    await title(page).fill(text)
    await page.reload()
    await title(page).waitFor()
    expect(await title(page).inputValue()).toBe(text)
  }
  await page
    .getByRole('heading', { name: 'Behind the house' })
    .or(page.getByText('Behind the house'))
    .first()
    .waitFor()
})

test('a browser that is killed keeps what was typed a moment before', async () => {
  const app = await openApp({ device: 'phone' })
  await app.page.getByRole('button', { name: 'New job' }).click()
  await app.page.waitForURL(/survey/u)
  const at = new URL(app.page.url())
  await app.page.goto(`${at.origin}${at.pathname}${at.hash.replace(/survey.*$/u, 'survey/supply')}`)
  const breaker = (page: Page) =>
    page.locator('[data-field="supply/breaker"] input[inputmode="decimal"]')
  await breaker(app.page).fill('3')
  await app.page.waitForTimeout(DISK)
  const again = await killAndReopen(app)
  await again.page.goto(app.page.url())
  await breaker(again.page).waitFor()
  expect(await breaker(again.page).inputValue()).toBe('3')
})

test.each(['abc', '-5'])(
  '%s is refused, stays in its field, and is nowhere taken for an answer',
  async text => {
    const app = await openApp({ device: 'phone' })
    const { page } = app
    const job = await atReading(app, '240')
    await reading(page).fill(text)
    await reading(page).blur()
    await page.locator('[data-field$="leg1ToLeg2"] .wrong').waitFor()
    await goTo(page, `/job/${job}/survey`)
    const group = page.getByRole('link', { name: /^Six readings at the tub/u })
    await group.getByText('typed and not used yet: 1').waitFor()
    await goTo(page, `/job/${job}/supply`)
    await page.locator('[data-not-used="1"]').waitFor()
    await screenshot(page, 'not-used-supply')
    await page.locator('[data-not-used] a').click()
    expect(await reading(page).inputValue()).toBe(text)
    await page.locator('[data-field$="leg1ToLeg2"] .wrong').waitFor()
    await page.reload()
    expect(await reading(page).inputValue()).toBe(text)
    await page.locator('[data-field$="leg1ToLeg2"] .wrong').waitFor()
    await reading(page).fill('239')
    await reading(page).blur()
    expect(await page.locator('.wrong').count()).toBe(0)
    await goTo(page, `/job/${job}/supply`)
    await page.locator('[data-condition]').waitFor()
    expect(await page.locator('[data-not-used]').count()).toBe(0)
  },
)

test('a plate with a minus is refused; a figure without a circuit is said to be left', async () => {
  const { page } = await openApp({ device: 'phone' })
  await page.getByRole('button', { name: 'New job' }).click()
  await page.waitForURL(/survey/u)
  await page.getByRole('link', { name: /^The loads/u }).click()
  await page.getByRole('button', { name: 'Pump, one speed' }).click()
  const plate = page.getByLabel('What the plate says')
  await plate.fill('-3 A')
  await plate.blur()
  await page.getByText('Nothing of “-3 A” is used').waitFor()
  expect(await plate.inputValue()).toBe('-3 A')
  expect(await page.locator('[data-field$="circuits/run/amps"]').count()).toBe(0)
  await plate.fill('16.4/4.8 A')
  await plate.blur()
  await page.getByText('Not used: 4.8 A').waitFor()
  const amps = page.locator('[data-field$="circuits/run/amps"] input[inputmode="decimal"]')
  expect(await amps.inputValue()).toBe('16.4')
  await amps.fill('-3')
  await amps.blur()
  await page.getByText(/-3 A cannot be/u).waitFor()
  expect(await amps.inputValue()).toBe('-3')
})

test('a tab that takes the writing over finds what was typed in the other', async () => {
  const app = await openApp({ device: 'phone' })
  const { page, context } = app
  await atReading(app, '240')
  const other = await context.newPage()
  await other.goto(page.url())
  await reading(other).waitFor()
  await reading(page).fill('24')
  await expect.poll(() => reading(other).inputValue()).toBe('24')
  await reading(page).fill('241x')
  await other.getByRole('button', { name: 'Write here instead' }).click()
  await expect.poll(() => reading(other).isEnabled()).toBe(true)
  expect(await reading(other).inputValue()).toBe('241x')
  await reading(other).fill('241')
  await reading(other).blur()
  await expect.poll(() => reading(page).inputValue()).toBe('241')
  await page.getByText('Typed before and not used yet').waitFor({ state: 'detached' })
  expect(await page.locator('.wrong').count()).toBe(0)
})
