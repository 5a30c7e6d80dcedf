import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'
import { freshnessOf } from '../../web/build/inputs.ts'
import { openBrowser } from './open-browser.ts'
import type { Running } from './serve.ts'
import { isTaken, serve } from './serve.ts'

const ROOT = fileURLToPath(new URL('../../..', import.meta.url)).replace(/[\\/]$/u, '')
const BUNDLE = join(ROOT, 'apps', 'web', 'dist')
const PORT = 8137
/** How many ports after the wanted one are tried. */
const TRIES = 20

const HELP = `npm start -- [--port NUMBER] [--no-open]

  --port NUMBER   the port to serve on, ${PORT} if not said; the next free one where it is taken
  --no-open       open no browser
`

interface Wanted {
  readonly port: number
  readonly opens: boolean
  readonly help: boolean
}

function wantedOf(args: readonly string[]): Wanted {
  const { values } = parseArgs({
    args: [...args],
    options: {
      port: { type: 'string', default: String(PORT) },
      'no-open': { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  })
  const port = Number(values.port)
  if (!/^\d+$/u.test(values.port) || port < 1 || port > 65_535)
    throw new Error(`--port wants a number from 1 to 65535, not "${values.port}".`)
  return { port, opens: !values['no-open'], help: values.help }
}

/** The bundle as the sources are now. */
function buildIfNeeded(): void {
  const freshness = freshnessOf(ROOT, BUNDLE)
  if (freshness === 'fresh') return
  process.stdout.write(
    `The app is ${freshness === 'missing' ? 'not built yet' : 'outdated'}: building…\n`,
  )
  const vite = join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js')
  const { status } = spawnSync(
    process.execPath,
    [vite, 'build', join('apps', 'web'), '--logLevel', 'warn'],
    { cwd: ROOT, stdio: 'inherit' },
  )
  if (status !== 0) throw new Error('The app could not be built.')
}

async function serveFrom(port: number, last: number): Promise<Running> {
  try {
    return await serve({ folder: BUNDLE, port })
  } catch (error) {
    if (!isTaken(error)) throw error
    if (port >= last) throw new Error(`No port up to ${last} is free: choose one with --port.`)
    return serveFrom(port + 1, last)
  }
}

/** A browser keeps jobs for each address apart: whoever comes by another must be told. */
function tell({ url, port }: Running, wanted: number): void {
  if (port !== wanted)
    process.stdout.write(
      `Port ${wanted} is taken, so this is port ${port}. Jobs stored under the other are not seen here.\n`,
    )
  process.stdout.write(`Tubwright: ${url}\nFor this machine only. Ctrl-C ends it.\n`)
}

function endWith(running: Running): void {
  const end = () => void running.stop().then(() => process.exit(0))
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, end)
}

async function start(args: readonly string[]): Promise<void> {
  const { port, opens, help } = wantedOf(args)
  if (help) return void process.stdout.write(HELP)
  buildIfNeeded()
  const running = await serveFrom(port, Math.min(port + TRIES, 65_535))
  endWith(running)
  tell(running, port)
  if (opens) openBrowser(running.url, process.env)
}

try {
  await start(process.argv.slice(2))
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`)
  process.exitCode = 1
}
