const files = import.meta.glob<string>('../../../../packages/catalog/data/tubs/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

/** A text as YAML writes it on one line: plain, or between quotation marks. */
function plain(scalar: string): string {
  const text = scalar.trim()
  if (/^".*"$/u.test(text)) return JSON.parse(text) as string
  return /^'.*'$/u.test(text) ? text.slice(1, -1).replaceAll("''", "'") : text
}

/** The invented tubs of the demo shop, by id. */
export const TUBS: readonly {
  readonly id: string
  readonly title: string
  readonly text: string
}[] = Object.entries(files).map(([path, text]) => ({
  id: /([^/]+)\.yaml$/u.exec(path)?.[1] ?? path,
  title: plain(/^title:\s*(.+)$/mu.exec(text)?.[1] ?? path),
  text,
}))
