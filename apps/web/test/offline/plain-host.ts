import { existsSync, readFileSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join } from 'node:path'

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
}

/** A host as plain as any: a folder below its root, types by ending, no header of ours. */
export async function plainHost(folder: string): Promise<{ url: string; stop: () => void }> {
  const server = createServer(({ url = '' }, response) => {
    const path = url.startsWith('/tub/') ? url.slice('/tub/'.length).replace(/\?.*$/u, '') : '-'
    const file = join(folder, path === '' ? 'index.html' : path)
    if (!existsSync(file) || !statSync(file).isFile()) response.writeHead(404).end()
    else
      response
        .writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'text/plain' })
        .end(readFileSync(file))
  })
  await new Promise<void>(done => server.listen(0, '127.0.0.1', done))
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/tub/`,
    stop: () => {
      server.close()
      server.closeAllConnections()
    },
  }
}
