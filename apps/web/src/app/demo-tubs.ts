const files = import.meta.glob<string>('../../../../packages/catalog/data/tubs/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

/** The invented tubs of the demo shop, by id. */
export const TUBS: readonly {
  readonly id: string
  readonly title: string
  readonly text: string
}[] = Object.entries(files).map(([path, text]) => ({
  id: /([^/]+)\.yaml$/u.exec(path)?.[1] ?? path,
  title: /^title:\s*(.+)$/mu.exec(text)?.[1] ?? path,
  text,
}))
