import type { CompletionContext, CompletionResult } from '@codemirror/autocomplete'
import {
  autocompletion,
  closeBrackets,
  closeBracketsKeymap,
  completionKeymap,
  startCompletion,
} from '@codemirror/autocomplete'
import {
  defaultKeymap,
  history,
  historyKeymap,
  indentWithTab,
  redo,
  undo,
} from '@codemirror/commands'
import { yaml } from '@codemirror/lang-yaml'
import { bracketMatching, indentOnInput, indentUnit } from '@codemirror/language'
import { lintKeymap, nextDiagnostic, setDiagnostics } from '@codemirror/lint'
import type { Extension } from '@codemirror/state'
import { Compartment, EditorState } from '@codemirror/state'
import {
  EditorView,
  highlightActiveLine,
  highlightActiveLineGutter,
  highlightSpecialChars,
  keymap,
  lineNumbers,
} from '@codemirror/view'
import type { Offer } from './complete-at.ts'
import { completeAt, fieldUnder } from './complete-at.ts'
import { diagnosticsOf, marks } from './editor-marks.ts'
import { THEME } from './editor-theme.ts'
import type { Problem } from './problems.ts'
import { offsetAt } from './problems.ts'

/** What the editor says, in the language of the page. */
export interface EditorWords {
  readonly label: string
  readonly completions: string
  readonly controlCharacter: string
  /** What a field is for. */
  readonly fieldText: (name: string) => string | undefined
}

export interface EditorOptions {
  readonly text: string
  readonly isReadOnly: boolean
  readonly words: EditorWords
  readonly changed: (text: string) => void
  /** The field that the cursor is in, by its name, or undefined. */
  readonly entered: (field: string | undefined) => void
}

/** What the page does with the editor. */
export interface EditorHandle {
  readonly setText: (text: string) => void
  readonly setReadOnly: (isReadOnly: boolean) => void
  /** Marks what was found in a text, if that is still the text. */
  readonly mark: (text: string, problems: readonly Problem[]) => void
  readonly goTo: (line: number, column: number) => void
  readonly undo: () => void
  readonly redo: () => void
  readonly suggest: () => void
  readonly toNextProblem: () => void
  readonly close: () => void
}

const WORD = /^[\w+-]*$/u

/** A key gets its colon, where none stands there already. */
function inserted({ text, of }: Offer, after: string): string {
  const name = /^\d+$/u.test(text) ? `'${text}'` : text
  return of === 'key' && !/^\s*:/u.test(after) ? `${name}: ` : name
}

const completions =
  ({ fieldText }: EditorWords) =>
  (context: CompletionContext): CompletionResult | null => {
    const { state, pos, explicit } = context
    const text = state.doc.toString()
    const found = completeAt(text, pos)
    if (!found || found.offers.length === 0) return null
    const isBare = found.from === pos
    if (isBare && !explicit && found.offers.some(each => each.of === 'key')) return null
    const after = text.slice(pos, pos + 80)
    return {
      from: found.from,
      options: found.offers.map((offer, index) => {
        const detail = offer.field && fieldText(offer.field)
        return {
          label: offer.text,
          apply: inserted(offer, after),
          boost: -index / 100,
          ...(detail ? { detail } : {}),
        }
      }),
      validFor: WORD,
    }
  }

/** Where the cursor rests is told after a moment: to find it the text is read. */
function follow(entered: EditorOptions['entered']): Extension {
  let timer: ReturnType<typeof setTimeout> | undefined
  return EditorView.updateListener.of(({ selectionSet, docChanged, state }) => {
    if (!selectionSet && !docChanged) return
    clearTimeout(timer)
    timer = setTimeout(
      () => entered(fieldUnder(state.doc.toString(), state.selection.main.head)),
      250,
    )
  })
}

const editing: Extension = [
  lineNumbers(),
  highlightActiveLineGutter(),
  highlightSpecialChars(),
  history(),
  indentOnInput(),
  bracketMatching(),
  closeBrackets(),
  highlightActiveLine(),
  indentUnit.of('  '),
  EditorView.lineWrapping,
  yaml(),
  keymap.of([
    ...closeBracketsKeymap,
    ...completionKeymap,
    ...defaultKeymap,
    ...historyKeymap,
    ...lintKeymap.filter(each => each.key !== 'Mod-Shift-m'),
    indentWithTab,
  ]),
  marks,
  THEME,
]

const readOnly = (isReadOnly: boolean): Extension => [
  EditorState.readOnly.of(isReadOnly),
  EditorView.contentAttributes.of({ 'aria-readonly': String(isReadOnly) }),
]

function extensions(options: EditorOptions, access: Compartment): Extension {
  const { words, changed, entered, isReadOnly } = options
  return [
    editing,
    autocompletion({ override: [completions(words)], icons: false, maxRenderedOptions: 60 }),
    EditorState.phrases.of({
      Completions: words.completions,
      'Control character': words.controlCharacter,
    }),
    EditorView.contentAttributes.of({
      'aria-label': words.label,
      spellcheck: 'false',
      tabindex: '0',
    }),
    EditorView.updateListener.of(({ docChanged, state }) => {
      if (docChanged) changed(state.doc.toString())
    }),
    follow(entered),
    access.of(readOnly(isReadOnly)),
  ]
}

function goTo(view: EditorView, line: number, column: number): void {
  const anchor = offsetAt(view.state.doc.toString(), line, column)
  view.dispatch({
    selection: { anchor },
    effects: EditorView.scrollIntoView(anchor, { y: 'center' }),
  })
  view.focus()
}

/**
 * An editor inside a shadow root: its styles are adopted by that, since the page takes no style that is
 * written into it.
 */
export function openEditor(host: HTMLElement, options: EditorOptions): EditorHandle {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' })
  const access = new Compartment()
  const view = new EditorView({
    parent: root,
    root,
    state: EditorState.create({ doc: options.text, extensions: extensions(options, access) }),
  })
  const inFocus = (act: (target: EditorView) => unknown) => () => {
    view.focus()
    act(view)
  }
  return {
    setText: text => {
      if (text !== view.state.doc.toString())
        view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } })
    },
    setReadOnly: isReadOnly => view.dispatch({ effects: access.reconfigure(readOnly(isReadOnly)) }),
    mark: (text, problems) => {
      if (text === view.state.doc.toString())
        view.dispatch(setDiagnostics(view.state, [...diagnosticsOf(text, problems)]))
    },
    goTo: (line, column) => goTo(view, line, column),
    undo: inFocus(undo),
    redo: inFocus(redo),
    suggest: inFocus(startCompletion),
    toNextProblem: inFocus(nextDiagnostic),
    close: () => view.destroy(),
  }
}
