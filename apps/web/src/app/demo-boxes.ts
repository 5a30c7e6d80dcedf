import stock from '../../../../packages/catalog/data/stock.json'
import type { ShelfText } from '../store/database.ts'

const files = import.meta.glob<string>('../../../../packages/catalog/data/boxes/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
})

const idOf = (path: string): string => /([^/]+)\.yaml$/u.exec(path)?.[1] ?? path

const inStock: Readonly<Record<string, number>> = stock

/** The invented boxes of the demo shop, with what lies in its stock. */
export const BOXES: readonly ShelfText[] = Object.entries(files).map(([path, text]) => {
  const id = idOf(path)
  const count = inStock[id]
  return {
    kind: 'control-box',
    id,
    text,
    isGiven: true,
    at: '',
    ...(count === undefined ? {} : { inStock: count }),
  }
})
