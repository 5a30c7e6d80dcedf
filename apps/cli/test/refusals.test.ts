import { cpSync, readFileSync, writeFileSync } from 'node:fs'
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
    [['match', `${ESCAPE}[31mred`], '\uFFFD[31mred: there is no such tub.'],
  ])('%j', async (words, told) => {
    await refused(words, told)
  })
})

describe('bad files', () => {
  it.each([
    ['broken YAML', () => DEMO.replace('[high, common]', '[high, common'), ':36:75: is no YAML'],
    ['bytes', () => new Uint8Array([0xff, 0xfe, 0x00, 0x80]), 'it is no UTF-8 text.'],
    ['an executable', () => readFileSync(process.execPath).subarray(0, 9000), 'no UTF-8 text'],
    ['an alias bomb', () => `a: &a [x]\n${bomb()}`, 'repeats itself too often'],
    ['brackets', () => '['.repeat(200_000), 'more than 100 levels deep'],
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
    await refused(['match', folder], `${folder}: it is a folder.`)
    await refused(['verify', TUB, '--landing', folder], `${folder}: it is a folder.`)
    await refused(['plan', TUB, '--box', folder], `${folder}: it is a folder.`)
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
