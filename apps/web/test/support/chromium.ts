import { execFile } from 'node:child_process'
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir, userInfo } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { promisify } from 'node:util'

const run = promisify(execFile)
const PACKAGE = '@sparticuz/chromium'
const require = createRequire(import.meta.url)

export interface Chromium {
  readonly executable: string
  readonly env: Readonly<Record<string, string>>
}

/** A browser of your own instead, where the packaged one does not run, as on another processor. */
const OWN = process.env['TUBWRIGHT_CHROMIUM']

/**
 * Wrong flags are worse than few: the package's own list runs all in one process, which ends when a
 * second context is opened, and turns the same-origin rule off.
 */
export const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none',
] as const

/** The package hides its package.json from import, so it is read beside what may be imported. */
function versionOf(): string {
  const beside = join(dirname(require.resolve(PACKAGE)), '..', '..', 'package.json')
  return (JSON.parse(readFileSync(beside, 'utf8')) as { version: string }).version
}

/** One folder for each version and user: the package takes whatever lies where it unpacks to. */
function home(): string {
  const { uid } = userInfo()
  return join(tmpdir(), `tubwright-chromium-${versionOf()}-${uid}`)
}

/** Another user of the machine could have made the folder first and put a program there. */
function isOurs(folder: string): boolean {
  const found = lstatSync(folder, { throwIfNoEntry: false })
  if (!found) return false
  if (found.isDirectory() && found.uid === userInfo().uid && (found.mode & 0o022) === 0) return true
  throw new Error(`${folder} is not a folder of this user alone: remove it.`)
}

const inXml = (text: string): string => text.replace(/[&<>]/gu, each => `&#${each.codePointAt(0)};`)

/** Its own list of folders names none that exists here. With these fonts text is the same anywhere. */
const fontsOf = (folder: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${inXml(join(folder, 'fonts', 'fonts'))}</dir>
  <dir>/usr/share/fonts</dir>
  <cachedir>${inXml(join(folder, 'fonts-cache'))}</cachedir>
</fontconfig>
`

/**
 * The package unpacks to the temporary folder of the process that asks. So a process of its own asks,
 * with a folder of its own, which gets its name only once all is there: two runs at a time cannot meet
 * in a half-unpacked one.
 */
async function unpack(into: string): Promise<void> {
  const aside = mkdtempSync(`${into}-`)
  try {
    const from = pathToFileURL(require.resolve(PACKAGE)).href
    const asks = `const { default: it } = await import(${JSON.stringify(from)}); await (it.default ?? it).executablePath()`
    // The name of that place of execution also brings the libraries that a bare host lacks.
    const env = { ...process.env, TMPDIR: aside, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' }
    await run(process.execPath, ['--input-type=module', '--eval', asks], { env })
    writeFileSync(join(aside, 'fonts.conf'), fontsOf(into))
    chmodSync(aside, 0o700)
    renameSync(aside, into)
  } catch (error) {
    rmSync(aside, { recursive: true, force: true })
    if (!isOurs(into)) throw error
  }
}

const starts = (executable: string, env: NodeJS.ProcessEnv): Promise<boolean> =>
  run(executable, ['--version'], { env }).then(
    () => true,
    () => false,
  )

/** The host's own libraries where it has them, else the package's. */
async function libraries(folder: string, executable: string): Promise<Record<string, string>> {
  if (await starts(executable, process.env)) return {}
  const env = { LD_LIBRARY_PATH: join(folder, 'al2023', 'lib') }
  if (await starts(executable, { ...process.env, ...env })) return env
  throw new Error(`Chromium does not start here. Set TUBWRIGHT_CHROMIUM to a browser that does.`)
}

/** The browser in a folder, unpacked there if need be. */
export async function chromiumIn(folder: string): Promise<Chromium> {
  mkdirSync(dirname(folder), { recursive: true })
  if (!isOurs(folder)) await unpack(folder)
  const executable = join(folder, 'chromium')
  const env = { FONTCONFIG_FILE: join(folder, 'fonts.conf') }
  return { executable, env: { ...env, ...(await libraries(folder, executable)) } }
}

const known = new Map<string, Promise<Chromium>>()

/** Unpacks the browser if need be, and says how it is started. */
export async function chromiumHere(): Promise<Chromium> {
  if (OWN) return { executable: OWN, env: {} }
  const folder = home()
  const found = known.get(folder) ?? chromiumIn(folder)
  known.set(folder, found)
  return found
}
