import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { killAndReopen, openApp, screenshot, withBrowser } from '../support/app.ts'
import { barriers } from '../support/barriers.ts'
import { newBox, rowOf, rowsOf, saved, setText } from './support/shelf.ts'

const MISNAMED = /node: PA-HI, /u

describe('a box from the skeleton', () => {
  test('is clean; broken, it says where, with the number that the board has', async () => {
    const { page } = await openApp({ device: 'desk', route: '#/shelf' })
    await newBox(page, 'heath-1')
    await page.getByText('Nothing looks wrong.').waitFor()
    expect(await page.locator('.board-drawing svg').count()).toBe(1)
    const whole = (await rowOf(page, 'heath-1'))?.text ?? ''
    const line = whole.slice(0, whole.search(MISNAMED)).split('\n').length

    await setText(page, whole.replace(MISNAMED, 'node: PA-HX, '))
    const problem = page.locator('.problems li', { hasText: 'on node PA-HX' })
    await problem.waitFor()
    expect(await problem.textContent()).toContain(`line ${line}, `)
    const sign = await problem.locator('.sign').textContent()
    expect(sign).toMatch(/^!\d+$/u)
    expect(await page.locator('.board-drawing svg', { hasText: sign ?? '?' }).count()).toBe(1)
    await problem.getByRole('button').click()
    expect(await page.locator('.cm-numbers', { hasText: sign ?? '?' }).count()).toBe(1)
    expect(await page.locator('.cm-activeLine').textContent()).toContain('PA-HX')
    await screenshot(page, 'describe-problem-desk')

    await setText(page, whole.replace('largestBreaker: 50 A', 'largestBreaker: 50 m'))
    await page.getByText('MEND FIRST').waitFor()
    await page.getByText('This is the board of the last text that could').waitFor()
    expect(await page.locator('.board-drawing svg').count()).toBe(1)
    await page.keyboard.press('Control+z')
    await problem.waitFor()
    await saved(page)
    expect((await rowOf(page, 'heath-1'))?.text).toContain('PA-HX')
  })

  test('keeps every character over a reload, and what was saved over a kill', async () => {
    const app = await openApp({ route: '#/shelf' })
    await newBox(app.page, 'heath-1')
    const { text = '' } = (await rowOf(app.page, 'heath-1')) ?? {}
    const written = `${text}# 12 µA, “quoted”, 中文, \t tab\n\n  # no end`
    await setText(app.page, written)
    await saved(app.page)
    expect((await rowOf(app.page, 'heath-1'))?.text).toBe(written)
    await app.page.reload()
    await app.page.locator('.cm-content').waitFor()
    expect((await rowOf(app.page, 'heath-1'))?.text).toBe(written)

    await app.page.locator('.cm-content').focus()
    await app.page.keyboard.press('Control+End')
    await app.page.keyboard.type(' typed just before', { delay: 5 })
    await saved(app.page)
    const again = await killAndReopen(app)
    await again.page.goto(`${again.url}#/describe/control-box/heath-1`)
    await again.page.locator('.cm-content').waitFor()
    expect((await rowOf(again.page, 'heath-1'))?.text).toBe(`${written} typed just before`)
  })

  test('moves with the id in its text, the cursor stays, and a taken id is refused', async () => {
    const { page } = await openApp({ route: '#/shelf' })
    await newBox(page, 'heath-1')
    await page.goto(`${page.url().split('#')[0]}#/shelf`)
    await newBox(page, 'heath-2')
    const { text = '' } = (await rowOf(page, 'heath-2')) ?? {}
    await setText(page, text.replace(/^id: heath-2/mu, 'id: moor-2'))
    await page.waitForURL(/#\/describe\/control-box\/moor-2$/u)
    expect((await rowsOf(page)).map(each => each.id).sort()).toEqual(['heath-1', 'moor-2'])
    expect(await page.locator('.cm-focused').count()).toBe(1)
    await page.reload()
    await page.locator('.cm-content').waitFor()
    await setText(page, text.replace(/^id: heath-2/mu, 'id: heath-1').replace('My box', 'Moor'))
    await page.getByText('is taken by another description').waitFor()
    await saved(page)
    expect((await rowOf(page, 'moor-2'))?.text).toContain('id: heath-1')
    expect((await rowOf(page, 'heath-1'))?.text).toContain('id: heath-1')
    await setText(page, text)
    await page.waitForURL(/heath-2$/u)
    expect((await rowsOf(page)).map(each => each.id).sort()).toEqual(['heath-1', 'heath-2'])
  })
})

/** The editor takes a key for a choice only once its list has stood for a moment. */
async function accept(page: Page, text: string): Promise<string> {
  const option = page.locator('.cm-tooltip-autocomplete li[aria-selected]')
  await option.filter({ hasText: text }).waitFor()
  await page.waitForTimeout(120)
  const told = await option.textContent()
  await page.keyboard.press('Enter')
  return told ?? ''
}

describe('the editor', () => {
  test('suggests what fits, says what it is for, and is left by Escape and Tab', async () => {
    const { page } = await openApp({ route: '#/shelf' })
    await newBox(page, 'heath-1')
    await page.locator('.cm-content').focus()
    await page.keyboard.press('Control+End')
    await page.keyboard.type('resets')
    expect(await accept(page, 'resetsTo')).toContain('what a power cut puts it back to')
    await page.keyboard.type('{ prof')
    await accept(page, 'profile')
    await page.keyboard.press('Control+Space')
    await accept(page, 'circulation')
    await saved(page)
    expect((await rowOf(page, 'heath-1'))?.text).toMatch(/resetsTo: \{ ?profile: circulation/u)
    await page.getByText('profile: the profile it falls back to').waitFor()

    await page.keyboard.press('Tab')
    expect(await page.locator('.cm-focused').count()).toBe(1)
    await page.keyboard.press('Escape')
    await page.keyboard.press('Tab')
    await expect.poll(() => page.locator('.cm-focused').count()).toBe(0)
  })

  test('is read only where the description is given, and its copy is one’s own', async () => {
    const { page } = await openApp({ route: '#/describe/supply-device/isolator-2' })
    await page.getByText('can only be read').waitFor()
    await page.locator('.cm-content').focus()
    await page.keyboard.type('nothing')
    expect(await rowsOf(page)).toEqual([])
    await page.getByRole('button', { name: 'Make my own copy' }).click()
    await page.waitForURL(/supply-device\/isolator-2-2$/u)
    await page.locator('.cm-content').waitFor()
    expect((await rowOf(page, 'isolator-2-2'))?.text).toMatch(/^id: isolator-2-2$/mu)
    await page
      .getByText(/Nothing looks wrong|to mend/u)
      .first()
      .waitFor()
  })

  test('is read only in a second tab, which follows what the first one writes', async () => {
    const { page, context, url } = await openApp({ route: '#/shelf' })
    await newBox(page, 'heath-1')
    const second = await context.newPage()
    await second.goto(`${url}#/describe/control-box/heath-1`)
    await second.locator('.cm-content[aria-readonly="true"]').waitFor()
    await page.locator('.cm-content').focus()
    await page.keyboard.press('Control+Home')
    await page.keyboard.type('# seen by both ')
    await second.locator('.cm-line', { hasText: '# seen by both' }).first().waitFor()
    await second.getByRole('button', { name: 'Write here instead' }).click()
    await second.locator('.cm-content[aria-readonly="false"]').waitFor()
    await second.locator('.cm-content').focus()
    await second.keyboard.press('Control+Home')
    await second.keyboard.type('# and then ')
    await saved(second)
    expect((await rowOf(second, 'heath-1'))?.text).toMatch(/^# and then # seen by both /u)
  })

  test('shows three tabs on a phone, and a tap on a problem goes to it', async () => {
    const { page } = await openApp({ device: 'phone', route: '#/shelf' })
    await newBox(page, 'heath-1')
    const { text = '' } = (await rowOf(page, 'heath-1')) ?? {}
    await setText(page, text.replace(MISNAMED, 'node: PA-HX, '))
    await page.getByRole('tab', { name: /Problems \([1-9]/u }).click()
    await page.locator('.problems button', { hasText: 'PA-HX' }).click()
    expect(await page.locator('.cm-activeLine').textContent()).toContain('PA-HX')
    await screenshot(page, 'describe-problem-phone')
    await page.getByRole('tab', { name: 'Text' }).focus()
    await page.keyboard.press('ArrowLeft')
    expect(await page.getByRole('tab', { name: 'Board' }).getAttribute('aria-selected')).toBe(
      'true',
    )
    await screenshot(page, 'describe-board-phone')
  })
})

const LOOKS = [
  { device: 'phone', scheme: 'light', language: 'en' },
  { device: 'phone', scheme: 'dark', language: 'es' },
  { device: 'desk', scheme: 'light', language: 'es' },
  { device: 'desk', scheme: 'dark', language: 'en' },
] as const

test.each(LOOKS)('no barrier that a machine can tell: %o', async look => {
  await withBrowser({ ...look, route: '#/shelf' }, async ({ page }) => {
    const found: string[] = []
    await page.locator('.shelf-entry').first().waitFor()
    found.push(...(await barriers(page)))
    await page.locator('button.main').click()
    await page.locator('.new-box').waitFor()
    found.push(...(await barriers(page)))
    await page.locator('.new-box input[type=text]').fill('heath-1')
    await page.locator('.new-box button.main').click()
    await page.locator('.cm-content').waitFor()
    const { text = '' } = (await rowOf(page, 'heath-1')) ?? {}
    await setText(page, text.replace(MISNAMED, 'node: PA-HX, '))
    await page.locator('.problems li').first().waitFor({ state: 'attached' })
    found.push(...(await barriers(page)))
    if (look.device === 'phone')
      for (const tab of [1, 2]) {
        await page.getByRole('tab').nth(tab).click()
        found.push(...(await barriers(page)))
      }
    await screenshot(page, `describe-${look.device}-${look.scheme}`, look.device === 'phone')
    expect(found).toEqual([])
  })
})

test('fits 320 pixels with text at twice its size', async () => {
  const { page } = await openApp({
    viewport: { width: 320, height: 640 },
    textScale: 2,
    route: '#/shelf',
  })
  const fits = () =>
    page.evaluate(
      () => document.documentElement.scrollWidth <= document.documentElement.clientWidth,
    )
  await page.locator('.shelf-entry').first().waitFor()
  expect(await fits()).toBe(true)
  await newBox(page, 'heath-1')
  expect(await fits()).toBe(true)
  await screenshot(page, 'describe-320')
  await page.getByRole('tab', { name: 'Board' }).click()
  expect(await fits()).toBe(true)
})
