import { AxeBuilder } from '@axe-core/playwright'
import type { Page } from 'playwright-core'
import { axe } from './app.ts'

const TARGET = 48 // [px]
const TARGETS = 'button, a[href], select, input, textarea, summary, li[role=option]'

/** What a finger could miss, inside shadow roots too. */
export const smallIn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    ([least, targets]) => {
      const found: string[] = []
      const walk = (root: ParentNode): void => {
        for (const each of root.querySelectorAll<HTMLElement>('*')) {
          if (each.shadowRoot) walk(each.shadowRoot)
          const { width, height } = each.getBoundingClientRect()
          const isSeen = width > 0 && height > 0 && !each.closest('.skip, .unseen')
          if (!isSeen || !each.matches(targets)) continue
          if (Math.min(width, height) < least - 0.1)
            found.push(`${width.toFixed()} × ${height.toFixed()}: ${each.outerHTML.slice(0, 80)}`)
        }
      }
      walk(document)
      return found
    },
    [TARGET, TARGETS] as const,
  )

/** What a machine can tell of barriers, with contrast of 7:1 and targets of 48 px besides. */
export async function barriers(page: Page): Promise<readonly string[]> {
  const faint = await new AxeBuilder({ page }).withRules(['color-contrast-enhanced']).analyze()
  const targets = faint.violations.flatMap(each => each.nodes.map(node => node.target.join(' ')))
  return [...(await axe(page)), ...targets.map(each => `faint: ${each}`), ...(await smallIn(page))]
}
