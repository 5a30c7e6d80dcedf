import type { Page } from 'playwright-core'
import type { App } from '../test/support/open.ts'
import { open } from '../test/support/open.ts'
import { FIRST_SCREEN } from './first-screen.ts'
import type { Bench, Line } from './line.ts'
import { atMost, median, rounds } from './line.ts'

/** From the start of the navigation until the screen is there and the page at rest to take a tap [s]. */
async function startOnce(app: App, slowdown: number): Promise<number> {
  const page = await app.context.newPage()
  const session = await app.context.newCDPSession(page)
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowdown })
  const begun = process.hrtime.bigint()
  await page.goto(app.url, { waitUntil: 'commit' })
  await page.locator(FIRST_SCREEN).waitFor()
  await restOf(page)
  const seconds = Number(process.hrtime.bigint() - begun) / 1e9
  await page.close()
  return seconds
}

/** A task that waits behind all that the page still has to do, and the frame after it. */
const restOf = (page: Page): Promise<void> =>
  page.evaluate(
    () => new Promise<void>(done => setTimeout(() => requestAnimationFrame(() => done()))),
  )

async function offlineStart({ bundle }: Bench, slowdown: number): Promise<number> {
  const app = await open({ bundle, device: 'phone' })
  try {
    await app.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined))
    await app.goOffline()
    return median(await rounds(5, () => startOnce(app, slowdown)))
  } finally {
    await app.close()
  }
}

const lineOf = (slowdown: number): Line => ({
  name: `start without network and server${slowdown === 1 ? '' : `, processor ${slowdown}× slower`}`,
  unit: 's',
  goal: atMost(1),
  measure: bench => offlineStart(bench, slowdown),
})

export const offlineLines: readonly Line[] = [lineOf(1), lineOf(4)]
