import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const SRC = fileURLToPath(new URL('../src/', import.meta.url))
const FILES = readdirSync(SRC).map(name => ({ name, text: readFileSync(`${SRC}${name}`, 'utf8') }))

/** What a browser, a worker and a command line do not have in common, and what two runs do not. */
const BANNED =
  /\bnode:|\bDate\b|Math\.random|\bprocess\b|\bwindow\b|\bdocument\.(?!ts')|\bglobalThis\b|\bconsole\b|\bcrypto\b|\bBuffer\b|\bperformance\b|localeCompare|\bIntl\b|structuredClone|TextEncoder/u

const withoutComments = (text: string): string =>
  text.replaceAll(/\/\*[\s\S]*?\*\//gu, '').replaceAll(/\/\/.*$/gmu, '')

describe('the source', () => {
  it('is there', () => expect(FILES.length).toBeGreaterThan(20))

  it.each(FILES)('$name has no clock, no chance, no platform, no locale', ({ text }) => {
    expect(BANNED.exec(withoutComments(text))?.[0]).toBeUndefined()
  })

  it('imports itself and zod only', () => {
    const imports = FILES.flatMap(({ text }) =>
      [...text.matchAll(/from '([^']+)'/gu)].map(each => each[1]),
    )
    expect(imports.length).toBeGreaterThan(50)
    expect(imports.filter(each => each !== 'zod' && !each?.startsWith('./'))).toEqual([])
  })

  it('would be found out', () => {
    for (const line of ["import 'node:fs'", 'Date.now()', 'Math.random()', 'a.localeCompare(b)'])
      expect(BANNED.test(line)).toBe(true)
  })
})
