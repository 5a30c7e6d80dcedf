import { readdirSync } from 'node:fs'
import type { TableName, Words } from '../../src/index.ts'
import { ENGLISH } from '../../src/index.ts'

const src = new URL('../../src/', import.meta.url)

/** Files of one language by their path in its folder, sorted. */
export const filesOf = (language: string): readonly string[] =>
  readdirSync(new URL(`${language}/`, src), { recursive: true, encoding: 'utf8' })
    .filter(name => name.endsWith('.ts'))
    .sort()

/** What a file of one language exports. */
export const exportsOf = async (
  language: string,
  file: string,
): Promise<Readonly<Record<string, unknown>>> => import(new URL(`${language}/${file}`, src).href)

/** Every text of a table by its id; of a sentence alone, by no id. */
export function textsOf(table: unknown, id = ''): readonly (readonly [string, string])[] {
  if (typeof table === 'string') return [[id, table]]
  if (typeof table !== 'object' || table === null) return []
  const within = (name: string): string => (id === '' ? name : `${id}.${name}`)
  return Object.entries(table).flatMap(([name, each]) => textsOf(each, within(name)))
}

const isTable = (value: unknown): boolean => typeof value === 'object' && value !== null

/** The tables of a bundle, found in it and not listed: a new one is among them by itself. */
export const TABLES = (Object.keys(ENGLISH) as (keyof Words)[]).filter(
  name => isTable(ENGLISH[name]) || name === 'changedNote',
) as readonly TableName[]

/** Every sentence of a bundle, as `table/id`. */
export const sentencesOf = (words: Words): ReadonlyMap<string, string> =>
  new Map(
    TABLES.flatMap(name =>
      textsOf(words[name]).map(([id, text]) => [id === '' ? name : `${name}/${id}`, text] as const),
    ),
  )

/** Holes with their formats, each once. */
export const holesWithFormats = (text: string): readonly string[] => [
  ...new Set(text.match(/\{\w+(?::\w+)?\}/gu)),
]

/** What a person reads of a sentence: no hole, nothing quoted, for that is said as a file has it. */
export const plainOf = (text: string): string => text.replace(/\{[^}]*\}|“[^”]*”|"[^"]*"/gu, ' ')
