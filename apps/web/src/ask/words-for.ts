import type { ControlBox } from '@tubwright/core'
import { commandLabel } from '@tubwright/core'
import type { SheetWords } from '@tubwright/documents'
import { sheetWords } from '@tubwright/documents'
import type { Language } from '@tubwright/words'
import { loadWords } from './load-words.ts'

/** The words of a sheet, with the names that a box gives its commands. */
export async function sheetWordsFor(language: Language, box?: ControlBox): Promise<SheetWords> {
  const words = await loadWords(language)
  return sheetWords(words, id => (box ? commandLabel(box, id) : id))
}
