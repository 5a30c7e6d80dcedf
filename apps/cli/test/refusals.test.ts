import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ran } from './support/in-process.ts'
import { DATA, dropFolders, freshFolder } from './support/program.ts'

const TUB = 'everyday-240-circulation'
const DEMO = readFileSync(join(DATA, 'tubs', `${TUB}.yaml`), 'utf8')
const ESCAPE = '\u001b'
let folder = ''
beforeAll(() => {
  folder = freshFolder()
})
afterAll(dropFolders)

const bomb = () =>
  [...'bcdefghi']
    .map((key, at) => `${key}: &${key} [*${'abcdefgh'[at]},*${'abcdefgh'[at]}]`)
    .join('\n')

/** Words that are refused: nothing on stdout, on stderr what is wrong, and no code that paints. */
async function refused(words: readonly string[], told: string): Promise<string> {
  const { code, stdout, stderr } = await ran(words)
  expect({ code, stdout }).toEqual({ code: 2, stdout: '' })
  expect(stderr).toContain(told)
  expect(stderr).not.toContain(ESCAPE)
  return stderr
}

describe('bad words', () => {
  it.each([
    [['paln', TUB], "unknown command 'paln'\n(Did you mean plan?)"],
    [['plan', TUB, '--bix', 'heron-4'], "unknown option '--bix'\n(Did you mean --box?)"],
    [['plan'], "missing required argument 'survey'"],
    [['plan', TUB, 'more'], 'too many arguments'],
    [['match', 'everyday-240'], 'Did you mean the tub "everyday-240-circulation"?'],
    [['match', 'gardn-230'], 'Did you mean the tub "garden-230"?'],
    [['match', 'tubs/gardn-230.yaml'], 'Did you mean the tub "garden-230"?'],
    [['plan', TUB, '--box', 'hero-4'], 'Did you mean the box "heron-4"?'],
    [['match', TUB, '--catalog', '/no/such/folder'], '/no/such/folder: there is no such folder.'],
    [['match', TUB, '--catalog', DATA.slice(0, -5)], 'a catalogue has a folder "boxes"'],
    [['match', ''], 'One of the words is empty ("")'],
    [['plan', TUB, '--out', ''], 'One of the words is empty ("")'],
    [['match', `${ESCAPE}[31mred`], '\uFFFD[31mred: there is no such tub.'],
  ])('%j', async (words, told) => {
    await refused(words, told)
  })
})

describe('bad files', () => {
  it.each([
    ['broken YAML', () => DEMO.replace('[high, common]', '[high, common'), ':36:75: is no YAML'],
    [
      'bytes',
      () => new Uint8Array([0xff, 0xfe, 0x00, 0x80]),
      ':1: it is no UTF-8 text. Save it as UTF-8.',
    ],
    ['an executable', () => readFileSync(process.execPath).subarray(0, 9000), 'no UTF-8 text'],
    ['an alias bomb', () => `a: &a [x]\n${bomb()}`, 'repeats itself too often'],
    ['brackets', () => '['.repeat(200_000), 'more than 100 levels deep'],
    [
      'one line of another encoding',
      () => Buffer.from(DEMO.replace('Invented scenario', 'Erfunden für uns'), 'latin1'),
      ':4: it is no UTF-8 text. Save it as UTF-8.',
    ],
    ['a list', () => '- a\n- b\n', ':1:1: it is a list of 2. It wants keys and values: schema,'],
    [
      'a key twice',
      () => DEMO.replace('region: US', 'region: US\nregion: CA'),
      ':6:1: region is written a second time. It wants one place.',
    ],
    [
      'a name of sixty letters',
      () => DEMO.replace('id: pump-a', `id: ${'x'.repeat(60)}`),
      ':26:9: loads.0.id is 60 characters long. It may be: at most 40 characters.',
    ],
    [
      'a range the wrong way round',
      () => DEMO.replace('breaker: 50 A', 'breaker: { from: 60 A, to: 50 A, source: lever }'),
      ':9:20: supply.breaker.from is "60 A", above its end "50 A". It may be: from "50 A" to "60 A"',
    ],
    ['nothing', () => '', ':1:1: it is empty. It wants keys and values: schema, id,'],
    ['a landing', () => 'schema: landing/1', ':1:9: schema is "landing/1".'],
    [
      'a label that would paint',
      () => DEMO.replace('label: LED light', `label: "LED\\e[31m${ESCAPE}[2J"`),
      ':77:12: loads.4.label is text with the character U+001B.',
    ],
    [
      'a key that would paint',
      () => DEMO.replace('region: US', `"reg\\e[31mion": US`),
      'text with the character U+001B',
    ],
  ])('%s', async (name, text, told) => {
    const path = join(folder, `${name}.yaml`)
    writeFileSync(path, text())
    await refused(['match', path], told)
  })

  it('a folder for a survey, a landing, a box', async () => {
    const told = `${folder}: it is a folder; name a file in it.`
    await refused(['match', folder], told)
    await refused(['verify', TUB, '--landing', folder], told)
    await refused(['plan', TUB, '--box', folder], told)
  })

  it('a catalogue that is a file, or has no box', async () => {
    const file = join(DATA, 'boxes/heron-4.yaml')
    await refused(['catalog', '--catalog', file], `${file}: it is no folder; a catalogue is one`)
    const bare = join(folder, 'bare')
    cpSync(join(DATA, 'devices'), join(bare, 'devices'), { recursive: true })
    mkdirSync(join(bare, 'boxes'))
    const survey = join(DATA, 'tubs', `${TUB}.yaml`)
    for (const command of ['match', 'plan', 'verify'])
      await refused([command, survey, '--catalog', bare], `${join(bare, 'boxes')}: there is no box`)
    await refused(['match', TUB, '--catalog', bare], 'or in the catalogue, which has none.')
  })

  it('a catalogue with one box twice', async () => {
    const twice = join(folder, 'twice')
    cpSync(DATA, twice, { recursive: true })
    cpSync(join(twice, 'boxes/plover-1.yaml'), join(twice, 'boxes/plover-2.yaml'))
    await refused(['catalog', '--catalog', twice], 'its id is "plover-1", as in another file')
  })

  it('a catalogue with slips in several files: all of them', async () => {
    const slips = join(folder, 'slips')
    cpSync(DATA, slips, { recursive: true })
    for (const box of ['plover-1', 'heron-4']) {
      const path = join(slips, 'boxes', `${box}.yaml`)
      writeFileSync(path, readFileSync(path, 'utf8').replace('heat: heat', 'heat: het'))
    }
    const stderr = await refused(['--catalog', slips, 'catalog'], 'boxes/plover-1.yaml:')
    expect(stderr).toContain('boxes/heron-4.yaml:')
  })
})
