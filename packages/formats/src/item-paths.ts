/** Keys from the top of a document, its items by id or by position. */
type Path = readonly (string | number)[]

const idOf = (item: unknown): unknown =>
  typeof item === 'object' && item !== null ? (item as { id?: unknown }).id : undefined

const inside = (value: unknown, key: string | number): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Record<string | number, unknown>)[key]
    : undefined

/** A path with every item by its position, as a document has it; an item that is not there is kept. */
export function byPosition(document: unknown, path: Path): Path {
  let at = document
  return path.map(key => {
    const position =
      Array.isArray(at) && typeof key === 'string' ? at.findIndex(each => idOf(each) === key) : -1
    const step = position < 0 ? key : position
    at = inside(at, step)
    return step
  })
}

/** A path with every item by its id, so that it stays when others come or go. */
export function byId(document: unknown, path: Path): readonly string[] {
  let at = document
  return path.map(key => {
    const own = inside(at, key)
    const id = Array.isArray(at) ? idOf(own) : undefined
    at = own
    return typeof id === 'string' ? id : String(key)
  })
}

/** What stands at a path of a document, its items by id or by position. */
export const valueAt = (document: unknown, path: Path): unknown =>
  byPosition(document, path).reduce<unknown>(inside, document)
