import type { Page } from 'playwright-core'

/**
 * One thumb on the page: counts every tap, those on the keys of the phone among them. Taps go to the
 * middle of what is seen, so that something too small or covered is no target.
 */
export interface Thumb {
  readonly taps: () => number
  readonly tap: (
    role: 'button' | 'link' | 'radio' | 'checkbox',
    name: string | RegExp,
    nth?: number,
  ) => Promise<void>
  /** A tap on the field, one on each key, and one that closes the keys. */
  readonly type: (label: string | RegExp, text: string) => Promise<void>
}

export function thumbOn(page: Page): Thumb {
  let count = 0
  return {
    taps: () => count,
    tap: async (role, name, nth = 0) => {
      const target = page.getByRole(role, { name, exact: typeof name === 'string' }).nth(nth)
      await target.scrollIntoViewIfNeeded()
      await target.click()
      count++
    },
    type: async (label, text) => {
      const field = page.getByLabel(label).first()
      await field.click()
      await page.keyboard.type(text)
      await page.keyboard.press('Enter')
      await field.blur()
      count += text.length + 2
    },
  }
}
