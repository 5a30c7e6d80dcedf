import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { openApp, screenshot } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { beginTub, goTo } from '../support/every-screen.ts'

const options = { device: 'phone', language: 'en', scheme: 'light' } as const

async function saveJob(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Sheet', exact: true }).click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the job as a file' }).click(),
  ])
  const copy = `${await download.path()}.tubjob`
  await download.saveAs(copy)
  return copy
}

async function openJob(page: Page, file: string): Promise<void> {
  await page.getByRole('link', { name: 'Tubwright' }).click()
  await page.getByLabel('Open a job file or a survey').setInputFiles(file)
}

/** Says how the cable to the tub is held. */
async function sayMethod({ page }: App, method: string): Promise<void> {
  const job = /#\/job\/(\w+)\//u.exec(page.url())?.[1] ?? ''
  await goTo(page, `/job/${job}/survey/run/supply.cables.run.method`)
  await page.getByRole('radio', { name: method, exact: true }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
}

test('two people say different things of a cable: no verdict is shown until one decides', async () => {
  const one = await openApp(options)
  const two = await openApp(options)
  for (const { page } of [one, two]) {
    await page.getByRole('button', { name: 'Demo shop' }).click()
    await page.getByText('Begin with a tub of the demo').waitFor()
  }
  await beginTub(one.page, 'everyday-240-plain')
  await one.page.getByRole('heading', { name: 'Survey' }).waitFor()
  await openJob(two.page, await saveJob(one.page))
  await two.page.getByRole('heading', { name: 'Survey' }).waitFor()
  await sayMethod(one, 'Single wires in conduit')
  await sayMethod(two, 'Sheathed cable')
  await openJob(one.page, await saveJob(two.page))
  await one.page.getByText(/^Merged: /u).waitFor()
  await one.page.locator('a.card').first().click()

  const { page } = one
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  const held = page.getByText('No verdict is shown while this stands:')
  await held.waitFor()
  expect(await page.locator('[data-supply], .finding, .run-line').count()).toBe(0)
  expect(await barriers(page)).toEqual([])
  await screenshot(page, 'supply-held-phone')
  await page.getByRole('link', { name: 'Survey', exact: true }).click()
  await page.getByRole('link', { name: /^The wires to the tub/u }).click()
  await page.getByRole('button', { name: /^Single wires in conduit \(said/u }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
  await page.getByRole('link', { name: 'Supply', exact: true }).click()
  await page.locator('[data-supply="open"]').waitFor({ timeout: 30_000 })
  expect(await held.count()).toBe(0)

  // A stop takes over this screen as it does every other.
  await page.locator('button.stop').click()
  await page.locator('dialog button.stop').first().click()
  await page.locator('.red textarea').waitFor()
  expect(await page.locator('[data-supply]').count()).toBe(0)
}, 180_000)
