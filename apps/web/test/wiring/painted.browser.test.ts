import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openApp } from '../support/app.ts'
import { openWiring, takenJob } from './taken-job.ts'

const JOB = takenJob('everyday-240-plain', 'heron-4')
const SIZES = {
  phone: { device: 'phone' },
  desk: { device: 'desk', viewport: { width: 1440, height: 900 } },
} as const

const settled = async (page: Page): Promise<void> => {
  await page.locator('.paper .over path').first().waitFor()
  await page.locator('.board-window[data-scale] .paper:not(.moving)').waitFor()
}

const CLEARLY = 32 // of 255: the rim of the window is smoothed a little otherwise at times

/** How many points of two pictures clearly differ. */
const pointsApart = (page: Page, pictures: readonly Buffer[]): Promise<number> =>
  page.evaluate(
    async ({ texts, clearly }) => {
      const [one, other] = await Promise.all(
        texts.map(async text => {
          const bytes = Uint8Array.from(atob(text), each => each.charCodeAt(0))
          const picture = await createImageBitmap(new Blob([bytes]))
          const { width, height } = picture
          const surface = new OffscreenCanvas(width, height).getContext('2d')
          surface?.drawImage(picture, 0, 0)
          return surface?.getImageData(0, 0, width, height).data
        }),
      )
      if (!one || one.length !== other?.length) throw new Error('not of one size')
      return one.filter((each, index) => Math.abs(each - (other[index] ?? 0)) > clearly).length
    },
    { texts: pictures.map(each => each.toString('base64')), clearly: CLEARLY },
  )

/** Whether the drawing is painted as the same drawing is that the browser lays out and paints afresh. */
async function isAsFresh(page: Page): Promise<boolean> {
  await settled(page)
  const area = page.locator('.board-window')
  const seen = await area.screenshot()
  const swap = (): Promise<void> =>
    page.evaluate(() => {
      const held = window as { kept?: Node }
      const svg = document.querySelector('.paper > svg')
      const other = held.kept ?? svg?.cloneNode(true)
      if (!svg || !other) throw new Error('no drawing')
      held.kept = svg
      svg.replaceWith(other)
    })
  await swap()
  const fresh = await area.screenshot()
  await swap()
  await page.evaluate(() => delete (window as { kept?: Node }).kept)
  return seen.equals(fresh) || (await pointsApart(page, [seen, fresh])) === 0
}

test.each(['phone', 'desk'] as const)('%s: every letter is painted where it stands', async size => {
  const { page } = await openApp(SIZES[size])
  await openWiring(page, JOB)
  const found: Record<string, boolean> = { opened: await isAsFresh(page) }
  for (const round of ['reloaded', 'reloaded again']) {
    await page.reload()
    found[round] = await isAsFresh(page)
  }
  await page.getByRole('link', { name: 'Findings' }).click()
  await page.getByRole('link', { name: 'Wiring' }).click()
  found['by its tab'] = await isAsFresh(page)
  for (const name of ['Larger', 'Fit', 'Smaller', 'Fit']) {
    await page.getByRole('button', { name, exact: true }).click()
    found[`${name}, ${Object.keys(found).length}`] = await isAsFresh(page)
  }
  await page.reload()
  await settled(page)
  await page.locator('.board-window').focus()
  for (const key of ['n', 'n', '+', 'n', '0']) {
    await page.keyboard.press(key)
    found[`key ${key}, ${Object.keys(found).length}`] = await isAsFresh(page)
  }
  expect(Object.keys(found).filter(each => !found[each])).toEqual([])
})
