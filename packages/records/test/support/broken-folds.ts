import type { Act, Entry } from '@tubwright/records'
import { canonical, fieldAt, JobLog, pathKey } from '@tubwright/records'
import { missingOf } from './opinion-of-state.ts'
import { missingFrom } from './oracle.ts'

/** What the laws look at: values on every path, withdrawn items, what is missing. */
export interface Said {
  readonly values: Readonly<Record<string, readonly string[]>>
  readonly withdrawn: readonly string[]
  readonly missing: readonly string[]
}
export type AnyFold = (entries: readonly Entry[]) => Said

type Setting = Extract<Act, { do: 'set' | 'clear' }>

const isSetting = (act: Entry['act']): act is Setting => act.do === 'set' || act.do === 'clear'

export const pathsOf = (entries: readonly Entry[]): readonly (readonly string[])[] => [
  ...new Map(
    entries.flatMap(({ act }) => (isSetting(act) ? [[pathKey(act.path), act.path] as const] : [])),
  ).values(),
]

/** The real one. */
export const realFold: AnyFold = entries => {
  const { state } = JobLog.open('me', entries)
  const values = pathsOf(entries).map(path => {
    const field = fieldAt(state, path)
    const all =
      field.kind === 'empty'
        ? []
        : field.kind === 'set'
          ? [canonical(field.value)]
          : field.values.map(each => (each.kind === 'set' ? canonical(each.value) : 'cleared'))
    return [pathKey(path), [...new Set(all)].sort()] as const
  })
  return {
    values: Object.fromEntries(values),
    withdrawn: state.withdrawn.map(each => pathKey(each.path)),
    missing: missingOf(state),
  }
}

/** A fold that takes one value for each path, however chosen, and is right in all else. */
const choosing =
  (choose: (all: readonly Entry[]) => readonly Entry[]): AnyFold =>
  entries => {
    const values = pathsOf(entries).map(path => {
      const here = entries.filter(
        ({ act }) => isSetting(act) && pathKey(act.path) === pathKey(path),
      )
      const all = choose(here).flatMap(({ act }) =>
        act.do === 'set' ? [canonical(act.value ?? null)] : [],
      )
      return [pathKey(path), all.sort()] as const
    })
    return { ...realFold(entries), values: Object.fromEntries(values) }
  }

const newestByClock = (all: readonly Entry[]): readonly Entry[] =>
  all.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1)).slice(-1)

/** Folds that are wrong, each in one way that people have been wrong in. */
export const BROKEN: Readonly<Record<string, AnyFold>> = {
  'the last by the clock wins': choosing(newestByClock),
  'the last to arrive wins': choosing(all => all.slice(-1)),
  'nothing is ever replaced': choosing(all => all),
  'what comes twice counts twice': entries => {
    const said = realFold(entries)
    return { ...said, withdrawn: [...said.withdrawn, String(entries.length)] }
  },
  'a restore needs to have seen nothing': entries => {
    const restored = entries.flatMap(({ act }) =>
      act.do === 'restore' ? [pathKey(act['path'] as string[])] : [],
    )
    const said = realFold(entries)
    return { ...said, withdrawn: said.withdrawn.filter(each => !restored.includes(each)) }
  },
  'nothing is missing as long as something is there': entries => ({
    ...realFold(entries),
    missing: [],
  }),
  'only what lies between is missing': entries => ({
    ...realFold(entries),
    missing: missingFrom(entries.map(each => ({ ...each, seen: {} }))),
  }),
}
