import { readFileSync } from 'node:fs'
import type { Download, Page } from 'playwright-core'
import { expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { openApp } from '../support/app.ts'
import { beginTub } from '../support/every-screen.ts'

const options = { device: 'desk', language: 'en', scheme: 'light' } as const

async function toDemo({ page }: App): Promise<void> {
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('Begin with a tub of the demo').waitFor()
}

async function saveJob(page: Page): Promise<string> {
  await page.getByRole('link', { name: 'Sheet', exact: true }).click()
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the job as a file' }).click(),
  ])
  return pathOf(download)
}

async function pathOf(download: Download): Promise<string> {
  const path = await download.path()
  const copy = `${path}.tubjob`
  await download.saveAs(copy)
  return copy
}

async function openJob(page: Page, file: string): Promise<void> {
  await page.getByRole('link', { name: 'Tubwright' }).click()
  await page.getByLabel('Open a job file or a survey').setInputFiles(file)
}

async function setBreaker(page: Page, breaker: string): Promise<void> {
  await page.getByRole('link', { name: 'Survey', exact: true }).click()
  await page.getByRole('link', { name: /^The supply/u }).click()
  await page.getByRole('radio', { name: breaker, exact: true }).click()
  await page.locator('.saved[data-state="saved"]').waitFor()
}

test('two copies of a job are edited apart, merged, and the conflict is decided', async () => {
  const one = await openApp(options)
  const two = await openApp(options)
  await toDemo(one)
  await toDemo(two)
  await beginTub(one.page, 'everyday-240-plain')
  await one.page.getByRole('heading', { name: 'Survey' }).waitFor()
  const first = await saveJob(one.page)
  await openJob(two.page, first)
  await two.page.getByRole('heading', { name: 'Survey' }).waitFor()
  // Byte for byte the same, though another browser wrote it.
  expect(readFileSync(await saveJob(two.page))).toEqual(readFileSync(first))

  await setBreaker(one.page, '40 A')
  await setBreaker(two.page, '60 A')
  const theirs = await saveJob(two.page)
  await openJob(one.page, theirs)
  await one.page.getByText('Merged: 1 new entries.').waitFor()
  await one.page.locator('a.card').first().click()

  // Neither value is gone, and no verdict is shown while nobody has decided.
  await one.page.getByRole('link', { name: 'Match', exact: true }).click()
  const held = one.page.getByText('No verdict is shown while this stands:')
  await held.waitFor()
  expect(await one.page.locator('[data-verdict]').count()).toBe(0)
  await one.page.getByRole('link', { name: 'Survey', exact: true }).click()
  await one.page.getByRole('link', { name: /^The supply/u }).click()
  await one.page.getByRole('button', { name: /^40 A/u }).waitFor()
  await one.page.getByRole('button', { name: /^60 A/u }).click()
  await one.page.locator('[data-field="supply/breaker"] input:checked + span').waitFor()
  await one.page.getByRole('link', { name: 'Match', exact: true }).click()
  await one.page.locator('[data-verdict]').first().waitFor({ timeout: 60_000 })
  expect(await held.count()).toBe(0)

  // The other copy learns of the decision, and both then save the same file.
  const decided = await saveJob(one.page)
  await openJob(two.page, decided)
  await two.page.getByText(/^Merged: 2 new entries/u).waitFor()
  await two.page.locator('a.card').first().click()
  expect(readFileSync(await saveJob(two.page))).toEqual(readFileSync(decided))
}, 180_000)

test('a load taken out in one copy and changed in the other is left out or brought back by somebody', async () => {
  const one = await openApp(options)
  const two = await openApp(options)
  await toDemo(one)
  await toDemo(two)
  await beginTub(one.page, 'everyday-240-plain')
  await one.page.getByRole('heading', { name: 'Survey' }).waitFor()
  await openJob(two.page, await saveJob(one.page))
  await two.page.getByRole('heading', { name: 'Survey' }).waitFor()
  await one.page.getByRole('link', { name: 'Survey', exact: true }).click()
  await one.page.getByRole('link', { name: /^LED light/u }).click()
  await one.page.getByRole('button', { name: 'Take this out' }).click()
  await one.page.locator('.saved[data-state="saved"]').waitFor()
  await two.page.getByRole('link', { name: /^LED light/u }).click()
  await two.page.getByRole('radio', { name: '120 V', exact: true }).click()
  await two.page.locator('.saved[data-state="saved"]').waitFor()
  await openJob(one.page, await saveJob(two.page))
  await one.page.getByText(/^Merged: /u).waitFor()
  await one.page.locator('a.card').first().click()
  await one.page.getByRole('link', { name: 'Match', exact: true }).click()
  const held = one.page.getByText('No verdict is shown while this stands:')
  await held.waitFor()
  await one.page.getByRole('button', { name: 'Leave it out' }).click()
  await held.waitFor({ state: 'detached' })
  await one.page.locator('[data-verdict]').first().waitFor({ timeout: 60_000 })
}, 180_000)

test('a file that was cut off or changed is refused, and nothing of it is taken', async () => {
  const app = await openApp(options)
  await toDemo(app)
  await beginTub(app.page, 'everyday-240-plain')
  await app.page.getByRole('heading', { name: 'Survey' }).waitFor()
  const text = readFileSync(await saveJob(app.page), 'utf8')
  const fresh = await openApp(options)
  for (const [name, bad] of [
    ['cut.tubjob', text.slice(0, -40)],
    ['changed.tubjob', text.replace('"50 A"', '"70 A"')],
    ['other.tubjob', '{"schema":"something-else/1"}'],
    ['not.yaml', 'schema: recipe/1\nname: soup\n'],
  ] as const) {
    await fresh.page
      .getByLabel('Open a job file or a survey')
      .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(bad) })
    await fresh.page.getByText(/^This file cannot be opened/u).waitFor()
    expect(await fresh.page.locator('a.card').count(), name).toBe(0)
    await fresh.page.reload()
  }
}, 120_000)

test('the survey leaves as the YAML that the command line reads, and comes back', async () => {
  const app = await openApp(options)
  await toDemo(app)
  await beginTub(app.page, 'wye-208')
  await app.page.getByRole('link', { name: 'Sheet', exact: true }).click()
  const [download] = await Promise.all([
    app.page.waitForEvent('download'),
    app.page.getByRole('button', { name: 'Save the survey as YAML' }).click(),
  ])
  const path = `${await download.path()}.yaml`
  await download.saveAs(path)
  const own = await openApp(options)
  await own.page.getByLabel('Open a job file or a survey').setInputFiles(path)
  await own.page.getByRole('heading', { name: 'Survey' }).waitFor()
  await own.page.getByText('Two legs of a three-phase building', { exact: false }).first().waitFor()
}, 120_000)
