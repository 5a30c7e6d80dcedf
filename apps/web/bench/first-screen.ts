import type { Page } from 'playwright-core'
import { open } from '../test/support/open.ts'
import type { Bench, Line } from './line.ts'
import { atMost } from './line.ts'

/** Scripts that come this long [ms] after the first screen still count to it. */
const AFTERWARDS = 1000

/** Where the app shows its own first screen, not the shell that stands before it. */
export const FIRST_SCREEN = '#app main h1'

/** Every script that the page and its workers ask the host for. */
function scriptsOf(page: Page): ReadonlySet<string> {
  const found = new Set<string>()
  const note = (url: string) => /\.m?js(?:$|\?)/u.test(url) && found.add(url)
  page.on('request', request => request.resourceType() === 'script' && found.add(request.url()))
  page.on('worker', worker => note(worker.url()))
  return found
}

/** How many bytes come over the line for a file, packed as asked. */
async function sizeOf(url: string, packing: string): Promise<number> {
  const response = await fetch(url, { headers: { 'accept-encoding': packing } })
  if (!response.ok) throw new Error(`${url}: ${response.status}`)
  await response.arrayBuffer()
  return Number(response.headers.get('content-length'))
}

async function packedKilobytes({ bundle }: Bench, packing: string): Promise<number> {
  const app = await open({ bundle, device: 'phone', route: 'version.json' })
  try {
    const scripts = scriptsOf(app.page)
    await app.page.goto(app.url)
    await app.page.locator(FIRST_SCREEN).waitFor()
    await app.page.waitForTimeout(AFTERWARDS)
    if (scripts.size === 0) throw new Error('no script was loaded')
    const sizes = await Promise.all([...scripts].map(url => sizeOf(url, packing)))
    return sizes.reduce((sum, each) => sum + each, 0) / 1000
  } finally {
    await app.close()
  }
}

const lineOf = (packing: string, named: string): Line => ({
  name: `scripts that the first screen loads, ${named}`,
  unit: 'kB',
  goal: atMost(160),
  measure: bench => packedKilobytes(bench, packing),
})

export const firstScreenLines: readonly Line[] = [lineOf('br', 'brotli'), lineOf('gzip', 'gzip')]
