import type { Language, Words } from '@tubwright/words'

/** Loads one language and no other. */
export const loadWords = async (language: Language): Promise<Words> =>
  language === 'es'
    ? (await import('@tubwright/words/es')).SPANISH
    : (await import('@tubwright/words/en')).ENGLISH
