import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { networkInterfaces, tmpdir } from 'node:os'
import { join } from 'node:path'
import { brotliCompressSync, brotliDecompressSync, gunzipSync, gzipSync } from 'node:zlib'
import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Running } from '../src/index.ts'
import { isTaken, policyHeader, policyMeta, serve } from '../src/index.ts'
import { requestOf, sendRaw } from './raw.ts'

const PAGE = '<!doctype html><title>page</title>'
const SCRIPT = `export const a = '${'a'.repeat(2000)}'`
const SECRET = 'nobody is to read this'

/** A bundle in a folder of its own, and beside it and in it what must never be served. */
function bundle(): { readonly around: string; readonly folder: string } {
  const around = mkdtempSync(join(tmpdir(), 'tubwright-server-'))
  const folder = join(around, 'dist')
  mkdirSync(join(folder, 'assets'), { recursive: true })
  mkdirSync(join(folder, '.hidden'))
  const files = {
    'index.html': PAGE,
    'sw.js': '// worker',
    'manifest.webmanifest': '{}',
    'icon.svg': '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'icon.png': 'png',
    'assets/app-1a2b.js': SCRIPT,
    'assets/app-1a2b.js.br': brotliCompressSync(SCRIPT),
    'assets/app-1a2b.js.gz': gzipSync(SCRIPT),
    'assets/app-1a2b.css': 'p{}',
    '.inputs': SECRET,
    '.hidden/key': SECRET,
    '../secret.txt': SECRET,
  }
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text)
  return { around, folder }
}

let running: Running
let around = ''
beforeAll(async () => {
  const made = bundle()
  around = made.around
  running = await serve({ folder: made.folder, port: 0 })
})
afterAll(async () => {
  await running.stop()
  rmSync(around, { recursive: true, force: true })
})

const host = () => `Host: 127.0.0.1:${running.port}`
const get = (target: string, ...lines: string[]) =>
  sendRaw(running.port, requestOf(target, [host(), ...lines]))

/** PORT stands for the server's own. Each is the whole of what is sent before the empty line. */
const FOREIGN_HOSTS = [
  'evil.example',
  'evil.example:PORT',
  '127.0.0.1',
  'localhost',
  '[::1]',
  '127.0.0.1:1',
  '127.0.0.1:PORT0',
  '127.0.0.1:0PORT',
  '127.0.0.1:+PORT',
  '127.0.0.1: PORT',
  'LOCALHOST:PORT',
  'localhost.:PORT',
  'a.localhost:PORT',
  '127.0.0.1.evil.example:PORT',
  'evil.example@127.0.0.1:PORT',
  '127.0.0.1:PORT@evil.example',
  '127.0.0.1:PORT, evil.example',
  '127.0.0.1:PORT/evil',
  '127.0.0.2:PORT',
  '127.1:PORT',
  '2130706433:PORT',
  '0x7f.1:PORT',
  '0.0.0.0:PORT',
  '[::]:PORT',
  '[::ffff:127.0.0.1]:PORT',
  '::1:PORT',
  '[0:0:0:0:0:0:0:1]:PORT',
  '',
]

test.each(FOREIGN_HOSTS)('refuses the host "%s"', async named => {
  const lines = [`Host: ${named.replace('PORT', String(running.port))}`]
  const { status, body } = await sendRaw(running.port, requestOf('/', lines))
  expect([400, 403, 421]).toContain(status)
  expect(body).not.toContain('<title>')
})

test.each(['1.1', '1.0'])('refuses HTTP/%s without a host', async version => {
  const { status } = await sendRaw(running.port, requestOf('/', [], 'GET', version))
  expect(status).toBe(403)
})

test('refuses two hosts, in either order, and one that is folded', async () => {
  for (const lines of [
    [host(), 'Host: evil.example'],
    ['Host: evil.example', host()],
    [host(), host()],
    [' Host: evil.example', host()],
  ]) {
    const { status } = await sendRaw(running.port, requestOf('/', lines))
    expect([400, 403, 421]).toContain(status)
  }
})

const HOSTILE_TARGETS = [
  '/../secret.txt',
  '/../../../../etc/passwd',
  '/assets/../../secret.txt',
  '/assets/..',
  '/./index.html',
  '/..',
  '/.',
  '/%2e%2e/secret.txt',
  '/%2E%2E%2Fsecret.txt',
  '/..%2fsecret.txt',
  '/..%5csecret.txt',
  '/..\\secret.txt',
  '/assets\\app-1a2b.js',
  '/%252e%252e/secret.txt',
  '/%c0%ae%c0%ae/secret.txt',
  '/%ef%bc%8e%ef%bc%8e/secret.txt',
  '/%u002e%u002e/secret.txt',
  '/index.html%00',
  '/index.html%00.png',
  '/index%2ehtml',
  '/%69ndex.html',
  '/%',
  '/%zz',
  '//evil.example/',
  '//secret.txt',
  '/assets//app-1a2b.js',
  '/.inputs',
  '/.hidden/key',
  '/assets/.hidden',
  '/.git/config',
  '/index.html/',
  '/index.html/.',
  '/assets/',
  '/assets',
  '/index.html;x',
  '/index.html::$DATA',
  '/INDEX.HTML',
  '/C:/Windows/win.ini',
  '/~root/.ssh/id_rsa',
  '/assets/app-1a2b.js.br',
  '/assets/app-1a2b.js.gz',
  '/constructor',
  '/__proto__',
  '/package.json',
  '/\u00e9',
  'index.html',
  '*',
  '',
  'http://evil.example/',
  'http://127.0.0.1/index.html',
  'file:///etc/passwd',
  `/${'a'.repeat(5000)}`,
  `/?${'a'.repeat(5000)}`,
  '/?<script>',
  '/#fragment',
]

test.each(HOSTILE_TARGETS)('gives nothing for the target "%s"', async target => {
  const { status, headers, body } = await get(target)
  expect([0, 400, 404, 414, 421, 431]).toContain(status)
  expect(body).not.toContain('<title>')
  expect(body).not.toContain(SECRET)
  // What never became a request is answered by the parser; all else by us, with our headers.
  if (status !== 0) expect(headers['x-content-type-options']).toBe('nosniff')
})

/** Raw bytes that no library would send; each must be refused, and the server must go on. */
const HOSTILE_BYTES: Readonly<Record<string, string>> = {
  'a NUL in the target': 'GET /\0 HTTP/1.1\r\nHOST\r\n\r\n',
  'a NUL in a header': 'GET / HTTP/1.1\r\nHOST\r\nX: a\0b\r\n\r\n',
  'a line feed in the target': 'GET /\nX HTTP/1.1\r\nHOST\r\n\r\n',
  'a header split in two': 'GET /%0d%0aX:1 HTTP/1.1\r\nHOST\r\n\r\n',
  'HTTP/0.9': 'GET /\r\n\r\n',
  'HTTP/2 at once': 'PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n',
  'an unknown version': 'GET / HTTP/9.9\r\nHOST\r\n\r\n',
  'a handshake of another protocol': '\x16\x03\x01\x02\x00\x01\x00\x01\xfc\x03\x03',
  'a WebSocket':
    'GET / HTTP/1.1\r\nHOST\r\nConnection: Upgrade\r\nUpgrade: websocket\r\nSec-WebSocket-Key: x\r\nSec-WebSocket-Version: 13\r\n\r\n',
  'HTTP/2 by upgrade': 'GET / HTTP/1.1\r\nHOST\r\nConnection: Upgrade\r\nUpgrade: h2c\r\n\r\n',
  'an upgrade that the connection does not name': 'GET / HTTP/1.1\r\nHOST\r\nUpgrade: h2c\r\n\r\n',
  'a tunnel': 'CONNECT evil.example:443 HTTP/1.1\r\nHOST\r\n\r\n',
  'a body': 'GET / HTTP/1.1\r\nHOST\r\nContent-Length: 5\r\n\r\nhello',
  'a body in chunks':
    'GET / HTTP/1.1\r\nHOST\r\nTransfer-Encoding: chunked\r\n\r\n5\r\nhello\r\n0\r\n\r\n',
  'two lengths': 'GET / HTTP/1.1\r\nHOST\r\nContent-Length: 0\r\nContent-Length: 5\r\n\r\nhello',
  'a length and chunks':
    'GET / HTTP/1.1\r\nHOST\r\nContent-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n',
  'a wish to be told to go on': 'GET / HTTP/1.1\r\nHOST\r\nExpect: 100-continue\r\n\r\n',
  'another wish': 'GET / HTTP/1.1\r\nHOST\r\nExpect: cheese\r\n\r\n',
  'headers without end': `GET / HTTP/1.1\r\nHOST\r\nX: ${'a'.repeat(40_000)}\r\n\r\n`,
}

test.each(Object.entries(HOSTILE_BYTES))('refuses %s', async (_, bytes) => {
  const { status, body } = await sendRaw(running.port, bytes.replace('HOST', host()))
  expect(status === 0 || status >= 400).toBe(true)
  expect(body).not.toContain('<title>')
  expect((await get('/')).status).toBe(200)
})

const METHODS = ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE', 'PROPFIND', 'PURGE']

test.each(METHODS)('refuses the method %s', async method => {
  const { status, headers } = await sendRaw(running.port, requestOf('/', [host()], method))
  expect([400, 405]).toContain(status)
  expect(headers['x-content-type-options']).toBe('nosniff')
})

test('judges the host before all else', async () => {
  const foreign = ['Host: evil.example', 'Content-Length: 3']
  const { status } = await sendRaw(running.port, requestOf('/../x', foreign, 'POST'))
  expect(status).toBe(421)
})

const GOOD = [
  ['/', 'text/html;charset=utf-8', 'no-cache'],
  ['/index.html', 'text/html;charset=utf-8', 'no-cache'],
  ['/?from=icon', 'text/html;charset=utf-8', 'no-cache'],
  ['/sw.js', 'text/javascript;charset=utf-8', 'no-cache'],
  ['/manifest.webmanifest', 'application/manifest+json;charset=utf-8', 'no-cache'],
  ['/icon.svg', 'image/svg+xml;charset=utf-8', 'no-cache'],
  ['/icon.png', 'image/png', 'no-cache'],
  ['/assets/app-1a2b.js', 'text/javascript;charset=utf-8', 'public, max-age=31536000, immutable'],
  ['/assets/app-1a2b.css', 'text/css;charset=utf-8', 'public, max-age=31536000, immutable'],
] as const

test.each(GOOD)('serves %s as %s, kept as %s', async (target, type, cache) => {
  const { status, headers } = await get(target)
  expect(status).toBe(200)
  expect(headers).toMatchObject({
    'content-type': type,
    'cache-control': cache,
    'content-security-policy': policyHeader(),
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'permissions-policy': expect.stringMatching(/^camera=\(self\), .*microphone=\(\)/u),
  })
})

test('the policy allows nothing inline, nothing made of text, nobody else', () => {
  expect(policyHeader()).not.toMatch(/unsafe|https?:|\*/u)
  expect(policyHeader()).toContain("default-src 'none'")
  expect(policyHeader()).toContain("require-trusted-types-for 'script'; trusted-types tubwright")
  expect(`${policyMeta()}; frame-ancestors 'none'`.split('; ').sort()).toEqual(
    policyHeader().split('; ').sort(),
  )
})

const PACKINGS = [
  ['br, gzip', 'br', brotliDecompressSync],
  ['gzip, deflate', 'gzip', gunzipSync],
  ['gzip, br;q=0', 'gzip', gunzipSync],
  ['identity', undefined, (data: Buffer) => data],
  ['x-br', undefined, (data: Buffer) => data],
] as const

test.each(PACKINGS)('to "%s" it sends %s', async (accepts, packing, unpack) => {
  const { headers, body } = await get('/assets/app-1a2b.js', `Accept-Encoding: ${accepts}`)
  expect(headers['content-encoding']).toBe(packing)
  expect(headers['vary']).toBe('Accept-Encoding')
  expect(unpack(Buffer.from(body, 'latin1')).toString()).toBe(SCRIPT)
})

test('answers HEAD without a body, and a known version with 304', async () => {
  const { headers, body, status } = await sendRaw(running.port, requestOf('/', [host()], 'HEAD'))
  expect([status, headers['content-length'], body]).toEqual([200, String(PAGE.length), ''])
  const again = await get('/', `If-None-Match: ${headers['etag']}`)
  expect([again.status, again.body]).toEqual([304, ''])
})

test('a wish for a part gets the whole', async () => {
  const { status, body } = await get('/', 'Range: bytes=10-5')
  expect([status, body]).toEqual([200, PAGE])
})

const addresses = Object.values(networkInterfaces()).flatMap(each => each ?? [])

/** Some machines, as in a container, have but one loopback. */
const LOOPBACKS = addresses.some(each => each.address === '::1')
  ? ['127.0.0.1', '::1']
  : ['127.0.0.1']

test('leads every other name of this machine to the one address', async () => {
  for (const loopback of LOOPBACKS) {
    const named = loopback === '::1' ? '[::1]' : 'localhost'
    const request = requestOf('/', [`Host: ${named}:${running.port}`])
    const { status, headers } = await sendRaw(running.port, request, loopback)
    expect([status, headers['location']]).toEqual([308, running.url])
  }
})

test('is not to be reached from outside this machine', async () => {
  const outside = addresses.filter(each => !each.internal && each.family === 'IPv4')
  for (const { address } of outside)
    expect((await sendRaw(running.port, requestOf('/', [host()]), address)).status).toBe(0)
})

test('reads nothing for a request: it serves on when the folder is gone', async () => {
  const { around: aside, folder } = bundle()
  const other = await serve({ folder, port: 0 })
  rmSync(aside, { recursive: true })
  const lines = [`Host: 127.0.0.1:${other.port}`]
  const { status, body } = await sendRaw(other.port, requestOf('/', lines))
  await other.stop()
  expect([status, body]).toEqual([200, PAGE])
})

test.each(LOOPBACKS)('says when its port is taken on %s, and leaves none open', async loopback => {
  const taken = createServer().listen(0, loopback)
  await new Promise(done => taken.once('listening', done))
  const { port } = taken.address() as { port: number }
  const { around: aside, folder } = bundle()
  const refused = await serve({ folder, port }).catch(error => error)
  expect(isTaken(refused)).toBe(true)
  taken.close()
  expect((await sendRaw(port, requestOf('/', ['Host: x']))).status).toBe(0)
  rmSync(aside, { recursive: true })
})

test('says what is missing where there is no bundle', async () => {
  const empty = mkdtempSync(join(tmpdir(), 'tubwright-server-'))
  await expect(serve({ folder: empty, port: 0 })).rejects.toThrow('npm run build')
  rmSync(empty, { recursive: true })
})
