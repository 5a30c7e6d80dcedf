import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers, smallIn } from '../support/barriers.ts'
import { jobWithPlan, SCREENS, show } from '../support/every-screen.ts'
import type { Device } from '../support/open.ts'

/** How far the page is wider than the window, which would ask for a swipe. */
const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

/** Names of the steps that take more than a line: a broken word is not read. */
const brokenSteps = (page: Page): Promise<readonly string[]> =>
  page.locator('.steps a').evaluateAll(all =>
    all
      .filter(each => {
        const range = document.createRange()
        range.selectNodeContents(each)
        return range.getClientRects().length > 1
      })
      .map(each => each.textContent ?? ''),
  )

test.each(['light', 'dark'] as const)(
  'no screen breaches a rule of access, %s',
  async scheme => {
    const app = await openApp({ device: 'phone', language: 'en', scheme })
    const job = await jobWithPlan(app)
    for (const screen of SCREENS) {
      await show(app.page, screen, job)
      expect(await barriers(app.page), screen.name).toEqual([])
      await screenshot(app.page, `${screen.name}-phone-${scheme}`)
    }
    await app.page.locator('button.stop').click()
    await app.page.locator('dialog button.stop').first().waitFor()
    expect(await barriers(app.page), 'stop').toEqual([])
    await app.page.locator('dialog button.stop').first().click()
    await app.page.locator('.red textarea').waitFor()
    expect(await barriers(app.page), 'red stop').toEqual([])
    await screenshot(app.page, `stop-phone-${scheme}`)
  },
  300_000,
)

test.each(['phone', 'tablet', 'desk'] as const satisfies readonly Device[])(
  'every screen fits a %s, and every target is large enough',
  async device => {
    const app = await openApp({ device, language: 'en', scheme: 'light' })
    const job = await jobWithPlan(app)
    for (const screen of SCREENS) {
      await show(app.page, screen, job)
      expect(await overflow(app.page), screen.name).toBeLessThanOrEqual(0)
      expect(await smallIn(app.page), screen.name).toEqual([])
      if (device !== 'phone') await screenshot(app.page, `${screen.name}-${device}`)
    }
  },
  300_000,
)

test('text at 200 % on 320 pixels: every screen is read without scrolling sideways', async () => {
  const app = await openApp({
    viewport: { width: 320, height: 640 },
    textScale: 2,
    language: 'es',
    scheme: 'light',
  })
  const job = await jobWithPlan(app)
  for (const screen of SCREENS) {
    await show(app.page, screen, job)
    expect(await overflow(app.page), screen.name).toBeLessThanOrEqual(0)
    expect(await brokenSteps(app.page), screen.name).toEqual([])
    await screenshot(app.page, `${screen.name}-320`)
  }
}, 300_000)
