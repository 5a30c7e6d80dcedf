import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { extname, join } from 'node:path'
import { promisify } from 'node:util'
import { brotliCompress, constants, gzip } from 'node:zlib'
import type { Plugin } from 'vite'

const TEXT = new Set(['.css', '.html', '.js', '.json', '.svg', '.txt', '.webmanifest', '.yaml'])

/** Under this a packed file saves no packet on the way. */
const LEAST = 1024

const packings = [
  {
    ending: '.br',
    pack: (data: Buffer) =>
      promisify(brotliCompress)(data, {
        params: {
          [constants.BROTLI_PARAM_QUALITY]: 11,
          [constants.BROTLI_PARAM_SIZE_HINT]: data.length,
        },
      }),
  },
  { ending: '.gz', pack: (data: Buffer) => promisify(gzip)(data, { level: 9 }) },
]

function textsIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => TEXT.has(extname(name)))
    .map(name => join(folder, name))
    .filter(path => statSync(path).size >= LEAST)
}

async function packOne(path: string): Promise<void> {
  const data = readFileSync(path)
  await Promise.all(
    packings.map(async ({ ending, pack }) => writeFileSync(path + ending, await pack(data))),
  )
}

/** Packs once at the build what would else be packed for every visit. */
export function pack(): Plugin {
  return {
    name: 'tubwright-pack',
    apply: 'build',
    writeBundle: {
      order: 'post',
      sequential: true,
      async handler({ dir }) {
        if (dir) await Promise.all(textsIn(dir).map(packOne))
      },
    },
  }
}
