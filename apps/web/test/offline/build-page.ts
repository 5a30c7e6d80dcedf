import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { bundleOptions, bundlePlugins } from '../../build/plugins.ts'

const WEB = new URL('../../', import.meta.url)

/** Builds the small page as the app is built, saying what it is told to say. */
export async function buildPage(says: string): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'tubwright-page-'))
  await build({
    root: fileURLToPath(new URL('page/', import.meta.url)),
    configFile: false,
    base: './',
    logLevel: 'error',
    publicDir: false,
    define: { SAYS: JSON.stringify(says) },
    plugins: [...bundlePlugins(WEB)],
    build: { ...bundleOptions, outDir },
  })
  return outDir
}

export const removePages = (folders: readonly string[]): void => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true })
}
