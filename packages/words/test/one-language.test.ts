import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { describe, expect, it } from 'vitest'
import { SPANISH } from '../src/es/index.ts'
import { ENGLISH } from '../src/index.ts'

const src = new URL('../src/', import.meta.url)

/** Files that a file needs when it runs: types are gone by then. */
function needed(file: URL, seen = new Set<string>()): ReadonlySet<string> {
  if (seen.has(file.href)) return seen
  seen.add(file.href)
  const text = readFileSync(file, 'utf8')
  for (const [, kind, from = ''] of text.matchAll(
    /^(?:import|export)( type)?\b(?:[^'"]*?\bfrom)? '(\.[^']+)'/gmu,
  ))
    if (kind === undefined) needed(new URL(from, file), seen)
  return seen
}

const within = (file: string): readonly string[] =>
  [...needed(new URL(file, src))].map(each => each.slice(src.href.length))

describe('one language alone', () => {
  it('./es needs nothing of ./en when it runs, and the other way round', () => {
    expect(within('es/index.ts').filter(each => each.startsWith('en/'))).toEqual([])
    expect(within('en/index.ts').filter(each => each.startsWith('es/'))).toEqual([])
    expect(within('es/index.ts').filter(each => each.startsWith('es/')).length).toBeGreaterThan(12)
  })

  it('. needs nothing of ./es', () => {
    expect(within('index.ts').filter(each => each.startsWith('es/'))).toEqual([])
    expect(within('index.ts')).toContain('say.ts')
  })

  it('is all that a page which prints a Spanish sheet loads', async () => {
    const entry = `
      import { printSheet, sheetWords } from '@tubwright/documents'
      import { SPANISH } from '@tubwright/words/es'
      globalThis.print = sheet => printSheet(sheet, sheetWords(SPANISH, id => id))`
    const code = await bundled(entry)
    expect(code).toContain(SPANISH.sheet['stop.kill'])
    for (const each of [
      ENGLISH.sheet['stop.kill'],
      ENGLISH.verify['dead-short'],
      ENGLISH.page.ladderSays,
      ENGLISH.fields['control-box.largestBreaker'],
    ])
      expect(code).not.toContain(each)
  })
})

/** What a bundler makes of one module, unshortened, in memory. */
async function bundled(entry: string): Promise<string> {
  const root = fileURLToPath(new URL('../', import.meta.url))
  expect(existsSync(root)).toBe(true)
  const made = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      rollupOptions: { input: 'virtual:entry' },
      modulePreload: false,
    },
    plugins: [
      {
        name: 'entry',
        resolveId: id => (id === 'virtual:entry' ? `${root}entry.js` : undefined),
        load: id => (id === `${root}entry.js` ? entry : undefined),
      },
    ],
  })
  const outputs = [made].flat().flatMap(each => ('output' in each ? each.output : []))
  return outputs.map(each => (each.type === 'chunk' ? each.code : '')).join('\n')
}
