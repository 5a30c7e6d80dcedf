import type { Document, Node } from 'yaml'
import { isMap, isPair, isScalar, isSeq, parseDocument } from 'yaml'
import { ALIASES_MAX, TEXT_MAX } from './parse-text.ts'

/** Where a mark stands in a text that may be no YAML yet, since somebody is writing it. */
export interface MarkPlace {
  readonly at: 'key' | 'value'
  /** Of what is around a key; of the value itself. */
  readonly path: readonly (string | number)[]
  /** Where the key or value begins in the text. */
  readonly from: number
  /** The text as a value, as far as it can be read; the mark is in it. */
  readonly document: unknown
}

type Found = Omit<MarkPlace, 'document'>

const startOf = (node: Node): number => node.range?.[0] ?? 0

function markIn(node: unknown, mark: string, path: Found['path']): Found | undefined {
  if (isScalar(node))
    return typeof node.value === 'string' && node.value.includes(mark)
      ? { at: 'value', path, from: startOf(node) }
      : undefined
  if (!isMap(node) && !isSeq(node)) return undefined
  for (const [index, item] of node.items.entries()) {
    const found = isPair(item)
      ? markInPair(item.key, item.value, mark, path)
      : markIn(item, mark, [...path, index])
    if (found) return found
  }
  return undefined
}

function markInPair(
  key: unknown,
  value: unknown,
  mark: string,
  path: Found['path'],
): Found | undefined {
  const name = isScalar(key) ? String(key.value ?? '') : ''
  if (isScalar(key) && name.includes(mark)) return { at: 'key', path, from: startOf(key) }
  return markIn(value, mark, [...path, name])
}

const readAsFar = (document: Document): unknown => document.toJS({ maxAliasCount: ALIASES_MAX })

/**
 * Finds a mark that was put into a text where somebody is writing: as a key, or as a value.
 *
 * @returns undefined where it stands in neither, such as in a comment
 */
export function placeOfMark(text: string, mark: string): MarkPlace | undefined {
  if (text.length > TEXT_MAX) return undefined
  try {
    const document = parseDocument(text, {
      logLevel: 'silent',
      prettyErrors: false,
      strict: false,
      uniqueKeys: false,
    })
    const found = markIn(document.contents, mark, [])
    return found && { ...found, document: readAsFar(document) }
  } catch {
    // Nested without end, or aliases of aliases: the diagnostics say so.
    return undefined
  }
}
