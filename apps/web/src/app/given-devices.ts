import type { ShelfText } from '../store/database.ts'

const files = import.meta.glob<string>('../../../../packages/catalog/data/devices/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

const idOf = (path: string): string => /([^/]+)\.yaml$/u.exec(path)?.[1] ?? path

/** Supply devices of the common kinds. */
export const DEVICES: readonly ShelfText[] = Object.entries(files).map(([path, text]) => ({
  kind: 'supply-device',
  id: idOf(path),
  text,
  isGiven: true,
  at: '',
}))
