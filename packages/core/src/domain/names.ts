import type { Diagnostic } from '../base/diagnostic.ts'

type Path = Diagnostic['path']

/** A name that must be one of some; nothing when it is. */
export function named(
  path: Path,
  name: string,
  known: readonly string[],
  what: string,
): readonly Diagnostic[] {
  if (known.includes(name)) return []
  const may = known.length > 0 ? `${what}: ${known.join(', ')}` : `${what}, but there is none`
  return [{ code: 'unknown-name', path, is: `"${name}"`, may }]
}

/** Names that may stand only once. */
export function unique(path: Path, names: readonly string[]): readonly Diagnostic[] {
  return names.flatMap((name, index) =>
    names.indexOf(name) === index
      ? []
      : [
          {
            code: 'duplicate-name' as const,
            path: [...path, index, 'id'],
            is: `"${name}" a second time`,
            may: 'a name of its own',
          },
        ],
  )
}

export const idsOf = (all: readonly { readonly id: string }[]): readonly string[] =>
  all.map(each => each.id)
