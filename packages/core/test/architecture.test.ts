import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { IConfiguration, ICruiseResult } from 'dependency-cruiser'
import { cruise } from 'dependency-cruiser'
import { describe, expect, test } from 'vitest'

const root = fileURLToPath(new URL('../../../', import.meta.url))
const rules = createRequire(import.meta.url)('../../../.dependency-cruiser.cjs') as IConfiguration

async function cruised(paths: readonly string[]): Promise<ICruiseResult> {
  const before = process.cwd()
  process.chdir(root)
  try {
    const { output } = await cruise([...paths], {
      ...rules.options,
      ruleSet: { forbidden: rules.forbidden ?? [] },
      validate: true,
    })
    if (typeof output === 'string') throw new Error(output)
    return output
  } finally {
    process.chdir(before)
  }
}

/** A file of ours in a folder of its own under a layer, gone again whatever happens. */
async function withFile(
  layer: string,
  text: string,
  then: (path: string) => Promise<void>,
): Promise<void> {
  const folder = mkdtempSync(join(root, 'packages/core/src', layer, 'zz-'))
  try {
    const path = join(folder, 'trespass.ts')
    writeFileSync(path, text)
    await then(relative(root, path))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

describe('the architecture', () => {
  test('is looked at whole: a checker that sees nothing finds nothing', async () => {
    const { summary } = await cruised(['packages', 'apps', 'bench'])
    expect(summary.totalCruised).toBeGreaterThan(150)
    expect(summary.violations).toEqual([])
  })

  test.each([
    ['base', "export * from '../../engines/circuit/network.ts'", 'base-imports-only-left'],
    ['engines', "export * from '../../domain/job.ts'", 'engines-imports-only-left'],
    ['domain', "export * from '../../stages/survey/artifact.ts'", 'domain-imports-only-left'],
    ['stages/match', "export * from '../../plan/artifact.ts'", 'match-imports-only-earlier-stages'],
    ['stages/sheet', "export * from '../../plan/plan-wiring.ts'", 'sheet-imports-artifacts-only'],
    ['domain', "export * from 'node:fs'", 'core-has-no-platform'],
  ])('a trespass in %s is found', async (layer, text, rule) => {
    await withFile(layer, text, async path => {
      const { summary } = await cruised([dirname(path)])
      expect(summary.violations.map(each => each.rule.name)).toContain(rule)
    })
  })
})
