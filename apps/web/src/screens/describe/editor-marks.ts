import { syntaxTree } from '@codemirror/language'
import type { Diagnostic } from '@codemirror/lint'
import { forEachDiagnostic } from '@codemirror/lint'
import type { EditorState, Extension, Range } from '@codemirror/state'
import { RangeSet } from '@codemirror/state'
import type { DecorationSet, ViewUpdate } from '@codemirror/view'
import { Decoration, type EditorView, GutterMarker, gutter, ViewPlugin } from '@codemirror/view'
import type { Problem } from './problems.ts'
import { endOfMark, offsetAt, signOf } from './problems.ts'

const SEVERITIES = { error: 'error', warning: 'warning', notice: 'info' } as const

/** Problems as the editor underlines them and shows them where a pointer rests. */
export const diagnosticsOf = (text: string, problems: readonly Problem[]): readonly Diagnostic[] =>
  problems.map(({ number, line, column, told, severity }) => {
    const from = offsetAt(text, line, column)
    const to = endOfMark(text, from)
    return { from, to, severity: SEVERITIES[severity], message: told, source: signOf(number) }
  })

class NumberMarker extends GutterMarker {
  readonly #signs: string

  constructor(signs: string) {
    super()
    this.#signs = signs
  }

  override eq(other: NumberMarker): boolean {
    return other.#signs === this.#signs
  }

  override toDOM(): Node {
    return document.createTextNode(this.#signs)
  }
}

/** The numbers of each line; they move with the text until the next look at it. */
function numbersOf(state: EditorState): RangeSet<GutterMarker> {
  const signs = new Map<number, string[]>()
  forEachDiagnostic(state, ({ source = '' }, from) => {
    const { from: start } = state.doc.lineAt(from)
    signs.set(start, [...(signs.get(start) ?? []), source])
  })
  const markers = [...signs].map(([start, all]) => new NumberMarker(all.join(' ')).range(start))
  return RangeSet.of(markers, true)
}

/** A margin with the number of each problem. */
const numbers: Extension = gutter({
  class: 'cm-numbers',
  markers: view => numbersOf(view.state),
})

const CLASSES: Readonly<Record<string, Decoration>> = {
  Key: Decoration.mark({ class: 'cm-key' }),
  QuotedLiteral: Decoration.mark({ class: 'cm-quoted' }),
  Comment: Decoration.mark({ class: 'cm-comment' }),
}

function colours(view: EditorView): DecorationSet {
  const found: Range<Decoration>[] = []
  for (const { from, to } of view.visibleRanges)
    syntaxTree(view.state).iterate({
      from,
      to,
      enter: ({ name, from: start, to: end }) => {
        const mark = CLASSES[name]
        if (mark && end > start) found.push(mark.range(start, end))
        return name !== 'Key'
      },
    })
  return Decoration.set(found, true)
}

/** Keys, quoted texts and comments told apart. */
const coloured: Extension = ViewPlugin.fromClass(
  class {
    decorations: DecorationSet

    constructor(view: EditorView) {
      this.decorations = colours(view)
    }

    update({ view, docChanged, viewportChanged, startState, state }: ViewUpdate): void {
      if (docChanged || viewportChanged || syntaxTree(startState) !== syntaxTree(state))
        this.decorations = colours(view)
    }
  },
  { decorations: plugin => plugin.decorations },
)

export const marks: Extension = [numbers, coloured]
