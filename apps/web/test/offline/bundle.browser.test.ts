import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, inject, test } from 'vitest'
import { policyHeader, policyMeta } from '../../../server/src/index.ts'
import { axe, killAndReopen, openApp, withBrowser } from '../support/app.ts'
import { plainHost } from './plain-host.ts'

const heading = (page: Page) => page.locator('#app h1').first()

/** Until everything is kept that is needed without a network. */
const kept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })

test('the app itself opens without network and server, and after a flat battery', async () => {
  const app = await openApp({ device: 'phone' })
  const before = await heading(app.page).textContent()
  await kept(app.page)
  await app.goOffline()
  await app.page.reload()
  expect(await heading(app.page).textContent()).toBe(before)
  const again = await killAndReopen(app, { offline: true })
  expect(await heading(again.page).textContent()).toBe(before)
})

test('keeps exactly the files of the build', async () => {
  const app = await openApp()
  await kept(app.page)
  const paths = await app.page.evaluate(async () => {
    const [name = '', ...more] = await caches.keys()
    const requests = await (await caches.open(name)).keys()
    return [more.length, ...requests.map(each => new URL(each.url).pathname)]
  })
  const worker = readFileSync(join(inject('bundle'), 'sw.js'), 'utf8')
  const [, list = ''] = /^const BUILD=(\{.*\});$/mu.exec(worker) ?? []
  const { files } = JSON.parse(list) as { files: { path: string }[] }
  expect(paths).toEqual([0, ...files.map(each => `/${each.path.replace('./', '')}`)])
  expect(paths).toContain('/icon-512.png')
  expect(paths).not.toContain('/version.json')
})

/** Without a service worker, which would hand out the scripts that a test keeps back. */
const bare = { device: 'phone', context: { serviceWorkers: 'block' } } as const

test('what is shown before the script is what the script then shows', async () => {
  for (const language of ['en', 'es'] as const)
    for (const scheme of ['light', 'dark'] as const)
      await withBrowser({ ...bare, language, scheme }, async app => {
        await heading(app.page).waitFor()
        const look = () =>
          app.page.evaluate(() => ({
            language: document.documentElement.lang,
            scheme: document.documentElement.dataset['scheme'],
            texts: [...document.querySelectorAll('.bar a, h1, .row > .button, .row > button')]
              .filter(each => each.checkVisibility() && !each.classList.contains('skip'))
              .map(each => [each.textContent, Math.round(each.getBoundingClientRect().top)]),
          }))
        const ours = await look()
        await app.page.route('**/assets/*.js', route => route.abort())
        await app.page.reload()
        const shell = await look()
        expect(shell).toEqual({ ...ours, texts: ours.texts.slice(0, shell.texts.length) })
        expect(shell.texts).toHaveLength(6)
        expect(await axe(app.page, '#shell')).toEqual([])
        // Scripts that did not come are told of when the page is loaded.
        await app.page.waitForLoadState('load')
        app.faults.take()
      })
})

test('text cannot become markup, script or address of a script', async () => {
  const app = await openApp()
  const refused = await app.page.evaluate(async () => {
    // What a debugger runs at once may make code of text; what comes after a timer may not.
    await new Promise(done => setTimeout(done))
    const attempt = async (act: () => unknown): Promise<string> => {
      try {
        await act()
        return 'done'
      } catch (error) {
        return (error as Error).name
      }
    }
    const put = (name: 'innerHTML' | 'outerHTML') => () => {
      const element = document.createElement('p')
      document.createElement('div').append(element)
      element[name] = '<b>x</b>'
    }
    const script = document.createElement('script')
    const typed = window as unknown as {
      trustedTypes: { createPolicy: (name: string, rules: object) => unknown }
    }
    return {
      inner: await attempt(put('innerHTML')),
      outer: await attempt(put('outerHTML')),
      parsed: await attempt(() => new DOMParser().parseFromString('<b>x</b>', 'text/html')),
      address: await attempt(() => {
        script.src = '/x.js'
      }),
      text: await attempt(() => {
        script.text = '1'
      }),
      worker: await attempt(() => new Worker('/x.js')),
      // biome-ignore lint/security/noGlobalEval: that it is refused is what is tested
      code: await attempt(() => eval('1')),
      made: await attempt(() => new Function('return 1')()),
      policy: await attempt(() => typed.trustedTypes.createPolicy('another', {})),
    }
  })
  app.faults.take()
  for (const [what, name] of Object.entries(refused))
    expect([what, name]).not.toEqual([what, 'done'])
})

test('nothing inline runs or styles, and no other machine is asked', async () => {
  const app = await openApp()
  const ran = await app.page.evaluate(async () => {
    const style = document.createElement('style')
    style.textContent = 'body { color: rgb(1, 2, 3) }'
    document.head.append(style)
    const element = document.createElement('p')
    element.setAttribute('style', 'color: rgb(1, 2, 3)')
    document.body.append(element)
    const asked = await fetch('https://example.org/').then(
      () => 'answered',
      () => 'refused',
    )
    const colours = [document.body, element].map(each => getComputedStyle(each).color)
    return { colours, asked }
  })
  expect(app.faults.take().join('\n')).toMatch(/style-src[\s\S]*connect-src/u)
  expect(ran).toEqual({
    colours: [expect.not.stringContaining('1, 2, 3'), expect.not.stringContaining('1, 2, 3')],
    asked: 'refused',
  })
})

test('the page carries the policy too, for hosts that send none', async () => {
  const app = await openApp()
  const meta = app.page.locator('meta[http-equiv="Content-Security-Policy"]')
  expect(await meta.getAttribute('content')).toBe(policyMeta())
  const response = await app.page.request.get(app.url)
  expect(response.headers()['content-security-policy']).toBe(policyHeader())
})

test('can be installed', async () => {
  const app = await openApp({ device: 'phone' })
  const session = await app.context.newCDPSession(app.page)
  const { errors, data } = await session.send('Page.getAppManifest')
  expect(errors).toEqual([])
  const manifest = JSON.parse(data ?? '{}') as {
    start_url: string
    display: string
    icons: { src: string; sizes: string; type: string; purpose: string }[]
  }
  expect(manifest).toMatchObject({ start_url: './', display: 'standalone' })
  const found = await app.page.evaluate(
    icons =>
      Promise.all(
        icons.map(async ({ src, sizes, type }) => {
          const image = new Image()
          image.src = src
          await image.decode()
          const response = await fetch(src)
          const size = sizes === 'any' ? sizes : `${image.naturalWidth}x${image.naturalHeight}`
          return {
            src,
            size,
            type: response.headers.get('content-type')?.split(';')[0],
            wanted: type,
          }
        }),
      ),
    manifest.icons,
  )
  expect(found).toEqual(
    manifest.icons.map(({ src, sizes, type }) => ({ src, size: sizes, type, wanted: type })),
  )
  expect(manifest.icons.map(each => `${each.sizes} ${each.purpose}`)).toEqual(
    expect.arrayContaining(['192x192 any', '512x512 any', '512x512 maskable']),
  )
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors')
  expect(installabilityErrors.map(each => each.errorId)).toEqual([])
})

test('runs in a folder of any plain host, with the policy and without a network', async () => {
  const host = await plainHost(inject('bundle'))
  const app = await openApp()
  const page = await app.context.newPage()
  await page.goto(host.url)
  const before = await heading(page).textContent()
  const inner = await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    try {
      document.createElement('p').innerHTML = '<b>x</b>'
      return 'put'
    } catch (error) {
      return (error as Error).name
    }
  })
  expect(inner).toBe('TypeError')
  host.stop()
  await page.reload()
  expect(await heading(page).textContent()).toBe(before)
  // To the browser this host is a second one; beyond the two nothing was asked.
  const found = app.faults.take().filter(each => !each.startsWith(`third party: ${host.url}`))
  expect(found.filter(each => each.startsWith('third party'))).toEqual([])
})
