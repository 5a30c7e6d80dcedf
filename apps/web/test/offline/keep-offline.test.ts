import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Build } from '../../src/offline/keep-offline.ts'
import { keepOffline } from '../../src/offline/keep-offline.ts'
import type { FakeHost } from './fake-scope.ts'
import { fakeBrowser, fakeHost, ROOT } from './fake-scope.ts'

const buildOf = (version: string, ...paths: string[]): Build => ({
  version,
  files: paths.map(path => ({ path, hash: '' })),
})

const ONE = buildOf('one', './', 'assets/a-1.js', 'assets/same-0.js')
const TWO = buildOf('two', './', 'assets/a-2.js', 'assets/same-0.js')

const hostOf = (version: string): FakeHost =>
  fakeHost({
    './': `page ${version}</html>`,
    [`assets/a-${version === 'one' ? 1 : 2}.js`]: `a ${version}`,
    'assets/same-0.js': 'same',
    'version.json': `{"version":"${version}"}`,
  })

const GONE = new TypeError('Failed to fetch')

/** The first version installed and in use, and a host that then has the second. */
async function withFirst() {
  const browser = fakeBrowser()
  const first = hostOf('one')
  const one = browser.run(first, scope => keepOffline(scope, ONE))
  await one.install()
  await one.activate()
  for (const path of first.files.keys()) first.files.set(path, GONE)
  return { ...browser, one }
}

test('answers from what it keeps, with no host at all', async () => {
  const { one } = await withFirst()
  expect(await (await one.open(ROOT))?.text()).toBe('page one</html>')
  expect(await one.ask(`${ROOT}assets/a-1.js`)).toBe('a one')
  expect(await one.ask(`${ROOT}?from=icon`, { mode: 'navigate' })).toBe('page one</html>')
})

test('leads any other page of its folder to the one there is', async () => {
  const { one } = await withFirst()
  const led = await one.open(`${ROOT}some/where`)
  expect([led?.status, led?.headers.get('location')]).toEqual([302, ROOT])
})

test('stays out of what is not the build: versions, other methods, other hosts', async () => {
  const { one } = await withFirst()
  expect(await one.ask(`${ROOT}version.json`)).toBeUndefined()
  expect(await one.ask(ROOT, { method: 'POST' })).toBeUndefined()
  expect(await one.ask('https://other.test/tub/assets/a-1.js')).toBeUndefined()
})

const failures = {
  'the network goes': GONE,
  'a file is missing': new Response('', { status: 404 }),
  'the host fails': new Response('', { status: 500 }),
}

test.each(Object.entries(failures))(
  '%s half-way: the version before goes on',
  async (_, failure) => {
    const { run, caches, one } = await withFirst()
    const host = hostOf('two')
    host.files.set('assets/a-2.js', failure)
    const two = run(host, scope => keepOffline(scope, TWO))
    await expect(two.install()).rejects.toThrow()
    expect(await caches.keys()).toEqual(['tubwright /tub/ one'])
    expect(await (await one.open(ROOT))?.text()).toBe('page one</html>')
    host.files.set('assets/a-2.js', 'a two')
    await two.install()
    expect(await caches.keys()).toEqual(['tubwright /tub/ one', 'tubwright /tub/ two'])
  },
)

test('what a killed install left is not taken for whole', async () => {
  const { run, caches } = await withFirst()
  const left = await caches.open('tubwright /tub/ two')
  await left.put(`${ROOT}assets/a-2.js`, new Response('half'))
  const two = run(hostOf('two'), scope => keepOffline(scope, TWO))
  await two.install()
  await two.activate()
  expect(await two.ask(`${ROOT}assets/a-2.js`)).toBe('a two')
})

test.each(['page o', ''])(
  'a page that a kill left as "%s" is asked of the host again',
  async left => {
    const { run, caches } = fakeBrowser()
    const one = run(hostOf('one'), scope => keepOffline(scope, ONE))
    await one.install()
    await one.activate()
    await (await caches.open('tubwright /tub/ one')).put(ROOT, new Response(left))
    expect(await (await one.open(ROOT))?.text()).toBe('page one</html>')
  },
)

test('loads a part that both versions have only once', async () => {
  const { run } = await withFirst()
  const host = hostOf('two')
  await run(host, scope => keepOffline(scope, TWO)).install()
  expect(host.asked.map(each => each.url.slice(ROOT.length))).toEqual(['', 'assets/a-2.js'])
})

test('asks the host for exactly what the build says, not for what lies in between', async () => {
  const { run } = fakeBrowser()
  const host = hostOf('one')
  const hash = 'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='
  const files = ONE.files.map(file => ({ ...file, hash }))
  await run(host, scope => keepOffline(scope, { ...ONE, files })).install()
  expect(host.asked.map(each => [each.cache, each.integrity])).toEqual([
    ['no-cache', hash],
    ['default', hash],
    ['default', hash],
  ])
})

test('old pages get their parts until a new page is opened; then only its own old caches go', async () => {
  const { run, caches, done } = await withFirst()
  const others = ['tubwright /tub/elsewhere/ one', 'somebody else']
  for (const name of others) await caches.open(name)
  const two = run(hostOf('two'), scope => keepOffline(scope, TWO))
  await two.install()
  await two.tell('take-over')
  expect(done.skipped).toBe(1)
  await two.activate()
  expect(await two.ask(`${ROOT}assets/a-1.js`)).toBe('a one')
  expect(await (await two.open(ROOT))?.text()).toBe('page two</html>')
  expect(await caches.keys()).toEqual([...others, 'tubwright /tub/ two'])
})

test('does not take for old what a newer version is just loading', async () => {
  const { caches, one } = await withFirst()
  await caches.open('tubwright /tub/ two')
  one.registration.installing = {}
  await one.open(ROOT)
  expect(await caches.keys()).toHaveLength(2)
})

test('says which version it keeps, and takes over only when told to', async () => {
  const { one, done } = await withFirst()
  const heard: unknown[] = []
  await one.tell('version', [{ postMessage: (said: unknown) => heard.push(said) }])
  expect(heard).toEqual(['one'])
  expect(done).toEqual({ skipped: 0, claimed: 1 })
})

test('knows nothing of where jobs are kept', () => {
  for (const name of ['keep-offline', 'service-worker', 'worker-scope'])
    expect(
      readFileSync(new URL(`../../src/offline/${name}.ts`, import.meta.url), 'utf8'),
    ).not.toMatch(/indexedDB|idb|localStorage/u)
})
