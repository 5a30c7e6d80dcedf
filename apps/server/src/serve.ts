import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import { createServer, STATUS_CODES } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Duplex } from 'node:stream'
import type { Asset, Bundle, Packing } from './bundle.ts'
import { readBundle } from './bundle.ts'
import { refusedHeaders, servedHeaders } from './policy.ts'
import type { Refusal } from './refuse.ts'
import { hostsAt, refusalOf } from './refuse.ts'

export interface Running {
  /** The one address to use: what a browser keeps, it keeps for each name and port apart. */
  readonly url: string
  readonly port: number
  readonly stop: () => Promise<void>
}

export interface ServeOptions {
  readonly folder: string
  /** 0 takes any free port. */
  readonly port: number
}

const LOOPBACKS = ['127.0.0.1', '::1'] as const
const SECOND = 1000
const LIMITS = {
  headersTimeout: 10 * SECOND,
  requestTimeout: 10 * SECOND,
  keepAliveTimeout: 5 * SECOND,
  maxHeaderSize: 16 * 1024,
  // Judged by us, with all other hosts that are not ours.
  requireHostHeader: false,
}
const MOST_CONNECTIONS = 256

const urlAt = (port: number): string => `http://127.0.0.1:${port}/`

function refuse(response: ServerResponse, { status, says }: Refusal): void {
  const text = `${says}\n`
  response.writeHead(status, {
    ...refusedHeaders,
    'Content-Length': Buffer.byteLength(text),
    Connection: 'close',
    ...(status === 405 ? { Allow: 'GET, HEAD' } : {}),
  })
  response.end(text)
}

/** For what never became a request: there is no response to write to. */
function refuseSocket(socket: Duplex, status: number): void {
  const headers = Object.entries({ ...refusedHeaders, 'Content-Length': '0', Connection: 'close' })
  const lines = headers.map(([name, value]) => `${name}: ${value}`)
  if (!socket.writable) return void socket.destroy()
  socket.end([`HTTP/1.1 ${status} ${STATUS_CODES[status]}`, ...lines, '', ''].join('\r\n'))
}

/** The densest packing that the browser takes: brotli, else gzip, else none. */
function packingFor(asset: Asset, accepts: string): Packing | undefined {
  const taken = accepts.split(',').map(each => each.trim().split(/\s*;\s*/u))
  const takes = (name: string) =>
    taken.some(([coding, weight]) => coding === name && !/^q=0(?:\.0*)?$/u.test(weight ?? ''))
  return (['br', 'gzip'] as const).find(each => asset.packed[each] && takes(each))
}

function send(request: IncomingMessage, response: ServerResponse, asset: Asset): void {
  const packing = packingFor(asset, String(request.headers['accept-encoding'] ?? ''))
  const body = (packing && asset.packed[packing]) ?? asset.plain
  const headers = {
    ...servedHeaders,
    'Content-Type': asset.type,
    'Cache-Control': asset.cache,
    ETag: asset.tag,
    Vary: 'Accept-Encoding',
  }
  if (request.headers['if-none-match'] === asset.tag) {
    response.writeHead(304, headers).end()
    return
  }
  response.writeHead(200, {
    ...headers,
    'Content-Length': body.length,
    ...(packing ? { 'Content-Encoding': packing } : {}),
  })
  response.end(request.method === 'HEAD' ? undefined : body)
}

/** Another name of this machine would be another place to keep jobs in: lead to the one address. */
function leadHome(response: ServerResponse, home: string): void {
  response.writeHead(308, { ...refusedHeaders, Location: home, 'Content-Length': 0 }).end()
}

const isHome = (request: IncomingMessage, home: string): boolean =>
  `http://${request.headers.host}/` === home

function answerFrom(bundle: Bundle, request: IncomingMessage, response: ServerResponse): void {
  const home = urlAt(request.socket.localPort ?? 0)
  const asset = bundle.get((request.url ?? '').replace(/\?.*$/u, ''))
  if (!asset) refuse(response, { status: 404, says: 'No file is called that.' })
  else if (asset.isPage && !isHome(request, home)) leadHome(response, home)
  else send(request, response, asset)
}

function answer(request: IncomingMessage, response: ServerResponse, bundle: Bundle): void {
  const refusal = refusalOf(request, hostsAt(request.socket.localPort ?? 0))
  if (refusal) refuse(response, refusal)
  else answerFrom(bundle, request, response)
}

function serverOf(bundle: Bundle): Server {
  const server = createServer(LIMITS, (request, response) => answer(request, response, bundle))
  server.maxConnections = MOST_CONNECTIONS
  for (const event of ['checkContinue', 'checkExpectation'] as const)
    server.on(event, (request, response) => answer(request, response, bundle))
  server.on('upgrade', (_request, socket) => refuseSocket(socket, 403))
  server.on('connect', (_request, socket) => refuseSocket(socket, 405))
  server.on('clientError', (_error, socket) => refuseSocket(socket, 400))
  return server
}

function listen(server: Server, host: string, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen({ host, port, exclusive: true }, () => {
      server.off('error', reject)
      resolve((server.address() as AddressInfo).port)
    })
  })
}

function close(server: Server): Promise<void> {
  return new Promise(resolve => {
    server.close(() => resolve())
    server.closeAllConnections()
  })
}

const codeOf = (error: unknown): string => String((error as { code?: unknown }).code)

/** A machine may well have no second loopback: then the first is enough. */
const HAS_NONE = new Set(['EADDRNOTAVAIL', 'EAFNOSUPPORT', 'EINVAL'])

async function listenOnBoth(bundle: Bundle, port: number): Promise<[number, readonly Server[]]> {
  const [first, second] = [serverOf(bundle), serverOf(bundle)]
  const taken = await listen(first, LOOPBACKS[0], port)
  try {
    await listen(second, LOOPBACKS[1], taken)
    return [taken, [first, second]]
  } catch (error) {
    if (HAS_NONE.has(codeOf(error))) return [taken, [first]]
    await close(first)
    throw error
  }
}

/** True where the port is another program's, so that the next may do. */
export const isTaken = (error: unknown): boolean => ['EADDRINUSE', 'EACCES'].includes(codeOf(error))

async function listenWithin(
  bundle: Bundle,
  port: number,
  tries: number,
): Promise<[number, readonly Server[]]> {
  try {
    return await listenOnBoth(bundle, port)
  } catch (error) {
    // Any free port of the one loopback may be taken on the other: then any other will do.
    if (port !== 0 || tries <= 1 || !isTaken(error)) throw error
    return listenWithin(bundle, port, tries - 1)
  }
}

/** Serves a built bundle to this machine alone. */
export async function serve({ folder, port }: ServeOptions): Promise<Running> {
  const [taken, servers] = await listenWithin(readBundle(folder), port, 20)
  return {
    url: urlAt(taken),
    port: taken,
    stop: async () => void (await Promise.all(servers.map(close))),
  }
}
