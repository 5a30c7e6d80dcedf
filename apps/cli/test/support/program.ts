import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, realpathSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const at = (path: string): string => fileURLToPath(new URL(`../../../../${path}`, import.meta.url))
export const ROOT = at('.')
export const PROGRAM = at('apps/cli/bin/tubwright.js')
export const DIST = at('apps/cli/dist')
export const DATA = at('packages/catalog/data')

const newest = (folder: string): number =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter(each => each.isFile())
    .reduce((last, each) => Math.max(last, statSync(join(each.parentPath, each.name)).mtimeMs), 0)

/** Builds the program where it is missing or older than what it is made of. */
export function buildIfOld(): void {
  const built = statSync(join(DIST, 'main.js'), { throwIfNoEntry: false })?.mtimeMs ?? 0
  const packages = readdirSync(at('packages')).map(name => `packages/${name}/src`)
  const sources = ['apps/cli/src', ...packages].map(at).filter(folder => {
    return statSync(folder, { throwIfNoEntry: false })?.isDirectory()
  })
  if (sources.every(folder => newest(folder) <= built)) return
  const { status, stderr } = spawnSync(at('node_modules/.bin/tsdown'), [], {
    cwd: ROOT,
    encoding: 'utf8',
  })
  if (status !== 0) throw new Error(`the program cannot be built: ${stderr}`)
}

export interface Ran {
  readonly status: number | null
  readonly stdout: string
  readonly stderr: string
}

/** Runs the built program as a person would, in some folder. */
export function tubwright(
  words: readonly string[],
  {
    cwd = ROOT,
    env = {},
    program = PROGRAM,
  }: {
    readonly cwd?: string
    readonly env?: Readonly<Record<string, string>>
    readonly program?: string
  } = {},
): Ran {
  const { NO_COLOR: _, FORCE_COLOR: __, ...own } = process.env
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    cwd,
    env: { ...own, ...env },
    encoding: 'utf8',
    timeout: 60_000,
    maxBuffer: 64e6,
  })
  return { status, stdout, stderr }
}

const folders: string[] = []

/** A folder of its own, gone after the tests of the file. */
export function freshFolder(): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'tubwright-')))
  folders.push(folder)
  return folder
}

export function dropFolders(): void {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
}
