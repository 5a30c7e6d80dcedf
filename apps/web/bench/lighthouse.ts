import { createServer } from 'node:net'
import lighthouse from 'lighthouse'
import { chromium } from 'playwright-core'
import { serve } from '../../server/src/index.ts'
import { chromiumHere, FLAGS } from '../test/support/chromium.ts'
import { outside } from '../test/support/outside.ts'
import type { Bench, Line } from './line.ts'
import { atLeast, median, rounds } from './line.ts'

const CATEGORIES = ['performance', 'accessibility', 'best-practices'] as const
type Category = (typeof CATEGORIES)[number]
type Scores = Readonly<Record<Category, number>>

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await new Promise(done => server.once('listening', done))
  const { port } = server.address() as { port: number }
  await new Promise(done => server.close(done))
  return port
}

/** One run as the tool does it by itself: a phone of the middle, a slow network, all emulated. */
async function scoresOf(url: string, port: number): Promise<Scores> {
  const result = await lighthouse(url, {
    port,
    output: 'json',
    logLevel: 'error',
    onlyCategories: [...CATEGORIES],
  })
  const { categories, runtimeError } = result?.lhr ?? {}
  if (!categories || runtimeError) throw new Error(runtimeError?.message ?? 'no result')
  const entries = CATEGORIES.map(each => [each, (categories[each]?.score ?? 0) * 100])
  return Object.fromEntries(entries) as Scores
}

async function fiveRuns({ bundle }: Bench): Promise<readonly Scores[]> {
  const { executable, env } = await chromiumHere()
  const beyond = await outside()
  const server = await serve({ folder: bundle, port: 0 })
  const port = await freePort()
  const browser = await chromium.launch({
    executablePath: executable,
    args: [...FLAGS, `--proxy-server=${beyond.proxy}`, `--remote-debugging-port=${port}`],
    env: { ...(process.env as Record<string, string>), ...env },
  })
  try {
    return await rounds(5, () => scoresOf(server.url, port))
  } finally {
    await browser.close()
    await server.stop()
    await beyond.stop()
  }
}

/** The three lines read the same five runs. */
let runs: Promise<readonly Scores[]> | undefined

async function scores(bench: Bench, category: Category): Promise<readonly number[]> {
  runs ??= fiveRuns(bench)
  return (await runs).map(each => each[category])
}

export const lighthouseLines: readonly Line[] = [
  {
    name: 'Lighthouse on a phone: performance, median of 5',
    unit: '',
    goal: atLeast(90),
    measure: async bench => median(await scores(bench, 'performance')),
  },
  {
    name: 'Lighthouse on a phone: accessibility, worst of 5',
    unit: '',
    goal: atLeast(100),
    measure: async bench => Math.min(...(await scores(bench, 'accessibility'))),
  },
  {
    name: 'Lighthouse on a phone: best practices, worst of 5',
    unit: '',
    goal: atLeast(100),
    measure: async bench => Math.min(...(await scores(bench, 'best-practices'))),
  },
]
