import type { ChildProcess } from 'node:child_process'
import { spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { createServer } from 'node:net'
import { fileURLToPath } from 'node:url'
import { expect, onTestFinished, test } from 'vitest'

// No browser is needed here, but the bundle is: so this stands among the tests that have it.
const START = fileURLToPath(new URL('../../../server/dist/start.js', import.meta.url))

interface Started {
  readonly child: ChildProcess
  readonly said: () => string
  readonly ended: Promise<number | null>
}

function start(args: readonly string[], env: NodeJS.ProcessEnv = {}): Started {
  if (!existsSync(START)) throw new Error('The server is not built: run "npm run build:server".')
  const child = spawn(process.execPath, [START, ...args], { env: { ...process.env, ...env } })
  let text = ''
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', data => {
      text += String(data)
    })
  const ended = new Promise<number | null>(done => child.once('exit', code => done(code)))
  onTestFinished(() => void child.kill('SIGKILL'))
  return { child, said: () => text, ended }
}

/** A port that was free a moment ago. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1')
  await new Promise(done => server.once('listening', done))
  const { port } = server.address() as { port: number }
  await new Promise(done => server.close(done))
  return port
}

const serving = ({ said }: Started): Promise<void> =>
  expect.poll(said, { timeout: 30_000 }).toContain('Ctrl-C ends it.')

test.each(['SIGINT', 'SIGTERM'] as const)(
  'says where it is, serves, and %s ends it',
  async signal => {
    const port = await freePort()
    const started = start(['--port', String(port), '--no-open'])
    await serving(started)
    const url = `http://127.0.0.1:${port}/`
    expect(started.said()).toContain(`Tubwright: ${url}\n`)
    // A browser keeps its connection: that must not keep the server.
    expect((await fetch(url)).status).toBe(200)
    started.child.kill(signal)
    expect(await started.ended).toBe(0)
    await expect(fetch(url)).rejects.toThrow()
  },
)

test('takes the next free port, and says that other jobs are kept there', async () => {
  const port = await freePort()
  const taken = createServer().listen(port, '127.0.0.1')
  onTestFinished(() => void taken.close())
  const started = start(['--port', String(port), '--no-open'])
  await serving(started)
  expect(started.said()).toMatch(
    new RegExp(
      `^Port ${port} is taken, so this is port \\d+\\. Jobs stored under the other are not seen`,
      'u',
    ),
  )
})

test.each(['0', '-1', '65536', 'http', '80.5', '1e3'])('refuses the port "%s"', async port => {
  const { said, ended } = start([`--port=${port}`, '--no-open'])
  expect(await ended).toBe(1)
  expect(said()).toBe(`--port wants a number from 1 to 65535, not "${port}".\n`)
})

test('tells what it can be told', async () => {
  const { said, ended } = start(['--help'])
  expect(await ended).toBe(0)
  expect(said()).toContain('--no-open')
})

test('goes on where there is no browser, nor anything to open one with', async () => {
  for (const env of [{ DISPLAY: '' }, { DISPLAY: ':99', PATH: '/nowhere', CI: '' }]) {
    const started = start(['--port', String(await freePort())], env)
    await serving(started)
    started.child.kill('SIGINT')
    expect(await started.ended).toBe(0)
  }
})
