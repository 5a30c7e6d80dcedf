import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'

const here = fileURLToPath(new URL('.', import.meta.url))
const root = join(here, '../../../..')

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap(each =>
    each.isDirectory() ? filesUnder(join(folder, each.name)) : [join(folder, each.name)],
  )

const cited = new Set(
  ['core', 'documents', 'words', 'formats']
    .flatMap(name => filesUnder(join(root, `packages/${name}/src`)))
    .filter(path => path.endsWith('.ts'))
    .flatMap(path => [...readFileSync(path, 'utf8').matchAll(/@source \[([\w.-]+)\]/gu)])
    .map(match => match[1] ?? ''),
)
const listed = readFileSync(join(root, 'docs/sources.md'), 'utf8')

describe('every source', () => {
  test('that the code cites has its row, and the list cites nothing that is gone', () => {
    expect(cited.size).toBeGreaterThan(10)
    const rows = [...listed.matchAll(/^\| ([A-Z][\w.-]+) +\|/gmu)].map(match => match[1] ?? '')
    expect([...cited].sort()).toEqual([...new Set(rows)].sort())
  })

  test.each(
    readdirSync(here, { withFileTypes: true })
      .filter(each => each.isDirectory())
      .map(each => each.name),
  )('%s says what was read, has its cases, and a test that uses them all', name => {
    const folder = join(here, name)
    const about = readFileSync(join(folder, 'SOURCE.md'), 'utf8')
    for (const word of ['Citation:', 'Read at:', 'Found:', 'Read off:', 'Left open:'])
      expect(about).toContain(word)
    expect(existsSync(join(folder, 'cases.ts'))).toBe(true)
    const cases = readFileSync(join(folder, 'cases.ts'), 'utf8')
    const tests = readdirSync(folder)
      .filter(each => each.endsWith('.test.ts'))
      .map(each => readFileSync(join(folder, each), 'utf8'))
    expect(tests.length).toBeGreaterThan(0)
    for (const [, name] of cases.matchAll(/^export const (\w+)/gmu))
      expect(tests.some(text => text.includes(name ?? '-'))).toBe(true)
  })
})
