import { spawn } from 'node:child_process'
import { copyFileSync, existsSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  buildIfOld,
  dropFolders,
  freshFolder,
  PROGRAM,
  ROOT,
  tubwright,
} from './support/program.ts'

const PAGE = readFileSync(join(ROOT, 'docs/how-to/describe-a-box.md'), 'utf8')
const blocks = (kind: string): readonly string[] =>
  [...PAGE.matchAll(new RegExp(`^\`\`\`${kind}\\n([\\s\\S]*?)\`\`\`$`, 'gmu'))].map(
    each => each[1] ?? '',
  )
const COMMANDS = blocks('sh').flatMap(each => each.split('\n').filter(Boolean))

let folder = ''
beforeAll(() => {
  buildIfOld()
  folder = freshFolder()
  symlinkSync(join(ROOT, 'docs'), join(folder, 'docs'))
})
afterAll(dropFolders)

/** A command that goes on until it is interrupted. */
function started(words: readonly string[]) {
  const child = spawn(process.execPath, [PROGRAM, ...words], { cwd: folder })
  const said = { out: '', err: '' }
  child.stdout.on('data', text => {
    said.out += String(text)
  })
  child.stderr.on('data', text => {
    said.err += String(text)
  })
  const ended = new Promise<number | null>(resolve => child.on('close', resolve))
  return { child, said, ended }
}

async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; tries < 400 && !isSo(); tries++) await pause(25)
  expect(isSo()).toBe(true)
}

describe('the page on describing a box', () => {
  it('has commands', () => {
    expect(COMMANDS.length).toBeGreaterThanOrEqual(6)
    expect(COMMANDS.every(each => /^(npx tubwright|cp) /u.test(each))).toBe(true)
  })

  it('is right in each of them, in order', async () => {
    const said: string[] = []
    for (const command of COMMANDS) {
      const [first, second, ...words] = command.split(' ')
      if (first === 'cp') {
        copyFileSync(join(folder, second ?? ''), join(folder, words[0] ?? ''))
        continue
      }
      expect(second).toBe('tubwright')
      if (words.includes('--watch')) {
        const { child, said: told, ended } = started(words)
        await until(() => told.out.includes('The board is drawn in my-boxes/wheatear-3.svg'))
        child.kill('SIGINT')
        expect(await ended).toBe(0)
        continue
      }
      const { status, stdout, stderr } = tubwright(words, { cwd: folder })
      expect({ command, status, stderr: status === 0 ? '' : stderr }).toEqual({
        command,
        status: 0,
        stderr: '',
      })
      said.push(stdout)
    }
    for (const shown of blocks('text')) expect(said.join('\n')).toContain(shown.trim())
    expect(said.join('\n')).toContain('Proven:')
  })

  it('names ids that the skeleton has, and a position that may be called so', () => {
    const begun = tubwright(
      COMMANDS.find(each => each.includes(' describe --id '))
        ?.replace('wheatear-3', 'again')
        .split(' ')
        .slice(2) ?? [],
      { cwd: folder },
    )
    expect(begun.status).toBe(0)
    const skeleton = readFileSync(join(folder, 'my-boxes/again.yaml'), 'utf8')
    const named = [...PAGE.matchAll(/`(\w+)` by `\w+`/gu)].map(each => each[1] ?? '')
    expect(named).toEqual(expect.arrayContaining(['PA1', 'FusePA', 'RelayPAhigh', 'Transformer']))
    for (const each of named) expect(skeleton).toContain(`id: ${each},`)
    expect(readFileSync(join(ROOT, 'docs/how-to/wheatear-3.yaml'), 'utf8')).toContain(
      '{ id: v120, label: 120 V,',
    )
  })

  it('leads to a picture, a file and findings that are there', async () => {
    for (const [, path = ''] of PAGE.matchAll(/\]\((?!http)([^)]+)\)/gu))
      expect(existsSync(join(ROOT, 'docs/how-to', path))).toBe(true)
    const { LINT_FINDINGS } = await import('@tubwright/core')
    const rows = PAGE.slice(PAGE.indexOf('commonest slips'), PAGE.indexOf('## 5.'))
    const named = [...rows.matchAll(/`([a-z-]+)`/gu)].map(each => each[1] ?? '')
    expect(named.length).toBeGreaterThan(8)
    expect(named.filter(each => !Object.hasOwn(LINT_FINDINGS, each))).toEqual([])
  })
})

describe('lint that watches', () => {
  it('survives half a file and a file that goes, draws what can be read, ends on Ctrl-C', async () => {
    const path = join(folder, 'watched.yaml')
    const svg = join(folder, 'board.svg')
    const whole = readFileSync(join(ROOT, 'docs/how-to/wheatear-3.yaml'), 'utf8')
    writeFileSync(path, whole)
    const { child, said, ended } = started(['lint', path, '--watch', '--out', svg])
    await until(() => said.out.includes('The board is drawn'))
    const drawn = readFileSync(svg, 'utf8')
    writeFileSync(path, whole.slice(0, whole.length / 2))
    await until(() => said.out.includes('cannot be used yet'))
    expect(readFileSync(svg, 'utf8')).toBe(drawn)
    rmSync(path)
    await until(() => said.out.includes('waiting for it to come back'))
    writeFileSync(path, whole.replaceAll('IN1', 'MAIN'))
    await until(() => readFileSync(svg, 'utf8').includes('>MAIN<'))
    expect(child.exitCode).toBeNull()
    child.kill('SIGINT')
    expect(await ended).toBe(0)
    expect(said.err).toContain('Stopped.')
    expect(readFileSync(path, 'utf8')).toContain('MAIN')
  })
})
