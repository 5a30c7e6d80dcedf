import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { goTo, jobOn } from '../support/every-screen.ts'

/** Opens whatever is folded and gives every question below. */
async function questionsOf(page: Page, group: string, job: string): Promise<readonly string[]> {
  await goTo(page, `/job/${job}/survey/${group}`)
  await page.locator('main details > summary').first().waitFor()
  await page.locator('main details').evaluateAll(all => {
    for (const each of all as HTMLDetailsElement[]) each.open = true
  })
  const questions = page.locator(
    'main details :is(legend, label.label, label.label + span, p button)',
  )
  await questions.first().waitFor()
  return await questions.allTextContents()
}

/** Names of the files, and what stands in brackets behind them. */
const RAW = /[a-z][A-Z]|^[a-z]+(: | · [a-z]+:)|\([^)]*:|mohm|Mohm/u

test.each(['en', 'es'] as const)(
  '%s: what is seldom asked is asked in words',
  async language => {
    const app = await openApp({ device: 'phone', language, scheme: 'light' })
    const { page } = app
    const job = await jobOn(app, 'large-60')
    for (const group of ['supply', 'protection', 'run', 'load-pump-a']) {
      const questions = await questionsOf(page, group, job)
      expect(questions.length, group).toBeGreaterThan(2)
      expect(
        questions.filter(each => RAW.test(each)),
        group,
      ).toEqual([])
      expect(await barriers(page)).toEqual([])
      await screenshot(page, `survey-more-${group}-${language}-phone`, true)
    }
  },
  120_000,
)

test('the cable before the first device is measured in feet only where feet are usual', async () => {
  for (const [tub, usual] of [
    ['everyday-240-plain', 'ft'],
    ['garden-230', 'm'],
  ] as const) {
    const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
    const job = await jobOn(app, tub)
    await goTo(app.page, `/job/${job}/survey/supply`)
    await app.page.getByText('More about this').click()
    const unit = app.page.getByLabel('Unit of Length of the cable before the first device')
    expect(await unit.inputValue(), tub).toBe(usual)
  }
}, 60_000)

test('what names another thing of a load is chosen among those that it has', async () => {
  const app = await openApp({ device: 'phone', language: 'en', scheme: 'light' })
  const { page } = app
  const job = await jobOn(app, 'large-60')
  await goTo(page, `/job/${job}/survey/load-pump-a`)
  await page.getByText('More about this').click()
  const starts = page.getByRole('group', { name: 'The circuit on which it has to start' })
  await starts.getByRole('radio', { name: 'high speed' }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.reload()
  await page.getByText('More about this').click()
  expect(await starts.getByRole('radio', { name: 'high speed' }).isChecked()).toBe(true)
}, 60_000)
