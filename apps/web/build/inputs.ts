import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'

/** All that the bundle is made of, from the project's root. */
const SOURCES = [
  'apps/web/index.html',
  'apps/web/package.json',
  'apps/web/vite.config.ts',
  'apps/web/build',
  'apps/web/public',
  'apps/web/src',
  'apps/server/src/policy.ts',
  'packages',
  'package-lock.json',
]

/** A test plants a trespass in a folder zz-… and takes it away again. */
const LEFT_OUT = /(?:^|[\\/])(?:node_modules|dist|test|README\.md|zz-[^\\/]*)(?:[\\/]|$)/u

/** Where a bundle says what it was made of. Its name keeps it from being served. */
const NOTE = '.inputs'

function filesUnder(path: string): readonly string[] {
  if (!existsSync(path)) return []
  if (statSync(path).isFile()) return [path]
  return readdirSync(path)
    .sort()
    .filter(name => !LEFT_OUT.test(name))
    .flatMap(name => filesUnder(join(path, name)))
}

/** A fingerprint of the contents, since a checkout changes the times of files and not what they say. */
export function inputsOf(root: string): string {
  const hash = createHash('sha256')
  for (const source of SOURCES)
    for (const file of filesUnder(join(root, source)))
      hash
        .update(`${file.slice(root.length)}\0`)
        .update(readFileSync(file))
        .update('\0')
  return hash.digest('hex')
}

export const noteIn = (bundle: string): string => join(bundle, NOTE)

export type Freshness = 'missing' | 'outdated' | 'fresh'

export function freshnessOf(root: string, bundle: string): Freshness {
  if (!existsSync(join(bundle, 'index.html')) || !existsSync(noteIn(bundle))) return 'missing'
  return readFileSync(noteIn(bundle), 'utf8') === inputsOf(root) ? 'fresh' : 'outdated'
}
