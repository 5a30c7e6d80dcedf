import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp } from '../support/app.ts'

const TABS_MAX = 150

/** What has the focus, as a person with a screen reader hears it: its text or its label. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLElement | null
    const labels = at && 'labels' in at ? [...((at as HTMLInputElement).labels ?? [])] : []
    return [at?.ariaLabel, ...labels.map(each => each.textContent), at?.textContent]
      .filter(Boolean)
      .join(' ')
  })

/** Tabs on until the focus is on what is wanted. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let tabs = 0; tabs < TABS_MAX; tabs++) {
    if (wanted.test(await focused(page))) return
    await page.keyboard.press('Tab')
  }
  throw new Error(`no way by keyboard to ${wanted}; the focus is on "${await focused(page)}"`)
}

test('a job is done with the keyboard alone', async () => {
  const { page } = await openApp({ device: 'desk', language: 'en', scheme: 'light' })
  const heading = (name: string) =>
    page.getByRole('heading', { name, level: 1 }).waitFor({ timeout: 30_000 })
  const press = async (wanted: RegExp, key = 'Enter'): Promise<void> => {
    await tabTo(page, wanted)
    await page.keyboard.press(key)
  }
  await heading('Jobs')
  await press(/^Demo shop/u)
  await page.getByText('Begin with a tub of the demo').waitFor()
  await tabTo(page, /^Begin with a tub/u)
  await page.keyboard.type('The everyday tub on two legs, without')
  await press(/^Begin$/u)
  await heading('Survey')
  await press(/^The supply/u)
  await heading('The supply')
  await tabTo(page, /^50 A/u)
  await page.keyboard.press('ArrowLeft')
  await page
    .locator('[data-field="supply/breaker"] input:checked + span', { hasText: '40 A' })
    .waitFor()
  await page.keyboard.press('ArrowRight')
  await page
    .locator('[data-field="supply/breaker"] input:checked + span', { hasText: '50 A' })
    .waitFor()
  await press(/^Match$/u)
  await heading('Which box serves')
  await page.locator('[data-verdict="serves"]').first().waitFor({ timeout: 60_000 })
  await press(/^Take this plan/u)
  await page.getByText('This plan is taken.').waitFor()
  await press(/^Findings$/u)
  await page.locator('[data-holds="true"]').waitFor({ timeout: 30_000 })
  await press(/^Sheet$/u)
  await page
    .frameLocator('iframe.page')
    .getByRole('heading', { name: 'Work sheet' })
    .waitFor({ timeout: 30_000 })
  await press(/^STOP$/u)
  await press(/^Any shock/u)
  await heading('Stop all work')
  // A stop cannot be waved away: only a statement of what was found clears it.
  await page.keyboard.press('Escape')
  await heading('Stop all work')
  expect(await page.getByRole('button', { name: /^It is found/u }).isDisabled()).toBe(true)
  await tabTo(page, /^What was found/u)
  await page.keyboard.type('A chafed lead of the light touched the frame; replaced and proved.')
  await press(/^It is found/u)
  await heading('Sheet')
}, 180_000)
