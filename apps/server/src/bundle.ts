import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { extname, join, sep } from 'node:path'

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css;charset=utf-8',
  '.html': 'text/html;charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript;charset=utf-8',
  '.json': 'application/json;charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml;charset=utf-8',
  '.txt': 'text/plain;charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json;charset=utf-8',
  '.woff2': 'font/woff2',
  '.yaml': 'application/yaml;charset=utf-8',
}

const PACKED = { br: '.br', gzip: '.gz' } as const
export type Packing = keyof typeof PACKED

export interface Asset {
  readonly type: string
  readonly isPage: boolean
  readonly cache: string
  readonly tag: string
  readonly plain: Buffer
  readonly packed: Readonly<Partial<Record<Packing, Buffer>>>
}

export type Bundle = ReadonlyMap<string, Asset>

/** A file whose name holds the hash of its content never becomes otherwise. */
const cacheOf = (path: string): string =>
  path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache'

const isPacked = (path: string): boolean =>
  Object.values(PACKED).some(ending => path.endsWith(ending))

const isHidden = (path: string): boolean => path.includes('/.')

function pathsIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(each => each.isFile())
    .map(each => join(each.parentPath, each.name).slice(folder.length).split(sep).join('/'))
    .filter(path => !isHidden(path))
}

function assetOf(folder: string, path: string, all: ReadonlySet<string>): Asset {
  const plain = readFileSync(join(folder, path))
  const packed = Object.entries(PACKED)
    .filter(([, ending]) => all.has(path + ending))
    .map(([name, ending]) => [name, readFileSync(join(folder, path + ending))])
  return {
    type: TYPES[extname(path)] ?? 'application/octet-stream',
    isPage: extname(path) === '.html',
    cache: cacheOf(path),
    tag: `W/"${createHash('sha256').update(plain).digest('base64url').slice(0, 22)}"`,
    plain,
    packed: Object.fromEntries(packed),
  }
}

/**
 * The whole bundle in memory, by the path that asks for it. Nothing is read for a request: what is
 * not in the map is not there, and a build made meanwhile cannot mix two versions.
 */
export function readBundle(folder: string): Bundle {
  const all = new Set(pathsIn(folder))
  const own = [...all].filter(path => !isPacked(path))
  const bundle = new Map(own.map(path => [path, assetOf(folder, path, all)]))
  const index = bundle.get('/index.html')
  if (!index) throw new Error('The bundle has no index.html: run "npm run build".')
  return bundle.set('/', index)
}
