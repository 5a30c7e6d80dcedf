import { expect, test } from 'vitest'
import { openApp, screenshot } from '../support/app.ts'
import { goTo, jobOn } from '../support/every-screen.ts'
import { newBox, rowOf, rowsOf, setText } from './support/shelf.ts'

test('a box is taken off the shelf and comes back', async () => {
  const { page, url } = await openApp({ route: '#/shelf' })
  await newBox(page, 'heath-1')
  await page.goto(`${url}#/shelf`)
  const { text = '' } = (await rowOf(page, 'heath-1')) ?? {}
  await page.getByRole('button', { name: 'Take off the shelf: My box' }).click()
  await page.getByText('Taken off: My box').waitFor()
  expect(await rowsOf(page)).toEqual([])
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('link', { name: 'My box' }).waitFor()
  expect((await rowOf(page, 'heath-1'))?.text).toBe(text)
})

test('own boxes are counted, and given ones beside their text', async () => {
  const { page, url } = await openApp({ route: '#/jobs' })
  await page.getByRole('button', { name: 'Demo shop' }).click()
  await page.getByText('Leave the demo shop').waitFor()
  await page.goto(`${url}#/shelf`)
  const stock = page.getByLabel('In stock: Bittern 8')
  expect(await stock.inputValue()).toBe('3')
  await stock.fill('12')
  await stock.press('Enter')
  await expect.poll(async () => (await rowsOf(page, 'demo'))[0]?.inStock).toBe(12)
  await page.reload()
  await expect.poll(() => stock.inputValue()).toBe('12')
  const [row] = await rowsOf(page, 'demo')
  expect(row).toMatchObject({ id: 'bittern-8', isGiven: true })
  await page.getByRole('link', { name: 'Bittern 8' }).click()
  await page.getByText('can only be read').waitFor()
  await page.goto(`${url}#/shelf`)
  await page.getByLabel('Search the shelf').fill('tarnwick bittern')
  expect(await page.locator('.shelf-entry').count()).toBe(1)
  await screenshot(page, 'shelf-desk')
})

test('a description from a file lies beside one of its name', async () => {
  const { page, url } = await openApp({ route: '#/shelf' })
  await newBox(page, 'heath-1')
  const { text = '' } = (await rowOf(page, 'heath-1')) ?? {}
  await page.goto(`${url}#/shelf`)
  const open = async (name: string, content: string): Promise<void> => {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Open a description' }).click(),
    ])
    await chooser.setFiles({ name, mimeType: 'text/yaml', buffer: Buffer.from(content) })
  }
  await open('other.yaml', text.replace('My box', 'Another'))
  await page.waitForURL(/heath-1-2$/u)
  expect((await rowOf(page, 'heath-1-2'))?.text).toContain('label: Another')
  expect((await rowOf(page, 'heath-1'))?.text).toBe(text)
  await page.goto(`${url}#/shelf`)
  await open('survey.yaml', 'schema: survey/1\nid: x\n')
  await page.getByRole('alert').getByText('is not put on the shelf').waitFor()
  await open('broken.yaml', 'a: [1\nb: 2')
  await page.getByRole('alert').getByText('YAML').waitFor()
  expect((await rowsOf(page)).length).toBe(2)
})

test('a box that nobody has described serves no tub until it has a name of its own', async () => {
  const app = await openApp({ route: '#/jobs' })
  const { page, url } = app
  const job = await jobOn(app, 'everyday-240-plain')
  await page.goto(`${url}#/shelf`)
  await newBox(page, 'heath-1')
  const text = (await rowOf(page, 'heath-1', 'demo'))?.text ?? ''
  await goTo(page, `/job/${job}/match`)
  await page.locator('[data-made-up]').waitFor({ timeout: 60_000 })
  expect(await page.locator('[data-made-up]').textContent()).toContain('heath-1')
  expect(await page.locator('[data-verdict]').getByText('My box').count()).toBe(0)
  await goTo(page, '/describe/control-box/heath-1')
  await setText(page, text.replace('label: My box', 'label: Heath 1'))
  await goTo(page, `/job/${job}/match`)
  await page.locator('[data-verdict]').getByText('Heath 1').first().waitFor({ timeout: 60_000 })
  expect(await page.locator('[data-made-up]').count()).toBe(0)
}, 120_000)
