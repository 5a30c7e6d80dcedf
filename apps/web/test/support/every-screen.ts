import type { Page } from 'playwright-core'
import type { App } from './app.ts'

/** One screen, by its address; `{job}` stands for the job that was begun. */
export interface ScreenAt {
  readonly name: string
  readonly route: string
  /** What is there once the screen has all that it shows. */
  readonly ready: string
}

/** Every screen of the app, as a job with a plan that was taken shows it. */
export const SCREENS: readonly ScreenAt[] = [
  { name: 'jobs', route: '/', ready: 'a.card' },
  { name: 'settings', route: '/settings', ready: '#author' },
  { name: 'shelf', route: '/shelf', ready: 'main h1' },
  { name: 'describe', route: '/describe/control-box/heron-4', ready: 'main.describe h1' },
  { name: 'survey', route: '/job/{job}/survey', ready: 'ol a.card' },
  ...[
    'tub',
    'supply',
    'protection',
    'run',
    'loads',
    'room',
    'yard',
    'service',
    'touch',
    'readings',
    'photos',
    'done',
  ].map(group => ({
    name: `survey-${group}`,
    route: `/job/{job}/survey/${group}`,
    ready: '.foot a',
  })),
  { name: 'survey-load', route: '/job/{job}/survey/load-pump-a', ready: '[data-field]' },
  { name: 'supply', route: '/job/{job}/supply', ready: '[data-supply]' },
  { name: 'match', route: '/job/{job}/match', ready: '[data-verdict]' },
  { name: 'wiring', route: '/job/{job}/wiring', ready: 'main svg.board' },
  { name: 'findings', route: '/job/{job}/findings', ready: '[data-holds]' },
  { name: 'sheet', route: '/job/{job}/sheet', ready: 'iframe.page' },
]

/** Begins a job with an invented tub, in the demo shop. */
export async function beginTub(page: Page, tub: string): Promise<void> {
  await page.locator('#demo-tub').selectOption(tub)
  await page.locator('#demo-tub ~ button').click()
}

/** A job of the demo shop on one of its tubs; its id. */
export async function jobOn({ page }: App, tub: string): Promise<string> {
  await page.locator('section.card button').first().click()
  await beginTub(page, tub)
  await page.locator('ol a.card').first().waitFor()
  return /#\/job\/(\w+)\//u.exec(page.url())?.[1] ?? ''
}

/** The same with the best plan taken; its id. */
export async function jobWithPlan(app: App, tub = 'everyday-240-plain'): Promise<string> {
  const { page } = app
  const id = await jobOn(app, tub)
  await goTo(page, `/job/${id}/match`)
  const take = page.locator(
    '[data-verdict="serves"] button.main, [data-verdict="serves-provided"] button.main',
  )
  await take.first().click({ timeout: 60_000 })
  await page.locator('strong.holds').first().waitFor()
  return id
}

export const goTo = (page: Page, route: string): Promise<void> =>
  page.evaluate(to => {
    location.hash = to
  }, route)

/** Opens a screen and waits until it has what it shows. */
export async function show(page: Page, { route, ready }: ScreenAt, job: string): Promise<void> {
  await goTo(page, route.replace('{job}', job))
  await page.locator(ready).first().waitFor({ timeout: 60_000 })
}
