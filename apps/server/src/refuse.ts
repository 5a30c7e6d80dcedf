import type { IncomingMessage } from 'node:http'

export interface Refusal {
  readonly status: number
  readonly says: string
}

/** The names under which this machine reaches itself, each with the port. */
export const hostsAt = (port: number): readonly string[] =>
  ['127.0.0.1', '[::1]', 'localhost'].map(name => `${name}:${port}`)

/** The build names its files plainly: no escape, dot segment, backslash or doubled slash is needed. */
const PLAIN_PATH = /^\/(?:[\w-][\w.-]*\/)*(?:[\w-][\w.-]*)?(?:\?[\w.~=&%+-]*)?$/u

const LONGEST_TARGET = 2048

function allOf(request: IncomingMessage, name: string): readonly string[] {
  const { rawHeaders } = request
  return rawHeaders.filter((_, at) => at % 2 === 1 && rawHeaders[at - 1]?.toLowerCase() === name)
}

/** Another name for this machine is how a page elsewhere would reach in: see DNS rebinding. */
function hostRefusal(request: IncomingMessage, hosts: readonly string[]): Refusal | undefined {
  const [host, ...more] = allOf(request, 'host')
  if (host === undefined) return { status: 403, says: 'No host is named.' }
  if (more.length > 0) return { status: 403, says: 'Two hosts are named.' }
  if (!hosts.includes(host)) return { status: 421, says: 'This is not that host.' }
  return undefined
}

function methodRefusal({ method }: IncomingMessage): Refusal | undefined {
  if (method === 'GET' || method === 'HEAD') return undefined
  return { status: 405, says: 'Files are only read here.' }
}

/** A reader sends nothing along and asks for nothing but a file. */
function extraRefusal({ headers }: IncomingMessage): Refusal | undefined {
  if (headers.upgrade !== undefined) return { status: 403, says: 'No other protocol is spoken.' }
  if (headers.expect !== undefined) return { status: 417, says: 'Nothing is to be expected.' }
  const sends = headers['transfer-encoding'] ?? headers['content-length'] ?? '0'
  return sends === '0' ? undefined : { status: 413, says: 'Nothing is taken here.' }
}

function targetRefusal({ url = '' }: IncomingMessage): Refusal | undefined {
  if (url.length > LONGEST_TARGET) return { status: 414, says: 'The address is too long.' }
  if (PLAIN_PATH.test(url)) return undefined
  return { status: 400, says: 'No file is called that.' }
}

/** Why a request is not even looked up, judged before any file; undefined when it may be. */
export function refusalOf(request: IncomingMessage, hosts: readonly string[]): Refusal | undefined {
  return (
    hostRefusal(request, hosts) ??
    methodRefusal(request) ??
    extraRefusal(request) ??
    targetRefusal(request)
  )
}
