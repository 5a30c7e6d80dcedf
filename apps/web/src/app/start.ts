import type { Language } from '@tubwright/words'
import { Core } from '../ask/ask.ts'
import workerUrl from '../ask/worker.ts?worker&url'
import { ownScript } from '../offline/index.ts'
import type { Space } from '../store/database.ts'
import type { Scheme } from './context.ts'

/** What this browser remembers besides the jobs: how the page looks and speaks. */
export interface Habits {
  readonly language: Language
  readonly scheme: Scheme
  readonly space: Space
}

const KEY = 'tubwright-habits'
/** Each tab stays in its own space, whatever another one does. */
const SPACE = 'tubwright-space'

const preferred = (): Habits => ({
  language: navigator.language.startsWith('es') ? 'es' : 'en',
  scheme: matchMedia('(prefers-color-scheme: dark)').matches ? 'shade' : 'sun',
  space: 'own',
})

export function readHabits(): Habits {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? '{}') as Partial<Habits>
    const usual = preferred()
    return {
      language: kept.language === 'en' || kept.language === 'es' ? kept.language : usual.language,
      scheme: kept.scheme === 'sun' || kept.scheme === 'shade' ? kept.scheme : usual.scheme,
      space: (sessionStorage.getItem(SPACE) ?? kept.space) === 'demo' ? 'demo' : 'own',
    }
  } catch {
    return preferred()
  }
}

export function writeHabits(habits: Habits): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(habits))
    sessionStorage.setItem(SPACE, habits.space)
  } catch {
    // Looks and language are then those of the browser at every start.
  }
}

/** The core, in a thread of its own that starts with the first question. */
export const startCore = (): Core =>
  new Core(() => new Worker(ownScript(workerUrl) as unknown as string, { type: 'module' }))
