import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Act } from '@tubwright/records'
import { actsBetween, JobLog, must, writeJobFile } from '@tubwright/records'
import type { Page } from 'playwright-core'
import { parse } from 'yaml'
import { goTo } from '../test/support/every-screen.ts'
import { open } from '../test/support/open.ts'
import type { Bench, Line } from './line.ts'
import { atMost, median, rounds } from './line.ts'

const READINGS = 500
const PHOTOS = 60
const PHOTO_BYTES = 300_000
const ITEMS = 200

const tubText = ({ bundle }: Bench): string =>
  readFileSync(
    join(bundle, '..', '..', '..', 'packages', 'catalog', 'data', 'tubs', 'large-60.yaml'),
    'utf8',
  )

const photoId = (index: number): string => `photo-${index}`
const bytesOf = (index: number): Buffer => Buffer.alloc(PHOTO_BYTES, index + 1)
const hashOf = (index: number): string => createHash('sha256').update(bytesOf(index)).digest('hex')

function photoActs(index: number): readonly Act[] {
  const at = (key: string) => ['photos', photoId(index), key]
  return [
    { do: 'add', path: ['photos', photoId(index)] },
    { do: 'set', path: at('hash'), value: hashOf(index) },
    { do: 'set', path: at('type'), value: 'image/jpeg' },
    { do: 'set', path: at('width'), value: 2048 },
    { do: 'set', path: at('height'), value: 1536 },
  ]
}

const reading = (index: number): Act => ({
  do: 'set',
  path: ['readings', `reading-${index}`],
  value: { from: 'box.A1', to: 'box.A2', volts: 120 + (index % 7) / 10 },
})

/** A job file as two years of visits leave it. */
function longJob(bench: Bench): string {
  const log = JobLog.empty('bench')
  const hand = { author: 'bench', at: '2026-01-01T00:00:00.000Z' }
  const acts: readonly Act[] = [
    ...actsBetween(undefined, parse(tubText(bench)), ['survey']),
    ...Array.from({ length: READINGS }, (_, index) => reading(index)),
    ...Array.from({ length: PHOTOS }, (_, index) => photoActs(index)).flat(),
  ]
  must(log.append(acts, hand))
  const photos = Array.from({ length: PHOTOS }, (_, index) => ({
    hash: hashOf(index),
    type: 'image/jpeg',
    bytes: bytesOf(index).toString('base64'),
  }))
  return writeJobFile({ job: 'long', entries: log.entries, photos, survey: tubText(bench) })
}

/** From a cold page at the job's address until its survey is there [s]. */
async function openOnce(page: Page, address: string): Promise<number> {
  await page.goto('about:blank')
  const begun = process.hrtime.bigint()
  await page.goto(address, { waitUntil: 'commit' })
  await page.locator('ol a.card').first().waitFor()
  return Number(process.hrtime.bigint() - begun) / 1e9
}

async function openLongJob(bench: Bench): Promise<number> {
  const app = await open({ bundle: bench.bundle, device: 'phone' })
  try {
    await app.page.locator('input[type="file"]').setInputFiles({
      name: 'long.tubjob',
      mimeType: 'application/json',
      buffer: Buffer.from(longJob(bench)),
    })
    await app.page.locator('ol a.card').first().waitFor({ timeout: 60_000 })
    return median(await rounds(5, () => openOnce(app.page, `${app.url}#/job/long/survey`)))
  } finally {
    await app.close()
  }
}

/** From the tap that adds a load until its questions are there and it is on the disk [ms]. */
async function addOnce(page: Page, job: string): Promise<number> {
  await goTo(page, `/job/${job}/survey/loads`)
  const add = page.locator('main .chips button').nth(5)
  await add.waitFor()
  const begun = process.hrtime.bigint()
  await add.click()
  await page.locator('[data-field]').first().waitFor()
  await page.locator('.saved[data-state="saved"]').waitFor()
  return Number(process.hrtime.bigint() - begun) / 1e6
}

async function lastAgainstFirst({ bundle }: Bench): Promise<number> {
  const app = await open({ bundle, device: 'phone', language: 'en' })
  try {
    const { page } = app
    await page.getByRole('button', { name: 'New job' }).click()
    await page.locator('ol a.card').first().waitFor()
    const job = /#\/job\/(\w+)\//u.exec(page.url())?.[1] ?? ''
    const times = await rounds(ITEMS, () => addOnce(page, job))
    return median(times.slice(-9)) / median(times.slice(1, 10))
  } finally {
    await app.close()
  }
}

export const jobLines: readonly Line[] = [
  {
    name: `a job with ${READINGS} readings and ${PHOTOS} photos opens`,
    unit: 's',
    goal: atMost(1),
    measure: openLongJob,
  },
  {
    name: `adding the last of ${ITEMS} loads, against the first`,
    unit: 'times',
    goal: atMost(1.5),
    measure: lastAgainstFirst,
  },
]
