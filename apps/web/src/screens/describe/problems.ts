import { blocks } from '@tubwright/core'
import type { Words } from '@tubwright/words'
import type { Linted } from '../../ask/protocol.ts'

/** One thing to look at in a text, as the list, the text's margin and the board number it. */
export interface Problem {
  readonly number: number
  readonly line: number
  readonly column: number
  readonly told: string
  /** An error keeps the whole text from being used. */
  readonly severity: 'error' | 'warning' | 'notice'
}

/** A number as the board writes it. */
export const signOf = (number: number): string => `!${number}`

/**
 * Everything that was found, in the order of the text. What lint found keeps the numbers that the board
 * is drawn with; what reading found follows on.
 */
export function problemsOf(
  { findings, diagnostics }: Pick<Linted, 'findings' | 'diagnostics'>,
  words: Pick<Words, 'tellLint' | 'tellDiagnostic'>,
): readonly Problem[] {
  const found = findings.map((each, index): Problem => {
    const { line, column, severity } = each
    return { number: index + 1, line, column, told: words.tellLint(each), severity }
  })
  const read = diagnostics.map((each, index): Problem => {
    const { line, column } = each
    const severity = blocks(each) ? 'error' : 'warning'
    const number = findings.length + index + 1
    return { number, line, column, told: words.tellDiagnostic(each), severity }
  })
  return [...found, ...read].sort((a, b) => a.line - b.line || a.column - b.column)
}

/** Where a line and column, both from 1, are in a text; inside it whatever they say. */
export function offsetAt(text: string, line: number, column: number): number {
  let start = 0
  for (let passed = 1; passed < line; passed++) {
    const end = text.indexOf('\n', start)
    if (end < 0) break
    start = end + 1
  }
  const end = text.indexOf('\n', start)
  return Math.min(start + column - 1, end < 0 ? text.length : end)
}

const WORD = /^(?:[\w.+-]+|"[^"\n]*"|'[^'\n]*'|[^\s\w])/u

/** What a mark at an offset goes round: the word there, or one character. */
export function endOfMark(text: string, offset: number): number {
  const [word] = WORD.exec(text.slice(offset, offset + 200)) ?? []
  return offset + (word?.length ?? 0)
}
