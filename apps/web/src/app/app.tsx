import type { Language, Words } from '@tubwright/words'
import type { ReactNode } from 'react'
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react'
import type { Core } from '../ask/ask.ts'
import { loadWords } from '../ask/load-words.ts'
import type { ShelfView } from '../ask/protocol.ts'
import type { Space } from '../store/database.ts'
import { JobSpace } from '../store/space.ts'
import { keepTypedOnLeaving } from '../store/typed.ts'
import type { App } from './context.ts'
import { AppProvider } from './context.ts'
import { holdWhileTyping } from './hold-while-typing.ts'
import { asTexts, shelfTexts } from './shelf.ts'
import type { Habits } from './start.ts'
import { readHabits, startCore, writeHabits } from './start.ts'

function useHabits(): readonly [Habits, (change: Partial<Habits>) => void] {
  const [habits, setHabits] = useState(readHabits)
  const change = useCallback((some: Partial<Habits>) => {
    setHabits(before => {
      const after = { ...before, ...some }
      writeHabits(after)
      return after
    })
  }, [])
  return [habits, change]
}

function useLoaded<Key, Value>(key: Key, load: (key: Key) => Promise<Value>): Value | undefined {
  const [loaded, setLoaded] = useState<{ readonly key: Key; readonly value: Value }>()
  useEffect(() => {
    let isWanted = true
    void load(key).then(value => isWanted && setLoaded({ key, value }))
    return () => {
      isWanted = false
    }
  }, [key, load])
  return loaded?.key === key ? loaded.value : undefined
}

/** The space of jobs that is open; the one before is closed first, so that its lock goes. */
function useSpace(name: Space): JobSpace | undefined {
  const [space, setSpace] = useState<JobSpace>()
  const opening = useRef<Promise<JobSpace | undefined>>(Promise.resolve(undefined))
  useEffect(() => {
    let isWanted = true
    opening.current = opening.current.then(async before => {
      if (before?.space === name) return before
      await before?.close()
      return JobSpace.open(name)
    })
    void opening.current.then(opened => isWanted && setSpace(opened))
    return () => {
      isWanted = false
    }
  }, [name])
  return space?.space === name ? space : undefined
}

const NEVER = (): (() => void) => () => undefined

/** Reads the shelf when it is first asked for; another function once it has changed, so that all ask again. */
function useShelf(space: JobSpace | undefined, core: Core): () => Promise<ShelfView> {
  const revision = useSyncExternalStore(space?.subscribe ?? NEVER, () => space?.shelfRevision ?? 0)
  const read = useRef<{ of: JobSpace; texts: string; view: Promise<ShelfView> } | undefined>(
    undefined,
  )
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new revision is a new shelf
  return useCallback(async () => {
    if (!space) throw new Error('no space is open')
    const texts = asTexts(await shelfTexts(space))
    const key = JSON.stringify(texts)
    if (read.current?.of !== space || read.current.texts !== key)
      read.current = { of: space, texts: key, view: core.ask('shelf', texts) }
    return read.current.view
  }, [space, core, revision])
}

/** Everything that the screens have at hand, once it is there. */
export function AppState({ children }: { readonly children: ReactNode }): ReactNode {
  const [habits, change] = useHabits()
  const words = useLoaded<Language, Words>(habits.language, loadWords)
  const space = useSpace(habits.space)
  const core = useMemo(startCore, [])
  const shelf = useShelf(space, core)
  useEffect(holdWhileTyping, [])
  useEffect(keepTypedOnLeaving, [])
  useEffect(() => {
    document.documentElement.lang = habits.language
    document.documentElement.dataset['scheme'] = habits.scheme
  }, [habits])
  const app = useMemo<App | undefined>(
    () =>
      words && space
        ? {
            words,
            language: habits.language,
            setLanguage: language => change({ language }),
            scheme: habits.scheme,
            setScheme: scheme => change({ scheme }),
            space,
            goTo: next => change({ space: next }),
            core,
            shelf,
          }
        : undefined,
    [words, space, habits, change, core, shelf],
  )
  return app ? <AppProvider value={app}>{children}</AppProvider> : undefined
}
