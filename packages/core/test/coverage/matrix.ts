import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { parse } from 'yaml'
import { demoIds, demoText } from '../support/demo.ts'
import type { Row } from './describable.ts'
import { describable, exercisedBy, FILES } from './describable.ts'

const root = fileURLToPath(new URL('../../../../', import.meta.url))

/** Where the matrix is kept. */
export const MATRIX = join(root, 'docs/coverage.md')

type Folder = keyof typeof FILES
const FOLDERS = Object.keys(FILES) as Folder[]

/** A row of the matrix: what exercises it, and which test files name it. */
export interface Covered extends Row {
  readonly by: Readonly<Record<Folder, readonly string[]>>
  readonly tests: readonly string[]
}

const filesUnder = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap(each => {
    if (each.name === 'node_modules' || each.name === 'dist') return []
    const path = join(folder, each.name)
    return each.isDirectory() ? filesUnder(path) : [path]
  })

/** Scenarios first: they are there to show a thing, where others may only mention it. */
const rankOf = (path: string): number => (path.includes('/test/scenarios/') ? 0 : 1)

/** Texts of every test but this one, without comments. */
function testTexts(): readonly { readonly name: string; readonly words: ReadonlySet<string> }[] {
  return ['packages', 'apps/cli']
    .flatMap(each => filesUnder(join(root, each)))
    .filter(path => path.endsWith('.test.ts') && !path.includes('/test/coverage/'))
    .sort((a, b) => rankOf(a) - rankOf(b) || (a < b ? -1 : 1))
    .map(path => ({
      name: path.slice(path.lastIndexOf('/') + 1, -'.test.ts'.length),
      words: wordsOf(readFileSync(path, 'utf8')),
    }))
}

/**
 * The words of a text: whole words, and whole words with hyphens.
 *
 * A test names a row where it says the row's key or word, in code or in a text that it reads.
 */
const wordsOf = (text: string): ReadonlySet<string> =>
  new Set(text.replace(/^\s*(\/\/|\/?\*).*$/gmu, '').match(/[A-Za-z0-9]+(?:-[A-Za-z0-9]+)*/gu))

/** A word of several, such as `on the motor` or `3/4`, is named by all of them. */
const names = (words: ReadonlySet<string>, word: string): boolean =>
  [...wordsOf(word)].every(each => words.has(each))

/** Every row with what exercises it. */
export function coverage(): readonly Covered[] {
  const files = FOLDERS.flatMap(folder =>
    demoIds(folder).map(id => ({
      folder,
      id,
      rows: exercisedBy(FILES[folder], parse(demoText(folder, id))),
    })),
  )
  const tests = testTexts()
  return describable().map(row => {
    const of = (folder: Folder) =>
      files.filter(each => each.folder === folder && each.rows.has(row.name)).map(each => each.id)
    return {
      ...row,
      by: { tubs: of('tubs'), boxes: of('boxes'), devices: of('devices') },
      tests: tests.filter(each => names(each.words, row.word)).map(each => each.name),
    }
  })
}

/** Which folders a row is for, by the first word of its name: one of them has to exercise it. */
const FOR: Readonly<Record<string, readonly Folder[]>> = {
  tub: ['tubs'],
  supply: ['tubs'],
  box: ['boxes'],
  device: ['devices'],
  board: ['boxes', 'devices'],
  load: ['tubs', 'boxes'],
  known: ['tubs', 'boxes'],
}

const PLAIN = 'functions of a second circuit land on a device as the plain ones'
const ALONE = 'a place switches what feeds a load, and its return with the same command'

/** Rows that no file may exercise, and why. */
export const EXCEPT: Readonly<Record<string, string>> = {
  'box.feeds.system = high-leg-delta': 'recognised at the tub and refused: no box takes it',
  'supply.devices.fedBy = leg3': 'no box takes two circuits of three phases',
  'device.fedAt = second-leg1': PLAIN,
  'device.fedAt = second-leg2': PLAIN,
  'device.fedAt = second-neutral': PLAIN,
  'device.fedAt = second-earth': PLAIN,
  'device.lands = second-leg1': PLAIN,
  'device.lands = second-leg2': PLAIN,
  'device.lands = second-neutral': PLAIN,
  'device.lands = second-earth': PLAIN,
  'box.places.commands = common': ALONE,
  'box.places.commands = earth': ALONE,
  'box.places.commands = signal': ALONE,
  'box.places.commands = data': ALONE,
}

/** What a row lacks. */
export function lacks({ name, by, tests }: Covered): readonly string[] {
  if (Object.hasOwn(EXCEPT, name)) return []
  const folders = FOR[name.split(/[. ]/u)[0] ?? ''] ?? FOLDERS
  return [
    ...(folders.some(each => by[each].length > 0) ? [] : [folders.join(' or ')]),
    ...(tests.length > 0 ? [] : ['test']),
  ]
}

const SHOWN = 3

const some = (all: readonly string[]): string =>
  all.length > SHOWN
    ? `${all.slice(0, SHOWN - 1).join(', ')} and ${all.length - SHOWN + 1} more`
    : all.join(', ')

const HEAD = `# What can be described, and what exercises it

Written by \`npm run coverage\`; a test fails where it is out of date, and where a row has no file of the
catalogue or no test. Rows are the keys and words of the schemas. A test names a row where it says its key
or word; one of them is shown.

| row | tubs | boxes | devices | a test that names it |
| --- | ---- | ----- | ------- | -------------------- |
`

/** The matrix as text. */
export const printed = (all: readonly Covered[]): string =>
  HEAD +
  all
    .map(({ name, by, tests }) => {
      const why = EXCEPT[name]
      if (why !== undefined) return `| \`${name}\` | — | — | — | none: ${why} |\n`
      const cells = [...FOLDERS.map(each => some(by[each])), tests[0] ?? '']
      return `| \`${name}\` | ${cells.join(' | ')} |\n`
    })
    .join('')
