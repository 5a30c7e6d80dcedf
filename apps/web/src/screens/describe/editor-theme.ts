import { EditorView } from '@codemirror/view'

/** Colours are those of the page: they come into the shadow as custom properties. */
export const THEME = EditorView.theme({
  '&': { height: '100%', color: 'var(--ink)', backgroundColor: 'var(--sheet)', fontSize: '1rem' },
  // The frame around the whole says where the focus is.
  '&.cm-focused': { outline: 'none' },
  '.cm-scroller': {
    fontFamily: 'ui-monospace, "Liberation Mono", Menlo, Consolas, monospace',
    lineHeight: '1.5',
  },
  '.cm-content': { caretColor: 'var(--ink)', padding: '0.5rem 0 40vh' },
  '.cm-content ::selection, .cm-line::selection': { backgroundColor: 'var(--mark)' },
  '.cm-cursor': { borderLeftColor: 'var(--ink)' },
  '.cm-activeLine': { backgroundColor: 'color-mix(in srgb, var(--line) 14%, transparent)' },
  '.cm-gutters': {
    backgroundColor: 'var(--paper)',
    color: 'var(--quiet)',
    borderRight: '2px solid var(--line)',
  },
  '.cm-activeLineGutter': {
    backgroundColor: 'transparent',
    color: 'var(--ink)',
    fontWeight: '700',
  },
  '.cm-lineNumbers .cm-gutterElement': { minWidth: '1.6rem', padding: '0 0.3rem 0 0.2rem' },
  '.cm-numbers .cm-gutterElement': {
    color: 'var(--danger)',
    fontWeight: '800',
    padding: '0 0.1rem 0 0.25rem',
  },
  '.cm-key': { color: 'var(--accent)', fontWeight: '600' },
  '.cm-quoted': { color: 'var(--good)' },
  '.cm-comment': { color: 'var(--quiet)', fontStyle: 'italic' },
  '.cm-matchingBracket, &.cm-focused .cm-matchingBracket': {
    backgroundColor: 'transparent',
    outline: '2px solid var(--line)',
  },
  '.cm-nonmatchingBracket, &.cm-focused .cm-nonmatchingBracket': {
    backgroundColor: 'transparent',
    outline: '2px dashed var(--danger)',
  },
  '.cm-lintRange': { backgroundImage: 'none', paddingBottom: '0' },
  '.cm-lintRange-error': { borderBottom: '3px double var(--danger)' },
  '.cm-lintRange-warning': { borderBottom: '3px solid var(--warning)' },
  '.cm-lintRange-info': { borderBottom: '2px dashed var(--quiet)' },
  '.cm-tooltip': {
    backgroundColor: 'var(--sheet)',
    color: 'var(--ink)',
    border: '2px solid var(--ink)',
    borderRadius: '0.35rem',
    maxWidth: 'min(30rem, 92vw)',
  },
  '.cm-diagnostic': { borderLeft: '0', padding: '0.4rem 0.6rem' },
  '.cm-diagnosticSource': { fontSize: '0.9rem', fontWeight: '800', opacity: '1' },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': {
    fontFamily: 'inherit',
    maxHeight: '40vh',
    maxWidth: 'min(34rem, 92vw)',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li': {
    minHeight: '48px',
    display: 'flex',
    flexWrap: 'wrap',
    alignItems: 'center',
    gap: '0 0.6rem',
    padding: '0.25rem 0.6rem',
    lineHeight: '1.25',
  },
  '.cm-tooltip-autocomplete ul li[aria-selected]': {
    backgroundColor: 'var(--accent)',
    color: 'var(--on-accent)',
  },
  '.cm-completionLabel': { fontWeight: '700' },
  '.cm-completionMatchedText': { textDecoration: 'underline' },
  '.cm-completionDetail': { marginLeft: '0', fontStyle: 'normal', whiteSpace: 'normal' },
})
