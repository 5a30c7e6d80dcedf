import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeEach, describe, expect, it } from 'vitest'
import { watchText } from '../src/watch.ts'
import { ran } from './support/in-process.ts'
import { dropFolders, freshFolder } from './support/program.ts'

let folder = ''
const box = () => join(folder, 'wren-3.yaml')

async function begin(...more: readonly string[]) {
  return ran(['describe', '--id', 'wren-3', '--out', folder, ...more])
}

function spoil(from: string, to: string): void {
  const text = readFileSync(box(), 'utf8')
  expect(text).toContain(from)
  writeFileSync(box(), text.replace(from, to))
}

beforeEach(() => {
  folder = freshFolder()
})
afterAll(dropFolders)

describe('describe', () => {
  it('writes a box that lints clean and plans a tub, and says the next commands', async () => {
    const { code, stdout } = await begin()
    expect(code).toBe(0)
    const next = [...stdout.matchAll(/^ {4}tubwright (.*)$/gmu)].map(each => each[1] ?? '')
    expect(next.map(each => each.split(' ')[0])).toEqual(['lint', 'lint', 'plan'])
    expect(await ran(['lint', box()])).toMatchObject({ code: 0, stdout: `${box()}: clean.\n` })
    expect((await ran(next[2]?.split(' ') ?? [])).stdout).toContain('Proven:')
  })

  it.each([
    [['--from', 'two-legs']],
    [['--from', 'one-leg']],
    [['--from', 'convertible']],
    [['--from', 'one-phase-230']],
    [['--outputs', 'two-speed-pump,circulation-pump,ozonator,light']],
    [['--outputs', 'one-speed-pump', '--profiles', 'one-speed']],
  ])('with %j begins a box, and names a plan only where it holds', async words => {
    const { code, stdout } = await begin(...words)
    expect(code).toBe(0)
    expect((await ran(['lint', box()])).code).toBe(0)
    const [, plan] = /^ {4}tubwright (plan .*)$/mu.exec(stdout) ?? []
    if (plan === undefined) expect(stdout).not.toContain('plan')
    else {
      const planned = await ran(plan.split(' '))
      expect({ plan, code: planned.code }).toEqual({ plan, code: 0 })
      expect(planned.stdout).toContain('Proven:')
    }
  })

  it('takes its answers as options, into a folder that it makes', async () => {
    const out = join(folder, 'new/boxes')
    const outputs = 'one-speed-pump,one-speed-pump,light'
    const words = ['--feeds', 'one-leg', '--outputs', outputs, '--heater-poles', '1']
    expect((await begin('--out', out, ...words)).code).toBe(0)
    const text = readFileSync(join(out, 'wren-3.yaml'), 'utf8')
    expect(text).toContain('id: pump-b')
    expect(text).toContain('id: one-speed-heats')
    expect(text).not.toMatch(/circulate|system: split-phase|RelayHeat2/u)
  })

  it('begins a box whose plan names the loads that it has no place for', async () => {
    await begin('--outputs', 'two-speed-pump,circulation-pump,ozonator,light')
    const { code, stdout } = await ran(['plan', 'large-60', '--box', box()])
    expect(code).toBe(1)
    expect(stdout).toContain('none is left for Jets pump B, two speeds, Blower.')
  })

  it('never writes over a description', async () => {
    writeFileSync(box(), 'mine')
    const { code, stdout, stderr } = await begin()
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain('is there already and was not written over')
    expect(readFileSync(box(), 'utf8')).toBe('mine')
  })

  it.each([
    [['--from', 'three-legs'], 'it may be two-legs, one-leg, convertible, one-phase-230'],
    [['--feeds', 'two-legs,one-phase-230'], 'not for both'],
    [['--outputs', 'pump'], 'it may be two-speed-pump, one-speed-pump'],
    [['--outputs', 'light,light,two-speed-pump'], '“light” stands there twice'],
    [['--outputs', 'light'], 'needs circulation-pump among --outputs'],
    [['--profiles', 'one-speed', '--outputs', 'two-speed-pump'], 'needs one-speed-pump'],
    [['--outputs', Array(4).fill('one-speed-pump').join(',')], 'more than 3 pumps'],
    [['--heater-poles', '3'], 'it may be 1, 2'],
    [['--id', '3-wren'], 'a letter, then letters'],
    [['--schema', 'tub'], 'it may be control-box, survey, supply-device, landing'],
  ])('refuses %j', async (words, told) => {
    const { code, stdout, stderr } = await begin(...words)
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain(told)
    expect(readdirSync(folder)).toEqual([])
  })

  it('prints a schema that is published', async () => {
    const { code, stdout } = await ran(['describe', '--schema', 'landing'])
    const path = new URL('../../../docs/schema/landing.json', import.meta.url)
    expect({ code, stdout }).toEqual({ code: 0, stdout: readFileSync(path, 'utf8') })
  })
})

describe('lint', () => {
  it('ends with 0 on notices, told at their place', async () => {
    await begin()
    spoil('24 A, 32 A', '24 A, 24.1 A, 32 A')
    const { code, stdout } = await ran(['lint', box()])
    expect(code).toBe(0)
    expect(stdout).toMatch(/wren-3\.yaml:\d+:\d+: NOTICE A current limit of 24\.1 A/u)
    expect(stdout).toContain('0 to mend, 1 to know.')
  })

  it('ends with 1 on warnings, in the wire form too', async () => {
    await begin()
    spoil('node: PA-LO', 'node: PA-L0')
    expect((await ran(['lint', box()])).code).toBe(1)
    const { code, stdout } = await ran(['lint', box(), '--json'])
    expect(code).toBe(1)
    expect(JSON.parse(stdout)).toMatchObject({
      schema: 'lint/1',
      kind: 'control-box/1',
      warnings: [],
      findings: [
        { id: 'terminal-dead-end', severity: 'warning', params: { terminal: 'PA2' } },
        { id: 'output-never-on', severity: 'warning' },
      ],
    })
  })

  it('ends with 1 on what is hardly ever so', async () => {
    await begin()
    spoil('power: 5.5 kW', 'power: 25 kW')
    const { code, stdout } = await ran(['lint', box()])
    expect(code).toBe(1)
    expect(stdout).toContain('warning: supplied.0.circuits.0.power')
  })

  it('ends with 2 on what cannot be read, each slip at its place', async () => {
    await begin()
    spoil('rated: 50 A', 'rated: 50')
    const { code, stdout, stderr } = await ran(['lint', box()])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain('cannot be used yet: 1 to mend first')
    expect(stderr).toMatch(/wren-3\.yaml:\d+:\d+: board\.terminals\.0\.rated is 50/u)
  })

  it('points at a list that goes on below [], and does not doubt what the file is', async () => {
    await begin()
    spoil('  jumpers: []\n', '  jumpers: []\n    - id: J1\n      label: volts\n')
    const { code, stderr } = await ran(['lint', box()])
    expect(code).toBe(2)
    expect(stderr).toContain('a list cannot go on below []; take [] away')
    expect(stderr).toContain('1 to mend first')
    expect(stderr).not.toContain('It may be')
  })

  it('says what it lints where a file is none of it', async () => {
    const path = join(folder, 'landing.yaml')
    writeFileSync(path, 'schema: landing/1\n')
    const { code, stderr } = await ran(['lint', path])
    expect(code).toBe(2)
    expect(stderr).toContain('a control box, a supply device or a survey')
  })

  it.each(['heron-4', 'isolator-3', 'everyday-240-circulation'])(
    'takes %s of the catalogue by its id',
    async id => {
      expect((await ran(['lint', id])).code).toBe(0)
    },
  )

  it('guesses at a name that is near', async () => {
    const { code, stderr } = await ran(['lint', 'hern-4'])
    expect(code).toBe(2)
    expect(stderr).toContain('Did you mean "heron-4"?')
  })

  it('refuses options that do not go together', async () => {
    await begin()
    expect((await ran(['lint', box(), '--watch', '--json'])).code).toBe(2)
    expect((await ran(['lint', box(), '--out', 'a.svg'])).code).toBe(2)
    const { code, stderr } = await ran(['lint', box(), '--watch', '--out', box()])
    expect(code).toBe(2)
    expect(stderr).toContain('name another file for the drawing')
  })
})

describe('help', () => {
  it.each(['lint', 'describe'])('of %s has examples and exits', async command => {
    const { code, stdout } = await ran([command, '--help'])
    expect(code).toBe(0)
    expect(stdout).toContain(`Example:\n  tubwright ${command} `)
    expect(stdout.match(/Ends with 0/gu)).toHaveLength(1)
  })
})

/** Waits until something is so; fails the test where it never is. */
async function until(isSo: () => boolean): Promise<void> {
  for (let tries = 0; tries < 200 && !isSo(); tries++) await pause(25)
  expect(isSo()).toBe(true)
}

describe('watching', () => {
  it('tells each text once, through deletion, renaming over and half a file', async () => {
    const path = join(folder, 'watched.yaml')
    writeFileSync(path, 'one')
    const seen: (string | undefined)[] = []
    const stop = new AbortController()
    const ended = watchText(path, text => seen.push(text), stop.signal)
    expect(seen).toEqual(['one'])
    writeFileSync(path, 'two, half')
    await until(() => seen.length === 2)
    rmSync(path)
    await until(() => seen.length === 3)
    writeFileSync(path, 'two, half and whole')
    await until(() => seen.length === 4)
    stop.abort()
    await ended
    expect(seen).toEqual(['one', 'two, half', undefined, 'two, half and whole'])
    writeFileSync(path, 'three')
    await pause(400)
    expect(seen).toHaveLength(4)
  })

  it('takes a file that is not there yet, and writes nothing', async () => {
    const path = join(folder, 'later.yaml')
    const seen: (string | undefined)[] = []
    const stop = new AbortController()
    const ended = watchText(path, text => seen.push(text), stop.signal)
    expect(seen).toEqual([undefined])
    expect(existsSync(path)).toBe(false)
    writeFileSync(path, 'now')
    await until(() => seen.length === 2)
    stop.abort()
    await ended
  })

  it('gives an editor that writes in two goes time for the second', async () => {
    const path = join(folder, 'slow.yaml')
    writeFileSync(path, '')
    const seen: (string | undefined)[] = []
    const stop = new AbortController()
    const ended = watchText(path, text => seen.push(text), stop.signal)
    for (const part of ['a', 'ab', 'abc']) {
      writeFileSync(path, part)
      await pause(20)
    }
    await until(() => seen.at(-1) === 'abc')
    expect(seen.length).toBeLessThanOrEqual(3)
    stop.abort()
    await ended
  })

  it('where the folder goes and comes back', async () => {
    const inner = join(folder, 'inner')
    const path = join(inner, 'box.yaml')
    mkdirSync(inner)
    writeFileSync(path, 'one')
    const seen: (string | undefined)[] = []
    const stop = new AbortController()
    const ended = watchText(path, text => seen.push(text), stop.signal)
    rmSync(inner, { recursive: true })
    await until(() => seen.length === 2)
    mkdirSync(inner)
    writeFileSync(path, 'again')
    await until(() => seen.at(-1) === 'again')
    stop.abort()
    await ended
  })
})
