import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join, sep } from 'node:path'
import type { Plugin } from 'vite'
import { build } from 'vite'
import type { Build, BuiltFile } from '../src/offline/keep-offline.ts'

const INDEX = 'index.html'

const hashOf = (data: Buffer | string): string =>
  `sha256-${createHash('sha256').update(data).digest('base64')}`

/** Files of the build, from its root; the note of its inputs is no part of it. */
function filesIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => statSync(join(folder, name)).isFile())
    .map(name => name.split(sep).join('/'))
    .filter(name => !name.startsWith('.'))
    .sort()
}

/** Hosts differ in how they call the page's own file, but all give it for the folder itself. */
const builtFile = (folder: string, name: string): BuiltFile => ({
  path: name === INDEX ? './' : name,
  hash: hashOf(readFileSync(join(folder, name))),
})

/** The worker in one piece, as every browser takes it. */
async function workerCode(entry: string): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: { write: false, target: 'es2023', lib: { entry, formats: ['iife'], name: 'worker' } },
  })
  const [first] = Array.isArray(made) ? made : [made]
  const chunk = first && 'output' in first ? first.output[0] : undefined
  if (!chunk) throw new Error('The service worker was not built.')
  return chunk.code
}

/** The version stands for all that is served: any other byte is another version. */
const versionOf = (files: readonly BuiltFile[], code: string): string =>
  createHash('sha256')
    .update(JSON.stringify([files, code]))
    .digest('base64url')
    .slice(0, 16)

function noteVersion(folder: string, version: string): void {
  const path = join(folder, INDEX)
  const text = readFileSync(path, 'utf8')
  writeFileSync(
    path,
    text.replace('</title>', `</title>\n    <meta name="version" content="${version}" />`),
  )
  writeFileSync(join(folder, 'version.json'), `${JSON.stringify({ version })}\n`)
}

/** Writes the service worker with the list of exactly the files that this build made. */
export function offline(entry: string): Plugin {
  return {
    name: 'tubwright-offline',
    apply: 'build',
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler({ dir }) {
        if (!dir) return
        const code = await workerCode(entry)
        const names = filesIn(dir)
        const listOf = () => names.map(name => builtFile(dir, name))
        const version = versionOf(listOf(), code)
        noteVersion(dir, version)
        const made: Build = { version, files: listOf() }
        writeFileSync(join(dir, 'sw.js'), `const BUILD=${JSON.stringify(made)};\n${code}`)
      },
    },
  }
}
