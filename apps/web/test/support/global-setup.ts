import { cpSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { TestProject } from 'vitest/node'
import { freshnessOf } from '../../build/inputs.ts'
import { chromiumHere } from './chromium.ts'

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url)).replace(/[\\/]$/u, '')

/** Another bundle than the project's: for work beside somebody who builds at the same time. */
const BUNDLE = process.env['BUNDLE'] || join(ROOT, 'apps', 'web', 'dist')

/** A test of yesterday's bundle would say nothing. STALE_BUNDLE=allow says it anyway. */
function refuseStale(): void {
  const freshness = freshnessOf(ROOT, BUNDLE)
  if (freshness === 'fresh') return
  if (freshness === 'outdated' && process.env['STALE_BUNDLE'] === 'allow') return
  throw new Error(`The web bundle is ${freshness}: run "npm run build:web" first.`)
}

/** Once before all browser tests: the browser unpacked, the bundle copied from under any new build. */
export async function setup(project: TestProject): Promise<() => void> {
  refuseStale()
  await chromiumHere()
  const copy = mkdtempSync(join(tmpdir(), 'tubwright-bundle-'))
  cpSync(BUNDLE, copy, { recursive: true })
  project.provide('bundle', copy)
  return () => rmSync(copy, { recursive: true, force: true })
}
