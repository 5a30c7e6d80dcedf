import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { IConfiguration } from 'dependency-cruiser'
import { cruise } from 'dependency-cruiser'
import { expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const rules = createRequire(import.meta.url)('../../../.dependency-cruiser.cjs') as IConfiguration

/** The rules that a file of ours in this folder would break. */
async function brokenBy(folder: string, text: string): Promise<readonly string[]> {
  const planted = mkdtempSync(join(root, folder, 'zz-'))
  const before = process.cwd()
  process.chdir(root)
  try {
    writeFileSync(join(planted, 'trespass.ts'), text)
    const { output } = await cruise([relative(root, planted)], {
      ...rules.options,
      ruleSet: { forbidden: rules.forbidden ?? [] },
      validate: true,
    })
    if (typeof output === 'string') throw new Error(output)
    return output.summary.violations.map(each => each.rule.name)
  } finally {
    process.chdir(before)
    rmSync(planted, { recursive: true })
  }
}

test.each([
  ['apps/web/src', "export * from 'node:fs'", 'the-page-has-no-node'],
  [
    'apps/web/src',
    "export * from '../../../server/src/serve.ts'",
    'the-page-imports-only-itself-and-packages',
  ],
  [
    'apps/web/src',
    "export * from '../../build/inputs.ts'",
    'the-page-imports-only-itself-and-packages',
  ],
  [
    'apps/web/build',
    "export * from '../../src/offline/trusted.ts'",
    'nothing-outside-the-page-runs-its-code',
  ],
  [
    'apps/server/src',
    "export * from '../../../web/src/offline/trusted.ts'",
    'nothing-outside-the-page-runs-its-code',
  ],
  ['apps/server/src', "export * from '@tubwright/core'", 'the-server-knows-no-tub'],
])('a trespass in %s is found: %s', async (folder, text, rule) => {
  expect(await brokenBy(folder, text)).toContain(rule)
})
