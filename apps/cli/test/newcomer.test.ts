import { cpSync, existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ran } from './support/in-process.ts'
import { DATA, dropFolders, freshFolder } from './support/program.ts'

const TUB = 'everyday-240-circulation'
const DEMO = readFileSync(join(DATA, 'tubs', `${TUB}.yaml`), 'utf8')
let folder = ''
let landing = ''

/** The demo survey with something otherwise, in a file of its own. */
function surveyWith(name: string, from: string, to: string): string {
  const path = join(folder, name)
  expect(DEMO).toContain(from)
  writeFileSync(path, DEMO.replace(from, to))
  return path
}

const noteLines = (stderr: string): readonly string[] => stderr.split('\n').filter(Boolean)

beforeAll(async () => {
  folder = freshFolder()
  landing = join(folder, 'landing.yaml')
  await ran(['plan', TUB, '--box', 'heron-4', '--out', landing])
})
afterAll(dropFolders)

describe('a landing', () => {
  it('of another tub is refused with one line, whatever else differs', async () => {
    const { code, stdout, stderr } = await ran([
      'verify',
      'everyday-240-plain',
      '--landing',
      landing,
    ])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(noteLines(stderr)).toEqual([
      `${landing} cannot be used`,
      `${landing}:2:9: this landing is for survey "${TUB}" on box "heron-4"; here are survey "everyday-240-plain" and box "heron-4". Give the landing of these, or its own.`,
    ])
  })

  it('of another box, likewise', async () => {
    const { code, stderr } = await ran(['verify', TUB, '--box', 'rowan-2', '--landing', landing])
    expect(code).toBe(2)
    expect(noteLines(stderr)).toHaveLength(2)
    expect(stderr).toContain(`${landing}:3:6: this landing is for`)
  })

  it.each([
    ['hern-4', 'Did you mean "heron-4"?'],
    ['strange', 'Give its file with --box FILE, or the catalogue it is in with --catalog FOLDER.'],
  ])('on a box "%s" says whose word that is', async (box, hint) => {
    const other = join(folder, 'other box.yaml')
    writeFileSync(other, readFileSync(landing, 'utf8').replace('box: heron-4', `box: ${box}`))
    const { code, stderr } = await ran(['verify', TUB, '--landing', other])
    expect(code).toBe(2)
    expect(stderr).toBe(`${other}: its box is "${box}", which is not in the catalogue. ${hint}\n`)
  })
})

describe('what is said meanwhile', () => {
  it.each([
    [['plan'], /^(planning on .* …\n)+$/u],
    [['verify'], /^judging the plan on Bittern 8, for no landing is given\n$/u],
    [['solve'], /^solving the plan on Bittern 8, for no landing is given\n$/u],
    [['sheet'], /^$/u],
    [['match'], /^$/u],
  ])('by %j is what it does', async ([command = ''], wanted) => {
    expect((await ran([command, TUB])).stderr).toMatch(wanted)
  })
})

describe('a breaker that nobody knows', () => {
  const question = 'Which breaker feeds the tub? Write it in the survey, as in "breaker: 50 A"'
  let path = ''
  beforeAll(() => {
    path = surveyWith('unknown.yaml', 'breaker: 50 A', 'breaker: { unknown: not visible }')
  })

  it('is asked for once, for every box that waits for it', async () => {
    const { code, stdout } = await ran(['plan', path])
    expect(code).toBe(1)
    expect(stdout).toContain('not known  bittern-8, heron-4, rowan-2: ')
    expect(stdout.split(question)).toHaveLength(2)
    expect(stdout).not.toMatch(/candidate|least bad/u)
  })

  it.each(['verify', 'solve', 'sheet'])('is asked for by %s, too', async command => {
    const { code, stdout, stderr } = await ran([command, path])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain(question)
  })

  it('is a question in the wire form', async () => {
    const { stdout } = await ran(['plan', path, '--box', 'heron-4', '--json'])
    expect(JSON.parse(stdout)).toMatchObject({
      failures: [{ reason: 'open', box: 'heron-4', question: { message: 'ask-breaker' } }],
    })
  })

  it('is no question where it is known and too small', async () => {
    const small = surveyWith('small.yaml', 'breaker: 50 A', 'breaker: 10 A')
    const { code, stdout } = await ran(['plan', small, '--box', 'heron-4'])
    expect(code).toBe(1)
    expect(stdout).toContain('cannot  heron-4: its lowest current limit is above 80 % of')
  })
})

describe('a value that is hardly ever met', () => {
  let path = ''
  const told = () =>
    `${path}:10:20: warning: supply.sourceImpedance is "3 ohm", which is hardly ever so; usual is at most 2 ohm. Look again.\n`
  beforeAll(() => {
    path = surveyWith('unlikely.yaml', '25 mohm', '3 ohm')
  })

  it('is told, and blocks nothing', async () => {
    const { code, stdout, stderr } = await ran(['match', path])
    expect({ code, stderr }).toEqual({ code: 0, stderr: told() })
    expect(stdout).toContain('may serve')
    expect(stdout).not.toContain('warning')
  })

  it('is in the wire form, with its place', async () => {
    const { stdout } = await ran(['match', path, '--json'])
    const wanted = { code: 'implausible', severity: 'warning', file: path, line: 10, column: 20 }
    expect(JSON.parse(stdout)).toMatchObject({ schema: 'match-set/1', warnings: [wanted] })
    const usual = await ran(['match', TUB, '--json'])
    expect(JSON.parse(usual.stdout)).toMatchObject({ warnings: [] })
  })

  it('stands among the errors of a text that is refused', async () => {
    const both = join(folder, 'both.yaml')
    writeFileSync(both, readFileSync(path, 'utf8').replace('from: L1 }', 'from: L9 }'))
    const { code, stderr } = await ran(['match', both])
    expect(code).toBe(2)
    expect(stderr).toContain(':20:73: supply.cables.0.conductors.0.from is "L9"')
    expect(stderr).toContain(':10:20: warning: supply.sourceImpedance')
  })

  it('of a box in the catalogue is told with its file', async () => {
    const shelf = join(folder, 'shelf')
    cpSync(DATA, shelf, { recursive: true })
    const box = join(shelf, 'boxes/heron-4.yaml')
    writeFileSync(box, readFileSync(box, 'utf8').replace('power: 5.5 kW', 'power: 25 kW'))
    const { code, stderr } = await ran(['catalog', '--catalog', shelf])
    expect(code).toBe(0)
    expect(stderr).toMatch(/heron-4\.yaml:\d+:\d+: warning: supplied\.0\.circuits\.0\.power/u)
  })
})

describe('an output', () => {
  it('never goes over the survey it is made of', async () => {
    const path = surveyWith('mine.yaml', 'region: US', 'region: US')
    for (const words of [
      ['plan', path, '--box', 'heron-4', '--out', path],
      ['sheet', path, '--box', 'heron-4', '--out', join(folder, '.', 'mine.yaml')],
      ['solve', path, '--landing', landing, '--spice', '--map', path],
      ['solve', TUB, '--landing', landing, '--spice', '--map', landing],
    ]) {
      const { code, stdout, stderr } = await ran(words)
      expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
      expect(stderr).toContain('was not written: it is what this was made of; name another file.')
    }
    expect(readFileSync(path, 'utf8')).toBe(DEMO)
  })

  it('never goes over the catalogue', async () => {
    const shelf = join(folder, 'kept')
    cpSync(DATA, shelf, { recursive: true })
    const path = join(shelf, 'boxes/heron-4.yaml')
    const words = ['plan', TUB, '--box', 'heron-4', '--catalog', shelf, '--out', path]
    expect((await ran(words)).code).toBe(2)
    expect(readFileSync(path, 'utf8')).toBe(readFileSync(join(DATA, 'boxes/heron-4.yaml'), 'utf8'))
  })

  it('of the demo that cannot be written leaves nothing said', async () => {
    const cwd = freshFolder()
    const { code, stdout, stderr } = await ran(['demo', '--out', join(cwd, 'missing/sheet.html')])
    expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
    expect(stderr).toContain('there is no folder')
    expect(existsSync(join(cwd, 'missing'))).toBe(false)
    expect(readdirSync(cwd)).toEqual([])
  })
})
