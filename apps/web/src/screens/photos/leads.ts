/** A conductor end that a pin may be, with the words for it that the survey has. */
export interface Lead {
  readonly end: string
  /** The load or cable, as a person calls it. */
  readonly owner: string
  readonly ownerId: string
  /** What it carries: `high`, `neutral`; its own name where that is not said yet. */
  readonly carries: string
  readonly of: 'load' | 'cable'
}

type Fields = Readonly<Record<string, unknown>>

const listIn = (value: unknown): readonly Fields[] =>
  Array.isArray(value) ? value.filter(each => typeof each === 'object' && each !== null) : []

const idOf = (fields: Fields): string => String(fields['id'] ?? '')

const nameOf = (fields: Fields): string =>
  typeof fields['label'] === 'string' ? fields['label'] : idOf(fields)

const partsOf = (owner: Fields, list: string, of: Lead['of'], board: string): readonly Lead[] =>
  listIn(owner[list]).map(part => ({
    end: `${idOf(owner)}.${idOf(part)}${board}`,
    owner: nameOf(owner),
    ownerId: idOf(owner),
    carries: typeof part['function'] === 'string' ? part['function'] : idOf(part),
    of,
  }))

/** Ends of conductors that lie at the old board: of every load, and of the cable that feeds it. */
export function leadsIn(survey: Fields): readonly Lead[] {
  const supply = (survey['supply'] ?? {}) as Fields
  const feeding = listIn(supply['cables']).filter(each => each['to'] === 'box')
  return [
    ...listIn(survey['loads']).flatMap(each => partsOf(each, 'leads', 'load', '')),
    ...feeding.flatMap(each => partsOf(each, 'conductors', 'cable', '@box')),
  ]
}
