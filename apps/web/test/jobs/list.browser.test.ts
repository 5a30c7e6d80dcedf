import { expect, test } from 'vitest'
import { axe, openApp, screenshot } from '../support/app.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

test.each([
  ['en', 'STOP: no work until it is cleared'],
  ['es', 'ALTO: ningún trabajo hasta levantarlo'],
] as const)(
  '%s: a job that is stopped says so in the list, until the stop is cleared',
  async (language, told) => {
    const app = await openApp({ device: 'phone', language })
    const { page } = app
    const job = await jobOn(app, 'everyday-240-plain')
    await page.locator('button.stop').click()
    await page.locator('dialog button').first().click()
    await page.locator('.red h1').waitFor()
    await goTo(page, '/')
    const card = page.locator(`a.card[href*="${job}"]`)
    await card.getByText(told).waitFor()
    expect(await axe(page)).toEqual([])
    await screenshot(page, `jobs-stopped-${language}`)
    await page.reload()
    await card.getByText(told).waitFor()
    await card.click()
    await page.locator('.red textarea').fill('A chafed lead touched the frame; replaced.')
    await page.locator('.red .foot button').click()
    await page.locator('.red').waitFor({ state: 'detached' })
    await goTo(page, '/')
    await card.waitFor()
    await expect.poll(() => card.getByText(told).count()).toBe(0)
  },
)

test('tubs of the demo are named as people write, and the button beside them stands apart', async () => {
  const app = await openApp({ device: 'phone' })
  const { page } = app
  await page.getByRole('button', { name: 'Demo shop' }).click()
  const options = page.locator('#demo-tub option')
  await options.nth(1).waitFor({ state: 'attached' })
  const titles = await options.allTextContents()
  expect(titles).toContain('A workshop with a high leg, refused')
  expect(titles.filter(each => /^['"]|['"]$/u.test(each))).toEqual([])
  const [list, button] = [
    await page.locator('#demo-tub').boundingBox(),
    await page.locator('#demo-tub ~ button').boundingBox(),
  ]
  const below = (button?.y ?? 0) - (list?.y ?? 0) - (list?.height ?? 0)
  expect(below).toBeGreaterThanOrEqual(8)
  await screenshot(page, 'demo-tubs-phone')
})
