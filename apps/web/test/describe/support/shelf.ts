import type { Page } from 'playwright-core'

/** A row of the shelf as the disk has it. */
export interface Row {
  readonly kind: string
  readonly id: string
  readonly text: string
  readonly inStock?: number
  readonly isGiven?: boolean
}

/** Every row of the shelf of a space, read past the app. */
export const rowsOf = (page: Page, space = 'own'): Promise<readonly Row[]> =>
  page.evaluate(
    name =>
      new Promise<Row[]>((resolve, reject) => {
        const opening = indexedDB.open(name)
        opening.onerror = () => reject(opening.error)
        opening.onsuccess = () => {
          const database = opening.result
          const all = database.transaction('shelf').objectStore('shelf').getAll()
          all.onerror = () => reject(all.error)
          all.onsuccess = () => {
            database.close()
            resolve(all.result as Row[])
          }
        }
      }),
    `tubwright-${space}`,
  )

export async function rowOf(page: Page, id: string, space = 'own'): Promise<Row | undefined> {
  return (await rowsOf(page, space)).find(each => each.id === id)
}

/** A new box of the usual kind, in its text. */
export async function newBox(page: Page, id: string): Promise<void> {
  await page.getByRole('button', { name: 'Describe a new box' }).click()
  await page.getByLabel('A short name for it').fill(id)
  await page.getByRole('button', { name: 'Write it' }).click()
  await page.locator('.cm-content').waitFor()
}

const content = (page: Page) => page.locator('.cm-content')

/** Puts another text in the place of the whole, as a paste does. */
export async function setText(page: Page, text: string): Promise<void> {
  await content(page).focus()
  await page.keyboard.press('Control+a')
  await content(page).evaluate((element, pasted) => {
    const clipboardData = new DataTransfer()
    clipboardData.setData('text/plain', pasted)
    element.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }),
    )
  }, text)
}

export const saved = (page: Page): Promise<void> =>
  page.locator('.saved[data-state="saved"]').waitFor()
