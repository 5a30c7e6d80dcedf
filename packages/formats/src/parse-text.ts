import type { Diagnostic } from '@tubwright/core'
import type { Document, YAMLError } from 'yaml'
import { Composer, Lexer, LineCounter, Parser } from 'yaml'

/** Text longer than this is no description of a tub: it is refused unread. */
export const TEXT_MAX = 1_000_000 // [characters]
/** The largest box has about a tenth of so many. */
export const TOKENS_MAX = 100_000
/** Descriptions nest about ten levels; a parser that recurses ends badly far above. */
export const DEPTH_MAX = 100
export const ALIASES_MAX = 50
const ERRORS_MAX = 1000 // more of them say nothing more

/** A diagnostic at an offset of the text. */
export interface Placed extends Diagnostic {
  readonly offset: number
}

export interface Parsed {
  readonly lines: LineCounter
  /** Absent where the text is no YAML. */
  readonly document?: Document.Parsed
  readonly problems: readonly Placed[]
}

const SCALAR = '\u001f' // the lexer's mark before a scalar: what follows is text, not syntax

const placed = (code: Diagnostic['code'], is: string, may: string, offset: number): Placed => ({
  code,
  path: [],
  is,
  may,
  offset,
})

const tooDeep = (at: number) =>
  placed('too-large', `more than ${DEPTH_MAX} levels deep`, `at most ${DEPTH_MAX} levels`, at)
const tooManyTokens = (at: number) =>
  placed('too-large', `more than ${TOKENS_MAX} words and signs`, `at most ${TOKENS_MAX}`, at)
const tooManyAliases = (at: number) =>
  placed(
    'too-many-aliases',
    `more than ${ALIASES_MAX} aliases`,
    `at most ${ALIASES_MAX} aliases`,
    at,
  )

type Token = ReturnType<Parser['next']> extends Generator<infer T> ? T : never

/** Tokens of a text, counted as they come: the first limit reached ends it, whatever follows. */
function tokensOf(text: string, lines: LineCounter): readonly Token[] | Placed {
  const parser = new Parser(lines.addNewLine)
  lines.addNewLine(0)
  const tokens: Token[] = []
  let [count, aliases, before] = [0, 0, '']
  for (const lexeme of new Lexer().lex(text)) {
    const at = parser.offset
    if (before !== SCALAR && lexeme.startsWith('*')) aliases++
    before = lexeme
    if (aliases > ALIASES_MAX) return tooManyAliases(at)
    if (++count > TOKENS_MAX) return tooManyTokens(at)
    for (const token of parser.next(lexeme)) tokens.push(token)
    if (parser.stack.length > DEPTH_MAX) return tooDeep(at)
  }
  for (const token of parser.end()) tokens.push(token)
  return tokens
}

const WANTS: Readonly<Partial<Record<YAMLError['code'], string>>> = {
  TAB_AS_INDENT: 'spaces for indentation',
  BAD_INDENT: 'the keys of one thing in one column',
  BAD_ALIAS: 'text in quotes where it begins with * or &',
  BAD_SCALAR_START: 'text in quotes where it begins with a sign',
  BAD_DQ_ESCAPE: 'single quotes, or \\\\ for a backslash',
  MULTILINE_IMPLICIT_KEY: 'a colon and a space after the key, on its line',
  BLOCK_AS_IMPLICIT_KEY: 'one key on a line',
  MISSING_CHAR: 'every bracket and quote closed',
}

const syntax = ({ code, message, pos }: YAMLError): Placed =>
  placed('yaml-syntax', `${message.split('\n')[0]}`, WANTS[code] ?? 'YAML', pos[0])

/** Where the brackets of an empty list end, if nothing but comments lies between them and a dash. */
function emptyListBefore(text: string, dash: number): number | undefined {
  if (text[dash] !== '-') return undefined
  let end = text.lastIndexOf('\n', dash)
  while (end > 0) {
    const start = text.lastIndexOf('\n', end - 1) + 1
    const line = text.slice(start, end)
    const [, before] = /^([^#]*:\s+\[\s*\])\s*(?:\s#.*)?$/u.exec(line) ?? []
    if (before !== undefined) return start + before.length
    if (!/^\s*(?:#.*)?$/u.test(line)) return undefined
    end = start - 1
  }
  return undefined
}

/** Errors as they are told; a list that goes on below `[]` once, at its first dash. */
function syntaxOf(text: string, errors: readonly YAMLError[]): readonly Placed[] {
  const slips = errors.flatMap(({ code, pos: [dash] }) => {
    const end = code === 'MULTILINE_IMPLICIT_KEY' ? emptyListBefore(text, dash) : undefined
    return end === undefined ? [] : [{ dash, end }]
  })
  const rest = errors.filter(
    ({ pos: [at] }) => !slips.some(({ dash, end }) => at >= end && at <= dash),
  )
  const may = 'no list here: a list cannot go on below []; take [] away'
  const told = slips.map(({ dash }) => placed('yaml-syntax', 'a list below []', may, dash))
  return [...told, ...rest.map(syntax)].sort((a, b) => a.offset - b.offset)
}

/** One error leads to others behind it: of a line, the first is told. */
function firstOfLines(found: readonly Placed[], lines: LineCounter): readonly Placed[] {
  const seen = new Set<number>()
  return found.filter(({ offset }) => {
    const { line } = lines.linePos(offset)
    return !seen.has(line) && seen.add(line)
  })
}

const secondDocument = (at: number) =>
  placed('yaml-syntax', 'a second document begins', 'one document in one file', at)

/**
 * Parses a text as one YAML document, within limits that hold before anything recurses.
 *
 * The parser is fed word by word, so that depth and aliases are known before a tree is built:
 * running out of stack cannot always be caught.
 */
export function parseText(text: string): Parsed {
  const lines = new LineCounter()
  const refuse = (...problems: readonly Placed[]): Parsed => ({ lines, problems })
  if (text.length > TEXT_MAX)
    return refuse(
      placed('too-large', `${text.length} characters`, `at most ${TEXT_MAX} characters`, 0),
    )
  const tokens = tokensOf(text, lines)
  if ('code' in tokens) return refuse(tokens)
  const composer = new Composer({
    lineCounter: lines,
    logLevel: 'error',
    prettyErrors: false,
    uniqueKeys: false, // checked by us: theirs takes time by the square of the keys
    version: '1.2',
  })
  const [document, second] = composer.compose(tokens, true, text.length)
  if (second) return refuse(secondDocument(second.range[0]))
  const errors = document?.errors ?? []
  if (document === undefined || errors.length > 0)
    return refuse(...firstOfLines(syntaxOf(text, errors.slice(0, ERRORS_MAX)), lines))
  return { lines, document, problems: document.warnings.map(syntax) }
}
