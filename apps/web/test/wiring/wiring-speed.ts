import type { BrowserContext, CDPSession, Page } from 'playwright-core'
import { withManyWires } from './many-wires.ts'
import { openWiring, takenJob } from './taken-job.ts'

const LARGEST = ['large-60', 'bittern-8'] as const
const SLOWER = 4
const MOVES = 60

/** Notes the time between frames from here on. */
const watchFrames = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const noted: number[] = []
    Object.assign(window, { noted })
    let last = performance.now()
    const tick = (now: number): void => {
      noted.push(now - last)
      last = now
      requestAnimationFrame(tick)
    }
    requestAnimationFrame(tick)
  })

/** What 95 of 100 frames took at most since it was last asked [ms]. */
async function frames95(page: Page): Promise<number> {
  const all = await page.evaluate(() => {
    const { noted } = window as unknown as { noted: number[] }
    return noted.splice(0, noted.length)
  })
  const sorted = all.sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length * 0.95)] ?? 0
}

/** How many wires have a place in the window. */
const wiresInSight = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const seen = document.querySelector('.board-window')?.getBoundingClientRect()
    const all = [...document.querySelectorAll('.paper g.wire')].map(each =>
      each.getBoundingClientRect(),
    )
    return all.filter(
      each =>
        seen !== undefined &&
        each.left < seen.right &&
        each.right > seen.left &&
        each.top < seen.bottom &&
        each.bottom > seen.top,
    ).length
  })

interface At {
  readonly x: number
  readonly y: number
}

type Fingers = (step: number) => readonly At[]

/** Fingers that go down, move with every frame, and go up; the frames in between. */
async function gesture(page: Page, touch: CDPSession, fingers: Fingers): Promise<number> {
  const send = (type: string, at: readonly At[]) =>
    touch.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: at.map((each, id) => ({ ...each, id })),
    } as never)
  await send('touchStart', fingers(0))
  await frames95(page)
  for (let step = 1; step <= MOVES; step++) {
    await send('touchMove', fingers(step))
    await page.waitForTimeout(10)
  }
  const found = await frames95(page)
  await send('touchEnd', [])
  await page.locator('.paper:not(.moving)').waitFor()
  return found
}

/** What two fingers and one find on a board of five hundred conductors, on a phone four times as slow. */
export interface Gestures {
  readonly wires: number
  readonly inSight: number
  /** What 95 of 100 frames took at most [ms]: with nothing moved, then a gesture each. */
  readonly idle: number
  readonly moved: readonly number[]
}

export async function measureGestures(page: Page, context: BrowserContext): Promise<Gestures> {
  await withManyWires(page, 500)
  await page.reload()
  await openWiring(page, takenJob(...LARGEST))
  const wires = await page.locator('.paper g.wire').count()
  await page.locator('.board-card').scrollIntoViewIfNeeded()
  await page.locator('.paper:not(.moving)').waitFor()
  const box = await page.locator('.board-window').boundingBox()
  if (!box) throw new Error('no window')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  const touch = await context.newCDPSession(page)
  await touch.send('Emulation.setCPUThrottlingRate', { rate: SLOWER })
  await watchFrames(page)
  await page.waitForTimeout(1000)
  const idle = await frames95(page)
  // There and back again, so that there are always wires under the fingers.
  const wave = (step: number): number => Math.sin((step / MOVES) * Math.PI * 2)
  const scaled: Fingers = step =>
    [-1, 1].map(side => ({ x: x + side * (70 + 50 * wave(step - MOVES / 4)), y }))
  const dragged: Fingers = step => [{ x: x + 90 * wave(step), y: y + 40 * wave(2 * step) }]
  await page.getByRole('button', { name: 'Larger' }).click({ clickCount: 5 })
  await page.locator('.paper:not(.moving)').waitFor()
  await frames95(page)
  const found: number[] = []
  for (const fingers of [scaled, dragged, scaled, dragged, scaled, dragged])
    found.push(await gesture(page, touch, fingers))
  return { wires, inSight: await wiresInSight(page), idle, moved: found }
}

/** From a move to its verdict, and from a mode to its figures on the wires, on the largest demo tub [ms]. */
export interface Answers {
  readonly verdicts: readonly number[]
  readonly modes: readonly number[]
}

export async function measureAnswers(page: Page): Promise<Answers> {
  await openWiring(page, takenJob(...LARGEST))
  const [verdicts, modes]: [number[], number[]] = [[], []]
  const { length } = ['C4', 'D4', 'E4']
  for (let round = 0; round < length; round++) {
    for (const name of ['pump A high', 'heat', 'Everything off']) {
      const area = page.locator('.board-window')
      await area.evaluate(each => delete (each as HTMLElement).dataset['modeMs'])
      await page.locator('.modes').getByLabel(name, { exact: true }).check()
      await page.locator('.board-window[data-mode-ms]').waitFor()
      modes.push(Number(await area.getAttribute('data-mode-ms')))
    }
    await page.locator('#wire-10 button').first().click()
    await page.locator('#wiring-details').getByRole('button', { name: /^Move/u }).click()
    await page.locator(`dialog [data-place="box.${['C4', 'D4', 'E4'][round]}"]`).click()
    const judged = page.locator('#wiring-details [data-holds=false][data-verdict-ms]')
    await judged.waitFor()
    verdicts.push(Number(await judged.getAttribute('data-verdict-ms')))
    await page.locator('.drawing').waitFor({ state: 'detached' })
    await page
      .locator('#wiring-details')
      .getByRole('button', { name: /Undo: moved/u })
      .click()
    await page.locator('#wiring-details [data-holds=false]').waitFor({ state: 'detached' })
    await page.locator('.drawing').waitFor({ state: 'detached' })
    await page.getByRole('button', { name: 'Close' }).click()
  }
  return { verdicts, modes }
}
