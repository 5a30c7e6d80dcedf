import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { expect, inject, onTestFinished, test } from 'vitest'
import { killAndReopen, openApp, openShared } from './app.ts'
import { chromiumIn } from './chromium.ts'
import { groupOf, leftRunning, runningIn } from './processes.ts'

const FAULTS: Readonly<Record<string, { readonly act: () => unknown; readonly says: RegExp }>> = {
  'an error in the console': {
    act: () => console.error('wrong'),
    says: /^console: wrong/mu,
  },
  'an uncaught error': {
    act: () =>
      setTimeout(() => {
        throw new Error('thrown')
      }),
    says: /^uncaught: Error: thrown/mu,
  },
  'a promise that nobody heeds': {
    act: () => void Promise.reject(new Error('let down')),
    says: /^uncaught: Error: let down/mu,
  },
  'a breach of the policy': {
    act: () => {
      const style = document.createElement('style')
      style.textContent = 'p{}'
      document.head.append(style)
    },
    says: /^console: .*Content Security Policy/mu,
  },
  'a request to another machine': {
    act: () => {
      new Image().src = 'https://example.org/x.png'
    },
    says: /^third party: https:\/\/example\.org\/x\.png/mu,
  },
  'a file that is not there': {
    act: () => fetch('nothing.js'),
    says: /^console: .*404/mu,
  },
}

test.each(Object.entries(FAULTS))('%s fails the test', async (_, { act, says }) => {
  const app = await openShared()
  await app.page.evaluate(act)
  await app.page.waitForTimeout(200)
  await expect(app.close()).rejects.toThrow(says)
})

test('what goes round the page, as a worker or the browser itself might, is seen as well', async () => {
  const app = await openApp()
  const other = await app.context.newPage()
  await other.goto('http://example.org/').catch(() => undefined)
  await other.goto('https://example.org/').catch(() => undefined)
  const found = app.faults.take()
  expect(found).toContain('third party: GET http://example.org/')
  expect(found).toContain('third party: CONNECT example.org:443')
})

test('all is closed, and what was fresh is gone, though a test fails', async () => {
  const app = await openShared()
  const group = groupOf(app.profile)
  expect(runningIn(group)).toBeGreaterThan(1)
  await app.page.evaluate(() => console.error('wrong'))
  await expect(app.close()).rejects.toThrow('wrong')
  expect([runningIn(group), existsSync(app.profile)]).toEqual([0, false])
  await expect(fetch(app.url)).rejects.toThrow()
  expect(await leftRunning()).not.toContain(group)
})

test('a killed browser leaves no process, and what it stored is there for the next', async () => {
  const app = await openApp()
  const group = groupOf(app.profile)
  await app.page.evaluate(
    () =>
      new Promise<void>(done => {
        const asked = indexedDB.open('harness', 1)
        asked.onupgradeneeded = () => asked.result.createObjectStore('kept').put('here', 'it')
        asked.onsuccess = () => done()
      }),
  )
  const again = await killAndReopen(app)
  expect(runningIn(group)).toBe(0)
  const kept = await again.page.evaluate(
    () =>
      new Promise(done => {
        const asked = indexedDB.open('harness', 1)
        asked.onsuccess = () => {
          const got = asked.result.transaction('kept').objectStore('kept').get('it')
          got.onsuccess = () => done(got.result)
        }
      }),
  )
  expect([kept, again.url]).toEqual(['here', app.url])
})

test('a browser that nobody closed is found and ended', async () => {
  const app = await openShared()
  const group = groupOf(app.profile)
  expect(await leftRunning()).toContain(group)
  expect(runningIn(group)).toBe(0)
  await app.close().catch(() => undefined)
})

test('two that unpack the browser at once do not meet, and a space in the path is no matter', async () => {
  const aside = mkdtempSync(join(tmpdir(), 'tubwright a folder '))
  onTestFinished(() => rmSync(aside, { recursive: true, force: true }))
  const folder = join(aside, 'of its own')
  const [one, two] = await Promise.all([chromiumIn(folder), chromiumIn(folder)])
  expect(one).toEqual(two)
  expect(readdirSync(aside)).toEqual(['of its own'])
  const { stdout } = await promisify(execFile)(one.executable, ['--version'], {
    env: { ...process.env, ...one.env },
  })
  expect(stdout).toContain('Chromium')
})

test('looks are as asked for', async () => {
  const app = await openApp({ device: 'phone', scheme: 'dark', language: 'es', cpuSlowdown: 2 })
  const look = await app.page.evaluate(() => ({
    width: innerWidth,
    language: navigator.language,
    isDark: matchMedia('(prefers-color-scheme: dark)').matches,
    isTouched: navigator.maxTouchPoints > 0,
  }))
  expect(look).toEqual({ width: 390, language: 'es-ES', isDark: true, isTouched: true })
  expect(existsSync(join(inject('bundle'), 'index.html'))).toBe(true)
})
