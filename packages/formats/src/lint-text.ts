import type {
  Board,
  Catalogue,
  ControlBox,
  Diagnostic,
  LintFinding,
  SupplyDevice,
  Survey,
} from '@tubwright/core'
import { lintBox, lintDevice, lintTub } from '@tubwright/core'
import { readControlBox, readSupplyDevice, readSurvey } from './documents.ts'
import { offsetOf } from './inspect-document.ts'
import type { LocatedDiagnostic, Read } from './located.ts'
import { parseText } from './parse-text.ts'

/** A finding of lint at its place in a text. Lines and columns count from 1. */
export interface LocatedFinding extends LintFinding {
  readonly file: string
  readonly line: number
  readonly column: number
}

export const LINTED_KINDS = ['control-box/1', 'supply-device/1', 'survey/1'] as const
export type LintedKind = (typeof LINTED_KINDS)[number]

/** A file as lint sees it; without a kind where it is none that lint knows. */
export interface Linted {
  readonly kind?: LintedKind
  readonly diagnostics: readonly LocatedDiagnostic[]
  readonly findings: readonly LocatedFinding[]
  /** What was described, where it can be read. */
  readonly box?: ControlBox
  readonly device?: SupplyDevice
  readonly survey?: Survey
}

/** What a text says that it is; undefined where it says nothing of the kind. */
function kindOf(text: string): LintedKind | undefined {
  const said = parseText(text).document?.get('schema')
  return LINTED_KINDS.find(each => each === said)
}

/** Finds the place of a path in a text that has been read before. */
function locatorOf(text: string): (path: Diagnostic['path']) => { line: number; column: number } {
  const { document, lines } = parseText(text)
  return path => {
    if (!document) return { line: 1, column: 1 }
    const { line, col } = lines.linePos(offsetOf(document, path, false))
    return { line: Math.max(1, line), column: Math.max(1, col) }
  }
}

const inOrder = (a: LocatedFinding, b: LocatedFinding): number =>
  a.line - b.line || a.column - b.column

function linted<Value>(
  file: string,
  text: string,
  { value, diagnostics }: Read<Value>,
  lint: (value: Value) => readonly LintFinding[],
): Pick<Linted, 'diagnostics' | 'findings'> {
  if (value === undefined) return { diagnostics, findings: [] }
  const at = locatorOf(text)
  const findings = lint(value)
    .map(each => ({ ...each, file, ...at(each.path) }))
    .sort(inOrder)
  return { diagnostics, findings }
}

/**
 * Reads a control box, a supply device or a survey, and says what looks wrong in it.
 *
 * A text of no such kind is read as a control box: its diagnostics say why it is none.
 *
 * @param catalogue - the supply devices that a survey may name
 */
export function lintText(file: string, text: string, catalogue: Catalogue): Linted {
  const kind = kindOf(text)
  const named = kind ? { kind } : {}
  if (kind === 'survey/1') {
    const read = readSurvey(file, text, catalogue)
    const found = linted(file, text, read, value => lintTub(value, catalogue))
    return { ...named, ...found, ...(read.value ? { survey: read.value } : {}) }
  }
  if (kind === 'supply-device/1') {
    const read = readSupplyDevice(file, text)
    const found = linted(file, text, read, lintDevice)
    return { ...named, ...found, ...(read.value ? { device: read.value } : {}) }
  }
  const read = readControlBox(file, text)
  const found = linted(file, text, read, lintBox)
  return { ...named, ...found, ...(read.value ? { box: read.value } : {}) }
}

/** The board of what was linted, where there is one. */
export const lintedBoard = ({ box, device }: Linted): Board | undefined => (box ?? device)?.board
