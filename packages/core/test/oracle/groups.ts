/** Names joined into groups. */
export interface Groups {
  readonly join: (a: string, b: string) => void
  readonly of: (name: string) => string
}

export function newGroups(): Groups {
  const parent = new Map<string, string>()
  const of = (name: string): string => {
    const up = parent.get(name)
    return up === undefined ? name : of(up)
  }
  const join = (a: string, b: string): void => {
    const [x, y] = [of(a), of(b)].sort() as [string, string]
    if (x !== y) parent.set(y, x)
  }
  return { join, of }
}
