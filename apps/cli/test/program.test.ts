import { spawn } from 'node:child_process'
import {
  cpSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  buildIfOld,
  DATA,
  DIST,
  dropFolders,
  freshFolder,
  PROGRAM,
  tubwright,
} from './support/program.ts'

const TUB = 'everyday-240-circulation'
const ESCAPE = '\u001b'
let folder = ''
const landing = () => join(folder, 'landing.yaml')

/** What a run wrote where it may not: nothing on stdout, words on stderr, no stack of ours. */
const refused = ({ status, stdout, stderr }: ReturnType<typeof tubwright>, words: string) => {
  expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
  expect(stderr).toContain(words)
  expect(stderr).not.toMatch(/^\s+at |invariant|fault of tubwright/mu)
}

beforeAll(() => {
  buildIfOld()
  folder = freshFolder()
  const { status } = tubwright(['plan', TUB, '--box', 'heron-4', '--out', landing()])
  expect(status).toBe(1) // its profile reverts at a reset: a warning to heed
})
afterAll(dropFolders)

describe('help', () => {
  it.each(['match', 'plan', 'verify', 'solve', 'meter', 'sheet', 'catalog', 'demo'])(
    'of %s',
    command => {
      const { status, stdout, stderr } = tubwright([command, '--help'])
      expect({ status, stderr }).toEqual({ status: 0, stderr: '' })
      expect(stdout).toContain(`Usage: tubwright ${command}`)
      expect(stdout).toContain(`Example:\n  tubwright ${command}`)
      expect(stdout).toContain('Ends with 0 when all is fine, 1 when something breaks')
    },
  )

  it('of the program names every command, and reads no catalogue', () => {
    const { status, stdout } = tubwright(['--catalog', '/no/such/folder', '--help'])
    expect(status).toBe(0)
    for (const command of ['match', 'plan', 'verify', 'solve', 'meter', 'sheet', 'catalog', 'demo'])
      expect(stdout).toContain(`\n  ${command} `)
  })

  it('loads none of the solver, the words or the schemas', () => {
    const main = readFileSync(join(DIST, 'main.js'), 'utf8')
    const loaded = [...main.matchAll(/^import .*? from "(\.[^"]*)"/gmu)].map(each => each[1] ?? '')
    const texts = [main, ...loaded.map(name => readFileSync(join(DIST, name), 'utf8'))]
    for (const text of texts) expect(text).not.toMatch(/split-phase|parseDocument|discriminator/u)
  })

  it('comes on stderr, as bad input, where no command is given', () => {
    const { status, stdout, stderr } = tubwright([])
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' })
    expect(stderr).toContain('Usage: tubwright')
  })
})

describe('the wire form', () => {
  it.each([
    ['match-set/1', 0, () => ['match', TUB]],
    ['wiring-plan/1', 1, () => ['plan', TUB, '--box', 'heron-4']],
    ['verification/1', 1, () => ['verify', TUB, '--landing', landing()]],
    ['solved-mode/1', 0, () => ['solve', TUB, '--landing', landing()]],
    [
      'cold-reading/1',
      0,
      () => ['meter', TUB, '--landing', landing(), '--from', 'box.H1', '--to', 'box.H2'],
    ],
    ['netlist/1', 0, () => ['solve', TUB, '--landing', landing(), '--spice']],
    ['catalogue/1', 0, () => ['catalog']],
    ['plan-failures/1', 1, () => ['plan', 'no-box-120-ozonator-no-neutral']],
  ] as const)('%s', (schema, status, words) => {
    const ran = tubwright([...words(), '--json'])
    expect(ran.status).toBe(status)
    expect(JSON.parse(ran.stdout)).toMatchObject({ schema })
  })
})

describe('what is said of a landing', () => {
  it('holds provided its settings are read back after a reset: 1', () => {
    const { status, stdout, stderr } = tubwright(['verify', TUB, '--landing', landing()])
    expect({ status, stderr }).toEqual({ status: 1, stderr: '' })
    expect(stdout).toContain('It holds, provided what is said below.')
    expect(stdout).toContain('After a reset or power cut')
  })

  it('holds with nothing to heed: 0', () => {
    const plain = join(folder, 'plain.yaml')
    const planned = ['plan', 'everyday-240-plain', '--box', 'heron-4', '--out', plain]
    expect(tubwright(planned).status).toBe(0)
    const { status, stdout } = tubwright(['verify', 'everyday-240-plain', '--landing', plain])
    expect(status).toBe(0)
    expect(stdout).toContain('It holds.')
  })

  it('breaks with the link of neutral and second leg left in: 1, a dead short', () => {
    const wrong = join(folder, 'link left in.yaml')
    const text = readFileSync(landing(), 'utf8')
    expect(text).toContain('J1: out')
    writeFileSync(wrong, text.replace('J1: out', 'J1: in'))
    const { status, stdout, stderr } = tubwright(['verify', TUB, '--landing', wrong])
    expect({ status, stderr }).toEqual({ status: 1, stderr: '' })
    expect(stdout).toContain('It breaks.')
    expect(stdout).toMatch(/^CAUTION {2}Dead short: gf\.P\d would carry \d+ A \(50 A rated\)/mu)
    expect(stdout).toMatch(
      /^CAUTION {2}Look first at jumper J1 .* “link in”; .* needs “link out”\./mu,
    )
  })

  it('is refused with every slip at its line: 2', () => {
    const slips = join(folder, 'slips.yaml')
    const text = readFileSync(landing(), 'utf8')
      .replace('J1: out', 'J1: ot')
      .replace('box.A1', 'box.A99')
    writeFileSync(slips, text)
    const ran = tubwright(['verify', TUB, '--landing', slips])
    refused(ran, `${slips} cannot be used`)
    const lineOf = (words: string) => text.split('\n').findIndex(line => line.includes(words)) + 1
    expect(ran.stderr).toContain(`${slips}:${lineOf('box.A99')}:17: ends.run.leg1@box is "box.A99"`)
    expect(ran.stderr).toContain(`${slips}:${lineOf('J1: ot')}:7: jumpers.J1 is "ot".`)
    expect(ran.stderr).toContain('Did you mean "out"?')
  })
})

describe('data and talk', () => {
  it('keeps apart what is asked for and what is said meanwhile', () => {
    const { stdout, stderr } = tubwright(['plan', TUB])
    expect(stderr).toMatch(/^(planning on .* …\n)+$/u)
    expect(stdout).not.toContain('planning on')
    // The box that keeps its settings comes first, though it wants an adapter more.
    expect(stdout).toMatch(/^ {2}heron-4 +adapters: 1 /mu)
    expect(stdout + stderr).not.toContain(ESCAPE)
    expect(stdout).not.toMatch(/undefined|NaN|\{|\}/u)
  })

  it('lists every wire, jumper and setting of a plan', () => {
    const { stdout } = tubwright(['plan', TUB, '--box', 'heron-4'])
    expect(stdout).toContain('  Jets pump A, two speeds → Pump A, by an adapter\n')
    expect(stdout).toMatch(/^ {4}pump-a\.high +high speed +BK +14 AWG +box B1 +pump A high$/mu)
    expect(stdout).toMatch(/^ {4}pump-a\.common .*MARK AGAIN: it carries line volts\.$/mu)
    expect(stdout).toMatch(/^ {2}J1 +link out +MOVE from link in +link from neutral/mu)
    expect(stdout).not.toMatch(/undefined|NaN|\{|\}/u)
  })

  it('survives a reader that goes away', async () => {
    const child = spawn(process.execPath, [PROGRAM, 'catalog'], { stdio: 'pipe' })
    let stderr = ''
    child.stderr.on('data', text => {
      stderr += text
    })
    child.stdout.destroy()
    const code = await new Promise(resolve => child.on('close', resolve))
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' })
  })

  it('ends alike with a reader of one line', async () => {
    const words = `'${process.execPath}' '${PROGRAM}' match no-box-120-ozonator-no-neutral`
    const child = spawn('sh', ['-c', `{ ${words}; echo "code $?" >&2; } | head -n 1`])
    let [stdout, stderr] = ['', '']
    child.stdout.on('data', text => {
      stdout += text
    })
    child.stderr.on('data', text => {
      stderr += text
    })
    await new Promise(resolve => child.on('close', resolve))
    expect(stderr).toBe('code 1\n')
    expect(stdout.split('\n')).toHaveLength(2)
  })
})

describe('one mode', () => {
  it('as a netlist, with what its names stand for', () => {
    const map = join(folder, 'map.json')
    const words = ['solve', TUB, '--landing', landing(), '--mode', 'circulate+heat+ozone']
    const { status, stdout } = tubwright([...words, '--spice', '--map', map])
    expect(status).toBe(0)
    expect(stdout).toMatch(/^\.ac /imu)
    expect(stdout.trimEnd()).toMatch(/\.end$/iu)
    const names: unknown = JSON.parse(readFileSync(map, 'utf8'))
    expect(names).toMatchObject({ nodes: { 0: 'earth' } })
  })

  it('by its commands in any order', () => {
    const words = ['solve', TUB, '--landing', landing(), '--json', '--mode']
    const told = ['ozone+heat+circulate', 'heat,circulate,ozone'].map(mode => {
      return tubwright([...words, mode]).stdout
    })
    expect(told[0]).toBe(told[1])
    expect(JSON.parse(told[0] ?? '')).toMatchObject({ mode: 'circulate+heat+ozone', trip: null })
  })

  it('that the box cannot be in: the modes it can be in', () => {
    const ran = tubwright(['solve', TUB, '--landing', landing(), '--mode', 'heat'])
    refused(ran, '--mode heat: the box cannot be in it. It can be in:\n  off\n')
    expect(ran.stderr).toContain('\n  circulate+heat+ozone\n')
  })

  it('with a map that nothing asks for', () => {
    refused(tubwright(['solve', TUB, '--landing', landing(), '--map', 'm']), '--map goes with')
  })
})

describe('bad words and files', () => {
  it('a tub that is not there, in words that would paint', () => {
    const ran = tubwright(['match', `${ESCAPE}[31mgarden`])
    refused(ran, '\uFFFD[31mgarden: there is no such tub.')
    expect(ran.stderr).not.toContain(ESCAPE)
  })

  it('a command that is not there', () => {
    refused(tubwright(['paln', TUB]), "unknown command 'paln'\n(Did you mean plan?)")
  })

  it('two gigabytes of nothing, unread', () => {
    const path = join(folder, 'sparse.yaml')
    writeFileSync(path, '')
    truncateSync(path, 2 ** 31)
    const start = performance.now()
    refused(tubwright(['match', path]), '2147483648 bytes; at most 4000000 are read.')
    expect(performance.now() - start).toBeLessThan(10_000)
  })

  it('a stream without end', () => {
    refused(tubwright(['match', '/dev/zero']), 'more than 4000000 bytes')
  })
})

describe('writing', () => {
  const sheet = (out: string, cwd = folder) =>
    tubwright(['sheet', TUB, '--box', 'heron-4', '--out', out], { cwd })

  it.each([
    ['a missing folder', 'missing/sheet.html', 'there is no folder missing'],
    ['a folder', 'there', 'it is a folder; name a file in it'],
    ['below a file', 'file/sheet.html', 'a file stands where its path wants a folder'],
    ['where nobody may', '/proc/sheet.html', '/proc/sheet.html was not written'],
  ])('into %s is refused and leaves nothing', (_, out, told) => {
    const cwd = freshFolder()
    mkdirSync(join(cwd, 'there'))
    writeFileSync(join(cwd, 'file'), 'kept')
    const before = readdirSync(cwd, { recursive: true })
    refused(sheet(out, cwd), told)
    expect(readdirSync(cwd, { recursive: true })).toEqual(before)
    expect(readFileSync(join(cwd, 'file'), 'utf8')).toBe('kept')
  })

  it('under a name with spaces and other scripts', () => {
    const out = join(folder, 'Blatt für 灯 💡.html')
    const { status, stdout, stderr } = sheet(out)
    expect({ status, stdout }).toEqual({ status: 1, stdout: '' })
    expect(stderr).toContain(`sheet written to ${out}`)
    expect(readFileSync(out, 'utf8')).toMatch(/<\/html>\s*$/u)
  })

  it('through a link keeps the link', () => {
    const [file, link] = [join(folder, 'file.html'), join(folder, 'link.html')]
    writeFileSync(file, 'old')
    symlinkSync(file, link)
    expect(sheet(link).status).toBe(1)
    expect(lstatSync(link).isSymbolicLink()).toBe(true)
    expect(readFileSync(file, 'utf8')).toContain('<html')
  })

  it('into a device writes straight into it', () => {
    expect(sheet('/dev/null').status).toBe(1)
    expect(lstatSync('/dev/null').isCharacterDevice()).toBe(true)
  })

  it('killed at any moment leaves the old file or the whole new one', async () => {
    const out = join(folder, 'killed.html')
    for (const wait of [200, 500, 800, 1100]) {
      writeFileSync(out, 'old')
      const child = spawn(process.execPath, [
        PROGRAM,
        'sheet',
        TUB,
        '--box',
        'heron-4',
        '--out',
        out,
      ])
      const closed = new Promise(resolve => child.on('close', resolve))
      await pause(wait)
      child.kill('SIGKILL')
      await closed
      expect(readFileSync(out, 'utf8')).toMatch(/^old$|<\/html>\s*$/u)
    }
  })
})

describe('where it stands', () => {
  it('runs from any folder, and from a project folder of any name', () => {
    const project = join(freshFolder(), 'tub work #1 100%25 é')
    const app = join(project, 'apps/cli')
    mkdirSync(app, { recursive: true })
    cpSync(DIST, join(app, 'dist'), { recursive: true })
    cpSync(join(PROGRAM, '..'), join(app, 'bin'), { recursive: true })
    writeFileSync(join(app, 'package.json'), '{ "type": "module" }')
    mkdirSync(join(project, 'node_modules/@tubwright'), { recursive: true })
    cpSync(join(DATA, '..'), join(project, 'node_modules/@tubwright/catalog'), { recursive: true })
    const program = join(app, 'bin/tubwright.js')
    const ran = tubwright(['match', TUB], { cwd: '/', program })
    expect(ran).toEqual(tubwright(['match', TUB], { cwd: folder }))
    expect(ran.status).toBe(0)
  })

  it('shows the demo and writes its sheet where it is called', () => {
    const cwd = freshFolder()
    const { status, stdout } = tubwright(['demo'], { cwd })
    expect(status).toBe(0)
    expect(stdout).toContain(`The sheet to work from: ${join(cwd, 'tubwright-sheet.html')}`)
    expect(readdirSync(cwd)).toEqual(['tubwright-sheet.html'])
  })

  it('says so where it is not built', () => {
    const bare = join(freshFolder(), 'bin')
    mkdirSync(bare)
    cpSync(PROGRAM, join(bare, 'tubwright.mjs'))
    const ran = tubwright(['demo'], { program: join(bare, 'tubwright.mjs') })
    refused(ran, 'tubwright is not built yet: run "npm run build" once.')
  })
})
