import type { Diagnostic } from '@tubwright/core'
import type { Alias, Document, Node, Pair, YAMLMap } from 'yaml'
import { isAlias, isCollection, isMap, isNode, isPair, isScalar } from 'yaml'
import type { Placed } from './parse-text.ts'

type Path = Diagnostic['path']

/** Control characters, halves of characters, and signs that turn the reading direction. */
const UNPRINTABLE = /[\p{Cc}\p{Cs}\u2028\u2029\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu
/** Where a text may have several lines. */
const MANY_LINES = 'note'

const STANDARD = 'tag:yaml.org,2002:'
const TAGS: readonly (string | undefined)[] = [
  undefined,
  ...['str', 'int', 'float', 'bool', 'null', 'map', 'seq'].map(each => `${STANDARD}${each}`),
]

/** What is wrong with a document; `fatal` where no value can be made of it. */
interface Inspection {
  readonly problems: Placed[]
  fatal: boolean
  /** Where the last alias stands. */
  aliasAt: number
}

const startOf = (node: Node): number => node.range?.[0] ?? 0

/** The text of a key as a value will have it. */
export const keyText = (key: unknown): string =>
  isScalar(key) ? String(key.value ?? '') : String(key)

function unprintable(text: string, path: Path): string | undefined {
  const mayBreak = path.at(-1) === MANY_LINES
  const found = [...text.matchAll(UNPRINTABLE)].find(each => !(mayBreak && each[0] === '\n'))
  if (!found) return undefined
  const number = (found[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
  return number === '000A' ? 'text of several lines' : `text with the character U+${number}`
}

function inspectText(node: Node, path: Path, { problems }: Inspection): void {
  const bad = isScalar(node) && typeof node.value === 'string' && unprintable(node.value, path)
  if (bad)
    problems.push({
      code: 'wrong-value',
      path,
      is: bad,
      may: 'characters that can be printed, on one line',
      offset: startOf(node),
    })
}

function inspectTag(node: Node, path: Path, found: Inspection): void {
  if (TAGS.includes(node.tag)) return
  found.fatal = true
  const [is, may] = [
    `the tag ${node.tag?.replace(STANDARD, '!!')}`,
    'text, numbers, lists and keys without a tag',
  ]
  found.problems.push({ code: 'yaml-syntax', path, is, may, offset: startOf(node) })
}

function inspectAlias(
  node: Alias,
  path: Path,
  document: Document,
  above: readonly Node[],
  found: Inspection,
): void {
  found.aliasAt = startOf(node)
  const target = node.resolve(document)
  if (target && !above.includes(target)) return
  found.fatal = true
  const is = target ? `*${node.source} inside what it stands for` : `*${node.source} of nothing`
  const may = `an alias of an anchor that stands complete before it`
  found.problems.push({ code: 'yaml-syntax', path, is, may, offset: startOf(node) })
}

function inspectKeys(map: YAMLMap, path: Path, { problems }: Inspection): void {
  const seen = new Set<string>()
  for (const { key } of map.items) {
    if (!isNode(key)) continue
    const name = keyText(key)
    const at = { path: [...path, name], offset: startOf(key) }
    if (!isScalar(key))
      problems.push({ ...at, path, code: 'unknown-key', is: 'a key that is no word', may: 'words' })
    else if (name === '__proto__')
      problems.push({ ...at, code: 'unknown-key', is: `"${name}"`, may: 'any other name' })
    else if (seen.has(name))
      problems.push({
        ...at,
        code: 'duplicate-name',
        is: 'written a second time',
        may: 'one place',
      })
    else inspectTextOfKey(key, path, problems)
    seen.add(name)
  }
}

function inspectTextOfKey(key: Node, path: Path, problems: Placed[]): void {
  const bad = unprintable(keyText(key), [])
  if (bad)
    problems.push({
      code: 'unknown-key',
      path,
      is: bad,
      may: 'keys of characters that can be printed',
      offset: startOf(key),
    })
}

/**
 * What a schema cannot see in a document: repeated keys, tags, aliases of nothing or of themselves,
 * characters that cannot be printed.
 *
 * @returns `fatal` where making a value of the document has no meaning
 */
export function inspectDocument(document: Document.Parsed): Inspection {
  const found: Inspection = { problems: [], fatal: false, aliasAt: 0 }
  const version = document.directives.yaml
  if (version.explicit && version.version !== '1.2') {
    found.fatal = true
    const is = `the directive %YAML ${version.version}`
    found.problems.push({ code: 'yaml-syntax', path: [], is, may: 'YAML 1.2', offset: 0 })
  }
  const walk = (node: unknown, path: Path, above: readonly Node[]): void => {
    if (!isNode(node)) return
    if (isAlias(node)) {
      inspectAlias(node, path, document, above, found)
      return
    }
    inspectTag(node, path, found)
    inspectText(node, path, found)
    if (isMap(node)) inspectKeys(node, path, found)
    if (!isCollection(node)) return
    node.items.forEach((item, index) => {
      if (isPair(item)) walk(item.value, [...path, keyText(item.key)], [...above, node])
      else walk(item, [...path, index], [...above, node])
    })
  }
  walk(document.contents, [], [])
  return found
}

const childOf = (node: Node, key: string | number): Node | Pair | undefined => {
  if (!isCollection(node)) return undefined
  if (isMap(node)) return node.items.findLast(each => keyText(each.key) === String(key))
  const item = node.items[Number(key)]
  return isNode(item) ? item : undefined
}

/**
 * The offset where a path stands in the text; of the nearest thing above where its end is missing.
 *
 * @param atKey - point at the key of the last step, not at its value
 */
export function offsetOf(document: Document, path: Path, atKey: boolean): number {
  let node: Node | null | undefined = document.contents as Node | null
  let offset = node ? startOf(node) : 0
  for (const [index, key] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document)
    const child: Node | Pair | undefined = node ? childOf(node, key) : undefined
    if (child === undefined) return offset
    const pair = isPair(child) ? child : undefined
    if (pair && isNode(pair.key)) offset = startOf(pair.key)
    node = (pair ? pair.value : child) as Node | null
    const isLast = index === path.length - 1
    if (isNode(node) && node.range && (isLast ? !(atKey && pair) : !pair)) offset = startOf(node)
  }
  return offset
}
