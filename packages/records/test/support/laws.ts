import type { Entry, Path } from '@tubwright/records'
import { canonical, pathKey } from '@tubwright/records'
import type { AnyFold, Said } from './broken-folds.ts'
import { pathsOf } from './broken-folds.ts'
import { missingFrom } from './oracle.ts'
import type { Random } from './random.ts'

export type Law = (fold: AnyFold, entries: readonly Entry[], random: Random) => boolean

const inOrder = (said: Said): string =>
  JSON.stringify({
    ...said,
    values: Object.entries(said.values).sort(([a], [b]) => (a < b ? -1 : 1)),
  })

const pathOf = ({ act }: Entry): Path => (act as { path?: Path }).path ?? []

const isAt = (entry: Entry, path: Path): boolean => pathKey(pathOf(entry)) === pathKey(path)

const does = ({ act }: Entry, ...kinds: readonly string[]): boolean =>
  kinds.includes(String(act.do))

const saw = (later: Entry, earlier: Entry): boolean => {
  const [store = '', counter] = earlier.id.split(':')
  return Object.hasOwn(later.seen, store) && Number(later.seen[store]) >= Number(counter)
}

/** By path: what entries set there that none which saw them replaced; `cleared` for a clear. */
function headsOf(entries: readonly Entry[]): ReadonlyMap<string, readonly string[]> {
  const settings = entries.filter(each => does(each, 'set', 'clear'))
  const heads = pathsOf(entries).map(path => {
    const here = settings.filter(each => isAt(each, path))
    const left = here.filter(each => !here.some(other => saw(other, each)))
    const said = left.map(({ act }) =>
      act.do === 'set' ? canonical(act.value ?? null) : 'cleared',
    )
    return [pathKey(path), said] as const
  })
  return new Map(heads)
}

const standing = (entries: readonly Entry[]): readonly Entry[] =>
  entries
    .filter(each => does(each, 'withdraw'))
    .filter(each => {
      const back = entries.filter(other => does(other, 'restore', 'add'))
      return !back.some(other => isAt(other, pathOf(each)) && saw(other, each))
    })

const isIn = (path: string, outer: string): boolean =>
  path === outer || path.startsWith(`${outer}\u001f`)

/** What makes no difference where something is shown below it: the oracle knows where it does. */
const SAY_NOTHING = ['cleared', '[]', '{}']

/** What any fold of a record has to keep to; of logs without forked ids, in one version. */
export const LAWS: Readonly<Record<string, Law>> = {
  'any order': (fold, entries, random) =>
    inOrder(fold(entries)) === inOrder(fold(random.shuffled(entries))),
  'once or twice': (fold, entries) =>
    inOrder(fold(entries)) === inOrder(fold([...entries, ...entries])),
  'no value is dropped unseen': (fold, entries) => {
    const { values } = fold(entries)
    return [...headsOf(entries)].every(([path, heads]) =>
      heads.every(each => SAY_NOTHING.includes(each) || values[path]?.includes(each)),
    )
  },
  'what was seen is replaced': (fold, entries) => {
    const heads = headsOf(entries)
    return Object.entries(fold(entries).values).every(([path, values]) =>
      values.every(each => heads.get(path)?.includes(each)),
    )
  },
  'a withdrawal stands until a restore that saw it': (fold, entries) => {
    const { withdrawn } = fold(entries)
    return standing(entries).every(each =>
      withdrawn.some(outer => isIn(pathKey(pathOf(each)), outer)),
    )
  },
  'what is missing is told': (fold, entries) =>
    fold(entries).missing.join() === missingFrom(entries).join(),
}
