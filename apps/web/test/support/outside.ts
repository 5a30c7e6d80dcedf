import type { Server } from 'node:http'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'

export interface Outside {
  readonly proxy: string
  /** What the browser, a page or a worker asked of any machine but this one. */
  readonly asked: readonly string[]
  readonly stop: () => Promise<void>
}

function recorder(asked: string[]): Server {
  const server = createServer((request, response) => {
    asked.push(`${request.method} ${request.url}`)
    response.writeHead(403).end()
  })
  server.on('connect', (request, socket) => {
    asked.push(`CONNECT ${request.url}`)
    socket.end('HTTP/1.1 403 Forbidden\r\n\r\n')
  })
  return server
}

/** Stands where the outside would be: lets nothing through and remembers who asked. */
export async function outside(): Promise<Outside> {
  const asked: string[] = []
  const server = recorder(asked)
  await new Promise<void>(done => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  return {
    proxy: `http://127.0.0.1:${port}`,
    asked,
    stop: () =>
      new Promise(done => {
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}
