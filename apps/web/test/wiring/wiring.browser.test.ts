import type { Locator, Page } from 'playwright-core'
import { beforeAll, describe, expect, test } from 'vitest'
import type { App } from '../support/app.ts'
import { axe, killAndReopen, openApp, openShared, screenshot } from '../support/app.ts'
import { openWiring, takenJob } from './taken-job.ts'

const EVERYDAY = ['everyday-240-circulation', 'heron-4'] as const
const LARGE = ['large-60', 'bittern-8'] as const

const said = async (of: Locator): Promise<string> => (await of.textContent()) ?? ''
const details = (page: Page) => page.locator('#wiring-details')
const area = (page: Page) => page.locator('.board-window')

/** Where the middle of the last run of a wire is on the screen. */
async function middleOf(page: Page, number: number): Promise<{ x: number; y: number }> {
  return page.evaluate(wanted => {
    const path = document.querySelector<SVGPathElement>(`.paper g.wire[data-wire="${wanted}"] path`)
    const matrix = path?.getScreenCTM()
    if (!path || !matrix) throw new Error(`no wire ${wanted}`)
    const points = [...(path.getAttribute('d') ?? '').matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/gu)]
    const [a, b] = points.slice(-2).map(([, x, y]) => new DOMPoint(Number(x), Number(y)))
    if (!a || !b) throw new Error('no run')
    const at = new DOMPoint((a.x + b.x) / 2, (a.y + b.y) / 2).matrixTransform(matrix)
    return { x: at.x, y: at.y }
  }, number)
}

const tap = async (page: Page, number: number, off = 0): Promise<void> => {
  await area(page).scrollIntoViewIfNeeded()
  const { x, y } = await middleOf(page, number)
  await page.mouse.click(x + off, y)
}

const traced = (page: Page): Promise<readonly number[]> =>
  page
    .locator('.paper g.wire.traced')
    .evaluateAll(all =>
      all.map(each => Number((each as SVGElement).dataset['wire'])).sort((a, b) => a - b),
    )

const scaleOf = async (page: Page): Promise<number> =>
  Number(await area(page).getAttribute('data-scale'))

const mode = (page: Page, name: string) => page.locator('.modes').getByLabel(name, { exact: true })

describe('a desk', () => {
  let app: App
  let page: Page
  beforeAll(async () => {
    app = await openShared({ device: 'desk' })
    page = app.page
    await openWiring(page, takenJob(...EVERYDAY))
  })

  test('the landing that was taken holds, and nothing of it is landed yet', async () => {
    await page.locator('.wiring > [data-holds=true]').waitFor()
    await page.getByText('0 of 33 ends landed').waitFor()
  })

  test('the table says what the drawing says: each wire of each board by its number', async () => {
    const rows = await page
      .locator('table.wires tbody tr')
      .evaluateAll(all => all.map(each => each.id))
    expect(new Set(rows).size).toBe(rows.length)
    const drawn = new Set<string>()
    for (const tab of await page.locator('.panels a').all()) {
      await tab.click()
      await page.locator(`.panels a[aria-current=page]`).waitFor()
      const here = await page
        .locator('.paper g.wire')
        .evaluateAll(all => all.map(each => `wire-${(each as SVGElement).dataset['wire']}`))
      for (const each of here) drawn.add(each)
    }
    expect([...drawn].sort()).toEqual([...rows].sort())
    await page.getByRole('link', { name: 'Heron 4' }).click()
  })

  test('a tap traces the whole net, and says number, function, letters, place and torque', async () => {
    await tap(page, 1)
    expect(await traced(page)).toEqual([1])
    expect(await page.locator('.paper svg.tracing g.wire.chosen').count()).toBe(1)
    const text = await said(details(page))
    expect(text).toMatch(/1\s*leg 1, BK/u)
    expect(text).toContain('BK black')
    expect(text).toContain('6 AWG')
    expect(text).toContain('On A1, leg 1 in · screw, 20 in-lb')
    expect(text).toMatch(/LIVE\s*120 V/u)
    // The return of a 240 V pump sits on leg 2: copper joins it with the supply, on both boards.
    const leg2 = page.locator('#wire-2 button').first()
    await leg2.click()
    expect((await traced(page)).length).toBeGreaterThan(2)
    expect(await said(details(page))).toMatch(/Terminals: .*A3/u)
  })

  test('what is chosen in a table is in sight, with the drawing beside it', async () => {
    const bar = (await page.locator('.bar').boundingBox())?.height ?? 0
    for (const button of ['#wire-23 button', '#wire-1 button', 'table.jumpers button']) {
      await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight))
      await page.locator(button).first().click()
      for (const seen of [details(page).locator('h2'), area(page)])
        await expect.poll(async () => (await seen.boundingBox())?.y).toBeGreaterThanOrEqual(bar)
    }
    await page.locator('#wire-2 button').first().click()
  })

  test('what was tapped beside a thin line is the line, at any zoom', async () => {
    await tap(page, 8, 6)
    const chosen = await said(details(page).locator('.number'))
    expect(chosen).toBe('8')
  })

  test('a mode shows amps on the wires, soon, and what is energised by a sign', async () => {
    await page.getByRole('button', { name: 'Close' }).click()
    const before = await page.locator('.paper .over').innerHTML()
    expect(before).not.toContain('data-amps-of="5"')
    await mode(page, 'pump A high').check()
    await page.locator('.paper [data-amps-of]', { hasText: /\d A/u }).first().waitFor()
    expect(Number(await area(page).getAttribute('data-mode-ms'))).toBeLessThan(50)
    expect(await page.locator('.paper .over path.bolt').count()).toBeGreaterThan(0)
    const table = await said(page.locator('#wire-1 td').last())
    expect(table).toMatch(/LIVE\s+\d+ V\s*·\s*\d+(\.\d+)? A/u)
    await mode(page, 'Everything off').check()
    await page.locator('#wire-1 .stays').waitFor()
  })

  test('what stays live when off is flagged in words, on the drawing by a shape of its own', async () => {
    // With 240 V pumps on one switched leg, the other leg stays at the load.
    const flagged = await page
      .locator('table.wires tr', { hasText: 'live when off' })
      .evaluateAll(all => all.map(each => each.id))
    expect(flagged.length).toBeGreaterThan(3)
    expect(await page.locator('.paper .over path.triangle').count()).toBe(1)
  })

  test('an end moved to a wrong terminal shows the danger at once, and is taken back in one press', async () => {
    await page.locator('#wire-1 button').first().click()
    const end = details(page).locator('[data-end="run.leg1@box"]')
    await end.getByRole('button', { name: /^Move/u }).click()
    await page.locator('dialog [data-place="box.A4"]').click()
    const verdict = details(page).locator('[data-holds=false]')
    await verdict.waitFor()
    expect(await said(verdict)).toMatch(/NO POWER/u)
    expect(await said(verdict.locator('.consequences li').first())).toMatch(/DANGER/u)
    expect(await said(verdict)).toMatch(/trips at once/u)
    expect(await end.getAttribute('data-at')).toBe('box.A4')
    await page.locator('.paper g.wire[data-end="run.leg1@box"]').waitFor()
    await details(page)
      .getByRole('button', { name: /Undo: moved/u })
      .click()
    await page.locator('.wiring > [data-holds=true]').waitFor()
    expect(await end.getAttribute('data-at')).toBe('box.A1')
  })

  test('a moved end goes back to the plan, and nothing is said of it any more', async () => {
    const end = details(page).locator('[data-end="run.leg1@box"]')
    await end.getByRole('button', { name: /^Move/u }).click()
    await page.getByRole('button', { name: /LOOSE/u }).click()
    await page.getByText('1 not as planned').first().waitFor()
    expect(await said(page.locator('#wire-1'))).toMatch(/LOOSE/u)
    await page
      .locator('.off-board')
      .getByRole('button', { name: /Wire 1/u })
      .waitFor()
    await end.getByRole('button', { name: 'As planned again: A1' }).click()
    await page.locator('.wiring > [data-holds=true]').waitFor()
    expect(await page.getByText('not as planned').count()).toBe(0)
  })

  test('wires are landed one at a time, and the next one is found', async () => {
    await page.getByRole('button', { name: /Next to land/u }).click()
    const tick = details(page).locator('.tick').first()
    await tick.click()
    await page.getByText('1 of 33 ends landed').waitFor()
    await page
      .getByRole('button', { name: /Undo: ticked/u })
      .first()
      .click()
    await page.getByText('0 of 33 ends landed').waitFor()
    const first = page.locator('#wire-5 .ticks input').first()
    // The box shows what the record says, which is there a moment later.
    await first.click({ force: true })
    await page.getByText('1 of 33 ends landed').waitFor()
    expect(await first.isChecked()).toBe(true)
    const onlyOpen = page.getByLabel('Only what is not landed yet')
    await onlyOpen.check()
    expect(await page.locator('#wire-5').count()).toBe(0)
    await onlyOpen.uncheck()
    await page.getByText('1 of 33 ends landed').waitFor()
  })

  test('a jumper is moved and judged like an end', async () => {
    await page.locator('table.jumpers button').first().click()
    const before = await details(page).locator('input:checked').getAttribute('value')
    await details(page).locator('input:not(:checked)').first().check({ force: true })
    await page
      .getByText(/not as planned/u)
      .first()
      .waitFor()
    expect(await details(page).locator('input:checked').getAttribute('value')).not.toBe(before)
    await details(page)
      .getByRole('button', { name: /As planned again/u })
      .click()
    await page.locator('.wiring > [data-holds=true]').waitFor()
  })

  test('the wheel scales about the pointer', async () => {
    await page.getByRole('button', { name: 'Fit' }).click()
    await page.locator('.paper:not(.moving)').waitFor()
    const at = await middleOf(page, 1)
    const before = await scaleOf(page)
    await page.mouse.move(at.x, at.y)
    await page.mouse.wheel(0, -400)
    await page.locator('.paper:not(.moving)').waitFor()
    expect(await scaleOf(page)).toBeGreaterThan(before * 1.5)
    const after = await middleOf(page, 1)
    expect(Math.hypot(after.x - at.x, after.y - at.y)).toBeLessThan(1.5)
  })

  test('no barrier that a machine can tell, whatever is chosen', async () => {
    expect(await axe(page)).toEqual([])
  })
})

describe('the keyboard alone', () => {
  test('moves, scales, goes from wire to wire, moves an end and ticks it', async () => {
    const { page } = await openApp({ device: 'desk' })
    await openWiring(page, takenJob(...EVERYDAY))
    await area(page).focus()
    const fitted = await scaleOf(page)
    await page.keyboard.press('+')
    await page.waitForFunction(
      ([sel, was]) =>
        Number(document.querySelector<HTMLElement>(sel as string)?.dataset['scale']) > Number(was),
      ['.board-window', fitted] as const,
    )
    await page.keyboard.press('ArrowLeft')
    await page.keyboard.press('0')
    await page.keyboard.press('n')
    expect(await said(details(page).locator('.number'))).toBe('1')
    await page.keyboard.press('n')
    await page.keyboard.press('Tab')
    expect(await said(details(page).locator('.number'))).toBe('3')
    await page.keyboard.press('p')
    expect(await said(details(page).locator('.number'))).toBe('2')
    await page.keyboard.press('Enter')
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('H2')
    const move = details(page).getByRole('button', { name: /^Move/u }).first()
    for (let step = 0; step < 12; step++) {
      await page.keyboard.press('Tab')
      if (await move.evaluate(each => each === document.activeElement)) break
    }
    await page.keyboard.press('Enter')
    await page.locator('dialog[open]').waitFor()
    await page.keyboard.press('Tab')
    await page.keyboard.type('A4')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await details(page).locator('[data-holds=false]').waitFor()
    await area(page).focus()
    await page.keyboard.press('Escape')
    expect(await details(page).count()).toBe(0)
    // Nothing is chosen: Tab leaves the drawing at once.
    await page.keyboard.press('Tab')
    expect(await area(page).evaluate(each => each === document.activeElement)).toBe(false)
  })
})

describe('a phone', () => {
  test('one thumb: buttons stay in sight, targets are large, nothing runs over the side', async () => {
    const { page } = await openApp({ device: 'phone', language: 'es' })
    await openWiring(page, takenJob(...LARGE))
    await tap(page, 10)
    await details(page).waitFor()
    for (const name of ['Más grande', 'Más pequeño', 'Ajustar', 'Abajo', 'A la derecha']) {
      const box = await page.getByRole('button', { name, exact: true }).boundingBox()
      expect(box?.width).toBeGreaterThanOrEqual(48)
      expect(box?.height).toBeGreaterThanOrEqual(48)
    }
    const [tools, sheet] = [
      await page.locator('.board-tools').boundingBox(),
      await details(page).boundingBox(),
    ]
    expect((tools?.y ?? 0) + (tools?.height ?? 0)).toBeLessThanOrEqual((sheet?.y ?? 0) + 1)
    const small = await page.locator('.wiring').evaluate(root =>
      [...root.querySelectorAll('button, .chip span, .button, summary, select')]
        .map(each => ({ text: each.textContent, box: each.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.height < 47.5 || box.width < 47.5))
        .map(each => each.text),
    )
    expect(small).toEqual([])
    const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(over).toBeLessThanOrEqual(0)
    await screenshot(page, 'wiring-phone-es')
    expect(await axe(page)).toEqual([])
  })

  test('two fingers scale about what is between them', async () => {
    const { page, context } = await openApp({ device: 'phone' })
    await openWiring(page, takenJob(...LARGE))
    await page.getByRole('button', { name: 'Fit' }).scrollIntoViewIfNeeded()
    await page.locator('.paper:not(.moving)').waitFor()
    const at = await middleOf(page, 27)
    const touch = await context.newCDPSession(page)
    const fingers = (apart: number, up: number) =>
      [-1, 1].map((side, id) => ({ x: at.x + side * apart, y: at.y - up, id }))
    const send = (type: string, touchPoints: readonly object[]) =>
      touch.send('Input.dispatchTouchEvent', { type, touchPoints } as never)
    const before = await scaleOf(page)
    await send('touchStart', fingers(20, 0))
    for (let step = 1; step <= 10; step++) await send('touchMove', fingers(20 + step * 5, step * 2))
    await send('touchEnd', [])
    await page.locator('.paper:not(.moving)').waitFor()
    expect(await scaleOf(page)).toBeCloseTo(before * 3.5, 1)
    const after = await middleOf(page, 27)
    expect(Math.abs(after.x - at.x)).toBeLessThan(3)
    expect(Math.abs(after.y - (at.y - 20))).toBeLessThan(3)
  })

  test('what was landed and moved is there after a flat battery', async () => {
    const app = await openApp({ device: 'phone' })
    await openWiring(app.page, takenJob(...EVERYDAY))
    await tap(app.page, 1)
    await details(app.page).locator('.tick').first().click()
    await app.page.locator('.saved[data-state=saved]').waitFor()
    // The browser forgets within seconds of its end which shop was open; the record it keeps.
    const again = await killAndReopen(app)
    await again.page.getByRole('button', { name: 'Demo shop' }).click()
    await again.page.getByRole('link', { name: /everyday/iu }).click()
    await again.page.getByText('1 of 33 ends landed').waitFor()
  })
})

describe.each(['light', 'dark'] as const)('%s', scheme => {
  test('no barrier with a wire chosen, a mode on and an end moved', async () => {
    const { page } = await openApp({ device: 'desk', scheme })
    await openWiring(page, takenJob(...LARGE))
    await mode(page, 'heat').check()
    await tap(page, 27)
    await details(page).getByRole('button', { name: /^Move/u }).click()
    expect(await axe(page)).toEqual([])
    await page.locator('dialog [data-place="box.A4"]').click()
    await details(page).locator('[data-holds=false]').waitFor()
    await page.locator('.drawing').waitFor({ state: 'detached' })
    expect(await axe(page)).toEqual([])
    await screenshot(page, `wiring-desk-${scheme}`)
  })
})

test('320 px with twice the text: nothing is cut off', async () => {
  const { page } = await openApp({ viewport: { width: 320, height: 700 }, textScale: 2 })
  await openWiring(page, takenJob(...EVERYDAY))
  await page.locator('#wire-1 button').first().click()
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)
  expect(over).toBeLessThanOrEqual(0)
  await screenshot(page, 'wiring-320-200')
})

test('without a plan the screen says so, and where one is taken', async () => {
  const { page } = await openApp()
  await page.getByRole('button', { name: 'New job' }).click()
  await page.waitForURL(/survey/u)
  await page.getByRole('link', { name: 'Wiring' }).click()
  await page.getByText('No plan is taken yet').waitFor()
  expect(await page.getByRole('link', { name: /take its plan/u }).getAttribute('href')).toMatch(
    /match$/u,
  )
  expect(await axe(page)).toEqual([])
})

test('two copies that disagree: no verdict is shown as holding, and why', async () => {
  const { page } = await openApp()
  await openWiring(page, takenJob(...EVERYDAY))
  const other = takenJob(...EVERYDAY, [], true)
  await page.goto(`${page.url().replace(/#.*$/u, '')}#/`)
  await page
    .locator('input[type=file]')
    .setInputFiles({ name: 'job.json', mimeType: 'application/json', buffer: Buffer.from(other) })
  await page.getByText(/Merged: /u).waitFor()
  await page
    .getByRole('link', { name: /everyday/iu })
    .first()
    .click()
  await page.getByRole('link', { name: 'Wiring' }).click()
  await page.getByText('No verdict is shown while this stands').waitFor()
  expect(await page.locator('[data-holds=true]').count()).toBe(0)
})
